/** Facts about words that raised a doubt about jars at stake, and about how it was settled. */
import * as z from "zod/mini";
import { settleDoubts } from "../loads/settle-doubts.ts";
import { openDoubts, processDoubts } from "../questions/heard-doubts.ts";
import { fact, WOULD_STAND } from "./fact.ts";
import { flag, ownerId, text, word } from "./fields.ts";

export const HEARD_FACTS = {
  heard: fact({
    fields: {
      /** A load, or a batch that no canner is lit for yet. */
      load: ownerId,
      text,
      strength: z.enum(["loss", "suspicion", "trace"]),
      about: z.enum(["boil", "water", "lids", "acid", "gauge", "pressure", "food", "jars"]),
      intent: z.optional(word),
    },
    follows: "nothing",
    passing: true,
    undoWarns: WOULD_STAND,
    evolve(state, { load: id, text: words, strength, about, t }): boolean {
      const owner = state.loads[id] ?? state.batches[id];
      if (!owner) return false;
      // A loss is acted on: nothing about it is left to ask.
      const settled = strength === "loss" ? { settledAt: t } : {};
      owner.heard.push({ at: t, text: words, strength, about, ...settled });
      return true;
    },
  }),
  "heard-settled": fact({
    fields: {
      load: ownerId,
      held: flag,
      /** What was asked about, where it was one of several doubts. */
      about: z.optional(z.literal("water")),
    },
    follows: "nothing",
    evolve(state, { load: id, held, about, t }): boolean {
      const load = state.loads[id];
      const batch = state.batches[id];
      if (batch) settleDoubts(batch.heard, t, held);
      if (!load) return batch !== undefined;
      // While jars are in, it is about the heat; after that, about what was quoted.
      const inside = load.unloadedAt === undefined;
      const open = openDoubts(load);
      const asked = open.filter((one) => one.asked === true);
      const quoted = asked.length > 0 ? asked : open;
      const meant = (inside ? processDoubts(load) : quoted).filter((one) => {
        return about === undefined || one.about === about;
      });
      settleDoubts(meant, t, held);
      return true;
    },
  }),
};
