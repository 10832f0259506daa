/** Where the words of an utterance stand, so that a phrase whose words are missing is not tried. */

/** Words one of which a phrase needs; `id` is a small number of its own. */
export type WordGroup = { id: number; words: ReadonlySet<string> };

/** A word that begins with a digit may be any number; "0" stands for all of them. */
export const ANY_FIGURE = "0";

/** Groups by the words in them; a word of many phrases is looked up once an utterance. */
class Groups {
  private count = 0;
  private readonly byWord = new Map<string, number[]>();

  add(words: ReadonlySet<string>): WordGroup {
    const id = this.count++;
    for (const word of words) {
      const ids = this.byWord.get(word);
      if (ids) ids.push(id);
      else this.byWord.set(word, [id]);
    }
    return { id, words };
  }

  with(word: string): readonly number[] {
    return this.byWord.get(word) ?? NO_IDS;
  }

  get size(): number {
    return this.count;
  }
}

const NO_IDS: readonly number[] = [];
const groups = new Groups();

export function wordGroup(words: ReadonlySet<string>): WordGroup {
  return groups.add(words);
}

let options = 0;

/** A small number for one more option of a phrase. */
export function optionNumber(): number {
  return options++;
}

/** Places are bits of two numbers; in a longer utterance words are looked for one by one. */
const BITS = 31;
const MOST_PLACES = 2 * BITS;

/** The places of each group's words in one utterance. */
export class WordPlaces {
  /** Groups from this one on are looked for word by word. */
  private readonly known: number;
  private readonly low: Int32Array;
  private readonly high: Int32Array;
  /** By option, two more than the place it can begin at last; 0 where that is not known yet. */
  private readonly starts = new Uint8Array(options);

  constructor(
    private readonly words: readonly string[],
    private readonly alts: readonly (string | undefined)[],
    /** Those of the sentence these words are a part of: what cannot be there cannot be here. */
    readonly within?: WordPlaces,
  ) {
    this.known = words.length > MOST_PLACES ? 0 : groups.size;
    this.low = new Int32Array(this.known);
    this.high = words.length > BITS ? new Int32Array(this.known) : this.low;
    for (let at = 0; this.known > 0 && at < words.length; at += 1) {
      const word = words[at] ?? "";
      const alt = alts[at];
      this.mark(word, at);
      if (alt !== undefined) this.mark(alt, at);
      if (isFigure(word)) this.mark(ANY_FIGURE, at);
    }
  }

  private mark(word: string, at: number): void {
    const into = at < BITS ? this.low : this.high;
    const bit = 1 << (at % BITS);
    for (const id of groups.with(word)) {
      if (id >= this.known) break;
      into[id]! |= bit;
    }
  }

  /** What was kept about an option; undefined where nothing was. */
  start(option: number): number | undefined {
    const kept = this.starts[option] ?? 0;
    if (kept !== 0) return kept - 2;
    return this.within?.start(option) === -1 ? -1 : undefined;
  }

  /** Keeps where an option can begin last, -1 for nowhere. */
  keepStart(option: number, last: number): void {
    if (option < this.starts.length) this.starts[option] = last + 2;
  }

  /** False where no word of the group was said. */
  mayHave({ id }: WordGroup): boolean {
    return id >= this.known || (this.low[id]! | this.high[id]!) !== 0;
  }

  /** The last place before this one where a word of the group stands; -1 where none does. */
  lastOf({ id, words }: WordGroup, before: number): number {
    if (id >= this.known) return this.lookedFor(words, before);
    if (before > BITS) {
      const high = this.high[id]! & ((1 << (before - BITS)) - 1);
      if (high !== 0) return BITS + 31 - Math.clz32(high);
    }
    const low = before >= BITS ? this.low[id]! : this.low[id]! & ((1 << before) - 1);
    return 31 - Math.clz32(low);
  }

  /** The same for a group that was made since, or in a long utterance. */
  private lookedFor(group: ReadonlySet<string>, before: number): number {
    for (let at = before - 1; at >= 0; at -= 1) {
      const word = this.words[at] ?? "";
      const alt = this.alts[at];
      if (group.has(word) || (alt !== undefined && group.has(alt))) return at;
      if (isFigure(word) && group.has(ANY_FIGURE)) return at;
    }
    return -1;
  }
}

function isFigure(word: string): boolean {
  const code = word.charCodeAt(0);
  return code >= 48 && code <= 57;
}
