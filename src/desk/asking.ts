/** When a question is asked: what can wait is not asked at night, nor while hands are busy. */

/** A question, with what it can wait for. */
export type Askable = { text: string; waits: { morning: boolean; hands: boolean } };

export type AskMoment = {
  /** Kitchen time, ms. */
  now: number;
  /** It is night and nobody is up: kitchen time until when. */
  asleepUntil?: number | undefined;
  /** Hands are in the jars: kitchen time by which they are free. */
  handsFreeAt?: number | undefined;
};

/** Until when a question waits, kitchen time, and why; undefined where it is asked now. */
export function waitsTill(
  { waits }: Askable,
  { asleepUntil, handsFreeAt }: AskMoment,
): { till: number; why: string } | undefined {
  if (waits.morning && asleepUntil !== undefined) return { till: asleepUntil, why: "night" };
  if (waits.hands && handsFreeAt !== undefined) return { till: handsFreeAt, why: "hands busy" };
  return undefined;
}
