/** Sentences drawn from a speech grammar (JSGF), and how many forms of sentence it has. */

type Piece = { words: string } | { rule: string } | { of: Piece[][]; optional: boolean };

const TOKEN = /<\w+>|[()[\]|]|[a-z']+/g;

export class GrammarSentences {
  private readonly rules = new Map<string, Piece[][]>();

  constructor(rules: string) {
    for (const [, name, body] of rules.matchAll(/<(\w+)> = ([^;]*);/g)) {
      const tokens = body?.match(TOKEN) ?? [];
      this.rules.set(name ?? "", choices(tokens, { at: 0 }));
    }
  }

  /** One sentence; `random` gives numbers from 0 to 1. */
  draw(rule: string, random: () => number): string {
    return this.of(this.choicesOf(rule), random).replace(/\s+/g, " ").trim();
  }

  /** Forms of sentence: every choice of words counts, a slot counts once. */
  forms(rule: string): number {
    return count(this.choicesOf(rule));
  }

  private choicesOf(rule: string): Piece[][] {
    const found = this.rules.get(rule);
    if (!found) throw new Error(`no rule <${rule}>`);
    return found;
  }

  private of(all: readonly Piece[][], random: () => number): string {
    const one = all[Math.floor(random() * all.length)] ?? [];
    return one.map((piece) => this.piece(piece, random)).join(" ");
  }

  private piece(piece: Piece, random: () => number): string {
    if ("words" in piece) return piece.words;
    if ("rule" in piece) return this.of(this.choicesOf(piece.rule), random);
    return piece.optional && random() < 0.5 ? "" : this.of(piece.of, random);
  }
}

function choices(tokens: readonly string[], cursor: { at: number }): Piece[][] {
  const all: Piece[][] = [[]];
  for (; cursor.at < tokens.length; cursor.at += 1) {
    const token = tokens[cursor.at] ?? "";
    if (token === ")" || token === "]") return all;
    if (token === "|") all.push([]);
    else if (token === "(" || token === "[") {
      cursor.at += 1;
      all.at(-1)?.push({ of: choices(tokens, cursor), optional: token === "[" });
    } else if (token.startsWith("<")) all.at(-1)?.push({ rule: token.slice(1, -1) });
    else all.at(-1)?.push({ words: token });
  }
  return all;
}

function count(all: readonly Piece[][]): number {
  return all.reduce((sum, pieces) => {
    const each = pieces.map((piece) =>
      "of" in piece ? count(piece.of) + (piece.optional ? 1 : 0) : 1,
    );
    return sum + each.reduce((product, one) => product * one, 1);
  }, 0);
}
