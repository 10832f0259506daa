/** What is in store, where, until when, what to eat first, and what was eaten when. */
import { lotTrouble } from "../../kitchen/jars/canner-room.ts";
import type { BatchLot } from "../../kitchen/jars/jar.ts";
import { type LotOf, lotsIn, sum } from "../../kitchen/jars/lots.ts";
import { wallFor } from "../../kitchen/places.ts";
import { type Batch, type State, wallOf } from "../../kitchen/state.ts";
import { addDays, dateOf, daysBetween } from "../dates.ts";
import { type JarGroup, shelfJars } from "./shelf-jars.ts";
import { KEEPING, type Keep } from "./shelf-life.ts";

export type PantryLine = {
  batch: string;
  recipe: string;
  title: string;
  variety: string | null;
  season: number;
  jar: string | null;
  keep: Keep;
  putUp: string;
  /** Jars of this line at the beginning, those opened since, and those left. */
  jars: number;
  opened: number;
  left: number;
  place: string;
  /** Best by on the shelf and in the freezer; use by in the refrigerator. */
  by: string;
  daysLeft: number;
  how: string;
  source: string;
  why: string;
};

export type Opening = {
  at: string;
  batch: string;
  title: string;
  variety: string | null;
  recipe: string;
  season: number;
  count: number;
  spoiled: boolean;
};

export type Pantry = {
  on: string;
  lines: PantryLine[];
  /** Batches of the lines to eat first, without those past a use-by, which nobody should eat. */
  eatFirst: string[];
  throwOut: string[];
  /** Sealed jars of batches that are not finished. */
  waiting: { batch: string; jars: number }[];
  opened: Opening[];
  /** Where counts do not add up, one sentence each. */
  troubles: string[];
};

/** What the batches add, in turn. */
type Contents = Pick<Pantry, "on" | "lines" | "waiting" | "troubles">;

/** Unsealed and unlisted jars are left out this long after their use-by: nobody keeps them. */
const FORGET_COLD_DAYS = 14;

/**
 * Batches of real sessions; what a rehearsal made does not exist. A folder with nothing but
 * rehearsals shows those, so that what comes afterwards can be practiced too.
 */
export function shownBatches(state: State): Batch[] {
  const all = Object.values(state.batches);
  return holdsRehearsalsAlone(state) ? all : all.filter((batch) => !batch.rehearsal);
}

/** True where batches were begun, all of them in rehearsals. */
export function holdsRehearsalsAlone(state: State): boolean {
  const all = Object.values(state.batches);
  return all.length > 0 && all.every((batch) => batch.rehearsal);
}

/** The pantry as of `now` (kitchen time). Lines to be eaten first come first. */
export function pantryOf(state: State, now: number): Pantry {
  const on = dateOf(wallOf(state, now), state.zone);
  const found: Contents = { on, lines: [], waiting: [], troubles: [] };
  for (const one of shownBatches(state).flatMap(lotsIn)) addLot(found, state, one, now);
  found.lines.sort((a, b) => a.daysLeft - b.daysLeft || (a.batch < b.batch ? -1 : 1));
  return withAdvice({ ...found, opened: openings(state) });
}

/** A pantry with advice on what to eat first and what to throw out. */
export function withAdvice(found: Omit<Pantry, "eatFirst" | "throwOut">): Pantry {
  const batches = (lines: PantryLine[]) => lines.map((line) => line.batch);
  const { lines } = found;
  return { ...found, eatFirst: batches(eatFirst(lines)), throwOut: batches(throwOut(lines)) };
}

/** Eaten first: what has at most this many days left, and at most this many lines of it. */
const SOON_DAYS = 60;
const MOST_FIRST = 5;

/** What is left and past its use-by. A best-by date is only about quality and does not count. */
export function throwOut(lines: readonly PantryLine[]): PantryLine[] {
  return lines.filter((line) => line.left > 0 && isPastUse(line));
}

/** What to eat first: what is due soon, else the one line that is due first. */
export function eatFirst(lines: readonly PantryLine[]): PantryLine[] {
  const left = lines.filter((line) => line.left > 0 && !isPastUse(line));
  const soon = left.filter((line) => line.daysLeft <= SOON_DAYS).slice(0, MOST_FIRST);
  return soon.length > 0 ? soon : left.slice(0, 1);
}

function isPastUse({ keep, daysLeft }: PantryLine): boolean {
  return keep === "refrigerate" && daysLeft < 0;
}

/** What has left the shelf, eaten or spoiled, in order of time. */
export function openings(state: State): Opening[] {
  const found = shownBatches(state).flatMap((batch) => {
    return lotsIn(batch).flatMap(({ lot }) => gone(state, batch, lot));
  });
  return found.sort((a, b) => a.t - b.t).map(({ t, ...one }) => one);
}

function gone(state: State, batch: Batch, lot: BatchLot): (Opening & { t: number })[] {
  const counts = new Map<string, { t: number; spoiled: boolean; count: number }>();
  for (const { left, gone } of lot.jars) {
    const spoiled = gone?.what === "spoiled";
    const t = spoiled ? gone.at : left?.what === "opened" ? left.at : undefined;
    if (t === undefined) continue;
    const key = `${t} ${spoiled}`;
    const known = counts.get(key) ?? { t, spoiled, count: 0 };
    known.count += 1;
    counts.set(key, known);
  }
  const names = { title: batch.recipe.title, variety: lot.variety, recipe: batch.recipe.id };
  return [...counts.values()].map(({ t, spoiled, count }) => {
    const at = dateOf(wallFor(state, batch.id, t), state.zone);
    const season = seasonBegun(state, batch);
    return { t, at, batch: lot.id, ...names, season, count, spoiled };
  });
}

/** The year a batch was begun in, by the wall clock of that day. */
function seasonBegun(state: State, batch: Batch): number {
  return Number(dateOf(wallFor(state, batch.id, batch.begunAt), state.zone).slice(0, 4));
}

/** Jars of a lot that were opened and eaten. */
export function openedOf(lot: BatchLot): number {
  const opened = lot.jars.filter((jar) => jar.left?.what === "opened" && !jar.gone);
  return opened.length + lot.openedBeyond;
}

/** Jars of a lot that were given away or thrown out of what was in store. */
function awayFrom(lot: BatchLot): number {
  return lot.jars.filter((jar) => jar.left && jar.left.what !== "opened" && !jar.gone).length;
}

function addLot(found: Contents, state: State, one: LotOf, now: number): void {
  const { batch, lot } = one;
  const { groups, waiting } = shelfJars(state, one, now);
  if (waiting > 0) found.waiting.push({ batch: lot.id, jars: waiting });
  // Of jars nobody told apart, those that keep the shortest are assumed to be the ones eaten.
  let opened = openedOf(lot) - sum(groups, (group) => group.opened);
  let away = awayFrom(lot) - sum(groups, (group) => group.away);
  const counted = groups.filter((group) => group.sealed || !batch.option);
  for (const group of merged(counted).sort((a, b) => ORDER[a.keep] - ORDER[b.keep])) {
    const taken = Math.min(opened, group.jars - group.opened - group.away);
    opened -= taken;
    const given = Math.min(away, group.jars - group.opened - group.away - taken);
    away -= given;
    addLine(found, state, one, { ...group, away: group.away + given }, group.opened + taken);
  }
  for (const group of merged(groups.filter((one) => !counted.includes(one)))) {
    addLine(found, state, one, group, 0);
  }
  if (opened > 0 && waiting < opened) {
    found.troubles.push(`${lot.id}: ${opened} more opened than the seal check counted`);
  }
  const trouble =
    batch.state === "complete" && batch.option ? lotTrouble(state, batch, lot) : undefined;
  if (trouble) found.troubles.push(`${lot.id}: ${trouble}`);
}

const ORDER: Record<Keep, number> = { refrigerate: 0, freeze: 1, shelf: 2 };

/** Jars of several loads with one fate are one line, by the earliest of them. */
function merged(groups: readonly JarGroup[]): JarGroup[] {
  const lines = new Map<string, JarGroup>();
  for (const group of groups) {
    const key = [group.keep, group.rule, group.why, group.place].join("\n");
    const line = lines.get(key);
    if (!line) lines.set(key, { ...group });
    else {
      line.jars += group.jars;
      line.opened += group.opened;
      line.away += group.away;
      line.since = Math.min(line.since, group.since);
    }
  }
  return [...lines.values()];
}

function addLine(
  found: Contents,
  state: State,
  { batch, lot }: LotOf,
  group: JarGroup,
  opened: number,
): void {
  const rule = KEEPING[group.rule];
  const putUp = dateOf(wallFor(state, batch.id, group.since), state.zone);
  const by = addDays(putUp, rule.days);
  const daysLeft = daysBetween(found.on, by);
  const uncounted = !group.sealed && batch.option !== null;
  if (uncounted && daysLeft < -FORGET_COLD_DAYS) return;
  const standard = { shelf: "pantry", refrigerate: "refrigerator", freeze: "freezer" }[group.keep];
  const moved = group.place ?? (group.keep === "shelf" ? state.places[lot.id] : undefined);
  found.lines.push({
    batch: lot.id,
    recipe: batch.recipe.id,
    title: batch.recipe.title,
    variety: lot.variety,
    season: seasonBegun(state, batch),
    jar: batch.jar,
    keep: group.keep,
    putUp,
    jars: group.jars,
    opened,
    left: group.jars - opened - group.away,
    place: moved ?? standard,
    by,
    daysLeft,
    how: rule.words,
    source: rule.source,
    why: group.why,
  });
}
