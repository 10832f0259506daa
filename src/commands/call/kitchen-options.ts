import { jarSizeOf } from "../../recipe/jar-volume.ts";
import type { Pack } from "../../recipe/recipe.ts";
import {
  type GaugeKind,
  JAR_SIZES,
  type JarSize,
  METHODS,
  type Method,
} from "../../recipe/recipe.ts";
import { parseQuantity, quoted } from "../../reckon/quantity.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { G_PER_LB, KPA_PER_PSI } from "../../reckon/units.ts";
import { type Options, optionValue } from "./options.ts";

/**
 * Options shared by several commands, which describe this kitchen and what goes into it. Each is
 * undefined where it is not given; an error is one line with the option, the fault and the fix.
 */

/** What a canner holds: one number for any jar, or one for each size. */
export type CannerHolds = Partial<Record<JarSize, number>> & { any?: number };

export type KitchenWish = {
  altitudeFt?: number;
  jar?: JarSize;
  pack?: Pack;
  method?: Method;
  gauge?: GaugeKind;
  atPsi?: number;
  forLb?: number;
  cannerHolds?: CannerHolds;
};

const MOST_JARS = 100;
const HEAVIEST_LB = 2_000;

/** `9`, or `9pint,7quart`: what the canner holds by jar size. */
export function parseCannerHolds(text: string): Result<CannerHolds> {
  const holds: CannerHolds = {};
  const mend = "write 9, or 9pint,7quart";
  for (const part of text.split(",")) {
    const match = /^\s*(\d{1,3})\s*([a-z -]*)$/i.exec(part);
    const count = Number(match?.[1] ?? 0);
    const size = match?.[2]?.trim() ?? "";
    const jar = size === "" ? "any" : jarSizeOf(size);
    if (!match || !jar || count < 1 || count > MOST_JARS) {
      return fail(`--canner-holds: ${quoted(part)} is not a number of jars; ${mend}`);
    }
    if (holds[jar] !== undefined) return fail(`--canner-holds: ${quoted(size)} is given twice`);
    holds[jar] = count;
  }
  return ok(holds);
}

/** Jars of a size that the canner holds; undefined where that was not given. */
export function holdsOf(holds: CannerHolds | undefined, jar: JarSize | null): number | undefined {
  return (jar ? holds?.[jar] : undefined) ?? holds?.any;
}

/**
 * The altitude a call uses: its own, taken as exact, else the recorded kitchen's, which may be
 * uncertain.
 */
export function altitudeOfCall(
  wish: KitchenWish,
  kept: { altitudeFt?: number | null; altitudeUncertaintyFt?: number } = {},
): { altitudeFt: number | undefined; altitudeUncertaintyFt: number } {
  const { altitudeFt } = wish;
  if (altitudeFt !== undefined) return { altitudeFt, altitudeUncertaintyFt: 0 };
  const { altitudeUncertaintyFt = 0 } = kept;
  return { altitudeFt: kept.altitudeFt ?? undefined, altitudeUncertaintyFt };
}

function choice<T extends string>(name: string, text: string, known: readonly T[]): Result<T> {
  const found = known.find((one) => one === text.toLowerCase());
  return found ? ok(found) : fail(`--${name}: ${quoted(text)} is none of ${known.join(", ")}`);
}

function jarSize(text: string): Result<JarSize> {
  const size = jarSizeOf(text);
  return size ? ok(size) : fail(`--jar: ${quoted(text)} is none of ${JAR_SIZES.join(", ")}`);
}

function quantity(
  name: string,
  text: string,
  kind: "length" | "mass" | "pressure",
  perUnit: number,
): Result<number> {
  const read = parseQuantity(text, [kind], `--${name}`);
  if (!read.ok) return read;
  const value = read.value.value / perUnit;
  if (kind === "mass" && value <= 0) return fail(`--${name}: ${quoted(text)} is nothing`);
  if (kind === "mass" && value > HEAVIEST_LB) {
    const most = `${withCommas(HEAVIEST_LB)} lb`;
    return fail(`--${name}: ${quoted(text)} is more than any kitchen puts up; at most ${most}`);
  }
  return ok(value);
}

const READERS: {
  [K in keyof KitchenWish]-?: [string, (text: string) => Result<NonNullable<KitchenWish[K]>>];
} = {
  altitudeFt: ["altitude", (text) => quantity("altitude", text, "length", 1)],
  jar: ["jar", jarSize],
  pack: ["pack", (text) => choice("pack", text, ["raw", "hot"])],
  method: ["method", (text) => choice("method", text, METHODS)],
  gauge: ["gauge", (text) => choice("gauge", text, ["dial", "weighted"])],
  atPsi: ["at", (text) => quantity("at", text, "pressure", KPA_PER_PSI)],
  forLb: ["for", (text) => quantity("for", text, "mass", G_PER_LB)],
  cannerHolds: ["canner-holds", parseCannerHolds],
};

/** Every shared option that was given, read; or the error of the first that cannot be read. */
export function readKitchenOptions(options: Options): Result<KitchenWish> {
  const wish: Record<string, unknown> = {};
  for (const [key, [name, read]] of Object.entries(READERS)) {
    const text = optionValue(options, name);
    if (text === undefined) continue;
    const outcome: Result<unknown> = read(text);
    if (!outcome.ok) return outcome;
    wish[key] = key === "atPsi" ? Math.round((outcome.value as number) * 100) / 100 : outcome.value;
  }
  return ok(wish as KitchenWish);
}
