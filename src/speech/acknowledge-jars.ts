/** Answers to reports about jars: filled, loaded, sealed, and what becomes of them. */

import type { Disposition, FactOf } from "../kitchen/events.ts";
import { brewStages } from "../kitchen/jars/brews.ts";
import { jarCounts } from "../kitchen/jars/canner-room.ts";
import {
  allFilled,
  batchOfLot,
  filled,
  findLot,
  isShared,
  jarsExpected,
  ready,
  sum,
} from "../kitchen/jars/lots.ts";
import { runOfRole } from "../kitchen/owners.ts";
import { leftToCheck } from "../kitchen/questions/seal-questions.ts";
import { batchName, calledLot, listed, potOf } from "../kitchen/spoken-names.ts";
import { countWords } from "../reckon/number-words.ts";
import {
  DISCARD_BOIL_MINUTES,
  FREEZER_HEADSPACE_IN,
  REPROCESS_WITHIN_HOURS,
} from "../reckon/trade-numbers.ts";
import { fillByLots, fillPart } from "./fill-words.ts";
import type { Told } from "./told.ts";

/** A canner that is ready again while its batch is still being filled. */
export function nextJars(told: Told, loadId: string): string {
  const load = told.state.loads[loadId];
  const batch = load && told.state.batches[load.batch];
  const fill = batch && runOfRole(batch, "filling");
  if (!batch || fill?.state !== "running" || filled(batch) === 0 || ready(batch) > 0) return "";
  const left = (jarsExpected(batch) ?? 0) - filled(batch);
  const about = left > 0 ? `, about ${left} more` : "";
  if (isShared(batch)) return `Next,${fillByLots(told.state, batch)}`;
  const part = fillPart(told.state, batch, left);
  const next = `Ready for the next jars of ${batchName(batch)}${about}.`;
  return `${next}${part} Tell me how many you fill.`;
}

export function filledSentence(told: Told, lotId: string, count: number): string {
  const batch = batchOfLot(told.state, lotId);
  if (!batch) return "";
  const size = batch.jar ? ` ${batch.jar}${count === 1 ? "" : "s"}` : "";
  const full = isShared(batch) ? " A full load." : FULL_LOAD;
  const next = isShared(batch) ? fillByLots(told.state, batch) : "";
  const rest = batch.option && !allFilled(batch) ? full : "";
  return `${count}${size}.${next || rest}`;
}

/** "P 1 and P 2: the second brine." */
export function brewToldSentence({ state }: Told, fact: FactOf<"brew-told">): string {
  const found = findLot(state, fact.batch);
  const [pot] = found ? brewStages(found.batch) : [];
  if (!found || !pot) return "";
  const marks = listed(fact.jars.map((number) => `${found.lot.mark} ${number}`));
  const held = found.lot.jars.filter(({ number }) => fact.jars.includes(number));
  const open = held.some(({ brewFrom }) => brewFrom !== undefined);
  const either = open ? " I had another for some, so those stay in doubt of both." : "";
  return `${marks}: ${potOf(pot)} number ${fact.brew + 1}.${either}`;
}

const FULL_LOAD = " That is a full load; the rest waits for the next one.";

export function loadedSentence(told: Told, fact: FactOf<"loaded">): string {
  const load = told.state.loads[fact.load];
  if (!load) return "";
  const all = sum(fact.parts, (part) => part.jars);
  const jars = all === 1 ? "1 jar" : `${all} jars`;
  const parts = fact.parts.map((part) => {
    const found = findLot(told.state, part.batch);
    const name = found ? calledLot(told.state, found) : part.batch;
    return `${part.jars} of ${name}`;
  });
  const batches = new Set(fact.parts.flatMap(({ batch }) => batchOfLot(told.state, batch) ?? []));
  const left = sum([...batches], ready);
  const rest =
    left > 0
      ? ` ${left} left for the next load: keep them in the refrigerator or fill them later.`
      : "";
  // Lots of one batch were told when they were filled.
  const inside = batches.size > 1 ? `${parts.join(" and ")} in the canner` : `${jars} in`;
  return `${inside}.${rest}`;
}

export function sealSentence(told: Told, fact: FactOf<"sealed" | "seal-failed">): string {
  const batch = batchOfLot(told.state, fact.batch);
  const load = told.state.loads[fact.load];
  if (!batch || !load) return "";
  const { sealed, failed } = jarCounts(told.state, batch);
  if (load.state === "complete" && leftToCheck(told.state, load) === 0) {
    return failed === 0 ? `All ${sealed} sealed.` : `${sealed} sealed, ${failed} not.`;
  }
  const found = findLot(told.state, fact.batch);
  if (!found || !isShared(batch)) {
    return fact.type === "sealed" ? `${fact.count} sealed.` : `${fact.count} not sealed.`;
  }
  const { jars = [] } = fact;
  const { mark } = found.lot;
  const which = jars.length > 0 ? listed(jars.map((jar) => `${mark} ${jar}`)) : "";
  const what = which || `${fact.count} of ${calledLot(told.state, found)}`;
  return `${what} ${fact.type === "sealed" ? "sealed" : "did not seal"}.`;
}

/** What to do with jars, by the disposition that was reported. */
export const DISPOSED: Readonly<Record<Disposition, string>> = {
  reprocess:
    `Within ${REPROCESS_WITHIN_HOURS} hours: empty the jars, bring the food back to a boil, ` +
    "clean hot jars, new lids, and the whole hot-pack time.",
  refrigerate: "Into the refrigerator, and eat within several days.",
  freeze: `Into the freezer, with ${FREEZER_HEADSPACE_IN} inches of headspace.`,
  discard:
    "Throw it out untasted. Low-acid food and tomatoes: " +
    `boil ${countWords(DISCARD_BOIL_MINUTES, "minute")} under water first.`,
  "carried-on": "",
  restarted: "",
  undecided: "",
};
