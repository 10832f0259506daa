/** Durations as recipe files write them: `10 min`, `3 h`, `1 h 30 min`, `4 wk`. */

const UNIT_MINUTES: Record<string, number> = {
  min: 1,
  minute: 1,
  minutes: 1,
  h: 60,
  hour: 60,
  hours: 60,
  d: 1440,
  day: 1440,
  days: 1440,
  wk: 10080,
  week: 10080,
  weeks: 10080,
  month: 43800,
  months: 43800,
  year: 525600,
  years: 525600,
};

/** The longest duration a recipe may name, minutes: ten years. */
export const LONGEST_MINUTES = 10 * 525600;

const PART = /^(\d+(?:\.\d+)?)\s*([a-z]+)\s*/;

/**
 * Minutes of a duration with its unit. Undefined where it is not a duration, is zero, or is longer
 * than ten years.
 */
export function parseDuration(text: string): number | undefined {
  let rest = text.trim().toLowerCase();
  if (rest === "" || rest.length > 40) return undefined;
  let minutes = 0;
  while (rest !== "") {
    const part = PART.exec(rest);
    const unit = UNIT_MINUTES[part?.[2] ?? ""];
    if (!part || unit === undefined) return undefined;
    minutes += Number(part[1]) * unit;
    rest = rest.slice(part[0].length);
  }
  return minutes > 0 && minutes <= LONGEST_MINUTES ? minutes : undefined;
}

/** Shortest and longest of a window: `3 h to 4 h`, `up to 1 year`, or one duration for both. */
export function parseWindow(text: string): { minMinutes: number; maxMinutes: number } | undefined {
  if (text.length > 80) return undefined;
  const upTo = /^up to (.+)$/i.exec(text.trim());
  if (upTo) {
    const max = parseDuration(upTo[1] ?? "");
    return max === undefined ? undefined : { minMinutes: 0, maxMinutes: max };
  }
  const [low = "", high = low, ...more] = text.split(/\s+to\s+/i);
  const minMinutes = parseDuration(low);
  const maxMinutes = parseDuration(high);
  if (more.length > 0 || minMinutes === undefined || maxMinutes === undefined) return undefined;
  return minMinutes <= maxMinutes ? { minMinutes, maxMinutes } : undefined;
}

/** A duration as people say it, in the largest unit that reads well: `4 weeks`, `1 h 30 min`. */
export function formatMinutes(minutes: number): string {
  for (const [unit, size] of [
    ["year", 525600],
    ["week", 10080],
    ["day", 1440],
  ] as const) {
    if (minutes >= 2 * size && minutes % size === 0) return `${minutes / size} ${unit}s`;
    if (minutes === size && unit !== "day") return `1 ${unit}`;
  }
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes - hours * 60);
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}
