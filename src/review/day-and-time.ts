/** A moment as people write it down: weekday, date and clock, in a zone. */
import { localFields } from "../kitchen/time.ts";

const WEEKDAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
const MONTHS = [
  ...["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
];

/** `Sun Aug 15 2027, 8:05 AM`. */
export function dayAndTime(wallMs: number, zone: string): string {
  const { year, month, day, hour, minute, weekday } = localFields(wallMs, zone);
  const clock = `${hour % 12 || 12}:${String(minute).padStart(2, "0")} ${hour < 12 ? "AM" : "PM"}`;
  return `${WEEKDAYS[weekday]} ${MONTHS[month - 1]} ${day} ${year}, ${clock}`;
}
