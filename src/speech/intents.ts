/**
 * How each meaning is asked about where it was heard in doubt, and how it is answered. What is
 * written down is answered by its facts (acknowledge.ts); a mere question has an answer of its own.
 */
import type { CommandOf, Intent, SlotsOf } from "../kitchen/command.ts";
import { GLOSSARY } from "../kitchen/glossary.ts";
import type { DispositionWord } from "../kitchen/questions/answer-meant.ts";
import type { State } from "../kitchen/state.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Trouble } from "../kitchen/topics.ts";
import { sinceAway, whileAway } from "./answers/away.ts";
import { comingAnswer } from "./answers/coming.ts";
import { converted } from "./answers/convert.ts";
import { helpNow } from "./answers/help.ts";
import type { Answer, Known } from "./answers/known.ts";
import { mayI } from "./answers/may-i.ts";
import { jarAnswer } from "./answers/one-jar.ts";
import { ownWordsAnswer } from "./answers/own-words.ts";
import { recipesAnswer } from "./answers/recipes.ts";
import { safetyAnswer } from "./answers/safety.ts";
import { shortage } from "./answers/shortage.ts";
import { cannerState, standing, whichOne } from "./answers/state-of-things.ts";
import { pantryAnswer, readyWhen, seedsAnswer } from "./answers/stores.ts";
import { howMuch, ingredientsOneByOne } from "./how-much.ts";
import { durationWords } from "./spoken-time.ts";
import { clocks, overview, whatNext, whatNow, whenDone } from "./telling.ts";
import { ANY_EMERGENCY, EMERGENCIES } from "./texts/emergencies.ts";
import { withSource } from "./texts/own-text.ts";
import { SHORTAGES } from "./texts/shortages.ts";
import { ANY_TROUBLE, TROUBLES } from "./texts/troubles.ts";

type SpeechOf<I extends Intent> = {
  /** A closed question; null, or undefined for some slots, where it is never asked about. */
  askBack: string | ((slots: SlotsOf[I]) => string | undefined) | null;
  /** Worked out from the state, for what writes nothing down; null where its facts are answered. */
  answer: ((state: State, command: CommandOf<I>, now: number, known: Known) => Answer) | null;
};

const ODD: Record<Trouble, string> = {
  foam: "Is it foaming",
  cloudy: "Is it cloudy",
  "buckled-lid": "Has a lid buckled",
  "lid-wont-close": "Won't a lid close",
  siphoned: "Has a jar lost liquid",
  floating: "Is it floating",
  "wont-set": "Won't it set",
  scum: "Is there scum on it",
  scorched: "Has it scorched",
};

const NOT_ASKED = "I have not asked anything just now.";

const DISPOSITIONS: Record<DispositionWord, string> = {
  "carried-on": "Carry on as it is?",
  restarted: "Start the time again?",
  reprocess: "Process again?",
  refrigerate: "Into the refrigerator?",
  freeze: "Into the freezer?",
  discard: "Throw it out?",
  undecided: "Decide later?",
};

/** What else `done` can be about, besides a stage or a batch. */
const DONE: Record<string, string> = {
  jars: "Are the jars out of the canner?",
  "heat off": "Is the heat off?",
  canner: "Is the canner ready?",
};

function minutesOf(minutes: number): string {
  return durationWords(minutes * MINUTE_MS);
}

function jarsOf({ jars, count }: { jars?: number[]; count?: number }): string {
  if (jars) return `${jars.length === 1 ? "jar" : "jars"} ${jars.join(" and ")}`;
  return count === undefined || count === 1 ? "one jar" : `${count} jars`;
}

function named(target: string | undefined): string {
  return target === undefined ? "that" : `the ${target}`;
}

const SPEECH: { readonly [I in Intent]: SpeechOf<I> } = {
  // --- questions
  "what-now": { askBack: null, answer: (state, _, now) => whatNow(state, now) },
  "what-next": { askBack: null, answer: (state, _, now) => whatNext(state, now) },
  overview: { askBack: null, answer: (state, _, now) => overview(state, now) },
  "time-left": { askBack: null, answer: clocks },
  "finish-time": {
    askBack: null,
    answer: whenDone,
  },
  "how-much": { askBack: null, answer: howMuch },
  emergency: {
    askBack: "Is somebody hurt, or in danger?",
    answer: (_, { slots: { what } }) => {
      return what === undefined ? ANY_EMERGENCY : withSource(EMERGENCIES[what]);
    },
  },
  trouble: {
    askBack: ({ what }) => (what === undefined ? "Does something look odd?" : `${ODD[what]}?`),
    answer: (_, { slots: { what } }) => {
      return what === undefined ? ANY_TROUBLE : withSource(TROUBLES[what]);
    },
  },
  "is-safe": { askBack: "Do you want to know whether it's safe?", answer: safetyAnswer },
  "may-i": { askBack: "Do you want to know whether you may?", answer: mayI },
  "short-of": {
    askBack: ({ item }) => `Have you run out of ${item?.replaceAll("-", " ") ?? "something"}?`,
    answer: shortage,
  },
  "canner-state": {
    askBack: "Do you want to know what's in the canner?",
    answer: (state, _, now) => cannerState(state, now),
  },
  which: { askBack: "Do you want to know which one that was?", answer: whichOne },
  convert: {
    askBack: "Shall I work that out in another unit?",
    answer: (_, command) => converted(command),
  },
  "ready-when": { askBack: "Do you want to know when it may be eaten?", answer: readyWhen },
  "which-jar": { askBack: "Do you want to know which jar that is?", answer: jarAnswer },
  pantry: { askBack: "Do you want to know what's left in the pantry?", answer: pantryAnswer },
  seeds: { askBack: "Do you ask about saved seed?", answer: seedsAnswer },
  ingredients: { askBack: "Shall I read the ingredients one by one?", answer: ingredientsOneByOne },
  heap: { askBack: null, answer: null },
  recipes: {
    askBack: "Shall I read the recipes?",
    answer: (_, __, ___, known) => recipesAnswer(known),
  },
  more: { askBack: "Shall I read on?", answer: null },
  standing: {
    askBack: "Do you want to know how the day stands?",
    answer: (state, _, now) => standing(state, now),
  },
  coming: {
    askBack: "Do you want to know what comes due?",
    answer: (state, { slots }, now, known) => comingAnswer(state, slots.days, now, known),
  },
  looked: {
    askBack: ({ target }) => `Have you looked at ${named(target)}?`,
    answer: null,
  },
  "own-words": {
    askBack: "Do you want to know which of your words I have learned?",
    answer: (state, _, __, known) => ownWordsAnswer(state, known),
  },
  learned: {
    askBack: "Do you want to know what I have learned of your times?",
    answer: (_, __, ___, known) => ({ pages: known.learned(), paced: false }),
  },
  "forget-words": {
    askBack: ({ all }) => (all ? "Shall I forget your words?" : "Shall I forget those words?"),
    answer: null,
  },
  explain: { askBack: null, answer: (_, { slots }) => GLOSSARY[slots.term] },
  help: { askBack: null, answer: (state, _, __, known) => helpNow(state, known) },
  repeat: { askBack: null, answer: null },
  focus: { askBack: null, answer: null },
  unknown: { askBack: null, answer: null },
  // --- answers
  yes: { askBack: "Is that right?", answer: () => NOT_ASKED },
  no: { askBack: "Is that right?", answer: () => NOT_ASKED },
  answer: { askBack: "Is that right?", answer: null },
  added: { askBack: ({ food }) => `Did ${food} go in?`, answer: null },
  "topped-up": {
    askBack: (slots) => `Was it topped up with ${slots.with}?`,
    answer: () => "Boiling water around the jars is right.",
  },
  "brew-made": {
    askBack: "Are you making another pot of it?",
    answer: () => withSource(SHORTAGES.brine),
  },
  "brew-of": { askBack: "Is that which pot they were filled from?", answer: null },
  "was-away": {
    askBack: "Was nobody in the kitchen?",
    answer: () => "Nothing had to be watched just then.",
  },
  // A guess about a factor asks that factor's own question.
  factor: {
    askBack: ({ factor, held }) => (factor && held === "unsure" ? undefined : "Is that right?"),
    answer: null,
  },
  acknowledge: { askBack: null, answer: () => "Nothing is ringing." },
  // --- heat
  boiling: {
    askBack: ({ covered }) => {
      return covered ? "A full boil, and the lids covered?" : "Is it at a full boil?";
    },
    answer: null,
  },
  "boil-lost": { askBack: "Did the boil stop?", answer: null },
  pressure: {
    askBack: ({ value, unit }) => {
      return `Does the gauge read ${value} ${unit === "psi" ? "pounds" : "kilopascals"}?`;
    },
    answer: null,
  },
  "pressure-lost": { askBack: "Did the pressure drop?", answer: null },
  "weight-rocking": { askBack: "Is the weight rocking?", answer: null },
  venting: { askBack: "Is steam coming out in a full column?", answer: null },
  loaded: {
    askBack: ({ count }) => {
      return count === undefined ? "Are the jars in the canner?" : `${count} jars in the canner?`;
    },
    answer: null,
  },
  "water-low": { askBack: "Is the water low?", answer: null },
  temperature: { askBack: ({ value }) => `Does it read ${value} degrees?`, answer: null },
  // --- jars
  "jars-filled": {
    askBack: ({ count }) => (count === undefined ? "Are they filled?" : `${count} filled?`),
    answer: null,
  },
  sealed: {
    askBack: (slots) => (slots.all ? "Did they all seal?" : `Did ${jarsOf(slots)} seal?`),
    answer: null,
  },
  "seal-failed": { askBack: (slots) => `Did ${jarsOf(slots)} not seal?`, answer: null },
  "jar-broken": { askBack: (slots) => `Did ${jarsOf(slots)} break?`, answer: null },
  "set-aside": { askBack: (slots) => `Shall I set ${jarsOf(slots)} aside?`, answer: null },
  disposition: { askBack: ({ what }) => DISPOSITIONS[what], answer: null },
  opened: { askBack: "Was a jar opened?", answer: null },
  given: { askBack: (slots) => `Was ${jarsOf(slots)} given away?`, answer: null },
  spoiled: { askBack: "Was a jar spoiled?", answer: null },
  returned: { askBack: "Did a jar that was given away come back?", answer: null },
  "lids-marked": {
    askBack: ({ target, mark }) => `${mark.toUpperCase()} on the lids of ${named(target)}?`,
    answer: null,
  },
  labeled: { askBack: ({ target }) => `Are ${named(target)} labeled?`, answer: null },
  place: { askBack: ({ target, place }) => `Is ${named(target)} in the ${place}?`, answer: null },
  prefer: { askBack: ({ target }) => `Was ${named(target)} better?`, answer: null },
  taste: { askBack: "Shall I note that tasting?", answer: null },
  "seed-saved": { askBack: "Shall I note that seed?", answer: null },
  germination: { askBack: "Shall I note that test?", answer: null },
  // --- work and orders
  done: {
    askBack: ({ target }) => DONE[target ?? ""] ?? `Is ${named(target)} done?`,
    answer: null,
  },
  begin: {
    askBack: ({ recipe, named }) => {
      const name = recipe?.replaceAll("-", " ") ?? named;
      return name === undefined ? "Shall I start that?" : `Shall I start ${name}?`;
    },
    answer: null,
  },
  plan: {
    askBack: ({ go, drop }) => {
      if (drop) return "Shall I drop the plan?";
      return go ? "Shall I keep to the plan?" : "Shall I plan the day?";
    },
    answer: null,
  },
  hold: { askBack: ({ target }) => `Shall I hold ${named(target)}?`, answer: null },
  resume: { askBack: ({ target }) => `Shall I go on with ${named(target)}?`, answer: null },
  "change-batch": { askBack: ({ target }) => `Shall I change ${named(target)}?`, answer: null },
  skip: { askBack: ({ target }) => `Shall I leave out ${named(target)}?`, answer: null },
  instead: { askBack: ({ target }) => `Did you mean ${named(target)}?`, answer: null },
  redo: { askBack: "Shall I put back what was taken back?", answer: null },
  "forget-it": { askBack: "Shall I forget the last thing?", answer: null },
  away: { askBack: null, answer: whileAway },
  back: { askBack: "Are you back?", answer: sinceAway },
  "warn-ahead": {
    askBack: ({ minutes }) => `Warn you ${minutesOf(minutes)} before?`,
    answer: null,
  },
  quit: { askBack: "Shall I close?", answer: null },
  abandon: {
    askBack: ({ target }) => `Shall I give up ${target === undefined ? "a batch" : named(target)}?`,
    answer: null,
  },
  gauge: {
    askBack: ({ readsHighPsi: off }) =>
      off === undefined
        ? "Was the dial gauge not tested this season?"
        : `Does the dial read ${Math.abs(off)} pounds ${off < 0 ? "low" : "high"}?`,
    answer: null,
  },
  altitude: { askBack: ({ feet }) => `Is the kitchen at ${feet} feet?`, answer: null },
  "timer-set": { askBack: ({ minutes }) => `A timer for ${minutesOf(minutes)}?`, answer: null },
  "timer-add": { askBack: ({ minutes }) => `Add ${minutesOf(minutes)}?`, answer: null },
  "timer-cancel": { askBack: "Shall I stop the timer?", answer: null },
  remind: { askBack: ({ text }) => `Shall I remind you: ${text}?`, answer: null },
  note: { askBack: "Shall I write that down?", answer: null },
  "correct-time": { askBack: "Shall I correct the time of the last report?", answer: null },
  undo: {
    askBack: ({ about }) => `Shall I take back the ${about ?? "last thing"}?`,
    answer: null,
  },
  hush: {
    askBack: ({ minutes }) => {
      return minutes === undefined ? undefined : `Shall I be quiet for ${minutesOf(minutes)}?`;
    },
    answer: null,
  },
  unhush: { askBack: null, answer: null },
  settings: {
    askBack: ({ talk, night }) => {
      if (talk !== undefined) return talk === "short" ? "Shall I say less?" : "Shall I say it all?";
      return night === undefined ? undefined : "Shall I change the quiet hours?";
    },
    answer: null,
  },
};

function speechOf<I extends Intent>(intent: I): SpeechOf<I> {
  return SPEECH[intent];
}

/** The closed question about a command that was heard in doubt; undefined where none is asked. */
export function askedBack<I extends Intent>({ intent, slots }: CommandOf<I>): string | undefined {
  const { askBack } = speechOf(intent);
  return typeof askBack === "function" ? askBack(slots) : (askBack ?? undefined);
}

/** The answer to a command that writes nothing down; undefined where there is none. */
export function telling<I extends Intent>(
  state: State,
  command: CommandOf<I>,
  now: number,
  known: Known,
): Answer | undefined {
  return speechOf(command.intent).answer?.(state, command, now, known);
}
