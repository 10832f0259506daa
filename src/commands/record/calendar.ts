/** Reminders as an iCalendar (RFC 5545) file that other calendars can import. */
import ical, { ICalAlarmType, ICalCalendarMethod } from "ical-generator";
import type { Upcoming } from "../../review/shelf/upcoming.ts";

type CalendarFacts = {
  /** Distinguishes this kitchen's entries from another's; letters and digits. */
  mark: string;
  /** Counts up whenever a time was corrected, so that a later file replaces this one. */
  revision: number;
  /** When the file is made, epoch ms. */
  madeAt: number;
};

const ENTRY_MINUTES = 15;

/**
 * The file's text. Times are in UTC, which every calendar shows in its own zone, before and after a
 * clock change. An entry keeps its UID, so that a second file updates the first.
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

/** Unifies line ends, and removes what calendars cannot show. */
function plain(text: string): string {
  return text
    .replace(/\r\n|[\r\u0085\u2028\u2029]/g, "\n")
    .replace(/[\p{Cc}\p{Cs}]/gu, (one) => (one === "\n" || one === "\t" ? one : ""))
    .trim();
}
