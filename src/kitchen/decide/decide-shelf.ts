/** Deciding on what comes after the canner: which was liked better, where jars stand, seed lots. */

import { type LotOf, liveLots, lotsIn } from "../jars/lots.ts";
import { lotsOf } from "../meant.ts";
import { activeOwners, isLoad } from "../owners.ts";
import { lotName, toldApart } from "../spoken-names.ts";
import { nextId } from "./decide-batch.ts";
import { onShelf, shelved } from "./decide-kitchen.ts";
import { askYes, type Deciding, type Decision, done, refused } from "./decision.ts";

/** "I like the Provider better": a preference for one lot, over another where that is clear. */
export function decidePrefer(deciding: Deciding<"prefer">): Decision {
  const { slots, overRef } = deciding.wish.command;
  const found = shelved(deciding);
  if ("kind" in found) return found;
  const { batch, lot } = found;
  let over: string | null = null;
  if (overRef) {
    const others = lotsOf(deciding.state, overRef.recorded).filter((one) => one.lot !== lot);
    const alike = others.filter((one) => one.batch.recipe.id === batch.recipe.id);
    const [other] = (alike.length > 0 ? alike : others).sort((a, b) => {
      return b.lot.addedAt - a.lot.addedAt;
    });
    if (!other) return refused(`I have nothing called ${slots.over} in the log.`);
    over = other.lot.id;
  }
  const taster = slots.taster ?? null;
  return done({ type: "preferred", batch: lot.id, over, taster, t: deciding.now });
}

/** The jars of the batch that is named, or all that are put away, have their labels. */
export function decideLabeled(deciding: Deciding<"labeled">): Decision {
  const { state, now: t, wish } = deciding;
  if (wish.command.slots.target !== undefined) {
    const found = shelved(deciding);
    return "kind" in found ? found : done({ type: "labeled", batch: found.lot.id, t });
  }
  const waiting = Object.values(state.batches)
    .filter(({ option, state: is }) => option !== null && is === "complete")
    .flatMap((batch) => liveLots(batch).filter(({ labeledAt }) => labeledAt === undefined));
  if (waiting.length === 0) return refused("No jars are waiting for their labels.");
  return done(...waiting.map(({ id }) => ({ type: "labeled", batch: id, t }) as const));
}

const LONGEST_MARK = 4;

/** What is written on a lot's lids; no other lot that is being put up may have the same mark. */
export function decideLidsMarked({ state, wish, now: t }: Deciding<"lids-marked">): Decision {
  const mark = wish.command.slots.mark.toUpperCase();
  const [one, another] = lotsOf(state, wish.chosen ?? wish.command.ref?.running ?? []);
  if (!one || another) return refused("Which lot's lids? Say so with its name.");
  if (mark.length > LONGEST_MARK)
    return refused(`A mark is one to ${LONGEST_MARK} letters, like P or DT.`);
  const has = (of: LotOf) => of.lot !== one.lot && of.lot.mark === mark;
  const running = activeOwners(state).flatMap((owner) => (isLoad(owner) ? [] : lotsIn(owner)));
  const owner = running.find(has);
  if (owner) return refused(`${mark} is on the lids of ${lotName(owner)}. Take another mark.`);
  const before = Object.values(state.batches).flatMap(lotsIn).filter(has);
  const [stored] = before.filter((of) => onShelf(of) > 0);
  if (stored && !wish.confirmed) {
    const called = toldApart(state, [stored, one])(stored);
    return askYes(wish, `${mark} is on the lids of ${called} in store. ${mark} all the same?`);
  }
  return done({ type: "lids-marked", batch: one.lot.id, mark, t });
}

export function decideSeedSaved(deciding: Deciding<"seed-saved">): Decision {
  const { state, now, wish } = deciding;
  const { slots } = wish.command;
  if (slots.crop.trim() === "") return refused("Seed of what?");
  if (slots.batch !== undefined && !state.batches[slots.batch]) {
    return refused(`There is no batch ${slots.batch} in the log.`);
  }
  return done({
    type: "seed-saved",
    seed: nextId(state, now, "S"),
    crop: slots.crop.trim(),
    variety: slots.variety ?? null,
    isolation: slots.isolation ?? null,
    fermentDays: slots.fermentDays ?? null,
    dryWeightG: slots.dryWeightG ?? null,
    storage: slots.storage ?? null,
    batch: slots.batch ?? null,
    t: now,
  });
}

/** Seeds of one test; more are several tests. */
const MOST_SEEDS = 10_000;

export function decideGermination(deciding: Deciding<"germination">): Decision {
  const { state, now, wish } = deciding;
  const { seed, sprouted, of, days } = wish.command.slots;
  if (!Object.hasOwn(state.seeds, seed))
    return refused(`There is no seed lot ${seed}; see the list of seeds.`);
  const whole = Number.isInteger(sprouted) && Number.isInteger(of);
  if (!whole || of < 1 || of > MOST_SEEDS || sprouted < 0 || sprouted > of) {
    return refused(`${sprouted} of ${of} can't be right; say how many of how many sprouted.`);
  }
  return done({ type: "germination", seed, sprouted, of, days: days ?? null, t: now });
}
