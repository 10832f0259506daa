/** A kitchen, real or simulated, as the screen and the plain lines see it. */
import { waitedFor } from "../kitchen/watched.ts";
import type { Line } from "../ports/view.ts";
import type { ScreenHost } from "../screen/screen-host.ts";
import type { Session } from "./session.ts";
import { timeText } from "./view/clock-text.ts";
import { farewell, running } from "./view/farewell.ts";
import { labeledKeys } from "./view/labeled-keys.ts";
import { view } from "./view/view.ts";

export type ShownKitchen = {
  /** May be a different one after a rehearsed crash. */
  readonly session: Session;
  readonly lines: Line[];
  /** Calls back at every look at the clocks; the function returned stops that. */
  onChange(listener: () => void): () => void;
  status(): { listening?: string; voice?: string };
  /** True while another window is heard, which alone is left where somebody asks to leave. */
  isElsewhere?(): boolean;
};

/** @param now kitchen time to show, ms, where it is not the session's own. */
export function screenHost(
  kitchen: ShownKitchen,
  now: () => number = () => kitchen.session.now(),
): ScreenHost {
  const state = () => kitchen.session.state;
  return {
    lines: kitchen.lines,
    onChange: (listener) => onHappening(kitchen, listener),
    now,
    view(parts) {
      const { session, lines } = kitchen;
      return view(session.state, now(), {
        ...parts,
        lines,
        pending: session.waitingFor,
        notRecorded: session.notRecorded,
        planned: session.plannedTasks,
        status: kitchen.status(),
      });
    },
    labeledKeys: () => labeledKeys(state(), now()),
    timeOf: (wallMs) => timeText(wallMs, state().zone),
    running: () => running(state(), now()),
    needed: () => waitedFor(state()),
    farewell: () => farewell(state(), now(), kitchen.session.notRecorded),
    left: () => kitchen.session.left && !kitchen.isElsewhere?.(),
    hear: (words) => void kitchen.session.hear(words),
    press: () => void kitchen.session.press(),
  };
}

/**
 * A look at the clocks that found nothing is no reason to draw; the screen's own tick does that.
 */
function onHappening(kitchen: ShownKitchen, listener: () => void): () => void {
  let before = "";
  return kitchen.onChange(() => {
    const { session, lines } = kitchen;
    const { listening, voice } = kitchen.status();
    const last = lines.at(-1);
    const { history } = session.state;
    const counts = [lines.length, last?.wallMs, history.length, session.notRecorded];
    const seen = [...counts, last?.text, listening, voice].join("|");
    if (seen === before) return;
    before = seen;
    listener();
  });
}
