import type { DropReason, SpeechRank, SpokenSentence } from "../../ports/voice.ts";

/** The most sentences that may wait. */
export const QUEUE_MAX = 32;

const ORDER: Record<SpeechRank, number> = { alarm: 0, answer: 1, question: 2, prompt: 3 };

export type Dropped = { utterance: SpokenSentence; why: DropReason };

/** True when `a` goes before `b`, whatever came first. */
function outranks(a: SpokenSentence, b: SpokenSentence): boolean {
  return ORDER[a.rank] < ORDER[b.rank];
}

/** Waiting sentences, in the order they will be said: by rank, then in order of arrival. */
export class SpeechQueue {
  private waiting: SpokenSentence[] = [];
  /** In which order sentences came, however often they were cut short since. */
  private readonly came = new WeakMap<SpokenSentence, number>();
  private count = 0;

  get length(): number {
    return this.waiting.length;
  }

  /**
   * Adds a sentence after its equals, but for those that are to come after it (before all of them
   * when it was cut short).
   */
  add(
    utterance: SpokenSentence,
    again = false,
    comesAfter: (other: SpokenSentence) => boolean = () => false,
  ): Dropped[] {
    const { key } = utterance;
    if (!this.came.has(utterance)) this.came.set(utterance, this.count++);
    const newer = again && key !== undefined && this.waiting.some((other) => other.key === key);
    if (newer) return [{ utterance, why: "replaced" }];
    const dropped = key === undefined ? [] : this.remove(key, "replaced");
    const at = this.waiting.findIndex((other) =>
      again ? !outranks(other, utterance) : outranks(utterance, other) || comesAfter(other),
    );
    this.waiting.splice(at < 0 ? this.waiting.length : at, 0, utterance);
    if (this.waiting.length > QUEUE_MAX) dropped.push(this.dropOldestOfLeast());
    return dropped;
  }

  remove(key: string, why: DropReason): Dropped[] {
    return this.filter((utterance) => (utterance.key === key ? why : undefined));
  }

  /** Removes every sentence for which a reason is returned. */
  filter(reason: (utterance: SpokenSentence) => DropReason | undefined): Dropped[] {
    const dropped: Dropped[] = [];
    this.waiting = this.waiting.filter((utterance) => {
      const why = reason(utterance);
      if (why) dropped.push({ utterance, why });
      return !why;
    });
    return dropped;
  }

  next(): SpokenSentence | undefined {
    return this.waiting.shift();
  }

  private dropOldestOfLeast(): Dropped {
    const least = this.waiting.at(-1)?.rank;
    const since = (one: SpokenSentence) => this.came.get(one) ?? 0;
    const ofLeast = this.waiting.filter(({ rank }) => rank === least);
    const oldest = ofLeast.reduce((first, one) => (since(one) < since(first) ? one : first));
    this.waiting.splice(this.waiting.indexOf(oldest), 1);
    return { utterance: oldest, why: "queue-full" };
  }
}
