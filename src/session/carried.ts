import type { Wish } from "../kitchen/decide/decision.ts";

/** A wish that was put together elsewhere, with the words to show for it. */
export type Carried = { wish: Wish; words: string };
