/**
 * Everything a kitchen knows in one file, to take to another machine. UTF-8 text, one JSON object
 * per line:
 *
 *     {"archive":"brinebell","version":1,"zone":"America/Denver","events":2,"recipes":1}
 *     {"event":{"type":…,"cmd":…,"t":…,"w":…,…},"sum":"4e5f6071"}        one for each event
 *     {"recipe":"my-relish.yaml","text":"…","sum":"0a1b2c3d"}            one for each own recipe
 *     {"end":3,"sum":"5c6d…"}
 *
 * Events are those of the journal in its order, without the fields the journal keeps for itself.
 * A line's `sum` is the CRC-32 of the JSON before it; the last line has the number of lines between
 * first and last, and the SHA-256 of every byte before it, so that a truncated, joined or changed
 * file is detected. Reading checks all of it, and every event's shape, before anything is done with
 * it.
 */
import { createHash } from "node:crypto";
import { crc32 } from "node:zlib";
import type { KitchenEvent } from "../../kitchen/events.ts";
import { faultOfEvent } from "../../kitchen/facts/gate.ts";
import { isZone } from "../../kitchen/time.ts";

export type OwnRecipe = { name: string; text: string };
export type Archive = { zone: string; events: KitchenEvent[]; recipes: OwnRecipe[] };

const VERSION = 1;
/** A file name that cannot leave its folder. */
const RECIPE_NAME = /^[\p{L}\p{N}][\p{L}\p{N} ._-]{0,99}\.ya?ml$/u;

function sumOf(json: string): string {
  return crc32(json).toString(16).padStart(8, "0");
}

function digest(text: string): string {
  return createHash("sha256").update(text).digest("hex");
}

/** The archive as a file's text. */
export function archiveText({ zone, events, recipes }: Archive): string {
  const counts = { events: events.length, recipes: recipes.length };
  const lines = [JSON.stringify({ archive: "brinebell", version: VERSION, zone, ...counts })];
  for (const event of events) {
    lines.push(JSON.stringify({ event, sum: sumOf(JSON.stringify(event)) }));
  }
  for (const { name, text } of recipes) {
    lines.push(JSON.stringify({ recipe: name, text, sum: sumOf(JSON.stringify([name, text])) }));
  }
  const body = `${lines.join("\n")}\n`;
  return `${body}${JSON.stringify({ end: lines.length - 1, sum: digest(body) })}\n`;
}

type ArchiveRead = { ok: true; archive: Archive } | { ok: false; message: string };

type Line = Record<string, unknown>;

/** Reads an archive's text; the first thing wrong is named with its line. Never throws. */
export function readArchive(text: string): ArchiveRead {
  const lines = text.split("\n");
  if (lines.at(-1) === "") lines.pop();
  const head = parsed(lines[0]);
  if (head?.archive !== "brinebell") return { ok: false, message: "it is no export of Brinebell" };
  if (head.version !== VERSION) {
    return { ok: false, message: "a later version wrote it; install that version to read it" };
  }
  const cut = "it is cut short or was changed; export it again";
  const end = parsed(lines.at(-1));
  if (lines.length < 2 || end?.end !== lines.length - 2) return { ok: false, message: cut };
  const { zone } = head;
  if (typeof zone !== "string" || !isZone(zone)) {
    return { ok: false, message: "line 1: its time zone is not known here" };
  }
  const archive: Archive = { zone, events: [], recipes: [] };
  for (let at = 1; at < lines.length - 1; at++) {
    const fault = takeLine(archive, parsed(lines[at]));
    if (fault) return { ok: false, message: `line ${at + 1}: ${fault}` };
  }
  const body = text.slice(0, text.lastIndexOf(lines.at(-1) ?? ""));
  const counted = head.events === archive.events.length && head.recipes === archive.recipes.length;
  if (!counted || end.sum !== digest(body)) return { ok: false, message: cut };
  return { ok: true, archive };
}

function parsed(line: string | undefined): Line | undefined {
  try {
    const value: unknown = JSON.parse(line ?? "");
    return typeof value === "object" && value !== null ? (value as Line) : undefined;
  } catch {
    return undefined;
  }
}

/** Adds what a line holds, or returns what is wrong with it. */
function takeLine(archive: Archive, line: Line | undefined): string | undefined {
  if (!line) return "it cannot be read";
  if ("event" in line) {
    if (line.sum !== sumOf(JSON.stringify(line.event))) return "its checksum is wrong";
    const fault = faultOfEvent(line.event);
    if (fault) return fault;
    archive.events.push(line.event as KitchenEvent);
    return undefined;
  }
  const { recipe, text, sum } = line;
  if (typeof recipe !== "string" || typeof text !== "string")
    return "it is neither an event nor a recipe";
  if (sum !== sumOf(JSON.stringify([recipe, text]))) return "its checksum is wrong";
  if (!RECIPE_NAME.test(recipe)) return "a recipe's file name is off";
  archive.recipes.push({ name: recipe, text });
  return undefined;
}
