/** What was measured, found anywhere in a sentence: a pressure, a temperature, an altitude. */
import type { Raw } from "../intents/meaning.ts";
import { moment, target } from "./common-finders.ts";
import type { Scan } from "./scan.ts";

/** What a gauge that is read shows at most, psi; a number above it means something else. */
const PSI_MOST = 30;

export function pressure(scan: Scan): Raw | undefined {
  const numbers = scan.all<number>("number", ({ next, value }) => {
    return value >= 0 && !/^(minutes?|hours?|jars?|pints?|quarts?|ago)$/.test(scan.word(next));
  });
  const kpa = /\b(kpa|kilopascals?)\b/.test(scan.joined);
  const unit = numbers.filter(({ next }) =>
    /^(pounds?|psi|kpa|kilopascals?)$/.test(scan.word(next)),
  );
  const found = scan.chosen(unit) ?? scan.chosen(numbers);
  if (!found || (!kpa && found.value > PSI_MOST)) return undefined;
  return { value: found.value, ...(kpa ? { unit: "kPa" } : {}), ...target(scan), ...moment(scan) };
}

export function temperature(scan: Scan): Raw | undefined {
  const found = scan.one<number>("temperature");
  if (!found) return undefined;
  const unit = /\b(celsius|centigrade|c)\b/.test(scan.joined)
    ? { unit: "C" }
    : /\b(fahrenheit|f)\b/.test(scan.joined)
      ? { unit: "F" }
      : {};
  return { value: found.value, ...unit, ...target(scan), ...moment(scan) };
}

const METERS = /\b(meters?|metres?)\b/;

export function altitude(scan: Scan): Raw | undefined {
  const found = scan.one<number>("number", ({ value }) => value >= 100 || value <= 0);
  if (!found) return undefined;
  return METERS.test(scan.joined) ? { metres: found.value } : { feet: found.value };
}
