/** A rehearsal that somebody watches on a screen. */
import type { RehearsalHooks, WatchedRehearsal } from "../../screen/rehearsal-pace.ts";
import { Listeners } from "../listeners.ts";
import { type ShownKitchen, screenHost } from "../shown-kitchen.ts";
import { restUntil } from "../view/rest.ts";
import { type Played, Rehearsal, type RehearsalParts } from "./rehearse.ts";

type Watched = Omit<WatchedRehearsal, "play"> & {
  rehearsal: Rehearsal;
  play(): Promise<Played>;
};

/** The rehearsal as the screen sees it, paced by the screen. */
export function watchedRehearsal(
  parts: Omit<RehearsalParts, "onLines" | "pace">,
  hooks: RehearsalHooks,
): Watched {
  const changes = new Listeners();
  const rehearsal = new Rehearsal({
    ...parts,
    pace: hooks.pace,
    onLines(added) {
      hooks.onLines(added.length);
      changes.tell();
    },
  });
  const kitchen: ShownKitchen = {
    get session() {
      return rehearsal.kitchen.session;
    },
    lines: rehearsal.kitchen.lines,
    onChange: (listener) => changes.add(listener),
    status: () => ({ voice: "q ends it" }),
  };
  return {
    rehearsal,
    host: screenHost(kitchen, () => kitchen.session.now() + hooks.aheadMs()),
    restUntil: () => restUntil(kitchen.session.state, kitchen.session.now()),
    play: () => rehearsal.play(),
  };
}
