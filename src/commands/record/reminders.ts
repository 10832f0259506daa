/** `brinebell reminders`: what is coming up, as a list or as a calendar file. */

import { wallOf } from "../../kitchen/state.ts";
import { DAY_MS, isoWithOffset } from "../../kitchen/time.ts";
import { dayAndTime } from "../../review/day-and-time.ts";
import { kitchenMark, revision, upcoming } from "../../review/shelf/reminders.ts";
import type { Upcoming } from "../../review/shelf/upcoming.ts";
import { type ReadKitchen, readKitchen } from "../../session/reading/read-kitchen.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import { earlierOutput } from "../call/write-output.ts";
import type { Machine } from "../machine.ts";
import { printed, printedJson, withNotices, writtenOutput } from "./review-io.ts";

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
  const kitchen = readKitchen(machine.folder, { wallMs });
  if (kitchen.unreadable !== undefined) return failed(3, `reminders: ${kitchen.unreadable}`);
  const { state, nowMs } = kitchen;
  const items = upcoming(state, nowMs, days);
  const list = isOn(options, "json")
    ? printedJson(listJson(items, kitchen, days))
    : printed(listText(items, state.zone, days));
  const result =
    file === undefined
      ? list
      : await withCalendar(list, items, {
          options,
          machine,
          file,
          kitchen,
          madeAt: wallMs,
        });
  return withNotices(result, "reminders", kitchen);
}

type CalendarCall = {
  options: Options;
  machine: Pick<Machine, "folder">;
  file: string;
  kitchen: ReadKitchen;
  /** Wall time, epoch ms. */
  madeAt: number;
};

/** The calendar written or printed; what is then said about it, or the whole list as JSON. */
async function withCalendar(
  list: CommandResult,
  items: readonly Upcoming[],
  { options, machine, file, madeAt, kitchen: { state, nowMs } }: CalendarCall,
): Promise<CommandResult> {
  const json = isOn(options, "json");
  const { calendarText, lastEntryAt } = await import("./calendar.ts");
  const before = earlierOutput(file, "calendar");
  const last = lastEntryAt(before);
  if (items.length === 0 && (last === undefined || last < madeAt)) {
    // A calendar may not be empty.
    if (json) return list;
    const told = `${list.stdout.trim()} No calendar is written.\n`;
    return file === "-" ? { ...list, stdout: "", stderr: told } : printed(told);
  }
  const daysAhead = Math.ceil(((last ?? madeAt) - madeAt) / DAY_MS) + 1;
  const coming = new Set(upcoming(state, nowMs, Math.max(1, daysAhead)).map(({ id }) => id));
  for (const { id } of items) coming.add(id);
  const facts = { mark: kitchenMark(state), revision: revision(state), madeAt, before, coming };
  const output = { path: file, content: calendarText(items, facts), kind: "calendar" } as const;
  const written = writtenOutput("reminders: --ics", machine, options, output);
  if (written.code !== 0 || file === "-") return written;
  if (json) return list;
  const count = items.length === 1 ? "1 reminder" : `${items.length} reminders`;
  return printed(`${count} written to ${file}\n`);
}

function listJson(items: readonly Upcoming[], { state, nowMs }: ReadKitchen, days: number) {
  const { zone } = state;
  const iso = (wallMs: number) => isoWithOffset(Math.round(wallMs), zone);
  const reminders = items.map(({ id, at, title, detail, batch, overdue }) => {
    return { id, at: iso(at), title, detail, batch, overdue };
  });
  return { now: iso(wallOf(state, nowMs)), zone, days, reminders };
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
