import type { Outcome } from "../reckon/outcome.ts";
import { ok } from "../reckon/outcome.ts";
import { quoted } from "../reckon/quantity.ts";
import type { Reckoned } from "../reckon/reckoned.ts";
import type { CommandResult } from "./command-result.ts";
import { failed } from "./command-result.ts";
import { nearestName } from "./nearest.ts";
import type { OptionKinds } from "./options.ts";
import { isOn, parseOptions } from "./options.ts";
import type { ReckonFiles } from "./reckon-kinds.ts";
import { RECKON_KINDS } from "./reckon-kinds.ts";
import { reckonedJson, reckonedText } from "./reckon-output.ts";

/** These need the recipes, and are worked out in `reckon-recipe.ts`. */
const ELSEWHERE: Record<"process" | "jars", string> = {
  process: "--recipe ID --jar SIZE --altitude Q [--pack hot|raw] [--gauge dial|weighted]",
  jars: "--recipe ID --for Q --jar SIZE [--canner-holds N]",
};

function usage(): string {
  const calls = [
    ...Object.entries(RECKON_KINDS).map(([what, { call }]) => `  ${what} ${call}`),
    ...Object.entries(ELSEWHERE).map(([what, call]) => `  ${what} ${call}`),
  ];
  return [
    "brinebell reckon WHAT [--json]: one number worked out, with its source and range",
    ...calls.sort(),
    "Quantities carry their unit: 6200ft, 203F, 11psi, 12lb, 2L, 3 1/2 cups, 2500W.",
    "",
  ].join("\n");
}

function unknownWhat(what: string): CommandResult {
  const names = [...Object.keys(RECKON_KINDS), ...Object.keys(ELSEWHERE)].sort();
  const nearest = nearestName(what, names);
  const mend = nearest ? `did you mean ${nearest}?` : `there are ${names.join(", ")}`;
  return failed(2, `reckon: ${quoted(what)} is nothing to reckon; ${mend}`);
}

function print(what: string, outcome: Outcome<Reckoned>, json: boolean): CommandResult {
  if (!outcome.ok) return failed(outcome.refused ? 1 : 2, `reckon ${what}: ${outcome.error}`);
  const stdout = json ? reckonedJson(outcome.value) : reckonedText(outcome.value);
  return { code: 0, stdout, stderr: "" };
}

/** The text of the file a kind reads, or the failed call where it cannot be read. */
async function textOf(
  path: string | undefined,
  what: string,
  io: ReckonFiles,
): Promise<Outcome<string> & { result?: CommandResult }> {
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
 * same as an object. Codes: 0 done, 1 refused, 2 the call is off, 3 a file cannot be read.
 */
export async function reckonCommand(args: string[], io: ReckonFiles): Promise<CommandResult> {
  const [what, ...rest] = args;
  if (what === "--help" || what === "-h") return { code: 0, stdout: usage(), stderr: "" };
  if (what === undefined) {
    return failed(2, "reckon: say what to reckon; brinebell reckon --help lists them");
  }
  const kind = Object.hasOwn(RECKON_KINDS, what) ? RECKON_KINDS[what] : undefined;
  if (what === "process" || what === "jars") {
    return { code: 0, stdout: `brinebell reckon ${what} ${ELSEWHERE[what]}\n`, stderr: "" };
  }
  if (!kind) return unknownWhat(what);
  const kinds: OptionKinds = { ...kind.options, json: "switch", help: "switch" };
  const options = parseOptions(rest, kinds);
  if (!options.ok) return failed(2, `reckon ${what}: ${options.error}`);
  if (isOn(options.value, "help")) {
    return { code: 0, stdout: `brinebell reckon ${what} ${kind.call} [--json]\n`, stderr: "" };
  }
  const stray = options.value.words[0];
  if (stray !== undefined) {
    return failed(2, `reckon ${what}: ${quoted(stray)} belongs to no option; ${kind.call}`);
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
