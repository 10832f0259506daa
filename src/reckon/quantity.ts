import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import type { QuantityKind } from "./units.ts";
import { KIND_WORDS, UNITS } from "./units.ts";

/** A measured amount. `value` is in the base unit of its kind (`BASE_UNITS`). */
export type Quantity = {
  kind: QuantityKind;
  value: number;
  /** The unit as it was said: `cups`, `F`. Of a compound amount, its first. */
  unit: string;
};

const VULGAR = "¼½¾⅓⅔⅛⅜⅝⅞";
const VULGAR_VALUES = [1 / 4, 1 / 2, 3 / 4, 1 / 3, 2 / 3, 1 / 8, 3 / 8, 5 / 8, 7 / 8];
const NUMBER = new RegExp(
  `^\\s*([+\\-−]?)\\s*(?:(\\d+)\\s*/\\s*(\\d+)` +
    `|((?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?|\\.\\d+)` +
    `(?:(?:\\s+|\\s*-\\s*)(\\d+)\\s*/\\s*(\\d+)|\\s*([${VULGAR}]))?` +
    `|([${VULGAR}]))`,
);
const LONGEST = 80;

/**
 * The number a text begins with, and what follows it: `3 1/2 cups` gives 3.5 and ` cups`.
 * Understands decimals, thousands commas, `1/2`, `3 1/2`, `3-1/2` and `3½`; a sign in front.
 * Undefined where the text does not begin with one, or with a fraction over zero.
 */
export function readNumber(text: string): { value: number; rest: string } | undefined {
  const match = NUMBER.exec(text);
  if (!match) return undefined;
  const [all, sign, top, bottom, whole, partTop, partBottom, partVulgar, vulgar] = match;
  let value = 0;
  if (top !== undefined) value = Number(top) / Number(bottom);
  if (whole !== undefined) value = Number(whole.replaceAll(",", ""));
  if (partTop !== undefined) value += Number(partTop) / Number(partBottom);
  const glyph = partVulgar ?? vulgar;
  if (glyph !== undefined) value += VULGAR_VALUES[VULGAR.indexOf(glyph)] ?? Number.NaN;
  if (!Number.isFinite(value)) return undefined;
  return { value: sign === "-" || sign === "−" ? -value : value, rest: text.slice(all.length) };
}

/** The words of a unit, without what people write around it: `° F`, `deg. F`, `cups and`. */
function unitKey(said: string): string {
  return said
    .toLowerCase()
    .replace(/[.]/g, "")
    .replace(/°|\bdeg(?:ree)?s?\b/g, " ")
    .replace(/(?:\band\b|[+,])\s*$/, "")
    .replace(/\s+/g, " ")
    .trim();
}

/** True for a word that is a unit here: `ft`, `cups`, `F`. */
export function isUnit(word: string): boolean {
  return UNITS.has(unitKey(word));
}

/** Text as it may stand in a one-line message. */
export function quoted(text: string): string {
  const plain = text.replace(/[\p{C}\s]+/gu, " ");
  return `"${plain.length > 40 ? `${plain.slice(0, 37)}...` : plain}"`;
}

type Part = { kind: QuantityKind; value: number; unit: string };

/** The first number with its unit, and the text after them; or what is wrong. */
function readPart(text: string): Result<{ part: Part | null; number: number; rest: string }> {
  const number = readNumber(text);
  if (!number) return fail(`${quoted(text)} does not begin with a number`);
  if (/^[.,/\d]/.test(number.rest)) {
    return fail(`the number in ${quoted(text)} is not clear; write 1.5, 1/2 or 3 1/2`);
  }
  const end = number.rest.search(new RegExp(`[\\d${VULGAR}]`));
  const said = (end < 0 ? number.rest : number.rest.slice(0, end)).trim();
  const rest = end < 0 ? "" : number.rest.slice(end);
  const key = unitKey(said);
  if (key === "") return ok({ part: null, number: number.value, rest });
  const unit = UNITS.get(key);
  if (!unit) return fail(`${quoted(said)} is not a unit known here`);
  const value = number.value * unit.factor + (unit.offset ?? 0);
  const name = said.replace(/(?:\band\b|[+,])\s*$/, "").trim();
  return ok({ part: { kind: unit.kind, value, unit: name }, number: number.value, rest });
}

const SIGNED: readonly QuantityKind[] = ["length", "temperature"];

/**
 * A quantity as people write it: `6200ft`, `203 F`, `3 1/2 cups`, `5 lb 4 oz`, `1h30min`.
 * `wanted` are the kinds that may be said here, `where` the option or place for the message.
 * Anything else is an error: no unit, an unknown unit, a different kind, a negative amount of
 * something that cannot be negative.
 */
export function parseQuantity(
  text: string,
  wanted: readonly QuantityKind[],
  where: string,
): Result<Quantity> {
  const examples = wanted.map((kind) => KIND_WORDS[kind].examples).join(", ");
  const mend = `for example ${examples}`;
  if (text.length > LONGEST) return fail(`${where}: ${quoted(text)} is too long; write ${mend}`);
  if (text.trim() === "") return fail(`${where}: nothing is said; write ${mend}`);
  let whole: Part | undefined;
  let rest = text;
  while (rest.trim() !== "") {
    const read = readPart(rest);
    if (!read.ok) return fail(`${where}: ${read.error}; write ${mend}`);
    const { part } = read.value;
    if (!part) return fail(`${where}: ${quoted(text)} has no unit; write it with one, ${mend}`);
    if (whole && (whole.kind !== part.kind || part.kind === "temperature")) {
      return fail(`${where}: ${quoted(text)} is not one quantity; write ${mend}`);
    }
    if (read.value.number < 0 && (whole || !SIGNED.includes(part.kind))) {
      const name = KIND_WORDS[part.kind].name;
      return fail(`${where}: ${quoted(text)}: ${name} cannot be negative; write ${mend}`);
    }
    whole = whole ? { ...whole, value: whole.value + part.value } : part;
    rest = read.value.rest;
  }
  if (!whole) return fail(`${where}: nothing is said; write ${mend}`);
  if (!wanted.includes(whole.kind)) {
    const names = wanted.map((kind) => KIND_WORDS[kind].name).join(" or ");
    return fail(
      `${where}: ${quoted(text)} is ${KIND_WORDS[whole.kind].name}; ${names} is wanted, ${mend}`,
    );
  }
  return ok(whole);
}

/**
 * A difference of temperatures, degrees Celsius: `18F` is 10. A reading would take 32 off first.
 */
export function parseTemperatureSpan(text: string, where: string): Result<number> {
  const read = parseQuantity(text, ["temperature"], where);
  if (!read.ok) return read;
  const isFahrenheit = unitKey(read.value.unit).startsWith("f");
  return ok(isFahrenheit ? read.value.value + 160 / 9 : read.value.value);
}

/** A percent: `5`, `5%`, `2 1/2 %`; an error outside `least` to `most`. */
export function parsePercent(
  text: string,
  bounds: { least: number; most: number },
  where: string,
): Result<number> {
  const number = readNumber(text);
  if (!number || !/^\s*(?:%|percent)?\s*$/i.test(number.rest)) {
    return fail(`${where}: ${quoted(text)} is not a percentage; write a number, for example 5`);
  }
  if (number.value < bounds.least || number.value > bounds.most) {
    const span = `${bounds.least} to ${bounds.most} %`;
    return fail(`${where}: ${quoted(text)} is outside ${span}; check the number`);
  }
  return ok(number.value);
}
