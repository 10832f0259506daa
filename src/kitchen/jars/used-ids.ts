/** Which ids of jars are used up: none is given again, whatever was taken back. */
import { historyOf, type KitchenEvent } from "../events.ts";
import { plainCommand } from "../places.ts";
import type { State } from "../state.ts";
import { earlierWriter, type Ids } from "./jar-ids.ts";

/** How many ids an event may use up where it names none. */
function usedBy(event: KitchenEvent): number {
  if (event.type === "jars-filled") return event.ids ? 0 : event.count;
  if (event.type === "set-aside" || event.type === "jar-broken") return event.count;
  if (event.type !== "loaded") return 0;
  return event.parts.reduce((sum, part) => sum + (part.numbers ? 0 : part.jars), 0);
}

/** To be called before an event is applied, and for one that was withdrawn. */
export function beginIds(state: State, event: KitchenEvent): void {
  if (state.jarIds.earlier === "") {
    const cmd = plainCommand(event.cmd);
    state.jarIds.earlier = earlierWriter({ ...event, cmd });
  }
}

/** To be called after an event, applied or withdrawn: its ids are used up. */
export function endIds(state: State, event: KitchenEvent): void {
  state.jarIds.used += usedBy(event);
}

/** The next ids of this kitchen's writer, whatever was taken back; undefined without a writer. */
export function nextIds(state: State): Ids | undefined {
  const { writer } = state.jarIds;
  if (writer === undefined) return undefined;
  const given = historyOf(state).flatMap((event) => {
    const ours = event.type === "jars-filled" && event.ids?.writer === writer ? event : undefined;
    return ours?.ids ? [ours.ids.from + ours.count] : [];
  });
  return { writer, from: Math.max(1, ...given) };
}
