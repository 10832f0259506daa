/**
 * Deciding on spoiled jars: a jar found spoiled is no longer food, and not a seal failure. A jar
 * that only came open within a day of its seal check is a seal failure: it may be processed again.
 */
import { SCUM_WORDS } from "../../recipe/cautions.ts";
import type { Ref } from "../command.ts";
import { standingJars, standingOutside } from "../loads/spoil.ts";
import { batchesOf, namesSort, ownerIds } from "../meant.ts";
import { runOfRole } from "../owners.ts";
import { REPROCESS_WITHIN_MS } from "../questions/dispositions.ts";
import { batchName, upper } from "../spoken-names.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, LoadPart, State } from "../state.ts";
import { decideSealFailed } from "./decide-seals.ts";
import { askWhichBatch, type Deciding, type Decision, done, refused } from "./decision.ts";

/** Where jars of a batch stand: out of a load, or outside of every load. */
type Place = { batch: Batch; left: number; load: Load | null; part: LoadPart | null };

function placesOf(state: State): Place[] {
  const placed = Object.values(state.loads)
    .reverse()
    .flatMap((load) => {
      if (load.unloadedAt === undefined) return [];
      return load.parts.flatMap((part): Place[] => {
        const batch = state.batches[part.batch];
        return batch ? [{ batch, left: standingJars(part), load, part }] : [];
      });
    });
  const outside = Object.values(state.batches).map((batch): Place => {
    return { batch, left: standingOutside(batch), load: null, part: null };
  });
  return [...placed, ...outside].filter(({ left }) => left > 0);
}

/** Places of what was named; where nothing was, those whose jars wait for their seal check. */
function meant({ wish }: Deciding<"spoiled">, all: Place[]): Place[] {
  const { ref } = wish.command;
  const open = !ref || namesSort(ref, "jars", "lids", "others", "canner");
  const named = wish.chosen ?? (open ? undefined : ref.recorded);
  if (named) {
    const ids = ownerIds(named);
    return all.filter(({ batch, load }) => ids.has(batch.id) || (load && ids.has(load.id)));
  }
  const cooling = all.filter(({ load }) => load?.state === "running");
  return cooling.length > 0 ? cooling : all;
}

/** True once the day in which a jar that came open may be processed again is over. */
function isShelved(load: Load, now: number): boolean {
  const checked = load.state === "complete" ? runOfRole(load, "seals")?.endedAt : undefined;
  return checked !== undefined && now - checked > REPROCESS_WITHIN_MS;
}

export function decideSpoiled(deciding: Deciding<"spoiled">): Decision {
  const { state, now, wish } = deciding;
  const { sign, size, ...slots } = wish.command.slots;
  const jars = slots.jars ?? [];
  const scum = fermenting(state, wish.command.ref?.recorded ?? []);
  if (scum) return refused(`${upper(batchName(scum))} is still fermenting. ${SCUM_WORDS}`);
  const places = meant(deciding, placesOf(state));
  const fitting = places.filter(({ batch, part }) => {
    const ofSize = size === undefined || batch.jar === null || batch.jar === size;
    return ofSize && jars.every((jar) => part === null || isIn(part, jar));
  });
  const batches = [...new Set(fitting.map(({ batch }) => batch))];
  if (batches.length > 1) {
    return askWhichBatch(wish, "Which batch:", batches, (one) => `${batchName(one)} (${one.id})`);
  }
  const count = slots.jars?.length ?? slots.count ?? 1;
  const place = fitting.find(({ left }) => left >= count) ?? fitting[0];
  if (!place) {
    return refused(jars.length > 0 ? `There is no jar ${jars.join(" and ")} left.` : NONE_LEFT);
  }
  const { batch, load, part } = place;
  if (sign === "unsealed" && load && !isShelved(load, now)) {
    const command = { ...wish.command, intent: "seal-failed" as const, slots };
    return decideSealFailed({ ...deciding, wish: { ...wish, command } });
  }
  const twice = jars.find((jar) => part?.spoiledJars.includes(jar));
  if (twice !== undefined) return refused(`Jar ${twice} is down as spoiled already.`);
  if (!(Number.isInteger(count) && count > 0)) return refused("How many jars have spoiled?");
  if (count > place.left) return refused(`Only ${place.left} of ${batchName(batch)} are left.`);
  return done({
    type: "spoiled",
    batch: batch.id,
    load: load?.id ?? null,
    count,
    jars,
    sign,
    t: now,
  });
}

const NONE_LEFT = "I know of no jars of that.";

function isIn(part: LoadPart, jar: number): boolean {
  return jar >= part.first && jar < part.first + part.jars;
}

/** A batch among these that is fermenting and has no jars that could have spoiled. */
function fermenting(state: State, refs: readonly Ref[]): Batch | undefined {
  return batchesOf(state, refs).find((batch) => {
    const sours = batch.stages.some((run) => rulesOf(run.spec).thermometer === "culture");
    const running = batch.state === "running" || batch.state === "held";
    return running && sours && batch.filled === 0;
  });
}
