/** Moving a kitchen to another machine: everything out to one file, and in again, checked. */
import { join } from "node:path";
import { readHeartbeat } from "../../journal/heartbeat.ts";
import { takeLock } from "../../journal/lock.ts";
import { openJournal } from "../../journal/open-journal.ts";
import { realDisk } from "../../journal/real-disk.ts";
import type { KitchenEvent } from "../../kitchen/events.ts";
import { replay } from "../../kitchen/evolve.ts";
import { inCanner } from "../../kitchen/owners.ts";
import { initialState, type State } from "../../kitchen/state.ts";
import { DAY_MS, localFields } from "../../kitchen/time.ts";
import { type BatchLog, batchLog } from "../../review/batch-log.ts";
import { ownRecipes } from "../data-folder.ts";
import { eventsOf, KITCHEN_FORMAT, recordOf, withDamage } from "../reading/journal-records.ts";
import { recipeTexts } from "../reading/load-library.ts";
import { isIncomplete, noticesOf, readChecked } from "../reading/read-kitchen.ts";
import { realClock } from "../time/real-clock.ts";
import { type Archive, archiveText, type OwnRecipe, readArchive } from "./archive.ts";
import { mergeEvents } from "./merge-events.ts";

type Exported = {
  text: string;
  events: number;
  recipes: number;
  notices: string[];
  /** True where lines are missing or damaged. */
  incomplete: boolean;
  /** Why nothing could be read. */
  unreadable?: string;
};

/** Everything in a data folder as an archive's text; nothing is written. */
export function exportKitchen(folder: string): Exported {
  const reading = readChecked(realDisk(), folder);
  const events = withDamage(eventsOf(reading.records), reading.damages);
  const found = recipeTexts(ownRecipes(folder));
  const recipes = found.flatMap((file) => ("text" in file ? [file] : []));
  const left = found.flatMap((file) => {
    return "problem" in file ? [`recipe ${file.name} is not exported: ${file.problem}`] : [];
  });
  const state = replay(events);
  const notices = noticesOf(reading, folder).map((one) => `${one}; what can be read is exported`);
  notices.push(...left);
  return {
    text: archiveText({ zone: state.zone, events, recipes }),
    events: events.length,
    recipes: recipes.length,
    notices,
    incomplete: isIncomplete(reading),
    ...(reading.unreadable ? { unreadable: reading.unreadable.message } : {}),
  };
}

export type Imported = {
  added: number;
  known: number;
  leftBehind: number;
  rehearsed: number;
  renamed: { from: string; to: string }[];
  batches: number;
  recipes: { added: string[]; known: number; beside: string[] };
};

type ImportAnswer =
  /** `notices`: what the log here was found to lack, one sentence each. */
  | { ok: true; done: Imported; notices: string[]; incomplete: boolean }
  /**
   * `bad` file, this kitchen is `held` or `busy`, or the `disk` refuses. Nothing was changed,
   * unless the message says so.
   */
  | { ok: false; why: "bad" | "held" | "busy" | "disk"; message: string };

type Bad = Extract<ImportAnswer, { ok: false }>;

function bad(message: string): Bad {
  return { ok: false, why: "bad", message };
}

/** Checks an archive's text, and adds what is new in it to a folder. */
export async function importKitchen(folder: string, text: string): Promise<ImportAnswer> {
  const read = readArchive(text);
  if (!read.ok) return bad(read.message);
  const { archive } = read;
  const fault = await faultOfRecipes(archive.recipes);
  if (fault) return bad(fault);
  const theirs = workedOut(archive.events);
  if (!theirs) return bad("its events do not fit together; export it again");
  const clock = realClock();
  const { wallMs, bootId, zone } = clock.read();
  if (theirs.lastW > wallMs + DAY_MS) {
    return bad("its last event lies ahead of this machine's clock; set the clock first");
  }
  const disk = realDisk();
  const self = { pid: process.pid, bootId, startedAt: new Date(wallMs).toISOString() };
  const lock = takeLock(disk, folder, self);
  if (!lock.ok) {
    return { ok: false, why: lock.why === "held" ? "held" : "disk", message: lock.message };
  }
  try {
    const opened = openJournal(disk, folder, {
      format: KITCHEN_FORMAT,
      year: () => localFields(wallMs, zone).year,
      owns: () => lock.lock.owns(),
      expectedN: readHeartbeat(disk, folder)?.lastN ?? 0,
    });
    const { notices, damages } = opened;
    if (opened.found !== "new" && opened.found !== "sound" && opened.found !== "torn") {
      return { ok: false, why: "disk", message: notices[0] ?? opened.found };
    }
    const plan = planned(eventsOf(opened.records), archive, theirs, wallMs);
    if (!plan.ok) return plan;
    const records = plan.events.map((event) => recordOf(theirs, event));
    const appended = opened.journal.append(records);
    opened.journal.close();
    if (!appended.ok) return { ok: false, why: "disk", message: appended.message };
    const recipes = addRecipes(folder, archive.recipes);
    if (typeof recipes !== "string") {
      const done = { ...plan.counts, recipes };
      return { ok: true, done, notices, incomplete: damages.length > 0 };
    }
    const message = `its events were added, but not all recipes: ${recipes}`;
    return { ok: false, why: "disk", message };
  } finally {
    lock.lock.release();
  }
}

type Plan = { ok: true; events: KitchenEvent[]; counts: Omit<Imported, "recipes"> } | Bad;

/** What is to be appended; refused where a batch would read differently than before. */
function planned(
  ours: readonly KitchenEvent[],
  { events }: Archive,
  theirs: State,
  now: number,
): Plan {
  const counts = { known: 0, leftBehind: 0, rehearsed: 0, renamed: [] };
  const batches = Object.keys(theirs.batches).length;
  if (ours.length === 0) {
    return { ok: true, events, counts: { ...counts, added: events.length, batches } };
  }
  const before = replay(ours);
  if (inCanner(before).length > 0) {
    const message = "jars are in the canner here; import when they are out";
    return { ok: false, why: "busy", message };
  }
  const merge = mergeEvents(ours, events);
  if (merge.events.length > 0 && before.focus !== null) {
    const { lastW } = before;
    const back = {
      type: "focused",
      owner: before.focus,
      cmd: "~import",
      t: lastW,
      w: lastW,
    } as const;
    merge.events.push(back);
  }
  const after = workedOut([...ours, ...merge.events]);
  const wrong = after && differing(before, theirs, after, merge.batches, now);
  if (!after || wrong !== undefined) {
    return bad(`batch ${wrong ?? ""} would read otherwise here than there; nothing was taken`);
  }
  const { known, leftBehind, rehearsed, renamed } = merge;
  const added = merge.events.length;
  const taken = { known, leftBehind, rehearsed, renamed, added, batches: merge.batches.size };
  return { ok: true, events: merge.events, counts: taken };
}

/** The state of events, with every batch's log worked out; undefined where that fails. */
function workedOut(events: readonly KitchenEvent[]): State | undefined {
  try {
    const state = events.length === 0 ? initialState() : replay(events);
    for (const batch of Object.values(state.batches)) batchLog(state, batch, state.lastW);
    return state;
  } catch {
    return undefined;
  }
}

/** Deviations that belong to a kitchen's clock and place, which do not move with it. */
const OF_THE_PLACE: ReadonlySet<string> = new Set([
  "clock-changed",
  "log-not-written",
  "altitude-doubt",
]);

/** What a log says about the food, without its dates, ids and altitude. */
function essence(log: BatchLog): string {
  const stages = log.stages.map(({ id, state, minutes, restarts }) => [
    id,
    state,
    minutes,
    restarts,
  ]);
  const codes = log.deviations.map((one) => one.code).filter((code) => !OF_THE_PLACE.has(code));
  const { verdict, state, process, jars, confirmed, notes, readings } = log;
  const counts = [confirmed.length, notes.length, readings.length];
  return JSON.stringify([verdict, state, process, jars, stages, codes.sort(), counts]);
}

/** The first batch whose log the merge would change. */
function differing(
  before: State,
  theirs: State,
  after: State,
  ids: ReadonlyMap<string, string>,
  now: number,
): string | undefined {
  for (const batch of Object.values(before.batches)) {
    const there = after.batches[batch.id];
    const same =
      there &&
      JSON.stringify(batchLog(before, batch, now)) === JSON.stringify(batchLog(after, there, now));
    const merged = [...ids.values()].includes(batch.id);
    if (!same && !merged) return batch.id;
  }
  for (const [from, to] of ids) {
    const [one, other] = [theirs.batches[from], after.batches[to]];
    // A batch that both kitchens know may have gone on here; then theirs is behind.
    if (before.batches[to]) continue;
    if (!one || !other) return from;
    if (essence(batchLog(theirs, one, now)) !== essence(batchLog(after, other, now))) return from;
  }
  return undefined;
}

async function faultOfRecipes(recipes: readonly OwnRecipe[]): Promise<string | undefined> {
  if (recipes.length === 0) return undefined;
  const { parseLibraryFile } = await import("../../kitchen/read-library.ts");
  for (const { name, text } of recipes) {
    const [problem] = parseLibraryFile(name, text).problems;
    if (problem) return problem;
  }
  return undefined;
}

/**
 * Writes new recipes; where a name is taken, beside it under a name that is not read. The disk's
 * message where it refuses.
 */
function addRecipes(folder: string, recipes: readonly OwnRecipe[]): Imported["recipes"] | string {
  const done: Imported["recipes"] = { added: [], known: 0, beside: [] };
  if (recipes.length === 0) return done;
  const disk = realDisk();
  const into = ownRecipes(folder);
  const made = disk.makeFolder(into);
  if (!made.ok) return made.message;
  for (const { name, text } of recipes) {
    const bytes = Buffer.from(text);
    const created = disk.createExclusive(join(into, name), bytes);
    if (created.ok) {
      done.added.push(name);
      continue;
    }
    if (created.why !== "exists") return created.message;
    const there = disk.read(join(into, name));
    if (there.ok && bytes.equals(there.bytes)) {
      done.known += 1;
      continue;
    }
    const beside = `${name}.imported`;
    const written = disk.replace(join(into, beside), bytes);
    if (!written.ok) return written.message;
    done.beside.push(beside);
  }
  return done;
}
