/**
 * What a command comes to: facts to write down, a refusal with its reason, one short question, or
 * nothing but an answer. Pure: the present and the library come in as arguments.
 */

import type { Library } from "../../recipe/library.ts";
import type { Intent } from "../command.ts";
import type { DatedFact } from "../events.ts";
import { keyOffer } from "../shelves.ts";
import type { State } from "../state.ts";
import { decideHeap } from "./begin/begin-heap.ts";
import { CarriedOut } from "./carried-out.ts";
import { decideChange, decideLooked, decideSkip } from "./change-batch.ts";
import { decidePlan } from "./day-plan.ts";
import { decideAnswer, decideYesNo } from "./decide-answers.ts";
import {
  decideAbandon,
  decideBegin,
  decideFocus,
  decideHold,
  decideResume,
} from "./decide-batch.ts";
import { decideBoiling, decideBoilLost } from "./decide-boil.ts";
import {
  decidePressure,
  decidePressureLost,
  decideRocking,
  decideTemperature,
  decideVenting,
  decideWaterLow,
} from "./decide-canner.ts";
import {
  decideAdded,
  decideBrewMade,
  decideBrewOf,
  decideToppedUp,
  decideWasAway,
} from "./decide-changes.ts";
import { decideCorrectTime, decideForget, decideRedo, decideUndo } from "./decide-corrections.ts";
import { confirmedBeside, decideFactor } from "./decide-factor.ts";
import { decideUnknown, stoppedBefore, withLoss } from "./decide-heard.ts";
import { decideBroken, decideFilled, decideSetAside } from "./decide-jars.ts";
import {
  decideAcknowledge,
  decideAltitude,
  decideHush,
  decideNote,
  decideRemind,
  decideSettings,
  decideTaste,
  decideTimerAdd,
  decideTimerCancel,
  decideTimerSet,
} from "./decide-kitchen.ts";
import { decideBack, decideQuit, decideWarnAhead } from "./decide-leaving.ts";
import { decideLoaded } from "./decide-loaded.ts";
import { decideDisposition, decideSealed, decideSealFailed } from "./decide-seals.ts";
import {
  decideGermination,
  decideLabeled,
  decideLidsMarked,
  decidePrefer,
  decideSeedSaved,
} from "./decide-shelf.ts";
import { decideSpoiled } from "./decide-spoiled.ts";
import { decideDone, decideKey } from "./decide-stages.ts";
import { decideGiven, decideOpened, decidePlace, decideReturned } from "./decide-store.ts";
import { decideForgetWords } from "./decide-words.ts";
import {
  type Deciding,
  type Decision,
  done,
  type Present,
  refused,
  type Wish,
  withFacts,
} from "./decision.ts";
import { decideGauge } from "./gauge-answers.ts";

/** Decides commands of one intent. */
type Decider<I extends Intent> = (deciding: Deciding<I>) => Decision;

/** For questions answered from the state: nothing is written down. */
const tell = (): Decision => ({ kind: "tell" });

const DECIDERS: { [I in Intent]: Decider<I> } = {
  begin: decideBegin,
  factor: decideFactor,
  plan: decidePlan,
  done: decideDone,
  looked: decideLooked,
  repeat: tell,
  "what-now": tell,
  "what-next": tell,
  overview: tell,
  "time-left": tell,
  "finish-time": tell,
  "how-much": tell,
  explain: tell,
  emergency: tell,
  trouble: tell,
  "is-safe": tell,
  "may-i": tell,
  "short-of": tell,
  "canner-state": tell,
  which: tell,
  "which-jar": tell,
  convert: tell,
  "ready-when": tell,
  pantry: tell,
  seeds: tell,
  ingredients: tell,
  recipes: tell,
  heap: decideHeap,
  more: tell,
  standing: tell,
  coming: tell,
  "own-words": tell,
  learned: tell,
  help: tell,
  unknown: decideUnknown,
  added: decideAdded,
  "topped-up": decideToppedUp,
  "brew-made": decideBrewMade,
  "brew-of": decideBrewOf,
  "lids-marked": decideLidsMarked,
  returned: decideReturned,
  "was-away": decideWasAway,
  undo: decideUndo,
  redo: decideRedo,
  "forget-it": decideForget,
  "forget-words": decideForgetWords,
  instead: () => refused("I have nothing to move there."),
  "change-batch": decideChange,
  skip: decideSkip,
  away: tell,
  back: decideBack,
  "warn-ahead": decideWarnAhead,
  quit: decideQuit,
  acknowledge: decideAcknowledge,
  hush: decideHush,
  settings: decideSettings,
  unhush: ({ now }) => done({ type: "unhushed", t: now }),
  yes: (deciding) => decideYesNo(deciding, true),
  no: (deciding) => decideYesNo(deciding, false),
  hold: decideHold,
  resume: decideResume,
  abandon: decideAbandon,
  focus: decideFocus,
  boiling: decideBoiling,
  "boil-lost": decideBoilLost,
  pressure: decidePressure,
  "pressure-lost": decidePressureLost,
  "weight-rocking": decideRocking,
  venting: decideVenting,
  loaded: decideLoaded,
  "water-low": decideWaterLow,
  temperature: decideTemperature,
  "jars-filled": decideFilled,
  sealed: decideSealed,
  "seal-failed": decideSealFailed,
  "jar-broken": decideBroken,
  "set-aside": decideSetAside,
  disposition: decideDisposition,
  altitude: decideAltitude,
  gauge: decideGauge,
  answer: decideAnswer,
  taste: decideTaste,
  opened: decideOpened,
  given: decideGiven,
  spoiled: decideSpoiled,
  prefer: decidePrefer,
  place: decidePlace,
  labeled: decideLabeled,
  "seed-saved": decideSeedSaved,
  germination: decideGermination,
  "timer-set": decideTimerSet,
  "timer-add": decideTimerAdd,
  "timer-cancel": decideTimerCancel,
  remind: decideRemind,
  note: decideNote,
  "correct-time": decideCorrectTime,
};

/**
 * Decides one command.
 * @param now kitchen time in ms, at or after the last event written.
 */
export function decide(
  state: State,
  wish: Wish,
  now: number,
  library: Library,
  lastAlarms: readonly string[] = [],
): Decision {
  const asked: Present = { state, now, library, lastAlarms };
  const stopped = stoppedBefore(asked, wish);
  const present = stopped.length > 0 ? { ...asked, state: stateAfter(state, stopped, now) } : asked;
  const decision = withLoss(present, wish, decided({ ...present, wish }));
  const outcome = withFacts(decision, [], stopped);
  if (outcome.kind !== "done") return outcome;
  const beside = confirmedBeside(state, outcome.facts, wish.command.confirms ?? [], now);
  return withFacts(outcome, beside);
}

function stateAfter(state: State, facts: readonly DatedFact[], now: number): State {
  return new CarriedOut(state, { cmd: "", w: now }).add(facts).after;
}

function decided<I extends Intent>(deciding: Deciding<I>): Decision {
  return DECIDERS[deciding.wish.command.intent](deciding);
}

/** The wet-hands key: does exactly what Hands shows, or says that words are needed. */
export function decideKeyPress(state: State, now: number, library: Library): Decision {
  const item = keyOffer(state, now);
  if (!item) return refused("That needs words.");
  const present = { state, now, library };
  return decideKey(present, item);
}
