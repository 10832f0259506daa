/** A moment as people write it down: weekday, date and clock, in a zone. */
import { inShort, localFields, MONTHS, WEEKDAYS } from "../kitchen/time.ts";

/** `Sun Aug 15 2027, 8:05 AM`. */
export function dayAndTime(wallMs: number, zone: string): string {
  const { year, month, day, hour, minute, weekday } = localFields(wallMs, zone);
  const clock = `${hour % 12 || 12}:${String(minute).padStart(2, "0")} ${hour < 12 ? "AM" : "PM"}`;
  return `${inShort(WEEKDAYS[weekday])} ${inShort(MONTHS[month - 1])} ${day} ${year}, ${clock}`;
}
