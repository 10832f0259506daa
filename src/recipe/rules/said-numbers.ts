import { ONES, TEENS, TENS } from "../../reckon/number-words.ts";

const { zero: _none, ...DIGITS } = ONES;
const WORDS: Readonly<Record<string, number>> = { ...DIGITS, ...TEENS, ...TENS };
const anyOf = (words: object) => Object.keys(words).join("|");

const TENS_AND_UNIT = new RegExp(`\\b(${anyOf(TENS)})[- ](${anyOf(DIGITS)})\\b`, "g");
const WORD = new RegExp(`\\b(${anyOf(WORDS)})\\b`, "g");

const numberOf = (word: string) => WORDS[word] ?? 0;

/**
 * What is said, in lower case and with its numbers in digits, fractions added up: `one and a
 * quarter inches` becomes `1.25 inches`, `half an hour` `0.5 hour`, `twenty-five` `25`.
 */
export function withDigits(said: string): string {
  return said
    .toLowerCase()
    .replace(/\s+/g, " ")
    .replace(/\bthree[- ]quarters?( of)?( an?)?\b/g, "0.75")
    .replace(/\b(a |one )?(quarter|half|eighth)( of)?( an?)?\b/g, (_all, _a, part: string) => {
      return { quarter: "0.25", half: "0.5", eighth: "0.125" }[part] ?? part;
    })
    .replace(TENS_AND_UNIT, (_all, tens: string, unit: string) => {
      return String(numberOf(tens) + numberOf(unit));
    })
    .replace(WORD, (word) => String(numberOf(word)))
    .replace(/\b(\d+) (\d)\/(\d)\b/g, (_all, whole, over, under) => {
      return String(Number(whole) + Number(over) / Number(under));
    })
    .replace(/\b(\d)\/(\d)\b/g, (_all, over, under) => String(Number(over) / Number(under)))
    .replace(/\ban? (?=inch|hour|minute)/g, "1 ")
    .replace(/\b(\d+) and (0\.\d+)\b/g, (_all, whole, part) =>
      String(Number(whole) + Number(part)),
    );
}

/** What is said, one sentence at a time, numbers in digits. */
export function sentences(said: string): string[] {
  return withDigits(said).split(/(?:[.!?;](?:\s|$))/);
}
