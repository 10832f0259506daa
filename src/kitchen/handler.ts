/** The shape of the functions that change the state for one type of event. */
import type { EventType, KitchenEvent } from "./events.ts";
import type { State } from "./state.ts";

/**
 * Says false when the event could not have happened in this state, and then changes nothing;
 * `noted` when it was written down and no stage depends on it, so that nothing follows.
 */
export type Handler<T extends EventType> = (
  state: State,
  event: Extract<KitchenEvent, { type: T }>,
) => boolean | "noted";

export type Handlers<T extends EventType> = { [K in T]: Handler<K> };
