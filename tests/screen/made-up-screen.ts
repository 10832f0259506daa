/** A made-up kitchen behind the real screen, and the moments of a whole day to draw. */
import { fork } from "../../src/kitchen/evolve.ts";
import type { State } from "../../src/kitchen/state.ts";
import type { Line, View } from "../../src/ports/view.ts";
import type { Library } from "../../src/recipe/library.ts";
import type { ScreenHost } from "../../src/screen/screen-host.ts";
import { Listeners } from "../../src/session/listeners.ts";
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import type { ScriptLine } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { screenHost } from "../../src/session/shown-kitchen.ts";
import { view } from "../../src/session/view/view.ts";

export const ZONE = "America/Denver";
export const MORNING = Date.parse("2027-08-14T08:00:00-06:00");

let library: Promise<Library> | undefined;

export function recipes(): Promise<Library> {
  library ??= loadLibrary(["recipes"], {});
  return library;
}

export type MadeUp = { kitchen: MadeUpKitchen; host: ScreenHost; changed(): void };

/** The mountain kitchen of the README, or one that does not know its altitude yet. */
export async function madeUp(altitudeFt: number | undefined = 6200): Promise<MadeUp> {
  const changes = new Listeners();
  const changed = () => changes.tell();
  const canner = { id: "canner", name: "canner", holds: { pint: 9, quart: 7 } };
  const gauge = { kind: "weighted", testedSeason: 2027 } as const;
  const kitchen = new MadeUpKitchen({
    library: await recipes(),
    startMs: MORNING,
    zone: ZONE,
    setUp: [
      {
        type: "kitchen-set",
        ...(altitudeFt === undefined ? {} : { altitudeFt }),
        canners: [{ ...canner, gauge }],
        burners: 4,
        t: 0,
      },
    ],
    version: "0",
    voice: () =>
      ({ say() {}, cancel() {}, hush() {}, adjust() {}, close: async () => {} }) as never,
    onLines: changed,
  });
  const host = screenHost({
    get session() {
      return kitchen.session;
    },
    lines: kitchen.lines,
    onChange: (listener) => changes.add(listener),
    status: () => ({}),
  });
  return { kitchen, host, changed };
}

export type Moment = { state: State; now: number; lines: Line[]; view: View };

/** How a made-up day differs from the plain one. */
export type DayWishes = { begin?: object; weighted?: boolean; script?: ScriptLine[] };

/** Every so often a moment of the day on which a recipe is made, from first word to last. */
export async function momentsOf(
  recipe: string,
  every = 1,
  { begin = {}, weighted = false, script }: DayWishes = {},
): Promise<Moment[]> {
  const kind = weighted ? "weighted" : "dial";
  const gauge = { kind, testedSeason: 2027, readsHighPsi: 0 } as const;
  const canner = { id: "canner", name: "canner", holds: { pint: 9, quart: 7 }, gauge };
  const moments: Moment[] = [];
  const lines: Line[] = [];
  let steps = 0;
  const rehearsal: Rehearsal = new Rehearsal({
    library: await recipes(),
    recipes: script ? [] : [recipe],
    ...(script ? { script } : {}),
    begin,
    startMs: MORNING,
    zone: ZONE,
    setUp: [{ type: "kitchen-set", altitudeFt: 6200, canners: [canner], burners: 4, t: 0 }],
    demoAltitudeFt: 6200,
    version: "0",
    onLines: (added) => lines.push(...added),
    pace: async () => {
      if (steps++ % every !== 0) return;
      const { session } = rehearsal.kitchen;
      const state = fork(session.state);
      const moment = { state, now: session.now(), lines: [...lines] };
      const pending = session.waitingFor;
      let drawn: View | undefined;
      moments.push({
        ...moment,
        get view() {
          drawn ??= view(state, moment.now, { lines: moment.lines, pending, notRecorded: false });
          return drawn;
        },
      });
    },
  });
  const { trouble } = await rehearsal.play();
  if (trouble) throw new Error(trouble);
  if (Object.keys(rehearsal.kitchen.session.state.batches).length === 0) {
    throw new Error(`${recipe} did not begin`);
  }
  return moments;
}

/** Waits until what was just done has reached the screen. */
export function settled(ms = 20): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
