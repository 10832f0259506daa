/** Timers and jars by the reports alone: part of the second, slow reading of the journal. */
import { corrected, type Row } from "./slow-reading.ts";

export type SlowTimer = {
  id: string;
  endsAt: number;
  cancelled: boolean;
  rang: number;
  /** Minutes that were given to it and taken back: it may have rung at their end as well. */
  takenBack: boolean;
};

/** Every free timer of the log: when it ends, and how often that was written down. */
export function slowTimers(allRows: readonly Row[]): SlowTimer[] {
  const rows = corrected(allRows);
  const timers = new Map<string, SlowTimer>();
  for (const row of rows) {
    const timer = timers.get(String(row.timer ?? row.key));
    if (row.type === "timer-set") {
      const endsAt = row.t + (row.minutes as number) * 60_000;
      const id = String(row.timer);
      const takenBack = allRows.some((one) => {
        return one.type === "timer-added" && one.timer === id && !rows.some(({ n }) => n === one.n);
      });
      timers.set(id, { id, endsAt, cancelled: false, rang: 0, takenBack });
    } else if (!timer) continue;
    else if (row.type === "timer-added" && !timer.cancelled) {
      const from = timer.rang > 0 ? row.t : timer.endsAt;
      timer.endsAt = from + (row.minutes as number) * 60_000;
      timer.rang = 0;
    } else if (row.type === "timer-cancelled") timer.cancelled ||= timer.rang === 0;
    else if (row.type === "due") timer.rang += 1;
  }
  return [...timers.values()];
}

/** How late each timer rang that nobody corrected, less the time that nobody watched, ms. */
export function slowLateness(rows: readonly Row[]): { id: string; lateMs: number }[] {
  const targets = rows.filter((row) => row.type === "amended" || row.type === "withdrawn");
  const corrected = new Set(targets.map((row) => row.target));
  const touched = new Set(rows.filter((row) => corrected.has(row.cmd)).map((row) => row.timer));
  const endsAt = new Map<string, number>();
  const rang: { id: string; lateMs: number }[] = [];
  for (const row of rows) {
    const id = String(row.timer ?? row.key);
    const ends = endsAt.get(id);
    if (row.type === "timer-set") endsAt.set(id, row.t + (row.minutes as number) * 60_000);
    else if (row.type === "timer-added" || touched.has(id)) endsAt.delete(id);
    else if (row.type === "due" && ends !== undefined) {
      rang.push({ id, lateMs: row.w - ends - unwatchedMs(rows, ends, row.w) });
    }
  }
  return rang;
}

/** How much of a time the log says that nobody watched. */
function unwatchedMs(rows: readonly Row[], from: number, to: number): number {
  return rows
    .filter((row) => row.type === "gap")
    .reduce((sum, row) => {
      const within = Math.min(row.to as number, to) - Math.max(row.from as number, from);
      return sum + Math.max(0, within);
    }, 0);
}

export type SlowJars = {
  filled: number;
  loaded: number;
  setAside: number;
  brokenBefore: number;
  /** Broken in the canner or after it. */
  brokenAfter: number;
  failed: number;
};

/** A batch's jars, by the reports alone. */
export function slowJars(allRows: readonly Row[], batch: string): SlowJars {
  const jars = { filled: 0, loaded: 0, setAside: 0, brokenBefore: 0, brokenAfter: 0, failed: 0 };
  let ready = 0;
  for (const row of corrected(allRows)) {
    if (row.type === "loaded") {
      for (const part of row.parts as { batch: string; jars: number }[]) {
        if (part.batch !== batch) continue;
        jars.loaded += part.jars;
        ready = Math.max(0, ready - part.jars);
      }
    }
    if (row.batch !== batch) continue;
    if (row.type === "jars-filled") ready = row.count as number;
    else if (row.type === "set-aside") {
      jars.setAside += row.count as number;
      // A part-filled last jar is set aside without having been counted as filled.
      ready = Math.max(0, ready - (row.count as number));
    } else if (row.type === "jar-broken" && (ready > 0 || jars.loaded === 0)) {
      jars.brokenBefore += row.count as number;
      ready = Math.max(0, ready - (row.count as number));
    } else if (row.type === "jar-broken") jars.brokenAfter += row.count as number;
    else if (row.type === "seal-failed") jars.failed += row.count as number;
  }
  jars.filled = jars.loaded + jars.setAside + jars.brokenBefore + ready;
  return jars;
}
