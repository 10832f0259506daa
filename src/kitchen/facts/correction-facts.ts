/**
 * Corrections: they change no state of their own, but what other commands led to. Applying one
 * replays the whole history.
 */
import { fact } from "./fact.ts";
import { commandId } from "./fields.ts";

const CORRECTION = {
  fields: { target: commandId },
  follows: "nothing",
  evolve: () => true,
} as const;

export const CORRECTION_FACTS = {
  /** The command happened at this fact's own `t`. */
  amended: fact({ ...CORRECTION, undone: () => "the corrected time" }),
  /** The command never happened. */
  withdrawn: fact({ ...CORRECTION, undo: "never" }),
};
