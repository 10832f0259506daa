/**
 * Values anywhere in what was said. Where people correct themselves ("two, no wait, three"), a
 * value after the correction takes precedence over one before it.
 */
import type { SlotReader } from "../grammar/matcher.ts";
import { correctionAt } from "../second-thoughts.ts";
import type { Utterance } from "../words.ts";

export type FoundValue<T> = { value: T; at: number; next: number };

/** Where the words behind the last correction begin; 0 where nothing was corrected. */
function correctedFrom(said: Utterance): number {
  const { words } = said;
  for (let at = words.length - 2; at > 0; at--) {
    const known = correctionAt(words, at);
    if (known) return at + known.length;
  }
  return 0;
}

export class Scan {
  readonly words: readonly string[];
  readonly joined: string;
  private readonly corrected: number;

  constructor(
    readonly said: Utterance,
    private readonly read: SlotReader,
  ) {
    this.words = said.words.map(({ word }) => word);
    this.joined = ` ${this.words.join(" ")} `;
    this.corrected = correctedFrom(said);
  }

  /** All values of a kind, in order; where some overlap, the longest. */
  all<T>(kind: string, fits: (found: FoundValue<T>) => boolean = () => true): FoundValue<T>[] {
    const list: FoundValue<T>[] = [];
    for (let at = 0; at < this.words.length; ) {
      const here = this.read(kind, at)
        .map(({ value, next }) => ({ value: value as T, at, next }))
        .filter(fits)
        .sort((a, b) => b.next - a.next)[0];
      if (here) list.push(here);
      at = here ? Math.max(here.next, at + 1) : at + 1;
    }
    return list;
  }

  /** The one of several values that counts: the first after a correction, else the first. */
  chosen<T>(list: readonly FoundValue<T>[]): FoundValue<T> | undefined {
    return list.find(({ at }) => at >= this.corrected) ?? list[0];
  }

  one<T>(kind: string, fits?: (found: FoundValue<T>) => boolean): FoundValue<T> | undefined {
    return this.chosen(this.all<T>(kind, fits));
  }

  has(...phrases: string[]): boolean {
    return phrases.some((phrase) => this.joined.includes(` ${phrase} `));
  }

  word(at: number): string {
    return this.words[at] ?? "";
  }
}
