import { isUnit, quoted } from "../../reckon/quantity.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import type { OptionCalls, OptionKind } from "./calls.ts";
import { nearestName } from "./nearest.ts";

export type Options = {
  /** Words that belong to no option, in order. */
  words: string[];
  /** Values by option name without its dashes; a switch that is on has one empty value. */
  given: ReadonlyMap<string, readonly string[]>;
};

/** The value of an option given at most once; undefined where it is not given. */
export function optionValue(options: Options, name: string): string | undefined {
  return options.given.get(name)?.[0];
}

/** All values of a repeatable option. */
export function optionValues(options: Options, name: string): readonly string[] {
  return options.given.get(name) ?? [];
}

export function isOn(options: Options, name: string): boolean {
  return options.given.has(name);
}

const ONCE: readonly OptionKind[] = ["text", "quantity"];
const ENDS_IN_NUMBER = /[\d¼½¾⅓⅔⅛⅜⅝⅞]$/;
const FRACTION = /^\d+\/\d+$/;
const NUMBER = /^[\d.,/]+$/;

/** How many of the following words continue a quantity: `3` `1/2` `cups`, `5 lb` `4` `oz`. */
function wordsGoingOn(value: string, following: readonly string[]): number {
  let said = value;
  let taken = 0;
  for (;;) {
    const [next, then] = [following[taken], following[taken + 1]];
    if (next === undefined) return taken;
    const fluid = then !== undefined && isUnit(`${next} ${then}`);
    if (ENDS_IN_NUMBER.test(said)) {
      if (fluid) taken += 2;
      else if (FRACTION.test(next) || isUnit(next)) taken += 1;
      else return taken;
    } else if (NUMBER.test(next) && then !== undefined && isUnit(then)) {
      taken += 2;
    } else {
      return taken;
    }
    said = following[taken - 1] ?? "";
  }
}

function unknownOption(name: string, calls: OptionCalls): string {
  const nearest = nearestName(name, Object.keys(calls));
  if (nearest) return `--${name} is not an option here; did you mean --${nearest}?`;
  const all = Object.keys(calls).map((one) => `--${one}`);
  return `${quoted(`--${name}`)} is not an option here; there are ${all.join(", ")}`;
}

type Taken = { value: string; next: number };

/** The value of an option at `index`, and where reading goes on after it. */
function takeValue(
  args: readonly string[],
  index: number,
  inline: string | undefined,
  kind: OptionKind,
): Taken | undefined {
  const first = inline ?? args[index + 1];
  let next = inline === undefined ? index + 2 : index + 1;
  if (first === undefined || (inline === undefined && first.startsWith("--"))) return undefined;
  if (kind === "text" || kind === "texts") return { value: first, next };
  const tail = first.slice(first.indexOf("=") + 1);
  const going = wordsGoingOn(tail, args.slice(next));
  const value = [first, ...args.slice(next, next + going)].join(" ");
  next += going;
  return { value, next };
}

/**
 * Reads a command's arguments: `--name value`, `--name=value`, switches, words; `--` ends the
 * options. A word that begins with a dash and a digit is a value or a word, never an option. An
 * unknown option is an error that names the nearest known one; a missing value, a switch with a
 * value, and a repeated option that is not repeatable are errors too.
 */
export function parseOptions(args: readonly string[], calls: OptionCalls): Result<Options> {
  const words: string[] = [];
  const given = new Map<string, string[]>();
  let index = 0;
  while (index < args.length) {
    const arg = args[index] ?? "";
    if (arg === "--") {
      words.push(...args.slice(index + 1));
      break;
    }
    if (!/^--?[^\d.-]/.test(arg)) {
      words.push(arg);
      index += 1;
      continue;
    }
    const equals = arg.indexOf("=");
    const name = arg.slice(0, equals < 0 ? undefined : equals).replace(/^--?/, "");
    const inline = equals < 0 ? undefined : arg.slice(equals + 1);
    const kind =
      arg.startsWith("--") && Object.hasOwn(calls, name) ? calls[name]?.takes : undefined;
    if (!kind) return fail(unknownOption(name, calls));
    const known = given.get(name);
    if (known && ONCE.includes(kind)) return fail(`--${name} is given twice; keep one of them`);
    if (kind === "switch") {
      if (inline !== undefined) return fail(`--${name} takes no value; leave out "=..."`);
      given.set(name, [""]);
      index += 1;
      continue;
    }
    const taken = takeValue(args, index, inline, kind);
    if (!taken) return fail(`--${name} needs a value after it`);
    given.set(name, [...(known ?? []), taken.value]);
    index = taken.next;
  }
  return ok({ words, given });
}
