/** Alarms that nobody has answered: when each is said again, and which are said together. */
import type { Want } from "./want.ts";

/** First repeat after this, each later one after twice as long, up to the last. */
const FIRST_REPEAT_MS = 30_000;
const LONGEST_REPEAT_MS = 300_000;
/** One that would be said within this part of its pause anyway is said with the others. */
const GATHERED_PART = 1 / 3;

type Unanswered = { nextAt: number; waitMs: number };

export class Alarms {
  private readonly known = new Map<string, Unanswered>();

  /** Takes up an alarm that is said now. */
  spoke(key: string, now: number, broken = false): void {
    const before = this.known.get(key);
    const longer = before && !broken ? before.waitMs * 2 : FIRST_REPEAT_MS;
    const waitMs = Math.min(longer, LONGEST_REPEAT_MS);
    this.known.set(key, { nextAt: now + waitMs, waitMs });
  }

  /** Whether an alarm was said before. */
  has(key = ""): boolean {
    return this.known.has(key);
  }

  /** When the next of what rings is to be said; what rings unheard at once; else Infinity. */
  nextAt(ringing: readonly string[]): number {
    return Math.min(
      ...ringing.map((key) => this.known.get(key)?.nextAt ?? Number.NEGATIVE_INFINITY),
      Number.POSITIVE_INFINITY,
    );
  }

  /** What is to be said now of all that rings; what fell silent is forgotten. */
  due<W extends Pick<Want, "key">>(ringing: readonly W[], now: number): W[] {
    const live = new Set(ringing.map(({ key }) => key));
    for (const key of this.known.keys()) if (!live.has(key)) this.known.delete(key);
    const left = ({ key = "" }: W, part: number) => {
      const one = this.known.get(key);
      return one ? one.nextAt - now - one.waitMs * part : Number.NEGATIVE_INFINITY;
    };
    const any = ringing.some((want) => left(want, 0) <= 0);
    return any ? ringing.filter((want) => left(want, GATHERED_PART) <= 0) : [];
  }
}
