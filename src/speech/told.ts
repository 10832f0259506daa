import type { State } from "../kitchen/state.ts";

/** What an answer is made from: the state after and before the facts, and kitchen time now. */
export type Told = { state: State; before: State; now: number };
