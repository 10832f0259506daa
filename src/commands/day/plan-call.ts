/** What a call that plans says about the kitchen and the day; faults of it are thrown. */
import { answeredName } from "../../kitchen/decide/begin/begin-gate.ts";
import type { QuietHours } from "../../kitchen/events.ts";
import { capacity } from "../../kitchen/jars/canner-room.ts";
import type { State } from "../../kitchen/state.ts";
import { MINUTE_MS, parseIso } from "../../kitchen/time.ts";
import { futureMomentsAt } from "../../language/values/future-times.ts";
import { utteranceOf } from "../../language/words.ts";
import type { CanningFacts } from "../../plan/wanted-batch.ts";
import { quoted } from "../../reckon/quantity.ts";
import { nightOf } from "../../reckon/quiet-hours.ts";
import { USUAL_CANNER_JARS } from "../../reckon/trade-numbers.ts";
import { altitudeOfCall, holdsOf, type KitchenWish } from "../call/kitchen-options.ts";
import { type Options, optionValue } from "../call/options.ts";

export const GRID_MINUTES = 5;

export class CallFault extends Error {
  readonly code: 1 | 2;
  constructor(message: string, code: 1 | 2) {
    super(message);
    this.code = code;
  }
}

export function fault(message: string, code: 1 | 2 = 2): never {
  throw new CallFault(message, code);
}

export type PlanKitchenFacts = CanningFacts & {
  altitudeKnown: boolean;
  burners: number;
  canners: number;
};

function countOf(options: Options, name: string): number | undefined {
  const text = optionValue(options, name);
  if (text === undefined) return undefined;
  const count = Number(text);
  if (!Number.isInteger(count) || count < 1 || count > 20) {
    fault(`--${name}: ${quoted(text)} is not a number of ${name}; write 1 to 20`);
  }
  return count;
}

export function kitchenOf(
  options: Options,
  wish: KitchenWish,
  kept: State | undefined,
): PlanKitchenFacts {
  const canners = kept?.kitchen.canners ?? [];
  const [first] = canners;
  const { altitudeFt, altitudeUncertaintyFt } = altitudeOfCall(wish, kept?.kitchen);
  return {
    altitudeFt: altitudeFt ?? 0,
    altitudeUncertaintyFt,
    altitudeKnown: altitudeFt !== undefined,
    ...(kept ? { answered: answeredName(kept) } : {}),
    burners: countOf(options, "burners") ?? kept?.kitchen.burners ?? 4,
    canners: countOf(options, "canners") ?? Math.max(1, canners.length),
    gauge: wish.gauge ?? first?.gauge?.kind ?? "dial",
    wish,
    holds: (jar) => {
      const said = holdsOf(wish.cannerHolds, jar);
      if (said !== undefined) return said;
      const usual = { id: "canner", name: "canner", holds: USUAL_CANNER_JARS };
      return capacity(first ?? usual, jar);
    },
  };
}

/** The next step of the grid at or after an instant. */
export function grid(ms: number): number {
  const step = GRID_MINUTES * MINUTE_MS;
  return Math.ceil(ms / step) * step;
}

/** A moment as ISO, or as people say it: "9am", "tomorrow at eight". */
export function momentOf(
  options: Options,
  name: string,
  io: { zone: string; nowMs: number },
): number | undefined {
  const text = optionValue(options, name);
  if (text === undefined) return undefined;
  const iso = parseIso(text, io.zone);
  if (iso !== undefined) return iso;
  // A bare time of day is understood after an "at".
  const whole = [text, `at ${text}`].flatMap((said) => {
    const { words } = utteranceOf(said);
    const moments = futureMomentsAt(words, 0, io.nowMs, io.zone);
    return moments.filter((one) => one.next === words.length);
  })[0];
  if (!whole) {
    return fault(`--${name}: ${quoted(text)} is not a time; write 2027-08-14T08:00:00, or 9am`);
  }
  return whole.value;
}

/** The night of this plan: what is written, else the kitchen's own. */
export function nightWanted(text: string | undefined, own: QuietHours | null): QuietHours | null {
  if (text === undefined) return own;
  const hours = nightOf(text);
  if (hours !== undefined) return hours;
  return fault(`--quiet: ${quoted(text)} is not a span of hours; write 22:00-06:00, or none`);
}
