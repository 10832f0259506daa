/** Reminders as an iCalendar (RFC 5545) file that other calendars take. */
import ical, { ICalAlarmType, ICalCalendarMethod } from "ical-generator";
import type { Upcoming } from "../../review/shelf/upcoming.ts";

type CalendarFacts = {
  /** Tells this kitchen's entries from another's; letters and digits. */
  mark: string;
  /** Counts up whenever a time was put right, so that a later file takes the place of this. */
  revision: number;
  /** When the file is made, epoch ms. */
  madeAt: number;
};

const ENTRY_MINUTES = 15;

/**
 * The file's text. Times are in UTC, which every calendar shows in its own zone, on either side of
 * a change of the clocks. An entry keeps its UID, so that a second file updates the first.
 */
export function calendarText(items: readonly Upcoming[], facts: CalendarFacts): string {
  const calendar = ical({
    name: "Brinebell",
    prodId: { company: "brinebell", product: "reminders" },
    method: ICalCalendarMethod.PUBLISH,
  });
  for (const item of items) {
    const title = plain(item.title) || "Reminder";
    const event = calendar.createEvent({
      id: `${item.id.replace(/[^A-Za-z0-9./-]/g, "-")}.${facts.mark}@brinebell`,
      start: new Date(item.at),
      end: new Date(item.at + ENTRY_MINUTES * 60_000),
      stamp: new Date(facts.madeAt),
      lastModified: new Date(item.changedAt),
      sequence: facts.revision,
      summary: title,
    });
    const detail = plain(item.detail);
    if (detail) event.description(detail);
    event.createAlarm({ type: ICalAlarmType.display, trigger: 0, description: title });
  }
  return calendar.toString();
}

/** Line ends of any kind as one, and nothing that no calendar can show. */
function plain(text: string): string {
  return text
    .replace(/\r\n|[\r\u0085\u2028\u2029]/g, "\n")
    .replace(/[\p{Cc}\p{Cs}]/gu, (one) => (one === "\n" || one === "\t" ? one : ""))
    .trim();
}
