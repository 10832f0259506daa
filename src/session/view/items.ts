/** The work on the shelves and the timers, one item each. */

import { wholeOf } from "../../desk/want.ts";
import { lotOf, onlyVariety, weightLb } from "../../kitchen/jars/lots.ts";
import { isLoad } from "../../kitchen/owners.ts";
import { type ShelfItem, shelves } from "../../kitchen/shelves.ts";
import { batchesIn, timerName } from "../../kitchen/spoken-names.ts";
import { hasRole } from "../../kitchen/stages/kinds.ts";
import type { Batch, State } from "../../kitchen/state.ts";
import { isLost, OFF_PROCESS_LIMIT_MS, offMs } from "../../kitchen/unbroken-time.ts";
import type { Item, LabeledKey } from "../../ports/view.ts";
import { stageAmounts } from "../../recipe/stage-amounts.ts";
import { bringBack } from "../../speech/acknowledge-signs.ts";
import { promptWording } from "../../speech/prompts.ts";
import { type Clocked, type ClockSpan, shownClock, stageSpan } from "./shown-clock.ts";

/** All items in the order of their shelves, those with a clock along with its span. */
export function itemsOf(
  state: State,
  keys: readonly LabeledKey[],
  now: number,
): { items: Item[]; clocks: Clocked[] } {
  const shelved = shelves(state, now);
  const first = shelved.find(({ shelf }) => shelf === "hands");
  const staged = shelved.map((one) => {
    const span = one.clock && stageSpan(one.clock, one.run, now);
    const item = shown(state, one, { keys, now, span, first: one === first });
    return { item, span, say: span?.state === "stopped" ? toDo(one, now) : "" };
  });
  const all = [...staged, ...timerItems(state, now)];
  const clocks = all.flatMap(({ item, span, say }): Clocked[] => {
    return span ? [{ item, span, ...(say ? { say } : {}) }] : [];
  });
  return { items: all.map(({ item }) => item), clocks };
}

type Shown = {
  keys: readonly LabeledKey[];
  now: number;
  span: ClockSpan | undefined;
  first: boolean;
};

function shown(state: State, one: ShelfItem, { keys, now, span, first }: Shown): Item {
  const { owner, run, shelf } = one;
  const stands = standsOf(one);
  const tells = first || (!span && shelf !== "rest");
  const wording = tells ? promptWording(state, owner, run, now) : { text: "" };
  const cautions = (wording.cautions ?? []).flatMap(({ short }) => short ?? []);
  const brief = [wording.lesson?.short ?? wording.text, ...cautions].join(" ").trim();
  const amounts = first && !isLoad(owner) ? amountsOf(state, owner, run) : [];
  return {
    id: `${owner.id}/${run.id}`,
    shelf,
    name: nameOf(state, one),
    title: `${run.spec.title}${!isLoad(owner) && owner.state === "held" ? " (held)" : ""}`,
    keys: keys.filter((key) => key.owner === owner.id && key.stage === run.id),
    ...(span ? { clock: shownClock(state, span, now) } : {}),
    ...(stands ? { stands } : {}),
    ...(wording.text ? { say: wholeOf(wording), brief } : {}),
    ...(amounts.length > 0 ? { amounts } : {}),
  };
}

/** `canning salt: 1/2 cup`, for the weight of the batch. */
function amountsOf({ kitchen }: State, batch: Batch, { spec }: ShelfItem["run"]): string[] {
  const { recipe, jar } = batch;
  const pounds = weightLb(batch);
  const forLb = pounds === null ? {} : { forLb: pounds };
  const list = stageAmounts(recipe, spec, {
    ...forLb,
    ...(jar ? { jar } : {}),
    fills: hasRole(spec, "filling"),
  });
  const weighed = kitchen.units === "metric";
  return list.map(({ name, amount }) => `${name}: ${weighed ? amount : withoutGrams(amount)}`);
}

function withoutGrams(amount: string): string {
  return amount.replace(/ \([\d.,]+ k?g\)/g, "");
}

/** Only the variety where that is enough to tell things apart; the canner by its own name. */
function nameOf(state: State, { owner }: ShelfItem): string {
  if (!isLoad(owner)) return onlyVariety(owner) ?? owner.recipe.title;
  const lots = owner.parts.flatMap((part) => lotOf(state, part.lot)?.variety ?? []);
  const names =
    lots.length > 0
      ? lots
      : batchesIn(state, owner).map((batch) => onlyVariety(batch) ?? batch.recipe.title);
  const what = [...new Set(names)].join(" + ");
  if (owner.unloadedAt !== undefined) return what;
  return `${state.kitchen.canners.length > 1 ? owner.canner : "canner"}, ${what}`;
}

function standsOf({ run, shelf, offer }: ShelfItem): string | undefined {
  if (run.state === "waiting") return offer === "begin" ? "can begin" : "waits";
  if (shelf !== "heat" || !run.kept || isLost(run.kept)) return undefined;
  return run.kept.stretches.length === 0 ? "coming up" : undefined;
}

/** What to do about a stopped clock, for as long as it can be brought back. */
function toDo({ owner, run }: ShelfItem, now: number): string {
  const late = run.kept && isLoad(owner) && offMs(run.kept, now) > OFF_PROCESS_LIMIT_MS;
  return late ? "Off for too long to be started over." : bringBack(owner, run);
}

function timerItems(state: State, now: number) {
  return Object.values(state.timers)
    .filter((timer) => timer.state === "running" || timer.state === "rang")
    .sort((a, b) => a.endsAt - b.endsAt)
    .map((timer) => {
      const { endsAt: dueAt, setAt: from } = timer;
      const how = dueAt > now ? "running" : "over";
      const span: ClockSpan = { state: how, from, dueAt };
      const name = timerName(timer).replace(/^the /, "");
      const clock = shownClock(state, span, now);
      const item: Item = { id: timer.id, shelf: "timers", name, title: "", keys: [], clock };
      return { item, span, say: "" };
    });
}
