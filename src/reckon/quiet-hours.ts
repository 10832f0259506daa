/** The night as it is written: `22:00-06:00`. */

/** From and to, in minutes of the day. */
export type QuietHours = { fromMinute: number; toMinute: number };

const DAY_MINUTES = 24 * 60;

/** Reads `22:00-06:00`; undefined where it is no span of hours. */
function parseQuietHours(text: string): QuietHours | undefined {
  const match = /^(\d{1,2}):(\d{2})-(\d{1,2}):(\d{2})$/.exec(text.trim());
  if (!match) return undefined;
  const fromMinute = Number(match[1]) * 60 + Number(match[2]);
  const toMinute = Number(match[3]) * 60 + Number(match[4]);
  const fits = fromMinute < DAY_MINUTES && toMinute < DAY_MINUTES && fromMinute !== toMinute;
  return fits ? { fromMinute, toMinute } : undefined;
}

/** As `parseQuietHours`, with null for `none`. */
export function nightOf(text: string): QuietHours | null | undefined {
  return text.trim() === "none" ? null : parseQuietHours(text);
}

/** "21:30": a minute of the day. */
export function clockText(minute: number): string {
  const two = (value: number) => String(value).padStart(2, "0");
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}

/** "21:30 to 06:30", or "none". */
export function nightText(quiet: QuietHours | null): string {
  return quiet ? `${clockText(quiet.fromMinute)} to ${clockText(quiet.toMinute)}` : "none";
}
