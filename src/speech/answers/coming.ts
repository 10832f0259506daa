/** What comes due in the days ahead. */

import { type State, wallOf } from "../../kitchen/state.ts";
import { countWords } from "../../reckon/number-words.ts";
import { momentWords } from "../spoken-time.ts";
import type { Answer, Known } from "./known.ts";

/** One line for each thing, with its next moment; a check that recurs is named once. */
export function comingAnswer(state: State, days: number, now: number, known: Known): Answer {
  const due = known.coming(days);
  if (due.length === 0) {
    return `Nothing is due ${days === 1 ? "today" : `in the next ${countWords(days, "day")}`}.`;
  }
  const wall = wallOf(state, now);
  const titles = [...new Set(due.map(({ title }) => title))];
  const pages = titles.flatMap((title) => {
    const [first, ...more] = due.filter((one) => one.title === title);
    if (!first) return [];
    const moment = momentWords(first.at, wall, state.zone);
    const when = first.overdue ? `overdue since ${moment.replace(/^(at|on) /, "")}` : moment;
    const again = more.length > 0 ? `, and ${countWords(more.length, "more time")}` : "";
    return [`${title}: ${when}${again}.`];
  });
  return { pages, paced: false };
}
