/** `brinebell reminders`: what is coming up, as a list or as a calendar file. */

import { wallOf } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import { dayAndTime } from "../../review/day-and-time.ts";
import { kitchenMark, revision, upcoming } from "../../review/shelf/reminders.ts";
import type { Upcoming } from "../../review/shelf/upcoming.ts";
import { readKitchen } from "../../session/reading/read-kitchen.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, optionValue, parseOptions } from "../call/options.ts";
import { writeOutput } from "../call/write-output.ts";
import type { Machine } from "../machine.ts";

const LIST_DAYS = 30;
/** A calendar reaches past the next season, so that best-by dates and seed tests are in it. */
const CALENDAR_DAYS = 400;
const MOST_DAYS = 3660;
const WHEN_WIDTH = 27;

/** Lists or exports what is due within `--days` of `wallMs`, without opening the kitchen. */
export async function remindersCommand(
  args: string[],
  machine: Pick<Machine, "folder">,
  wallMs = Date.now(),
): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.reminders.options);
  if (!parsed.ok) return failed(2, `reminders: ${parsed.error}`);
  const options = parsed.value;
  const [word] = options.words;
  if (word !== undefined) {
    return failed(2, `reminders: ${JSON.stringify(word)} belongs to no option; leave it out`);
  }
  const file = optionValue(options, "ics");
  const said = optionValue(options, "days");
  const days = said === undefined ? (file ? CALENDAR_DAYS : LIST_DAYS) : daysFrom(said);
  if (days === undefined) {
    const mend = `write a whole number from 1 to ${MOST_DAYS}`;
    return failed(2, `reminders: --days: ${JSON.stringify(said)} is not a number of days; ${mend}`);
  }
  const { state, nowMs, notices, incomplete, unreadable } = readKitchen(machine.folder, { wallMs });
  const code = incomplete ? 3 : 0;
  if (unreadable !== undefined) return failed(3, `reminders: ${unreadable}`);
  const stderr = notices.map((notice) => `brinebell reminders: ${notice}\n`).join("");
  const items = upcoming(state, nowMs, days);
  if (file !== undefined && items.length === 0 && !isOn(options, "json")) {
    // A calendar may not be empty.
    const told = `${listText(items, state.zone, days).trim()} No calendar is written.\n`;
    return { code, stdout: file === "-" ? "" : told, stderr: file === "-" ? told : stderr };
  }
  if (file !== undefined && items.length > 0) {
    const { calendarText } = await import("./calendar.ts");
    const facts = { mark: kitchenMark(state), revision: revision(state), madeAt: wallMs };
    const calendar = calendarText(items, facts);
    if (file === "-") return { code, stdout: calendar, stderr };
    const force = isOn(options, "force");
    const output = { path: file, content: calendar, kind: "calendar", force } as const;
    const answer = writeOutput({ ...output, folder: machine.folder });
    if (!answer.ok) return failed(answer.code, `reminders: --ics: ${answer.message}`);
  }
  const now = isoWithOffset(Math.round(wallOf(state, nowMs)), state.zone);
  if (isOn(options, "json")) {
    const reminders = items.map(({ id, at, title, detail, batch, overdue }) => {
      return { id, at: isoWithOffset(Math.round(at), state.zone), title, detail, batch, overdue };
    });
    const stdout = `${JSON.stringify({ now, zone: state.zone, days, reminders }, null, 2)}\n`;
    return { code, stdout, stderr };
  }
  if (file !== undefined) {
    const count = items.length === 1 ? "1 reminder" : `${items.length} reminders`;
    return { code, stdout: `${count} written to ${file}\n`, stderr };
  }
  return { code, stdout: listText(items, state.zone, days), stderr };
}

function daysFrom(text: string): number | undefined {
  const days = /^\d{1,4}$/.test(text.trim()) ? Number(text) : 0;
  return days >= 1 && days <= MOST_DAYS ? days : undefined;
}

function listText(items: readonly Upcoming[], zone: string, days: number): string {
  if (items.length === 0) {
    return `Nothing is due in the next ${days === 1 ? "day" : `${days} days`}.\n`;
  }
  const told = new Set<string>();
  const lines = items.flatMap(({ at, title, detail, overdue }) => {
    const when = dayAndTime(at, zone).padEnd(WHEN_WIDTH);
    const head = `${when}${overdue ? "overdue: " : ""}${oneLine(title)}`;
    // The question of a recurring check is shown with its first occurrence.
    const more = detail && !told.has(title + detail);
    told.add(title + detail);
    return more ? [head, `${" ".repeat(WHEN_WIDTH)}${oneLine(detail)}`] : [head];
  });
  return `${lines.join("\n")}\n`;
}

/** Text on one line of a terminal, without control sequences. */
function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();
}
