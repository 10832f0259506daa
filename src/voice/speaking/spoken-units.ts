/**
 * Units as people write them in recipes, in the words a voice should say: `11 psi`, `1/4 in`,
 * `20 to 25 min`. No engine reads them alike, and most spell them out.
 */

/** Denominators with a name of their own, in the singular. */
const PARTS: Readonly<Record<number, string>> = {
  2: "half",
  3: "third",
  4: "quarter",
  5: "fifth",
  6: "sixth",
  8: "eighth",
  10: "tenth",
  12: "twelfth",
  16: "sixteenth",
  32: "thirty-second",
};
const TOPS = ["", "a", "two", "three", "four", "five", "six", "seven", "eight", "nine"];

/** A fraction in words: `a quarter`, `five eighths`; undefined where nobody would say it so. */
export function fractionWords(top: number, bottom: number): string | undefined {
  const part = PARTS[bottom];
  const count = TOPS[top];
  if (!part || !count || top >= bottom) return undefined;
  if (top === 1) return bottom === 8 ? "an eighth" : `a ${part}`;
  return `${count} ${part}s`;
}

/** [as written, one of it, several of it]; capital letters only where they tell two units apart. */
const UNITS: readonly [written: string, one: string, more: string][] = [
  ["psig?", "pound per square inch", "pounds per square inch"],
  ["kpa", "kilopascal", "kilopascals"],
  ["ft", "foot", "feet"],
  ["lbs?", "pound", "pounds"],
  ["fl ?oz", "fluid ounce", "fluid ounces"],
  ["oz", "ounce", "ounces"],
  ["tbsps?|tbs", "tablespoon", "tablespoons"],
  ["tsps?", "teaspoon", "teaspoons"],
  ["qts?", "quart", "quarts"],
  ["pts?", "pint", "pints"],
  ["gals?", "gallon", "gallons"],
  ["mins?", "minute", "minutes"],
  ["hrs?|h", "hour", "hours"],
  ["secs?", "second", "seconds"],
  ["wks?", "week", "weeks"],
  ["yrs?", "year", "years"],
  ["kg", "kilogram", "kilograms"],
  ["g", "gram", "grams"],
  ["ml", "milliliter", "milliliters"],
  ["l", "liter", "liters"],
  ["cm", "centimeter", "centimeters"],
  ["mm", "millimeter", "millimeters"],
];
const anyCase = (written: string) =>
  written.replace(/[a-z]/g, (letter) => `[${letter}${letter.toUpperCase()}]`);

/** Letters that mean one thing small and another large. */
const LETTERS: readonly [written: string, one: string, more: string][] = [
  ["T", "tablespoon", "tablespoons"],
  ["t", "teaspoon", "teaspoons"],
  ["c", "cup", "cups"],
  ["C", "degree Celsius", "degrees Celsius"],
  ["F", "degree", "degrees"],
];

const PART_NAMES = Object.values(PARTS).join("|");
const FRACTION = `(?:an?|one|two|three|five|seven) (?:${PART_NAMES})s?`;
const NUMBER = `(?:\\d[\\d,]*(?:\\.\\d+)?(?: and ${FRACTION})?|\\b${FRACTION})`;
/** A point that belongs to the unit, and not to the end of the sentence. */
const POINT = "(?:\\.(?= ?[a-z\\d,]))?";
const END = "(?![A-Za-z\\d'-])";

function isOne(number: string): boolean {
  return number === "1" || new RegExp(`^${FRACTION}$`).test(number);
}

function spoken(text: string, [written, one, more]: (typeof UNITS)[number]): string {
  const found = new RegExp(`(${NUMBER})( |-)?(?:${written})${END}${POINT}`, "g");
  return text.replace(found, (_all, number: string, joint: string | undefined) => {
    const single = isOne(number) || joint === "-";
    return `${number} ${single ? one : more}`;
  });
}

/** After a number, `in` is inches before these, and a preposition before anything else. */
const INCH_NOUNS =
  "headspace|pieces?|slices?|cubes?|thick|wide|long|deep|across|below|above|over|from|of|or|and|to";
const INCH = new RegExp(
  `(${NUMBER})( |-)?in(?:${END}\\.(?= ?[a-z\\d,]|$| [A-Z])|(?=,|\\?|!)|(?= (?:${INCH_NOUNS})\\b))`,
  "g",
);
/** Part of an inch, unless something is in the jar. */
const PART_INCH = new RegExp(
  `(\\b${FRACTION})( |-)?in${END}(?! (?:the|an?|each|every|all|your|my|this|that|it|cold|hot)\\b)`,
  "g",
);

function spokenInches(text: string): string {
  const inches = (all: string, number: string, joint: string | undefined, offset: number) => {
    const ends = all.endsWith(".") && /^(?:$| [A-Z])/.test(text.slice(offset + all.length));
    return `${number} ${isOne(number) || joint === "-" ? "inch" : "inches"}${ends ? "." : ""}`;
  };
  return text
    .replace(INCH, (all, number, joint, offset) => inches(all, number, joint, offset))
    .replace(PART_INCH, (_all, number, joint) => inches("", number, joint, 0));
}

/**
 * A text in the readable alphabet, fractions already in words, with its units in words. A `C` after
 * a small number is cups of somebody who writes them large: nothing in a kitchen is at 2 °C.
 */
export function spokenUnits(text: string): string {
  const cups = text.replace(/\b([1-9]|1[0-2])( ?)C(?![A-Za-z\d'-])/g, "$1$2c");
  const named = UNITS.reduce(
    (so, [written, one, more]) => spoken(so, [anyCase(written), one, more]),
    cups,
  );
  const lettered = LETTERS.reduce(spoken, named);
  return spokenInches(lettered);
}
