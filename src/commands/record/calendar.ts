/** Reminders as an iCalendar file that other calendars can import, to the letter of RFC 5545. */
import type { Upcoming } from "../../review/shelf/upcoming.ts";

type CalendarFacts = {
  /** Distinguishes this kitchen's entries from another's; letters and digits. */
  mark: string;
  /** Counts up whenever a time was corrected, so that a later file replaces this one. */
  revision: number;
  /** When the file is made, epoch ms. */
  madeAt: number;
  /** The calendar that this one replaces, or nothing: what ended since is cancelled in it. */
  before: string;
  /** Ids of everything that still comes. */
  coming: ReadonlySet<string>;
};

const ENTRY_MINUTES = 15;
/** Section 3.1: no line is longer than this without its line end; the rest goes on in the next. */
const LONGEST_LINE_BYTES = 75;

/** When the last entry of an earlier calendar begins, epoch ms; undefined where it has none. */
export function lastEntryAt(before: string): number | undefined {
  const starts = [...before.matchAll(/^DTSTART:(\d{8}T\d{6}Z)\r?$/gm)].map(([, at = ""]) => at);
  const last = starts.sort().at(-1);
  return last === undefined ? undefined : instantFrom(last);
}

/** `20270814T140000Z` as an instant. */
function instantFrom(utcText: string): number {
  return Date.parse(utcText.replace(/^(....)(..)(..T..)(..)(..Z)$/, "$1-$2-$3:$4:$5"));
}

/** Entries of the calendar before that lie ahead and come no more: with their UID, cancelled. */
function endedLines({ before, coming, mark, madeAt }: CalendarFacts): string[] {
  const unfolded = before.replace(/\r?\n[ \t]/g, "").replace(/\r/g, "");
  const still = new Set([...coming].map((id) => uidOf(id, mark)));
  return [...unfolded.matchAll(/^BEGIN:VEVENT\n([\s\S]*?)^END:VEVENT$/gm)].flatMap(
    ([, body = ""]) => {
      const value = (name: string) => new RegExp(`^${name}:(.*)$`, "m").exec(body)?.[1] ?? "";
      const uid = value("UID");
      const ahead = instantFrom(value("DTSTART")) > madeAt;
      if (!ahead || !uid.endsWith(`.${mark}@brinebell`) || still.has(uid)) return [];
      return [
        "BEGIN:VEVENT",
        `UID:${uid}`,
        `DTSTAMP:${utc(madeAt)}`,
        `DTSTART:${value("DTSTART")}`,
        `DTEND:${value("DTEND")}`,
        `SEQUENCE:${Number(value("SEQUENCE")) + (value("STATUS") === "CANCELLED" ? 0 : 1)}`,
        `LAST-MODIFIED:${utc(madeAt)}`,
        `SUMMARY:${value("SUMMARY")}`,
        "STATUS:CANCELLED",
        "END:VEVENT",
      ];
    },
  );
}

function uidOf(id: string, mark: string): string {
  return `${id.replace(/[^A-Za-z0-9./-]/g, "-")}.${mark}@brinebell`;
}

/**
 * The file's text; there has to be something in it, since a calendar may not be empty. Times are
 * in UTC, which every calendar shows in its own zone, before and after a clock change. An entry
 * keeps its UID, so that a second file updates the first.
 */
export function calendarText(items: readonly Upcoming[], facts: CalendarFacts): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//brinebell//reminders//EN",
    "METHOD:PUBLISH",
    "X-WR-CALNAME:Brinebell",
    ...items.flatMap((item) => eventLines(item, facts)),
    ...endedLines(facts),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join("");
}

function eventLines(item: Upcoming, { mark, revision, madeAt }: CalendarFacts): string[] {
  const title = escaped(plain(item.title) || "Reminder");
  const detail = plain(item.detail);
  return [
    "BEGIN:VEVENT",
    `UID:${uidOf(item.id, mark)}`,
    `DTSTAMP:${utc(madeAt)}`,
    `DTSTART:${utc(item.at)}`,
    `DTEND:${utc(item.at + ENTRY_MINUTES * 60_000)}`,
    `SEQUENCE:${revision}`,
    `LAST-MODIFIED:${utc(item.changedAt)}`,
    `SUMMARY:${title}`,
    ...(detail ? [`DESCRIPTION:${escaped(detail)}`] : []),
    // Alarms come after all of the entry's own lines.
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    "TRIGGER:PT0S",
    `DESCRIPTION:${title}`,
    "END:VALARM",
    "END:VEVENT",
  ];
}

/** `20270814T140000Z`. */
function utc(ms: number): string {
  return `${new Date(ms).toISOString().slice(0, 19).replace(/[-:]/g, "")}Z`;
}

/** Section 3.3.11. */
function escaped(text: string): string {
  return text.replace(/[\\;,]/g, "\\$&").replace(/\n/g, "\\n");
}

/** A long line in pieces, each but the first after a space; no character is cut in two. */
function folded(line: string): string {
  const pieces: string[] = [];
  let piece = "";
  let bytes = 0;
  for (const character of line) {
    const more = Buffer.byteLength(character);
    if (bytes + more > LONGEST_LINE_BYTES) {
      pieces.push(piece);
      piece = "";
      // The space that goes before it.
      bytes = 1;
    }
    piece += character;
    bytes += more;
  }
  return [...pieces, piece].join("\r\n ");
}

/** Unifies line ends, and removes what calendars cannot show. */
function plain(text: string): string {
  return text
    .replace(/\r\n|[\r\u0085\u2028\u2029]/g, "\n")
    .replace(/[\p{Cc}\p{Cs}]/gu, (one) => (one === "\n" || one === "\t" ? one : ""))
    .trim();
}
