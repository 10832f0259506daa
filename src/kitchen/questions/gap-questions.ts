/** Whether what was to be kept held while nobody watched. */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { isOver } from "../stage-run.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Load } from "../state.ts";
import { MINUTE_MS } from "../time.ts";
import { unanswered } from "../unbroken-time.ts";
import type { Question } from "./question.ts";

/** One question for each stage of a load with time that nobody has spoken for. */
export function gapQuestions(load: Load, method: ProcessTerms["method"]): Question[] {
  return load.stages.flatMap((run): Question[] => {
    const open = run.kept && !isOver(run) ? unanswered(run.kept) : [];
    const first = open[0];
    const last = open.at(-1);
    if (!first || !last) return [];
    const away = Math.max(1, Math.round((last.to - first.from) / MINUTE_MS));
    const minutes = `${away} minute${away === 1 ? "" : "s"}`;
    const went =
      first.cause === "time-full"
        ? `The time had been full for ${minutes}.`
        : `About ${minutes} went by unwatched.`;
    const boiled = open.every((gap) => gap.boiled);
    const what = rulesOf(run.spec).condition?.held(method) ?? "it hold";
    const asks = boiled ? "Were the lids covered all that time?" : `Did ${what} all that time?`;
    const key = `gap/${load.id}/${run.id}/${first.from}${boiled ? "/lids" : ""}`;
    return [{ key, kind: "gap", text: `${went} ${asks}`, about: load.id }];
  });
}
