/** Deciding on what comes after the canner: which was liked better, where jars stand, seed lots. */

import { batchesOf } from "../meant.ts";
import { nextId } from "./decide-batch.ts";
import { shelved } from "./decide-kitchen.ts";
import { type Deciding, type Decision, done, refused } from "./decision.ts";

/** "I like the Provider better": a preference for one lot, over another where that is clear. */
export function decidePrefer(deciding: Deciding<"prefer">): Decision {
  const { slots, overRef } = deciding.wish.command;
  const batch = shelved(deciding);
  if ("kind" in batch) return batch;
  let over: string | null = null;
  if (overRef) {
    const others = batchesOf(deciding.state, overRef.recorded).filter((one) => one !== batch);
    const alike = others.filter((one) => one.recipe.id === batch.recipe.id);
    const [other] = (alike.length > 0 ? alike : others).sort((a, b) => b.begunAt - a.begunAt);
    if (!other) return refused(`I have nothing called ${slots.over} in the log.`);
    over = other.id;
  }
  const taster = slots.taster ?? null;
  return done({ type: "preferred", batch: batch.id, over, taster, t: deciding.now });
}

export function decidePlace(deciding: Deciding<"place">): Decision {
  const { slots } = deciding.wish.command;
  const place = slots.place.trim();
  if (place === "") return refused("Where do the jars stand?");
  const batch = shelved(deciding);
  if ("kind" in batch) return batch;
  return done({ type: "jars-moved", batch: batch.id, place, t: deciding.now });
}

/** The jars of the batch that is named, or all that are put away, have their labels. */
export function decideLabeled(deciding: Deciding<"labeled">): Decision {
  const { state, now: t, wish } = deciding;
  if (wish.command.slots.target !== undefined) {
    const batch = shelved(deciding);
    return "kind" in batch ? batch : done({ type: "labeled", batch: batch.id, t });
  }
  const waiting = Object.values(state.batches).filter(({ option, labeledAt, state: is }) => {
    return option !== null && is === "complete" && labeledAt === undefined;
  });
  if (waiting.length === 0) return refused("No jars are waiting for their labels.");
  return done(...waiting.map(({ id }) => ({ type: "labeled", batch: id, t }) as const));
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
