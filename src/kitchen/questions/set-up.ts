/**
 * The talk of a first opening: one question after the other about the kitchen, until a batch is
 * begun. What was put off is asked when something that was begun needs it.
 */

import { activeOwners, hasBegun, isLoad, runOfRole } from "../owners.ts";
import { usualHolds } from "../spoken-names.ts";
import type { State } from "../state.ts";
import { mustBeKept, ringsUnanswered } from "../watched.ts";
import type { AnswerKind, Question } from "./question.ts";
import type { SetUpTopic } from "./set-up-topic.ts";

/** The first question of all: how the altitude is found, and that it may wait. */
export const WHERE_IS_THE_KITCHEN =
  "What is your altitude? Feet or meters will do. A map tells it, and so does a thermometer in " +
  "boiling water: brinebell reckon altitude, in a shell, works it out. Say later to leave it " +
  "for now.";

/** How the systems of units are offered, and other words for each. */
export const UNIT_CHOICES = {
  us: ["pounds and Fahrenheit", "pounds", "Fahrenheit", "American", "cups", "inches", "US"],
  metric: ["kilograms and Celsius", "kilograms", "Celsius", "metric", "kilos", "grams", "liters"],
} as const;

/** Says that there is nothing of the kind that was asked about. */
const NONE = "none";

type Asked = Pick<Question, "text" | "choices" | "alsoSaid"> & { takes: AnswerKind };

const QUESTIONS: Record<Exclude<SetUpTopic, "altitude">, Asked> = {
  canner: {
    text: `How many jars does your canner hold? Say it like ${usualHolds("and")}, or later.`,
    takes: "holds",
  },
  gauge: {
    text: "If it is a pressure canner, has it a dial gauge or a weighted gauge? Else say none.",
    choices: ["dial", "weighted", NONE],
    alsoSaid: ["dial", "weighted", NONE, "neither", "no pressure canner", "no gauge"],
    takes: "choice",
  },
  units: {
    text: "Shall I speak in pounds and Fahrenheit, or in kilograms and Celsius?",
    choices: [UNIT_CHOICES.us[0], UNIT_CHOICES.metric[0]],
    alsoSaid: [...UNIT_CHOICES.us, ...UNIT_CHOICES.metric],
    takes: "choice",
  },
  voice: { text: "Can you hear my voice?", takes: "yes-no" },
};

/** Whether a question belongs to the talk and may be left for later. */
export function mayWait(state: State, { kind, key }: Question): boolean {
  const open = state.setUp.some(({ topic, left }) => topic === "altitude" && !left);
  return (
    kind === "set-up" || (key === "altitude" && open && Object.keys(state.batches).length === 0)
  );
}

/** Whether a topic was put off and nothing that was begun needs it yet. */
export function isPutOff(state: State, topic: SetUpTopic): boolean {
  return state.setUp.some((one) => one.topic === topic && one.left) && !goesIntoACanner(state);
}

/** Whether something guards safety just now: a process, a vent, a falling pressure, an alarm. */
function isTense(state: State): boolean {
  const falls = activeOwners(state).some(
    (owner) => runOfRole(owner, "coming-down")?.state === "running",
  );
  return falls || mustBeKept(state) || ringsUnanswered(state);
}

function goesIntoACanner(state: State): boolean {
  return activeOwners(state).some((one) => !isLoad(one) && one.recipe.processes.length > 0);
}

/**
 * What the talk asks next, or what was put off and is needed now; the altitude has its own.
 * Nothing while something guards safety.
 */
export function setUpQuestions(state: State): Question[] {
  if (isTense(state)) return [];
  const begun = Object.keys(state.batches).length > 0;
  const [next] = begun ? [] : state.setUp.filter(({ left }) => !left);
  if (next && next.topic !== "altitude") return [question(next.topic)];
  const put = state.setUp.some(({ topic, left }) => topic === "canner" && left);
  if (!put || !goesIntoACanner(state)) return [];
  const { text, takes } = QUESTIONS.canner;
  const why = `${text} Loads are planned by it; until then I take nine pints or seven quarts.`;
  return [
    {
      key: neededKey(state),
      kind: "set-up",
      text: why,
      about: null,
      detail: "canner",
      takes,
    },
  ];
}

const NEEDED = "set-up/canner/needed";

/** Asked anew after each process, until somebody leaves it again. */
function neededKey({ leftOpen, loads }: State): string {
  const left = Object.keys(leftOpen).find((key) => key.startsWith(NEEDED));
  const processes = Object.values(loads).filter(hasBegun).length;
  return left ?? (processes === 0 ? NEEDED : `${NEEDED}/${processes}`);
}

/** Whether it was left in the talk, and is asked because what was begun needs it. */
export function isNeeded(key: string): boolean {
  return key.startsWith(NEEDED);
}

function question(topic: Exclude<SetUpTopic, "altitude">): Question {
  return {
    key: `set-up/${topic}`,
    kind: "set-up",
    about: null,
    detail: topic,
    ...QUESTIONS[topic],
  };
}
