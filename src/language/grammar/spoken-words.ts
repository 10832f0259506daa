const UNITS = "one two three four five six seven eight nine".split(" ");
const TEENS =
  "ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split(" ");
const TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** A whole number below 1,000 in words: 182 is "one hundred eighty two". */
export function numberInWords(value: number): string {
  if (value === 0) return "zero";
  const below = value % 100;
  const tens =
    below < 20
      ? ([...["", ...UNITS], ...TEENS][below] ?? "")
      : [TENS[Math.floor(below / 10) - 2], UNITS[(below % 10) - 1]].filter(Boolean).join(" ");
  const hundreds = value >= 100 ? `${UNITS[Math.floor(value / 100) - 1]} hundred` : "";
  return [hundreds, tens].filter((part) => part !== "").join(" ");
}

/** Pairs of words that people contract, and how. */
const RUN_TOGETHER: [RegExp, string][] = [
  [/\b(it|that|what) is\b(?! *$)/g, "$1's"],
  [/\b(they|we) are\b(?! *$)/g, "$1're"],
  [/\b(canner|heat|pressure) is\b(?! *$)/g, "( $1's | $1 is )"],
  [/\bi am\b/g, "i'm"],
  [/\blet us\b/g, "let's"],
  [/\b(did|do|does|is|are) not\b/g, "$1n't"],
];

/** Words as they are spoken: "it is" as "it's". */
export function runTogether(words: string): string {
  return RUN_TOGETHER.reduce((so, [apart, together]) => so.replace(apart, together), words);
}
