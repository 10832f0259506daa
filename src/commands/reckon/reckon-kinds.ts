import { parseIso } from "../../kitchen/time.ts";
import { acidAtEquilibrium, VINEGAR_STRENGTH, vinegarDensityGPerMl } from "../../reckon/acid.ts";
import { airPressure } from "../../reckon/atmosphere.ts";
import {
  altitudeFromBoil,
  boilingPointAtAltitude,
  boilingPointAtPressure,
  jellingPoint,
} from "../../reckon/boiling.ts";
import { BURNERS } from "../../reckon/burner.ts";
import { heatUp } from "../../reckon/heat-up.ts";
import { lethality } from "../../reckon/lethality.ts";
import { gramsOf } from "../../reckon/measure.ts";
import type { Quantity } from "../../reckon/quantity.ts";
import {
  parsePercent,
  parseQuantity,
  parseTemperatureSpan,
  quoted,
} from "../../reckon/quantity.ts";
import type { Reckoned } from "../../reckon/reckoned.ts";
import type { Result } from "../../reckon/result.ts";
import { fail, ok } from "../../reckon/result.ts";
import { brine, SALT_BASES, SALT_KINDS, saltFor, waterGrams } from "../../reckon/salt.ts";
import { gaugeForSteam, steamTemperature } from "../../reckon/steam.ts";
import { syrup } from "../../reckon/syrup.ts";
import { readTemperatureLog } from "../../reckon/temperature-log.ts";
import type { QuantityKind } from "../../reckon/units.ts";
import { fahrenheitOf, KIND_WORDS, KPA_PER_PSI } from "../../reckon/units.ts";
import type { Reckoning } from "../call/calls.ts";
import type { Options } from "../call/options.ts";
import { optionValue, optionValues } from "../call/options.ts";

/** Reading files, for the kinds that take one; may throw. `zone` is an IANA name. */
export type ReckonFiles = {
  readFile(path: string): Promise<string> | string;
  zone: string;
};

type Given = { text: string; zone: string };

/** One thing that can be worked out, and how. */
type ReckonKind = {
  /** The option that names a file whose text `run` is given. */
  file?: string;
  run(options: Options, given: Given): Result<Reckoned>;
};

/** The text of a required option. */
function required(options: Options, name: string, example: string): Result<string> {
  const text = optionValue(options, name);
  return text === undefined
    ? fail(`--${name} is missing; add it, as --${name} ${example}`)
    : ok(text);
}

/** A required quantity of one of these kinds. */
function quantity(options: Options, name: string, kinds: QuantityKind[]): Result<Quantity> {
  const example = kinds[0] ? KIND_WORDS[kinds[0]].examples.split(" ")[0] : undefined;
  const text = required(options, name, example ?? "");
  return text.ok ? parseQuantity(text.value, kinds, `--${name}`) : text;
}

/** A required quantity as a number in its base unit. */
function amount(options: Options, name: string, kind: QuantityKind): Result<number> {
  const read = quantity(options, name, [kind]);
  return read.ok ? ok(read.value.value) : read;
}

function choice<T extends string>(
  options: Options,
  name: string,
  known: readonly T[],
): Result<T | undefined> {
  const text = optionValue(options, name);
  if (text === undefined) return ok(undefined);
  const found = known.find((one) => one === text.toLowerCase());
  return found ? ok(found) : fail(`--${name}: ${quoted(text)} is none of ${known.join(", ")}`);
}

/** The values of several results, or the first failure. */
function all<T extends readonly unknown[]>(
  ...outcomes: { [K in keyof T]: Result<T[K]> }
): Result<T> {
  const values: unknown[] = [];
  for (const outcome of outcomes) {
    if (!outcome.ok) return outcome;
    values.push(outcome.value);
  }
  return ok(values as unknown as T);
}

const LIQUID: QuantityKind[] = ["volume", "mass"];
const DRY: QuantityKind[] = ["mass", "volume"];

function boilingPoint(options: Options): Result<Reckoned> {
  const hasPressure = optionValue(options, "pressure") !== undefined;
  if (hasPressure === (optionValue(options, "altitude") !== undefined)) {
    return fail("give either --altitude or --pressure, such as --altitude 6200ft");
  }
  if (hasPressure) {
    const kpa = amount(options, "pressure", "pressure");
    return kpa.ok ? boilingPointAtPressure(kpa.value) : kpa;
  }
  const feet = amount(options, "altitude", "length");
  return feet.ok ? boilingPointAtAltitude(feet.value) : feet;
}

function reckonBrine(options: Options): Result<Reckoned> {
  const read = all<[Quantity, Quantity, (typeof SALT_KINDS)[number] | undefined]>(
    quantity(options, "salt", DRY),
    quantity(options, "water", LIQUID),
    choice(options, "salt-kind", SALT_KINDS),
  );
  return read.ok ? brine(...read.value) : read;
}

function reckonSalt(options: Options): Result<Reckoned> {
  const percent = required(options, "percent", "2.5");
  if (!percent.ok) return percent;
  const read = all<[number, Quantity, (typeof SALT_BASES)[number] | undefined]>(
    parsePercent(percent.value, { least: 0, most: 100 }, "--percent"),
    quantity(options, "for", DRY),
    choice(options, "of", SALT_BASES),
  );
  return read.ok ? saltFor(...read.value) : read;
}

/** `cucumbers=6lb`: a name and its grams. */
function produceOf(text: string): Result<{ name: string; grams: number }> {
  const equals = text.indexOf("=");
  if (equals < 1) {
    return fail(`--produce: ${quoted(text)} has no amount; write it as cucumbers=6lb`);
  }
  const name = text.slice(0, equals).trim();
  const read = parseQuantity(text.slice(equals + 1), DRY, `--produce ${name}`);
  if (!read.ok) return read;
  const { kind, value } = read.value;
  const grams = kind === "mass" ? value : gramsOf(value, name);
  if (grams === undefined) {
    return fail(`--produce: what a cup of ${quoted(name)} weighs is not known; give its weight`);
  }
  return ok({ name, grams });
}

function reckonAcid(options: Options): Result<Reckoned> {
  const strengthText = required(options, "strength", "5");
  if (!strengthText.ok) return strengthText;
  const strength = parsePercent(strengthText.value, VINEGAR_STRENGTH, "--strength");
  if (!strength.ok) {
    return fail(`${strength.error}: the vinegar's label says it; 50 grain is 5 %`);
  }
  const read = all<[Quantity, Quantity]>(
    quantity(options, "vinegar", LIQUID),
    quantity(options, "water", LIQUID),
  );
  if (!read.ok) return read;
  const [vinegar, water] = read.value;
  const produce: { name: string; grams: number }[] = [];
  for (const text of optionValues(options, "produce")) {
    const one = produceOf(text);
    if (!one.ok) return one;
    produce.push(one.value);
  }
  const extra: Record<string, number> = {};
  for (const name of ["sugar", "salt"]) {
    const text = optionValue(options, name);
    if (text === undefined) continue;
    const one = produceOf(`${name}=${text}`);
    if (!one.ok) return one;
    extra[`${name}G`] = one.value.grams;
  }
  const density = vinegarDensityGPerMl(strength.value);
  return acidAtEquilibrium({
    vinegarMl: vinegar.kind === "mass" ? vinegar.value / density : vinegar.value,
    strengthPercent: strength.value,
    waterG: waterGrams(water),
    produce,
    ...extra,
  });
}

function reckonLethality(options: Options, given: Given): Result<Reckoned> {
  const path = required(options, "readings", "FILE.csv");
  const reference = quantity(options, "reference", ["temperature"]);
  const zText = required(options, "z", "18F");
  const read = all<[string, Quantity, string]>(path, reference, zText);
  if (!read.ok) return read;
  const z = parseTemperatureSpan(read.value[2], "--z");
  if (!z.ok) return z;
  const unitIfUnsaid = /c/i.test(read.value[1].unit) ? "C" : "F";
  const log = readTemperatureLog(given.text, quoted(read.value[0]), {
    parseIso: (text) => parseIso(text, given.zone),
    unitIfUnsaid,
  });
  if (!log.ok) return log;
  const reckoned = lethality(log.value.readings, {
    temperatureC: read.value[1].value,
    zC: z.value,
  });
  if (!reckoned.ok) return reckoned;
  return ok({ ...reckoned.value, notes: [...reckoned.value.notes, ...log.value.notes] });
}

function reckonHeatUp(options: Options): Result<Reckoned> {
  const read = all<[Quantity, number, number, (typeof BURNERS)[number] | undefined]>(
    quantity(options, "water", LIQUID),
    amount(options, "from", "temperature"),
    amount(options, "power", "power"),
    choice(options, "burner", BURNERS),
  );
  if (!read.ok) return read;
  const [water, fromC, powerW, burner] = read.value;
  const toText = optionValue(options, "to") ?? "boil";
  const boil = toText.trim().toLowerCase() === "boil";
  const to = boil ? ok(undefined) : amount(options, "to", "temperature");
  if (!to.ok) return to;
  const hasAltitude = optionValue(options, "altitude") !== undefined;
  const altitude = hasAltitude ? amount(options, "altitude", "length") : ok(0);
  if (!altitude.ok) return altitude;
  const reckoned = heatUp({
    pot: { waterG: waterGrams(water) },
    fromC,
    powerW,
    altitudeFt: altitude.value,
    ...(to.value === undefined ? {} : { toC: to.value }),
    ...(burner ? { burner } : {}),
  });
  if (!reckoned.ok || hasAltitude) return reckoned;
  return ok({ ...reckoned.value, notes: [...reckoned.value.notes, "sea level, as none is given"] });
}

/** A kind that takes an altitude and at most one other quantity, each in its base unit. */
function twoNumbers(
  options: Options,
  first: [string, QuantityKind],
  work: (value: number, altitudeFt: number) => Result<Reckoned>,
): Result<Reckoned> {
  const read = all<[number, number]>(
    amount(options, ...first),
    amount(options, "altitude", "length"),
  );
  return read.ok ? work(...read.value) : read;
}

function oneNumber(
  options: Options,
  [name, kind]: [string, QuantityKind],
  work: (value: number) => Result<Reckoned>,
): Result<Reckoned> {
  const read = amount(options, name, kind);
  return read.ok ? work(read.value) : read;
}

/** `process` and `jars` need the recipes, and are worked out in `reckon-recipe.ts`. */
export type Worked = Exclude<Reckoning, "process" | "jars">;

/** Everything `brinebell reckon` works out from its arguments alone, by name. */
export const RECKON_KINDS: Readonly<Record<Worked, ReckonKind>> = {
  "air-pressure": {
    run: (options) => oneNumber(options, ["altitude", "length"], airPressure),
  },
  "boiling-point": {
    run: boilingPoint,
  },
  altitude: {
    run: (options) =>
      oneNumber(options, ["boils-at", "temperature"], (c) => altitudeFromBoil(fahrenheitOf(c))),
  },
  "jelling-point": {
    run: (options) => oneNumber(options, ["altitude", "length"], jellingPoint),
  },
  "steam-temperature": {
    run: (options) =>
      twoNumbers(options, ["gauge", "pressure"], (kpa, feet) =>
        steamTemperature(kpa / KPA_PER_PSI, feet),
      ),
  },
  gauge: {
    run: (options) =>
      twoNumbers(options, ["steam-at", "temperature"], (celsius, feet) =>
        gaugeForSteam(fahrenheitOf(celsius), feet),
      ),
  },
  brine: {
    run: reckonBrine,
  },
  salt: {
    run: reckonSalt,
  },
  syrup: {
    run: (options) => {
      const read = all<[Quantity, Quantity]>(
        quantity(options, "sugar", DRY),
        quantity(options, "water", LIQUID),
      );
      return read.ok ? syrup(...read.value) : read;
    },
  },
  acid: {
    run: reckonAcid,
  },
  lethality: {
    file: "readings",
    run: reckonLethality,
  },
  "heat-up": {
    run: reckonHeatUp,
  },
};
