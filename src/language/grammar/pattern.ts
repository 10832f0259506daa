/**
 * The small language in which phrases are written, for understanding and for the recognizer's
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

const CLOSING: Record<string, string> = { "(": ")", "[": "]", "<": ">", "{": "}" };
const OPENING = Object.keys(CLOSING).join("");
const ENDING = Object.values(CLOSING).join("");
const NOTHING: Pattern = { is: "sequence", parts: [] };

function isSpace(code: number): boolean {
  return code === 32 || code === 10;
}

/** Letters, figures, the hyphen and the apostrophe make up words. */
function isLetter(code: number): boolean {
  return (code >= 97 && code <= 122) || (code >= 48 && code <= 57) || code === 45 || code === 39;
}

function slotOf(inner: string): Pattern {
  const fixed = /^(\w+)=(.+)$/.exec(inner);
  if (fixed) {
    const text = fixed[2] ?? "";
    const value = text === "true" ? true : /^\d+$/.test(text) ? Number(text) : text;
    return { is: "fixed", slot: fixed[1] ?? "", value };
  }
  const [slot = "", kind = slot] = inner.split(":");
  return { is: "slot", slot, kind };
}

/** Reads one phrase character by character, for speed. */
class PatternReader {
  private at = 0;

  constructor(private readonly source: string) {}

  read(): Pattern {
    const pattern = this.choice("");
    if (this.at < this.source.length) throw this.unpaired();
    return pattern;
  }

  private unpaired(): Error {
    return new Error(`phrase "${this.source}": brackets do not pair`);
  }

  private choice(closing: string): Pattern {
    const of: Pattern[] = [];
    let parts: Pattern[] = [];
    for (;;) {
      while (isSpace(this.source.charCodeAt(this.at))) this.at += 1;
      const character = this.source[this.at] ?? "";
      if (character === "" && closing !== "") throw this.unpaired();
      if (character === "|" || character === closing) {
        of.push(parts.length === 1 ? parts[0]! : { is: "sequence", parts });
        if (character === "|") parts = [];
        else {
          if (character !== "") this.at += 1;
          return of.length === 1 ? of[0]! : { is: "choice", of };
        }
        this.at += 1;
      } else parts.push(this.piece(character));
    }
  }

  private piece(character: string): Pattern {
    const start = this.at;
    if (isLetter(character.charCodeAt(0))) {
      while (isLetter(this.source.charCodeAt(this.at))) this.at += 1;
      return { is: "word", word: this.source.slice(start, this.at) };
    }
    this.at += 1;
    if (character === "(") return this.choice(")");
    if (character === "[") return { is: "choice", of: [this.choice("]"), NOTHING] };
    const end = this.source.indexOf(CLOSING[character] ?? "\0", start);
    if ((character !== "<" && character !== "{") || end < 0) {
      const hint =
        character === ")" || character === "]" ? "brackets do not pair" : "see pattern.ts";
      throw new Error(
        `phrase "${this.source}": cannot read "${this.source.slice(start)}"; ${hint}`,
      );
    }
    this.at = end + 1;
    const inner = this.source.slice(start + 1, end);
    return character === "<" ? { is: "list", name: inner } : slotOf(inner);
  }
}

/**
 * Words of which the phrase must contain one, found without parsing it: the longest word outside
 * all brackets, or a word from each side of a choice between plain words. Undefined where there is
 * neither.
 */
export function plainWordsOf(source: string): string[] | undefined {
  let word = "";
  let choice: string[] | undefined;
  let depth = 0;
  /** Where a choice began that contains only plain words so far. */
  let opened = -1;
  for (let at = 0; at < source.length; at += 1) {
    const character = source[at]!;
    if (Object.hasOwn(CLOSING, character)) {
      opened = depth === 0 && character === "(" ? at + 1 : -1;
      depth += 1;
    } else if (character === ")" || character === "]" || character === ">" || character === "}") {
      depth -= 1;
      if (opened >= 0) {
        const words = oneOfEach(source.slice(opened, at));
        if (words && (!choice || words.length < choice.length)) choice = words;
      }
      opened = -1;
    } else if (depth === 0) {
      if (character === "|") return undefined;
      const end = wordEnd(source, at);
      if (end - at > word.length) word = source.slice(at, end);
      if (end > at) at = end - 1;
    }
  }
  return word ? [word] : choice;
}

/** The sides of a choice outside all brackets; the phrase itself where there is none. */
export function alternatives(source: string): string[] {
  const sides: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < source.length; at += 1) {
    const character = source[at]!;
    if (character === "|") {
      if (depth > 0) continue;
      sides.push(source.slice(from, at));
      from = at + 1;
    } else if (OPENING.includes(character)) depth += 1;
    else if (ENDING.includes(character)) depth -= 1;
  }
  return [...sides, source.slice(from)];
}

/** Where the word that begins here ends; the same place where none begins. */
function wordEnd(text: string, at: number): number {
  let end = at;
  while (isLetter(text.charCodeAt(end))) end += 1;
  return end;
}

/** The longest word of each side of a choice; undefined where a side has none. */
function oneOfEach(text: string): string[] | undefined {
  const words = text.split("|").map((side) => {
    let longest = "";
    for (let at = 0; at < side.length; at += 1) {
      const end = wordEnd(side, at);
      if (end - at > longest.length) longest = side.slice(at, end);
      at = Math.max(at, end - 1);
    }
    return longest;
  });
  return words.includes("") ? undefined : words;
}

/**
 * Reads one phrase.
 * @throws Error naming the phrase when it is not well formed.
 */
export function parsePattern(source: string): Pattern {
  return new PatternReader(source).read();
}
