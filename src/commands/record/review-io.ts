/** What the review commands get from the machine, and what they share. */
import type { Ref } from "../../kitchen/command.ts";
import { findLot, type LotOf, lotsIn } from "../../kitchen/jars/lots.ts";
import { lotsOf } from "../../kitchen/meant.ts";
import { plainId } from "../../kitchen/places.ts";
import { type Batch, type State, wallOf } from "../../kitchen/state.ts";
import { lotsWhen } from "../../language/values/lots-when.ts";
import { meantBy } from "../../language/values/resolve-names.ts";
import type { Library } from "../../recipe/library.ts";
import { batchesOfSeason } from "../../review/season.ts";
import { holdsRehearsalsAlone } from "../../review/shelf/pantry.ts";
import { thingsOf } from "../../session/context-of.ts";
import { type ReadKitchen, readKitchen } from "../../session/reading/read-kitchen.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options } from "../call/options.ts";
import { type OutputKind, writeOutput } from "../call/write-output.ts";

export type ReviewIo = {
  /** The data folder. */
  folder: string;
  version: string;
  /** The build of the program, under which snapshots of long journals are kept. */
  build?: string;
  /** The wall time now, epoch ms; the machine's own where it is not given. */
  nowMs?: number;
  library(): Promise<Library> | Library;
  readFile(path: string): Promise<string> | string;
};

type Refused = { ok: false; result: CommandResult };

/** The kitchen replayed from its journal, or a failed result where nothing could be read. */
export function kitchenFor(
  name: string,
  io: ReviewIo,
): { ok: true; kitchen: ReadKitchen } | Refused {
  const kitchen = readKitchen(io.folder, { wallMs: io.nowMs, build: io.build });
  if (kitchen.unreadable !== undefined) {
    return { ok: false, result: failed(3, `${name}: ${kitchen.unreadable}`) };
  }
  if (holdsRehearsalsAlone(kitchen.state)) {
    kitchen.notices.push("this folder holds only rehearsals; none of these jars exist");
  }
  return { ok: true, kitchen };
}

/** What a log was found to lack; and of a kitchen that was read, its units. */
export type KitchenRead = Pick<ReadKitchen, "notices" | "incomplete"> & Partial<ReadKitchen>;

/**
 * Adds what was found damaged to a result, one line each, and the units of the kitchen; what is not
 * all there is status 3.
 */
export function withNotices(
  result: CommandResult,
  name: string,
  { notices, incomplete, state }: KitchenRead,
): CommandResult {
  const lines = notices.map((notice) => `brinebell ${name}: ${notice}\n`).join("");
  // What was not found may be what is missing.
  const code = incomplete ? 3 : result.code;
  const units = state ? { units: state.kitchen.units } : {};
  return { ...result, ...units, code, stderr: `${result.stderr}${lines}` };
}

/** The batch with an id, or the only one with a name or variety; `season` narrows the search. */
export function batchNamed(
  state: State,
  said: string,
  season?: number,
): { ok: true; batch: Batch } | { ok: false; message: string } {
  const found = lotsNamed(state, said, season);
  return found.ok ? { ok: true, batch: found.lots[0].batch } : found;
}

type LotsFound = { ok: true; lots: [LotOf, ...LotOf[]] } | { ok: false; message: string };

/**
 * Lots of one batch: all of them by its id or its recipe, or the one with an id of its own or a
 * variety; `season` narrows the search.
 */
export function lotsNamed(
  state: State,
  said: string,
  season?: number,
  now = state.lastW,
): LotsFound {
  const inSeason = season === undefined ? undefined : new Set(batchesOfSeason(state, season));
  const byId = withId(state, said);
  const asked = JSON.stringify(said);
  const refs = byId ? [] : refsNamed(state, said, now);
  const all = byId ?? lotsOf(state, refs);
  const [first, ...others] = all.filter(({ batch }) => !inSeason || inSeason.has(batch));
  if (!first) {
    const message = byId
      ? `${said} is not a batch of ${season}; leave --season out`
      : `no batch is called ${asked}; brinebell review lists them`;
    return { ok: false, message };
  }
  if (others.some(({ batch }) => batch !== first.batch)) {
    const ids = [first, ...others].slice(-8).map(({ lot }) => lot.id);
    return { ok: false, message: `${asked} fits several batches; name one of ${ids.join(", ")}` };
  }
  return { ok: true, lots: [first, ...others] };
}

/** What a name stands for, or a name with when it was put up: "the Provider from August". */
function refsNamed(state: State, said: string, now: number): readonly Ref[] {
  const around = { ...thingsOf(state), recipes: [], nowMs: wallOf(state, now), zone: state.zone };
  const when = lotsWhen(said, around);
  const fitting = when ? meantBy(when.text, around, true).recorded.filter(when.fits) : [];
  return fitting.length > 0 ? fitting : meantBy(said, around, true).recorded;
}

/** All lots of the batch with an id, or the one lot with an id of its own. */
function withId(state: State, id: string): LotOf[] | undefined {
  if (Object.hasOwn(state.batches, id)) return state.batches[id] && lotsIn(state.batches[id]);
  const found = Object.hasOwn(state.lotsOf, id) ? findLot(state, id) : undefined;
  if (found) return [found];
  // A label that was printed before another folder was taken in has the id as it was given.
  const all = Object.values(state.batches).flatMap((one) => lotsIn(one));
  const given = all.filter((one) => plainId(one.lot.id) === id);
  return given.length > 0 ? given : undefined;
}

/** A year of four digits, or one line saying what is wrong. */
export function seasonFrom(
  text: string | undefined,
): { ok: true; season?: number } | { ok: false; message: string } {
  if (text === undefined) return { ok: true };
  if (!/^(19|20|21)\d\d$/.test(text)) {
    return { ok: false, message: `--season: ${JSON.stringify(text)} is not a year; write 2027` };
  }
  return { ok: true, season: Number(text) };
}

/** Writes a file and says so; `-` is standard output, which is then for nothing else. */
export function writtenOutput(
  name: string,
  io: Pick<ReviewIo, "folder">,
  options: Options,
  output: { path: string; content: string | Uint8Array; kind: OutputKind },
): CommandResult {
  const { path, content } = output;
  if (path === "-") {
    if (isOn(options, "json")) {
      return failed(2, `${name}: - and --json both mean standard output; leave one out`);
    }
    if (typeof content === "string") return printedForPrograms(content);
    return failed(2, `${name}: - would print a binary file; name a file to write`);
  }
  const answer = writeOutput({ ...output, folder: io.folder, force: isOn(options, "force") });
  if (!answer.ok) return failed(answer.code, `${name}: ${answer.message}`);
  const kb = Math.max(1, Math.round(Buffer.byteLength(content) / 1000));
  return printed(`Wrote ${path} (${kb} kB).\n`);
}

export function printed(stdout: string): CommandResult {
  return { code: 0, stdout, stderr: "" };
}

/** What was answered to something that was written down, a line each, or all of it as JSON. */
export function printedLines(
  name: string,
  { lines, found }: { lines: readonly string[]; found: KitchenRead },
  options: Options,
): CommandResult {
  const json = isOn(options, "json");
  const result = json ? printedJson({ lines }) : printed(`${lines.join("\n")}\n`);
  return withNotices(result, name, found);
}

export function printedJson(value: unknown): CommandResult {
  return printedForPrograms(`${JSON.stringify(value, null, 2)}\n`);
}

/** Output that keeps its own units. */
export function printedForPrograms(stdout: string): CommandResult {
  return { ...printed(stdout), forPrograms: true };
}
