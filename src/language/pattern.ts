/**
 * The small language phrases are written in, the same for understanding and for the recogniser's
 * grammar:
 *
 *     word            that word            (a|b c)        one of these
 *     [a]             a, or nothing        <name>         a shared list of phrases
 *     {slot}          a value of the kind `slot`, kept under that name
 *     {slot:kind}     a value of another kind            {slot=value}   a fixed value, no words
 */

export type Pattern =
  | { is: "word"; word: string }
  | { is: "sequence"; parts: Pattern[] }
  | { is: "choice"; of: Pattern[] }
  | { is: "list"; name: string }
  | { is: "slot"; slot: string; kind: string }
  | { is: "fixed"; slot: string; value: string | number | true };

const PIECE = /\s*(\(|\)|\[|\]|\||<[a-z-]+>|\{[^}]*\}|[a-z0-9'-]+)/y;

function pieces(source: string): string[] {
  const found: string[] = [];
  PIECE.lastIndex = 0;
  const text = source.trim();
  while (PIECE.lastIndex < text.length) {
    const at = PIECE.lastIndex;
    const match = PIECE.exec(text);
    if (!match) {
      throw new Error(`phrase "${source}": cannot read "${text.slice(at)}"; see pattern.ts`);
    }
    found.push(match[1] ?? "");
  }
  return found;
}

function slotOf(piece: string): Pattern {
  const inner = piece.slice(1, -1);
  const fixed = /^(\w+)=(.+)$/.exec(inner);
  if (fixed) {
    const text = fixed[2] ?? "";
    const value = text === "true" ? true : /^\d+$/.test(text) ? Number(text) : text;
    return { is: "fixed", slot: fixed[1] ?? "", value };
  }
  const [slot = "", kind = slot] = inner.split(":");
  return { is: "slot", slot, kind };
}

/**
 * Reads one phrase.
 * @throws Error naming the phrase when it is not well formed.
 */
export function parsePattern(source: string): Pattern {
  const all = pieces(source);
  let next = 0;
  const choice = (closing: string | undefined): Pattern => {
    const of: Pattern[] = [];
    let parts: Pattern[] = [];
    const close = () => of.push(parts.length === 1 ? parts[0]! : { is: "sequence", parts });
    while (next < all.length) {
      const piece = all[next++] ?? "";
      if (piece === closing) {
        close();
        return of.length === 1 ? of[0]! : { is: "choice", of };
      }
      if (piece === "|") {
        close();
        parts = [];
      } else if (piece === "(") parts.push(choice(")"));
      else if (piece === "[") {
        parts.push({ is: "choice", of: [choice("]"), { is: "sequence", parts: [] }] });
      } else if (piece.startsWith("<")) parts.push({ is: "list", name: piece.slice(1, -1) });
      else if (piece.startsWith("{")) parts.push(slotOf(piece));
      else if (piece === ")" || piece === "]") break;
      else parts.push({ is: "word", word: piece });
    }
    if (closing !== undefined || next < all.length) {
      throw new Error(`phrase "${source}": brackets do not pair`);
    }
    close();
    return of.length === 1 ? of[0]! : { is: "choice", of };
  };
  return choice(undefined);
}
