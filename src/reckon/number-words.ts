/** The words numbers are made of, with their values. */
export const ONES: Readonly<Record<string, number>> = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
};
export const TEENS: Readonly<Record<string, number>> = {
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
};
export const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};

const SMALL = [...Object.keys(ONES), ...Object.keys(TEENS)];

/** A whole number below sixty in words, zero as "no"; any other in digits. */
export function numberWords(value: number): string {
  if (!Number.isInteger(value) || value < 0 || value >= 60) return String(value);
  if (value === 0) return "no";
  const small = SMALL[value];
  if (small !== undefined) return small;
  const tens = Object.keys(TENS).find((word) => TENS[word] === value - (value % 10)) ?? "";
  return value % 10 === 0 ? tens : `${tens}-${SMALL[value % 10]}`;
}

/** "one minute", "ten minutes". */
export function countWords(value: number, unit: string): string {
  return `${numberWords(value)} ${unit}${value === 1 ? "" : "s"}`;
}

/** "a year", "a month"; any other number of days is counted. */
export function daysWords(days: number): string {
  return days === 365 ? "a year" : days === 30 ? "a month" : countWords(days, "day");
}

/** "1 inch", "2 inches", "half an inch". */
export function inchesWords(inches: number): string {
  return INCHES[inches] ?? `${inches} inches`;
}

/** Headspaces as they are said. */
export const INCHES: Readonly<Record<number, string>> = {
  0.25: "a quarter inch",
  0.5: "half an inch",
  1: "1 inch",
  1.25: "1 and a quarter inches",
};
