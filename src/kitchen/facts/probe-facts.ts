/** Facts of probes: what they read, and what became of them. */
import * as z from "zod/mini";
import { isLoad, ownerOf } from "../owners.ts";
import { fact } from "./fact.ts";
import { instant, ownerId, reading, text } from "./fields.ts";

const PROBE_NOTES = {
  watching: "read from now on",
  began: "showed the sign that was waited for",
  silent: "fell silent",
  stuck: "stood still",
  slow: "reads too seldom to go by",
  coarse: "reads too coarsely to go by",
  back: "reads as it should again",
};
export type ProbeIs = keyof typeof PROBE_NOTES;
const PROBE_STATES = Object.keys(PROBE_NOTES) as [ProbeIs, ...ProbeIs[]];

export const PROBE_FACTS = {
  probe: fact({
    fields: {
      owner: ownerId,
      what: text,
      unit: z.enum(["F", "psi"]),
      /** Thinned: the instant and the value of each. */
      samples: z.array(z.tuple([instant, reading])),
    },
    follows: "nothing",
    evolve(state, event): boolean {
      const owner = ownerOf(state, event.owner);
      if (!owner) return false;
      const { what, unit } = event;
      for (const [at, value] of event.samples) owner.readings.push({ at, what, value, unit });
      return true;
    },
  }),
  /** What became of a probe, or what it began. */
  "probe-is": fact({
    fields: { owner: ownerId, what: text, is: z.enum(PROBE_STATES) },
    follows: "nothing",
    evolve(state, { owner: id, what, is, t }): boolean {
      const owner = ownerOf(state, id);
      if (!owner) return false;
      const batches = isLoad(owner)
        ? owner.parts.map(({ batch }) => state.batches[batch])
        : [owner];
      const note = { at: t, text: `probe ${what}: ${PROBE_NOTES[is]}`, late: false };
      for (const batch of batches) batch?.notes.push(note);
      return true;
    },
  }),
};
