/**
 * Deciding on spoiled jars: a jar found spoiled is no longer food, and not a seal failure. A jar
 * that only came open within a day of its seal check is a seal failure: it may be processed again.
 */
import { SCUM_WORDS } from "../../recipe/cautions.ts";
import type { Ref } from "../command.ts";
import type { Jar } from "../jars/jar.ts";
import { filled, findLot, jarsIn, type LotOf, lotsIn } from "../jars/lots.ts";
import { standingOutside, stands } from "../jars/spoil.ts";
import { batchesOf, lotsOf, namesSort, ownerIds } from "../meant.ts";
import { runOfRole } from "../owners.ts";
import { REPROCESS_WITHIN_MS } from "../questions/dispositions.ts";
import { batchName, lotName, toldApart, upper } from "../spoken-names.ts";
import { rulesOf } from "../stages/kinds.ts";
import type { Batch, Load, State } from "../state.ts";
import { decideSealFailed } from "./decide-seals.ts";
import { askWhichLot, type Deciding, type Decision, done, refused } from "./decision.ts";

/** Where jars of a lot stand: out of a load, or outside of every load. */
type Place = LotOf & { jars: Jar[]; load: Load | null };

function placesOf(state: State): Place[] {
  const placed = Object.values(state.loads)
    .reverse()
    .flatMap((load) => {
      if (load.unloadedAt === undefined) return [];
      return load.parts.flatMap((part): Place[] => {
        const found = findLot(state, part.lot);
        return found ? [{ ...found, jars: jarsIn(state, load, part).filter(stands), load }] : [];
      });
    });
  const outside = Object.values(state.batches)
    .flatMap(lotsIn)
    .map((one): Place => ({ ...one, jars: standingOutside(one.lot), load: null }));
  return [...placed, ...outside].filter(({ jars }) => jars.length > 0);
}

/** Places of what was named; where nothing was, those whose jars wait for their seal check. */
function meant({ state, wish }: Deciding<"spoiled">, all: Place[]): Place[] {
  const { ref } = wish.command;
  const open = !ref || namesSort(ref, "jars", "lids", "others", "canner");
  const named = wish.chosen ?? (open ? undefined : ref.recorded);
  if (named) {
    const lots = new Set(lotsOf(state, named).map(({ lot }) => lot));
    const ids = ownerIds(named);
    return all.filter(({ lot, load }) => lots.has(lot) || (load && ids.has(load.id)));
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
  const has = (place: Place, jar: number) => place.jars.some(({ number }) => number === jar);
  const known = (place: Place, jar: number) => place.lot.jars.some(({ number }) => number === jar);
  const fitting = places.filter((place) => {
    const { batch, load } = place;
    const ofSize = size === undefined || batch.jar === null || batch.jar === size;
    return ofSize && jars.every((jar) => load === null || known(place, jar));
  });
  const lots = [...new Map(fitting.map((place) => [place.lot, place])).values()];
  if (lots.length > 1) {
    return askWhichLot(wish, "Which batch:", lots, toldApart(state, lots));
  }
  const gone = fitting
    .flatMap(({ lot }) => lot.jars)
    .find((jar) => {
      return jars.includes(jar.number) && jar.gone?.what === "spoiled" && !jar.guessed;
    });
  if (gone) return refused(`Jar ${gone.number} is down as spoiled already.`);
  const count = slots.jars?.length ?? slots.count ?? 1;
  const ofThese = fitting.filter((one) => one.load === null || jars.every((jar) => has(one, jar)));
  const place = ofThese.find((one) => one.jars.length >= count) ?? ofThese[0];
  if (!place) {
    return refused(jars.length > 0 ? `There is no jar ${jars.join(" and ")} left.` : NONE_LEFT);
  }
  const { lot, load } = place;
  if (sign === "unsealed" && load && !isShelved(load, now)) {
    const command = { ...wish.command, intent: "seal-failed" as const, slots };
    return decideSealFailed({ ...deciding, wish: { ...wish, command } });
  }
  if (!(Number.isInteger(count) && count > 0)) return refused("How many jars have spoiled?");
  if (count > place.jars.length) {
    return refused(`Only ${place.jars.length} of ${lotName(place)} are left.`);
  }
  return done({
    type: "spoiled",
    batch: lot.id,
    load: load?.id ?? null,
    count,
    jars,
    sign,
    t: now,
  });
}

const NONE_LEFT = "I know of no jars of that.";

/** A batch among these that is fermenting and has no jars that could have spoiled. */
function fermenting(state: State, refs: readonly Ref[]): Batch | undefined {
  return batchesOf(state, refs).find((batch) => {
    const sours = batch.stages.some((run) => rulesOf(run.spec).thermometer === "culture");
    const running = batch.state === "running" || batch.state === "held";
    return running && sours && filled(batch) === 0;
  });
}
