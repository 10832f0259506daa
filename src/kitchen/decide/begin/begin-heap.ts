/** Deciding on what is made of a heap of produce. */
import { commandOf } from "../../command.ts";
import { decideBegin } from "../decide-batch.ts";
import { type Deciding, type Decision, refused } from "../decision.ts";

/** Begins what was chosen of the offers for a heap; the session works them out. */
export function decideHeap(deciding: Deciding<"heap">): Decision {
  const { wish } = deciding;
  const [chosen] = wish.chosen ?? [];
  const offers = wish.command.slots.offers ?? [];
  const offer = chosen && "owner" in chosen && offers.find((one) => one.recipe === chosen.owner);
  if (!offer) return refused("Nothing here can be made of that.");
  return decideBegin({ ...deciding, wish: { command: commandOf("begin", offer) } });
}
