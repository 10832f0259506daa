import { quoted } from "../../reckon/quantity.ts";
import type { Reckoned } from "../../reckon/reckoned.ts";
import type { Result } from "../../reckon/result.ts";
import { ok } from "../../reckon/result.ts";
import { RECKONINGS } from "../call/calls.ts";
import type { CommandResult } from "../call/command-result.ts";
import { failed } from "../call/command-result.ts";
import { nearestName } from "../call/nearest.ts";
import { isOn, parseOptions } from "../call/options.ts";
import type { ReckonFiles } from "./reckon-kinds.ts";
import { RECKON_KINDS, type Worked } from "./reckon-kinds.ts";
import { reckonedJson, reckonedText } from "./reckon-output.ts";

function unknownWhat(what: string): CommandResult {
  const names = Object.keys(RECKONINGS).sort();
  const nearest = nearestName(what, names);
  const mend = nearest ? `did you mean ${nearest}?` : `there are ${names.join(", ")}`;
  return failed(2, `reckon: ${quoted(what)} is not something to reckon; ${mend}`);
}

function print(what: string, outcome: Result<Reckoned>, json: boolean): CommandResult {
  if (!outcome.ok) return failed(outcome.refused ? 1 : 2, `reckon ${what}: ${outcome.error}`);
  const stdout = json ? reckonedJson(outcome.value) : reckonedText(outcome.value);
  return { code: 0, stdout, stderr: "" };
}

/** The text of the file that a kind reads, or a failed result where it cannot be read. */
async function textOf(
  path: string | undefined,
  what: string,
  io: ReckonFiles,
): Promise<Result<string> & { result?: CommandResult }> {
  if (path === undefined) return ok("");
  try {
    return ok(await io.readFile(path));
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const message = `reckon ${what}: ${quoted(path)} cannot be read (${reason}); check the path`;
    return { ok: false, error: message, result: failed(3, message) };
  }
}

/**
 * `brinebell reckon WHAT ...`: prints one number with its range and source, or with `--json` the
 * same as an object. Codes: 0 done, 1 refused, 2 wrong usage, 3 a file cannot be read.
 */
export async function reckonCommand(args: string[], io: ReckonFiles): Promise<CommandResult> {
  const [what, ...rest] = args;
  if (what === undefined) {
    return failed(2, "reckon: say what to reckon; brinebell help reckon lists them");
  }
  const kind = Object.hasOwn(RECKON_KINDS, what) ? RECKON_KINDS[what as Worked] : undefined;
  if (!kind) return unknownWhat(what);
  const options = parseOptions(rest, RECKONINGS[what as Worked].options);
  if (!options.ok) return failed(2, `reckon ${what}: ${options.error}`);
  const stray = options.value.words[0];
  if (stray !== undefined) {
    const mend = `brinebell help reckon ${what} lists them`;
    return failed(2, `reckon ${what}: ${quoted(stray)} belongs to no option; ${mend}`);
  }
  const path = kind.file ? options.value.given.get(kind.file)?.[0] : undefined;
  const text = await textOf(path, what, io);
  if (!text.ok) return text.result ?? failed(3, text.error);
  const read = text.value;
  const outcome = kind.run(options.value, {
    text: read,
    get zone() {
      return io.zone;
    },
  });
  return print(what, outcome, isOn(options.value, "json"));
}
