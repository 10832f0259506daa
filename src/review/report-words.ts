/** Times, spans and numbers as reports write them. */
import { localIso } from "../kitchen/time.ts";
import type { BatchLog } from "./batch-log.ts";
import type { Tasting } from "./shelf/tasting.ts";

/** `14:03` of a wall instant. */
export function clockTime(wallMs: number, zone: string): string {
  return localIso(wallMs, zone).slice(11, 16);
}

/** `2027-08-14 14:03` of an ISO text; empty for none. */
export function dateAndTime(iso: string | null): string {
  return iso === null ? "" : `${iso.slice(0, 10)} ${iso.slice(11, 16)}`;
}

/** Minutes in words: `12.5 min`, `3 h 20 min`, `21 days`. */
export function spanOf(minutes: number): string {
  if (minutes < 0.05) return "at once";
  if (minutes < 120) return `${Math.round(minutes * 10) / 10} min`;
  if (minutes < 48 * 60) {
    const rest = Math.round(minutes % 60);
    return `${Math.floor(minutes / 60)} h${rest > 0 ? ` ${rest} min` : ""}`;
  }
  return `${Math.round(minutes / 1440)} days`;
}

/** A planned window: one span, or from one to another. */
export function windowOf({ minMinutes, maxMinutes }: { minMinutes: number; maxMinutes: number }) {
  return minMinutes === maxMinutes
    ? spanOf(minMinutes)
    : `${spanOf(minMinutes)} to ${spanOf(maxMinutes)}`;
}

/** `1 jar`, `2 jars`. */
export function counted(count: number, word: string): string {
  const many = word.endsWith("ch") ? `${word}es` : `${word}s`;
  return `${count} ${count === 1 ? word : many}`;
}

/** Scores as "crunch 4, flavor 5 (anna)". */
export function tastingWords({ scores, taster, words }: Tasting): string {
  const scored = Object.entries(scores).map(([name, score]) => `${name} ${score}`);
  const given = words === null ? scored : [...scored, words];
  return `${given.join(", ")}${taster === null ? "" : ` (${taster})`}`;
}

/** A preference as "liked better than 270814-2 (anna)". */
export function likedWords({ over, taster }: BatchLog["preferred"][number]): string {
  return `liked better${over === null ? "" : ` than ${over}`}${taster ? ` (${taster})` : ""}`;
}

/** Jars opened as food; those found spoiled are not among them. */
export function openedCount({ opened }: BatchLog): number {
  return opened.reduce((sum, { count }) => sum + count, 0);
}
