/** What things are called aloud. */

import { activeOwners, isLoad, type Owner } from "./owners.ts";
import type { Batch, Load, StageRun, State, Timer } from "./state.ts";

/** What a stage's vessel goes by: its pot, else the stage itself. */
export function potOf({ spec }: StageRun): string {
  return spec.pot ?? spec.title;
}

/** A sentence begins with a capital. */
export function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A title within a sentence begins with a small letter. */
export function lower(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "the Provider dilled green beans"; the variety alone tells lots of one recipe apart. */
export function batchName(batch: Batch): string {
  const title = lower(batch.recipe.title);
  return batch.lot.variety ? `the ${batch.lot.variety} ${title}` : `the ${title}`;
}

export function loadName(state: State, load: Load): string {
  const ids = load.parts.length > 0 ? load.parts.map((part) => part.batch) : [load.batch];
  const names = ids.flatMap((id) => (state.batches[id] ? [batchName(state.batches[id])] : []));
  const canner = state.kitchen.canners.length > 1 ? `${load.canner} with ` : "";
  return `${canner}${names.join(" and ")}`;
}

export function ownerName(state: State, owner: Owner): string {
  return isLoad(owner) ? loadName(state, owner) : batchName(owner);
}

export function timerName(timer: Timer): string {
  return timer.label ? `the ${timer.label} timer` : `the ${timer.minutes} minute timer`;
}

/** "P" for Provider, longer where another batch already marks its lids so. */
export function lidMark(state: State, variety: string | null, title: string): string {
  const isLetter = (sign: string) => sign >= "A" && sign <= "Z";
  const letters = [...(variety ?? title).toUpperCase()].filter(isLetter).join("") || "J";
  const taken = new Set(activeOwners(state).map((owner) => (isLoad(owner) ? "" : owner.mark)));
  for (let length = 1; length <= letters.length; length++) {
    const mark = letters.slice(0, length);
    if (!taken.has(mark)) return mark;
  }
  return `${letters.charAt(0)}${taken.size + 1}`;
}
