/** Facts from after the canning: jars opened, tasted and put away, and seed lots. */
import * as z from "zod/mini";
import { givenAway, leaveStore } from "../jars/change-jars.ts";
import type { Jar } from "../jars/jar.ts";
import { findLot, lotOf } from "../jars/lots.ts";
import { spoil } from "../jars/spoil.ts";
import { type State, wallOf } from "../state.ts";
import { fact } from "./fact.ts";
import {
  amount,
  batchId,
  count,
  flag,
  jarNumbers,
  score,
  scoreName,
  seedId,
  someJars,
  text,
} from "./fields.ts";

export const SHELF_FACTS = {
  tasted: fact({
    fields: {
      batch: batchId,
      taster: z.nullable(text),
      scores: z.record(scoreName, score),
      /** How it tasted, as it was said. */
      words: z.optional(text),
      /** The jars tasted, where they are known. */
      jars: z.optional(jarNumbers),
    },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `the tasting${of}`,
    evolve(state, event): boolean {
      const { batch, taster, scores, words, jars } = event;
      const more = { ...(words ? { words } : {}), ...(jars ? { jars } : {}) };
      state.tastings.push({ at: event.t, batch, taster, scores, ...more });
      return true;
    },
  }),
  preferred: fact({
    fields: { batch: batchId, over: z.nullable(batchId), taster: z.nullable(text) },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ batch }) => `what was said for ${batch || "it"}`,
    evolve(state, event): boolean {
      const { batch, over, taster } = event;
      state.preferences.push({ at: event.t, batch, over, taster });
      return true;
    },
  }),
  "jar-opened": fact({
    fields: {
      batch: batchId,
      count: someJars,
      jars: z.optional(jarNumbers),
      /** Only in older journals: spoiled jars are a fact of their own now. */
      spoiled: z.optional(flag),
    },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `opening a jar${of}`,
    evolve(state, event): boolean {
      const { count, spoiled, jars, t: at } = event;
      if (!spoiled) return leave(state, { ...event, jars: jars ?? [] }, { what: "opened", at });
      const found = findLot(state, event.batch);
      if (found) spoil(found, { load: null, count, jars: [], sign: "off", at });
      return found !== undefined;
    },
  }),
  "jars-given": fact({
    fields: { batch: batchId, count: someJars, jars: jarNumbers, to: z.nullable(text) },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `giving away a jar${of}`,
    evolve(state, { t: at, to, ...event }): boolean {
      const left = { what: "given" as const, at, ...(to === null ? {} : { to }) };
      return leave(state, event, left);
    },
  }),
  /** Given away and brought back unopened: it stands in store again. */
  "jars-returned": fact({
    fields: { batch: batchId, count: someJars, jars: jarNumbers },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `bringing back a jar${of}`,
    evolve(state, { batch, count, jars }): boolean {
      const lot = lotOf(state, batch);
      if (!lot) return false;
      for (const jar of givenAway(lot, jars).slice(0, count)) delete jar.left;
      return true;
    },
  }),
  /** Thrown out of what is in store; what becomes of jars that failed is `disposed`. */
  "jars-discarded": fact({
    fields: { batch: batchId, count: someJars, jars: jarNumbers },
    follows: "nothing",
    ofTheShelf: true,
    undoWarns: () => "It would count as food again.",
    undone: ({ of }) => `throwing out a jar${of}`,
    evolve: (state, { t: at, ...event }): boolean => leave(state, event, { what: "discarded", at }),
  }),
  /** Its jars have their labels: what is still in doubt about them is no longer asked. */
  labeled: fact({
    fields: { batch: batchId },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `the labels${of}`,
    evolve(state, event): boolean {
      const lot = lotOf(state, event.batch);
      if (!lot) return false;
      lot.labeledAt = event.t;
      return true;
    },
  }),
  "jars-moved": fact({
    /** Without `jars`, all of the lot. */
    fields: { batch: batchId, place: text, jars: z.optional(jarNumbers) },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `putting away the jars${of}`,
    evolve(state, event): boolean {
      const { jars, place } = event;
      if (!jars) state.places[event.batch] = place;
      for (const jar of lotOf(state, event.batch)?.jars ?? []) {
        if (!jars) delete jar.place;
        else if (jars.includes(jar.number)) jar.place = place;
      }
      return true;
    },
  }),
  "seed-saved": fact({
    fields: {
      seed: seedId,
      crop: text,
      variety: z.nullable(text),
      isolation: z.nullable(text),
      fermentDays: z.nullable(amount),
      dryWeightG: z.nullable(amount),
      storage: z.nullable(text),
      batch: z.nullable(batchId),
    },
    begins: "seed",
    follows: "nothing",
    evolve(state, event): boolean {
      const { seed, crop, variety, isolation, fermentDays, dryWeightG, storage, batch } = event;
      state.seeds[seed] = {
        id: seed,
        crop,
        variety,
        isolation,
        fermentDays,
        dryWeightG,
        storage,
        batch,
        savedAt: wallOf(state, event.t),
        tests: [],
      };
      return true;
    },
  }),
  germination: fact({
    fields: { seed: seedId, sprouted: count, of: count, days: z.nullable(amount) },
    follows: "nothing",
    evolve(state, event): boolean {
      const seed = state.seeds[event.seed];
      if (!seed) return false;
      const { sprouted, of, days } = event;
      seed.tests.push({ at: event.t, sprouted, of, days });
      return true;
    },
  }),
};

type Left = NonNullable<Jar["left"]>;

function leave(
  state: State,
  event: { batch: string; count: number; jars: number[] },
  left: Left,
): boolean {
  const found = findLot(state, event.batch);
  if (!found) return false;
  const canned = found.batch.option !== null;
  leaveStore(found.lot, canned, { count: event.count, left, numbers: event.jars });
  return true;
}
