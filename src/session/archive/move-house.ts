/** Moving a kitchen to another machine: everything out to one file, and in again, checked. */
import { join } from "node:path";
import { readHeartbeat } from "../../journal/heartbeat.ts";
import { takeLock } from "../../journal/lock.ts";
import { openJournal } from "../../journal/open-journal.ts";
import { realDisk } from "../../journal/real-disk.ts";
import type { KitchenEvent } from "../../kitchen/events.ts";
import { apply, replay } from "../../kitchen/evolve.ts";
import { idsOf } from "../../kitchen/facts/references.ts";
import { lotsIn } from "../../kitchen/jars/lots.ts";
import { inCanner } from "../../kitchen/owners.ts";
import { plainId } from "../../kitchen/places.ts";
import { initialState, type State } from "../../kitchen/state.ts";
import { DAY_MS, isoWithOffset, localFields } from "../../kitchen/time.ts";
import { batchLog } from "../../review/batch-log.ts";
import { ownRecipes } from "../data-folder.ts";
import { branchesOf, isMerged, mergedEvents } from "../reading/branches.ts";
import { damageEvents, eventsOf, KITCHEN_FORMAT, recordOf } from "../reading/journal-records.ts";
import { recipeTexts } from "../reading/load-library.ts";
import { isIncomplete, noticesOf, readChecked } from "../reading/read-kitchen.ts";
import { realClock } from "../time/real-clock.ts";
import { type Archive, archiveText, type OwnRecipe, readArchive } from "./archive.ts";
import { takeIn } from "./take-in.ts";

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
  const lines = eventsOf(reading.records);
  const events = [...lines, ...damageEvents(lines, reading.damages)];
  const found = recipeTexts(ownRecipes(folder));
  const recipes = found.flatMap((file) => ("text" in file ? [file] : []));
  const left = found.flatMap((file) => {
    return "problem" in file ? [`recipe ${file.name} is not exported: ${file.problem}`] : [];
  });
  const { zone } = replay(events);
  const notices = noticesOf(reading, folder).map((one) => `${one}; what can be read is exported`);
  notices.push(...left);
  return {
    text: archiveText({ zone, events, recipes }),
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
  /** How many batches the archive tells of. */
  batches: number;
  /** Ids that both kitchens had given, and what each thing is known by now, in both. */
  sharedIds: { id: string; names: string[] }[];
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
  if (typeof theirs === "string") return bad(`${theirs}; export it again`);
  const clock = realClock();
  const { wallMs, bootId, zone } = clock.read();
  const ahead = aheadOf(archive, wallMs, zone);
  if (ahead) return bad(ahead);
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
    const plan = planned(eventsOf(opened.records), archive.events, theirs, wallMs);
    if (!plan.ok) return plan;
    const records = plan.events.map((event) => recordOf(placed(theirs, event), event));
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

/** What is to be appended; refused where it would change what is told of other batches. */
function planned(
  ours: readonly KitchenEvent[],
  theirs: readonly KitchenEvent[],
  there: State,
  now: number,
): Plan {
  const batches = Object.keys(there.batches).length;
  if (ours.length === 0) {
    const counts = { added: theirs.length, known: 0, batches, sharedIds: [] };
    return { ok: true, events: [...theirs], counts };
  }
  const before = replay(lived(ours));
  const inside = inCanner(before).map(({ id, batch }) => `load ${id} of batch ${batch}`);
  if (inside.length > 0) {
    const message = `jars are in the canner here (${inside.join(", ")}); import when they are out`;
    return { ok: false, why: "busy", message };
  }
  const { events, added, known } = takeIn(ours, theirs);
  if (events.length === 0)
    return { ok: true, events, counts: { added: 0, known, batches, sharedIds: [] } };
  const after = workedOut([...ours, ...events]);
  if (typeof after === "string") return bad(`${after}; nothing was taken`);
  const touched = new Set(added.flatMap(({ event }) => idsOf(event)));
  const wrong = differing(before, after, now, touched) ?? differing(there, after, now, touched);
  if (wrong) return bad(`${wrong}; nothing was taken`);
  return {
    ok: true,
    events,
    counts: { added: added.length, known, batches, sharedIds: shared(after) },
  };
}

function lived(events: readonly KitchenEvent[]): readonly KitchenEvent[] {
  return isMerged(events) ? mergedEvents(events) : events;
}

/** The state of events, with every batch's log worked out, or which of them cannot be. */
function workedOut(events: readonly KitchenEvent[]): State | string {
  let batch = "";
  try {
    const state = events.length === 0 ? initialState() : replay(lived(events));
    for (const one of Object.values(state.batches)) {
      batch = `the facts of batch ${one.id}`;
      batchLog(state, one, state.lastW);
    }
    return state;
  } catch (error) {
    const why = (error as Error).message.split("\n")[0];
    return `${batch || misfit(events)} cannot be worked out (${why})`;
  }
}

/** The first fact with which events cannot be replayed, by its line in an archive. */
function misfit(events: readonly KitchenEvent[]): string {
  const state = initialState();
  for (const [at, event] of events.entries()) {
    try {
      if (event.type !== "amended" && event.type !== "withdrawn") apply(state, event);
    } catch {
      const [id] = idsOf(event);
      return `line ${at + 2}: the fact "${event.type}"${id === undefined ? "" : ` of ${id}`}`;
    }
  }
  return "what was corrected in it";
}

/** Why an archive is not taken in yet: a fact in it is dated later than this machine's clock. */
function aheadOf({ events }: Archive, wallMs: number, zone: string): string | undefined {
  const [latest] = branchesOf(events)
    .flatMap(({ path }) => path.slice(-1))
    .sort((a, b) => b.wallMs - a.wallMs);
  if (!latest || latest.wallMs <= wallMs + DAY_MS) return undefined;
  const line =
    2 +
    events.findIndex(({ cmd, type, w }) => {
      const { event } = latest;
      return cmd === event.cmd && type === event.type && w === event.w;
    });
  const at = (ms: number) => isoWithOffset(Math.round(ms), zone);
  return (
    `line ${line}: the fact "${latest.event.type}" was written at ${at(latest.wallMs)}, and this ` +
    `machine's clock shows ${at(wallMs)}; set the clock that is wrong, then import again`
  );
}

/** Ids that stand for several things, with what each is known by. */
function shared(state: State): Imported["sharedIds"] {
  const lots = Object.values(state.batches).flatMap((batch) => batch.lots.map(({ id }) => id));
  const ids = new Set(lots.filter((id) => id !== plainId(id)).map(plainId));
  return [...ids].map((id) => ({ id, names: lots.filter((one) => plainId(one) === id) }));
}

/**
 * Which batch would be told of differently after an import, though no fact of it came along and
 * only one of the folders has it: what both have may gain the other's clock corrections and doubts.
 */
function differing(
  before: State,
  after: State,
  now: number,
  touched: ReadonlySet<string>,
): string | undefined {
  const logs = (state: State) => {
    const all = Object.values(state.batches).flatMap((batch) => lotsIn(batch));
    return all.map(({ batch, lot }) => {
      const log: Record<string, unknown> = batchLog(state, batch, now, lot);
      const inBoth = (after.knownTo[batch.id] ?? []).length > 1;
      return { id: lot.id, log, inBoth, text: plainIds(JSON.stringify(log)) };
    });
  };
  const there = logs(after);
  for (const { id, log, text } of logs(before)) {
    const same = there.filter((one) => plainId(one.id) === plainId(id));
    if (same.some((one) => one.inBoth || one.text === text)) continue;
    const own = [plainId(id), ...(log.loads as string[]).map(plainId)];
    if (own.some((one) => touched.has(one))) continue;
    const [other] = same;
    const field = Object.keys(log).find((name) => {
      const [one, two] = [log[name], other?.log[name]].map((value) => JSON.stringify(value) ?? "");
      return plainIds(one ?? "") !== plainIds(two ?? "");
    });
    return `batch ${id} would read otherwise than before, in "${field}", with no new fact of it`;
  }
  return undefined;
}

/** Text with ids as they were given. */
function plainIds(text: string): string {
  return text.replace(/\b(\d{6}-[A-Z]?\d+)\.[0-9a-f]{5}\b/g, "$1");
}

/** The state as the folder sees it that wrote an event. */
function placed(state: State, { branch }: KitchenEvent): State {
  const place = branch === undefined ? undefined : state.elsewhere[branch];
  return place ? { ...state, ...place } : state;
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
