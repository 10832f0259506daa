/** Facts from after the canning: jars opened, tasted and put away, and seed lots. */
import * as z from "zod/mini";
import { openJars } from "../jars/change-jars.ts";
import { batchOfLot, lotOf } from "../jars/lots.ts";
import { spoil } from "../jars/spoil.ts";
import { wallOf } from "../state.ts";
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
    fields: { batch: batchId, taster: z.nullable(text), scores: z.record(scoreName, score) },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `the tasting${of}`,
    evolve(state, event): boolean {
      const { batch, taster, scores } = event;
      state.tastings.push({ at: event.t, batch, taster, scores });
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
      const batch = batchOfLot(state, event.batch);
      const lot = lotOf(state, event.batch);
      if (!batch || !lot) return false;
      if (spoiled) spoil(batch, lot, { load: null, count, jars: [], sign: "off", at });
      else openJars(lot, batch.option !== null, { count, at, numbers: jars ?? [] });
      return true;
    },
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
    fields: { batch: batchId, place: text },
    follows: "nothing",
    ofTheShelf: true,
    undone: ({ of }) => `putting away the jars${of}`,
    evolve(state, event): boolean {
      state.places[event.batch] = event.place;
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
