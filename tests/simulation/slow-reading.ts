/**
 * A second reading of the journal, written from the design's words and not from the program: it
 * paints what the log says onto a line of seconds, one load at a time, and counts. It shares no
 * code with the program, is slow, and is meant to be obvious.
 */

export type Row = Record<string, unknown> & { type: string; t: number; w: number; cmd: string };

const VENT_SECONDS = 600;
/** Gaps that nobody vouched for, adding up to at most this in one process, ask nothing. */
const ALLOWED_SECONDS = 30;
const READ_SECONDS = 5 * 60 + 30;

/** Journal files' texts, oldest first, as rows; a later file's line counts where both have it. */
export function rowsOf(texts: readonly string[]): Row[] {
  const byNumber = new Map<number, Row>();
  for (const text of texts) {
    const seen = new Set<number>();
    for (const line of text.split("\n")) {
      let row: Record<string, unknown>;
      try {
        row = JSON.parse(line);
      } catch {
        continue;
      }
      const n = row.n as number;
      if (typeof n !== "number" || typeof row.type !== "string" || seen.has(n)) continue;
      seen.add(n);
      byNumber.set(n, row as Row);
    }
  }
  return [...byNumber.entries()].sort((a, b) => a[0] - b[0]).map(([, row]) => row);
}

/** Rows as the corrections leave them: withdrawn ones gone, amended ones at their new time. */
export function corrected(rows: readonly Row[]): Row[] {
  const gone = new Set(rows.filter((one) => one.type === "withdrawn").map((one) => one.target));
  const moved = new Map<unknown, number>();
  for (const row of rows) {
    if (row.type === "amended" && !gone.has(row.cmd)) moved.set(row.target, row.t);
  }
  return rows
    .filter((row) => !gone.has(row.cmd) && row.type !== "amended" && row.type !== "withdrawn")
    .map((row) => ({ ...row, t: moved.get(row.cmd) ?? row.t }));
}

/** One condition of one load, second by second. */
class Timeline {
  private readonly holds: Uint8Array;
  private readonly from: number;
  private readonly gaps: { from: number; to: number; seconds: number; held?: boolean }[] = [];

  constructor(from: number, to: number) {
    this.from = from;
    this.holds = new Uint8Array(Math.ceil((to - from) / 1000) + 1);
  }

  private second(t: number): number {
    return Math.min(this.holds.length, Math.max(0, Math.round((t - this.from) / 1000)));
  }

  at(t: number): boolean {
    return this.holds[Math.min(this.holds.length - 1, this.second(t))] === 1;
  }

  fromOn(t: number, holds: boolean): void {
    this.holds.fill(holds ? 1 : 0, this.second(t));
  }

  between(from: number, to: number, holds: boolean): void {
    this.holds.fill(holds ? 1 : 0, this.second(from), this.second(to));
  }

  /** A time nobody watched; of no matter once the condition had held for long enough. */
  gap(from: number, to: number, neededSeconds: number): void {
    const before = this.holds.slice();
    this.strikeUnanswered();
    const full = this.longestSeconds(from) >= neededSeconds;
    this.holds.set(before);
    if (full) return;
    const [a, b] = [this.second(from), this.second(to)];
    const seconds = this.holds.subarray(a, b).reduce((sum, one) => sum + one, 0);
    if (seconds > 0) this.gaps.push({ from, to, seconds });
  }

  unansweredGaps(): { from: number; to: number; held?: boolean }[] {
    return this.gaps.filter((gap) => gap.held === undefined);
  }

  vouched(held: boolean): void {
    const open = this.unansweredGaps();
    // Seconds that ask nothing were not what the answer was about.
    const asked = this.gaps.filter((gap) => gap.held !== true);
    if (asked.reduce((sum, gap) => sum + gap.seconds, 0) <= ALLOWED_SECONDS) return;
    for (const gap of open) gap.held = held;
    if (!held && open[0]) this.fromOn(open[0].from, false);
  }

  /** Unwatched and nobody's word for it: those seconds do not count. */
  strikeUnanswered(): void {
    const open = this.gaps.filter((gap) => gap.held !== true);
    const all = open.reduce((sum, gap) => sum + gap.seconds, 0);
    if (all > ALLOWED_SECONDS) for (const gap of open) this.between(gap.from, gap.to, false);
  }

  longestSeconds(until = Number.POSITIVE_INFINITY): number {
    let longest = 0;
    let run = 0;
    const end = this.second(until);
    for (let i = 0; i < end; i++) {
      run = this.holds[i] === 1 ? run + 1 : 0;
      if (run > longest) longest = run;
    }
    return longest;
  }
}

/** Water boils at this temperature there: standard air and Antoine's equation, degrees F. */
function boilsAtF(altitudeFt: number): number {
  const mmHg = 760 * (1 - 2.25577e-5 * altitudeFt * 0.3048) ** 5.25588;
  const celsius = 1730.63 / (8.07131 - Math.log10(mmHg)) - 233.426;
  return celsius * 1.8 + 32;
}

type Terms = {
  method: string;
  minutes: number;
  pressurePsi: number | null;
  altitudeFt: number;
};

export type SlowLoad = {
  id: string;
  batches: string[];
  neededSeconds: number;
  heldSeconds: number;
  ventSeconds: number;
  out: boolean;
  /** All its jars went another way: again as a hot pack, or to the refrigerator, freezer or bin. */
  gone: boolean;
  endAnswered: boolean;
  /** When the process was first full by the log, kitchen time; undefined where it never was. */
  full: boolean;
};

/** Everything the log says of one load. */
export function slowLoad(rows: readonly Row[], id: string): SlowLoad | undefined {
  const mine = rows.filter((row) => row.load === id || row.owner === id);
  const loaded = mine.find((row) => row.type === "loaded");
  if (!loaded) return undefined;
  const out = mine.find((row) => row.type === "unloaded")?.t;
  const reader = new LoadReader(id, loaded, out ?? rows.at(-1)?.w ?? loaded.t);
  for (const row of rows) reader.take(row);
  return reader.result();
}

class LoadReader {
  private readonly id: string;
  private readonly parts: { batch: string; jars: number }[];
  private readonly process: Timeline;
  private readonly vent: Timeline;
  private terms: Terms | undefined;
  private high = 0;
  private covered = false;
  private unconfirmed: number | undefined;
  private column = false;
  private hot = false;
  private lastRead: number | undefined;
  private began = false;
  private out: number | undefined;
  private gone = false;
  private answer = false;

  constructor(id: string, loaded: Row, end: number) {
    this.id = id;
    this.parts = loaded.parts as { batch: string; jars: number }[];
    this.process = new Timeline(loaded.t, end);
    this.vent = new Timeline(loaded.t, end);
  }

  take(row: Row): void {
    if (row.type === "gap" && this.out === undefined) {
      const minutes = this.terms?.minutes ?? Number.POSITIVE_INFINITY;
      this.process.gap(row.from as number, row.to as number, minutes * 60);
      this.vent.gap(row.from as number, row.to as number, VENT_SECONDS);
    }
    if (row.load !== this.id && row.owner !== this.id) return;
    if (row.type === "load-opened" || row.type === "load-terms") {
      if (this.began && row.raised !== true) return;
      const before = this.terms?.pressurePsi ?? 0;
      this.terms = row.terms as Terms;
      if (this.began) {
        // More time is asked of the same boil; under too low a pressure none of it counted.
        this.answer = false;
        const more = (this.terms.pressurePsi ?? 0) > before;
        if (more) this.process.between(Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, false);
        return;
      }
      const gauge = row.gauge as { kind: string; readsHighPsi?: number } | null;
      this.high = gauge?.kind === "dial" ? Math.max(0, gauge.readsHighPsi ?? 0) : 0;
    } else if (row.type === "vouched") {
      this.readInGaps(row.held === true);
      this.process.vouched(row.held === true);
      this.vent.vouched(row.held === true);
    } else if (row.type === "end-answer") this.answer = row.yes === true;
    else if (row.type === "unloaded" && this.out === undefined) this.takenOut(row.t);
    else if (row.type === "disposed") {
      const jars = this.parts.reduce((sum, part) => sum + part.jars, 0);
      const all = row.count === null || (row.count as number) >= jars;
      if (row.code !== "seal-failed" && all) this.gone = true;
    } else if (this.out === undefined) this.sign(row);
  }

  private takenOut(t: number): void {
    this.out = t;
    this.process.fromOn(t, false);
    this.vent.fromOn(t, false);
  }

  /** Somebody's word for a gap stands for the readings that were missing in it. */
  private readInGaps(held: boolean): void {
    for (const gap of this.process.unansweredGaps()) {
      if (!held || this.lastRead === undefined) continue;
      if (gap.from - this.lastRead <= READ_SECONDS * 1000) {
        this.lastRead = Math.max(this.lastRead, gap.to);
      }
    }
  }

  private on(t: number): void {
    this.began = true;
    this.process.fromOn(t, true);
  }

  private off(t: number): void {
    this.process.fromOn(t, false);
    this.column = false;
    this.hot = false;
  }

  private sign(row: Row): void {
    const method = this.terms?.method;
    if (method === "boiling-water") this.boilingWater(row);
    else if (method === "pressure") this.pressure(row);
    else if (method === "steam") this.steam(row);
    else if (method === "low-temperature") this.lowTemperature(row);
  }

  private boilingWater(row: Row): void {
    if (row.type === "boil" && !this.process.at(row.t)) {
      if (row.covered !== null) this.covered = row.covered === true;
      if (this.covered) this.on(row.t);
      else if (row.covered === null) this.unconfirmed = row.t;
    } else if (row.type === "boil-lost") {
      if (this.unconfirmed !== undefined && !this.process.at(row.t)) this.unconfirmed = undefined;
      else this.off(row.t);
      if (row.uncovered === true) this.covered = false;
    } else if (row.type === "cover") {
      this.covered = row.covered === true;
      if (!this.covered) this.off(row.t);
      else if (this.unconfirmed !== undefined) this.on(this.unconfirmed);
      this.unconfirmed = undefined;
    }
  }

  private pressure(row: Row): void {
    const vented = () => this.vent.longestSeconds(row.w) >= VENT_SECONDS - 1;
    if (row.type === "steam") this.vent.fromOn(row.t, true);
    else if (row.type === "steam-lost") this.vent.fromOn(row.t, false);
    else if (row.type === "pressure-lost") this.off(row.t);
    else if (row.type === "rocking" && vented() && !this.process.at(row.t)) this.on(row.t);
    else if (row.type === "pressure") {
      const target = (this.terms?.pressurePsi ?? Number.POSITIVE_INFINITY) + this.high;
      if ((row.psi as number) < target) this.off(row.t);
      else if (vented() && !this.process.at(row.t)) this.on(row.t);
    }
  }

  private steam(row: Row): void {
    if (row.type === "steam") this.column = true;
    else if (row.type === "temperature") {
      const enough = boilsAtF(this.terms?.altitudeFt ?? 0) - 1.4;
      this.hot = (row.temperatureF as number) >= enough;
      if (!this.hot) this.off(row.t);
    } else if (["steam-lost", "pressure-lost", "boil-lost"].includes(row.type)) this.off(row.t);
    if (this.column && this.hot && !this.process.at(row.t)) this.on(row.t);
  }

  private lowTemperature(row: Row): void {
    if (row.type !== "temperature") {
      if (row.type === "boil-lost") this.off(row.t);
      return;
    }
    if ((row.temperatureF as number) < 180) {
      this.off(row.t);
      this.lastRead = undefined;
      return;
    }
    const late = this.lastRead !== undefined && row.t - this.lastRead > READ_SECONDS * 1000;
    if (!this.process.at(row.t)) this.on(row.t);
    else if (late) this.process.gap(this.lastRead as number, row.t, Number.POSITIVE_INFINITY);
    this.lastRead = row.t;
  }

  result(): SlowLoad {
    this.process.strikeUnanswered();
    this.vent.strikeUnanswered();
    // Beyond its last reading nothing is known of a bath kept by a thermometer.
    const until = this.terms?.method === "low-temperature" ? this.lastRead : undefined;
    const neededSeconds = (this.terms?.minutes ?? Number.POSITIVE_INFINITY) * 60;
    const heldSeconds = this.process.longestSeconds(until);
    return {
      id: this.id,
      batches: this.parts.map((part) => part.batch),
      neededSeconds,
      heldSeconds,
      ventSeconds: this.vent.longestSeconds(),
      out: this.out !== undefined,
      gone: this.gone,
      endAnswered: this.answer,
      full: heldSeconds >= neededSeconds - 1,
    };
  }
}

type Factor = {
  id: string;
  onlyFor?: { methods?: string[]; packs?: string[]; processUnderMinutes?: number };
};

/**
 * Why the record of a batch, or of one lot of it, does not make its process as tested; empty where
 * nothing speaks against.
 */
export function slowObjections(allRows: readonly Row[], batch: string, lot = batch): string[] {
  const rows = corrected(allRows);
  const begun = rows.find((row) => row.type === "batch-begun" && row.batch === batch);
  if (!begun) return ["it never began"];
  const objections: string[] = [];
  const loads = new Set(
    rows
      .filter((row) => row.type === "loaded")
      .filter((row) => (row.parts as { batch: string }[]).some((part) => part.batch === lot))
      .map((row) => row.load as string),
  );
  if (loads.size === 0) objections.push("no jars went into a canner");
  let method = "";
  let minutes = Number.POSITIVE_INFINITY;
  for (const id of loads) {
    const load = slowLoad(rows, id);
    const opened = rows.findLast(
      (row) => (row.type === "load-opened" || row.type === "load-terms") && row.load === id,
    );
    const terms = opened?.terms as Terms | undefined;
    if (terms) {
      method = terms.method;
      minutes = Math.min(minutes, terms.minutes);
    }
    if (load && !load.gone) objections.push(...loadObjections(load, method));
  }
  objections.push(...factorObjections(rows, begun, { batch, method, minutes }));
  if (rows.some((row) => row.type === "ingredient-changed" && row.batch === batch)) {
    objections.push("an ingredient was changed");
  }
  return objections;
}

function loadObjections(load: SlowLoad, method: string): string[] {
  const objections: string[] = [];
  if (!load.out) objections.push(`${load.id} is still in the canner`);
  if (!load.full) {
    objections.push(`${load.id} held ${load.heldSeconds} of ${load.neededSeconds} s`);
  }
  if (method === "pressure" && load.ventSeconds < VENT_SECONDS - 1) {
    objections.push(`${load.id} vented ${load.ventSeconds} s`);
  }
  if ((method === "boiling-water" || method === "steam") && !load.endAnswered) {
    objections.push(`${load.id}: nobody answered for its end`);
  }
  return objections;
}

function factorObjections(
  rows: readonly Row[],
  begun: Row,
  about: { batch: string; method: string; minutes: number },
): string[] {
  const recipe = begun.recipe as { critical: Factor[] };
  return recipe.critical.flatMap(({ id, onlyFor }) => {
    if (onlyFor?.methods && !onlyFor.methods.includes(about.method)) return [];
    if (onlyFor?.packs && !onlyFor.packs.includes(String(begun.pack))) return [];
    const under = onlyFor?.processUnderMinutes;
    if (under !== undefined && about.minutes >= under) return [];
    const said = rows.findLast(
      (row) => row.type === "confirmed" && row.batch === about.batch && row.factor === id,
    );
    return said?.held === true ? [] : [`${id} was not confirmed`];
  });
}
