/** One line for each lot: yield, jars, departures, hands, verdict; and varieties rolled up. */
import { batchDeviations } from "../kitchen/deviations.ts";
import { lotCounts } from "../kitchen/jars/canner-room.ts";
import { type LotOf, readyOf } from "../kitchen/jars/lots.ts";
import { wallFor } from "../kitchen/places.ts";
import type { State } from "../kitchen/state.ts";
import { JAR_CUPS } from "../recipe/jar-volume.ts";
import type { JarSize } from "../recipe/recipe.ts";
import { wilsonInterval } from "../reckon/statistics/preference.ts";
import { dateOf } from "./dates.ts";
import { type HandsOn, handsOn } from "./hands-needed.ts";
import { openedOf } from "./shelf/pantry.ts";
import { judgeBatch } from "./verdict.ts";

/** Seals that were checked, and how many held, whatever became of the jar since. */
type Checked = { of: number; sealed: number };

export type LotLine = {
  batch: string;
  recipe: string;
  title: string;
  /** Its variety, or its batch where it has none. */
  variety: string;
  named: boolean;
  /** Given up, alone or with its batch. */
  givenUp: boolean;
  /** Lots of its batch, itself among them. */
  sharing: number;
  begun: string;
  weightLb: number | null;
  jar: JarSize | null;
  jars: number;
  sealed: number;
  failed: number;
  spoiled: number;
  /** Opened as food; spoiled ones are not among them. */
  opened: number;
  checked: Checked;
  jarsPerLb: number | null;
  /** Pints filled for each pound, whatever the size of the jars; null where either is unknown. */
  pintsPerLb: number | null;
  deviations: string[];
  handsOnMinutes: number;
  verdict: string;
};

/** Lots of one variety of a recipe in one size of jars, over all its batches. */
export type VarietyLine = Pick<LotLine, "recipe" | "title" | "jar"> &
  Pick<LotLine, "jars" | "opened" | "spoiled" | "handsOnMinutes" | "jarsPerLb" | "pintsPerLb"> & {
    /** Null for the lots that have none. */
    variety: string | null;
    lots: number;
    /** Of the lots that were weighed. */
    weightLb: number | null;
    /** Jars that sealed of those checked, and the 95 % interval of the rate; null without any. */
    seal: (Checked & { interval: [number, number] }) | null;
    verdicts: Record<string, number>;
  };

/** What the list of lots shows of each. */
export type ListedLot = Pick<LotLine, "batch" | "title" | "begun" | "verdict"> & {
  variety: string | null;
  state: string;
  /** Null where there was no seal to check. */
  sealed: number | null;
};

/** One lot for the list, of the day it was added on. */
export function listedLot(state: State, { batch, lot }: LotOf, now: number): ListedLot {
  const deviations = batchDeviations(state, batch, now, lot);
  return {
    batch: lot.id,
    title: batch.recipe.title,
    variety: lot.variety,
    begun: dateOf(wallFor(state, batch.id, lot.addedAt), state.zone),
    state: lot.abandonedAt === undefined ? batch.state : "abandoned",
    sealed: batch.option ? lotCounts(state, batch, lot).sealed : null,
    verdict: judgeBatch(state, batch, deviations, lot).verdict,
  };
}

/** A lot is identified by its variety, or by its id where it has none. */
export function lineName({ lot }: LotOf): string {
  return lot.variety ?? `batch ${lot.id}`;
}

export function lotLines(state: State, lots: readonly LotOf[], now: number): LotLine[] {
  const hands = handsOn(state);
  return lots.map((one) => lotLine(state, one, now, hands));
}

function lotLine(state: State, one: LotOf, now: number, hands: HandsOn): LotLine {
  const { batch, lot } = one;
  const deviations = batchDeviations(state, batch, now, lot);
  const counts = lotCounts(state, batch, lot);
  const jars = batch.option ? counts.processed : readyOf(lot).length;
  const { weightLb } = lot;
  const checks = lot.jars.flatMap(({ seal }) => seal ?? []);
  return {
    batch: lot.id,
    recipe: batch.recipe.id,
    title: batch.recipe.title,
    variety: lineName(one),
    named: lot.variety !== null,
    givenUp: lot.abandonedAt !== undefined || batch.state === "abandoned",
    sharing: batch.lots.length,
    begun: dateOf(wallFor(state, batch.id, batch.begunAt), state.zone),
    weightLb,
    jar: batch.jar,
    jars,
    sealed: counts.sealed,
    failed: counts.failed,
    spoiled: counts.spoiled,
    opened: openedOf(lot),
    checked: { of: checks.length, sealed: checks.filter((seal) => seal === "sealed").length },
    ...yields(jars, batch.jar, weightLb),
    deviations: deviations.map((one) => one.code),
    handsOnMinutes: Math.round(hands(lot.id)),
    verdict: judgeBatch(state, batch, deviations, lot).verdict,
  };
}

function yields(jars: number, size: JarSize | null, weightLb: number | null) {
  if (!weightLb || !size) return { jarsPerLb: null, pintsPerLb: null };
  const hundredths = (value: number) => Math.round(value * 100) / 100;
  const pints = (jars * JAR_CUPS[size]) / JAR_CUPS.pint;
  return { jarsPerLb: hundredths(jars / weightLb), pintsPerLb: hundredths(pints / weightLb) };
}

/**
 * Rolls lots up by recipe, variety and size of jar, in the order in which each came first; those
 * given up are left out.
 */
export function varietiesOf(lines: readonly LotLine[]): VarietyLine[] {
  const groups = new Map<string, LotLine[]>();
  for (const line of lines.filter(({ givenUp }) => !givenUp)) {
    const key = [line.recipe, line.named ? line.variety : "", line.jar].join("\n");
    groups.set(key, [...(groups.get(key) ?? []), line]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    return first ? [rolledUp(first, group)] : [];
  });
}

function rolledUp(first: LotLine, group: readonly LotLine[]): VarietyLine {
  const { recipe, title, jar } = first;
  const total = (of: (line: LotLine) => number) => group.reduce((sum, one) => sum + of(one), 0);
  const weighed = group.filter(({ weightLb }) => weightLb !== null);
  const pounds = weighed.reduce((sum, one) => sum + (one.weightLb ?? 0), 0);
  const weightLb = weighed.length > 0 ? Math.round(pounds * 10) / 10 : null;
  const ofWeighed = weighed.reduce((sum, one) => sum + one.jars, 0);
  const of = total(({ checked }) => checked.of);
  const sealed = total(({ checked }) => checked.sealed);
  const verdicts: Record<string, number> = {};
  for (const { verdict } of group) verdicts[verdict] = (verdicts[verdict] ?? 0) + 1;
  return {
    ...{ recipe, title, jar, variety: first.named ? first.variety : null },
    lots: group.length,
    weightLb,
    jars: total((line) => line.jars),
    opened: total((line) => line.opened),
    spoiled: total((line) => line.spoiled),
    ...yields(ofWeighed, jar, pounds),
    seal: of > 0 ? { of, sealed, interval: wilsonInterval(sealed, of) } : null,
    handsOnMinutes: total((line) => line.handsOnMinutes),
    verdicts,
  };
}

/** "23 of 24 sealed: 96 %, between 80 and 99 %"; empty where no seal was checked. */
export function sealWords({ seal }: VarietyLine): string {
  if (!seal) return "";
  const percent = (share: number) => Math.round(share * 100);
  const [low, high] = seal.interval.map(percent);
  const rate = percent(seal.sealed / seal.of);
  return `${seal.sealed} of ${seal.of} sealed: ${rate} %, between ${low} and ${high} %`;
}
