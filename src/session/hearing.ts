/**
 * What happens with a sentence once it is understood: it is acted on fact by fact, or asked about.
 */
import {
  type Command,
  type CommandOf,
  type Evidence,
  type Intent,
  withSlots,
} from "../kitchen/command.ts";
import { activeOwners, isLoad } from "../kitchen/owners.ts";
import { shownQuestion } from "../kitchen/questions/questions.ts";
import { rulesOf } from "../kitchen/stages/kinds.ts";
import type { State } from "../kitchen/state.ts";
import type { Heard } from "../language/heard.ts";
import { MEANINGS } from "../language/intents/all.ts";
import { howAnswered, TO_ANSWER } from "../speech/how-answered.ts";
import { askBack, type Pending, readBack } from "./dialogue.ts";
import { momentOf } from "./listening/listening-moment.ts";

/** A sentence, and how certain its words are, 0 to 1. */
type Said = { text: string; confidence: number };

/** One fact or order; with a question where it waits for a yes. */
export type HeardStep = { command: Command; question?: Pending };

/** A command without the name of what it is about. */
export function withoutName(command: Command): Command {
  const other = withSlots(command, {});
  delete other.ref;
  if ("target" in other.slots) delete other.slots.target;
  return other;
}

export const NOT_UNDERSTOOD: CommandOf<"unknown"> = { intent: "unknown", slots: {}, confidence: 0 };

/** `guarded`: a question that guards safety is open, and the sentence may answer it. */
export function stepsOf(
  heard: Heard,
  { text, confidence }: Said,
  guarded: boolean,
  kept?: Evidence["strength"],
): HeardStep[] {
  // A likely loss has a question of its own; nothing else is asked.
  if (kept === "suspicion") return [];
  const [likely] = heard.candidates;
  if (heard.reading === "ask" && likely) {
    const question = askBack(likely, text);
    return [question ? { command: likely, question } : { command: likely }];
  }
  const commands = heard.commands.length > 0 ? heard.commands : [NOT_UNDERSTOOD];
  const steps = commands.map((command): HeardStep => {
    const question = readBack(command, text, confidence, guarded);
    return question ? { command, question } : { command };
  });
  const { asked } = heard;
  const besides = asked && !guarded ? askBack(asked, text) : undefined;
  return asked && besides ? [...steps, { command: asked, question: besides }] : steps;
}

/**
 * Does one step after the other; whether any of them was refused. Jars are not counted as sealed
 * after a step that was refused or waits for an answer: it may be about the same jars.
 */
export function eachStep(
  steps: readonly HeardStep[],
  does: (command: Command, question: Pending | undefined) => boolean,
  waits: () => boolean = () => false,
): boolean {
  let refused = false;
  let open = false;
  for (const { command, question } of steps) {
    if (command.intent === "sealed" && (refused || open)) continue;
    refused = does(command, question) || refused;
    open ||= waits();
  }
  return refused;
}

/** How soon a report is given as an example: what a stage waits for first, mishaps last. */
function rankOf(intent: Intent, byHand: boolean): number {
  const { cost, when } = MEANINGS[intent];
  if (cost === "raising") return 3;
  if (when.some((one) => one.startsWith("stage:"))) return 0;
  return byHand && intent === "done" ? 1 : 2;
}

/** Examples of the reports that something waits for at this moment. */
export function examplesNow(state: State, pending: Pending | undefined): string[] {
  const { intents = [] } = momentOf(state, pending);
  const owners = activeOwners(state);
  const running = owners.flatMap(({ stages }) => stages.filter((run) => run.state === "running"));
  const heated =
    owners.some((one) => isLoad(one) && one.loadedAt !== undefined) ||
    running.some(({ spec }) => rulesOf(spec).thermometer === "pot");
  const byHand = running.some(({ spec }) => rulesOf(spec).ends === "word");
  const reports = intents.filter((intent) => {
    const { example, report, when } = MEANINGS[intent];
    const early = !heated && when.some((one) => one.startsWith("load:in-"));
    return example && report && !early && !when.includes("always");
  });
  return reports
    .sort((one, other) => rankOf(one, byHand) - rankOf(other, byHand))
    .map((intent) => MEANINGS[intent].example ?? "");
}

/** How the question that waits is answered. */
export function answerNow(state: State, pending: Pending | undefined): string | undefined {
  if (pending) return TO_ANSWER[pending.expects];
  const shown = shownQuestion(state);
  return shown && howAnswered(state, shown);
}

/** What is said about words that are kept because they raise a doubt. */
export const KEPT: Record<Evidence["strength"], string> = {
  loss: "Written down.",
  suspicion: "Written down as you said it.",
  trace: "I keep your words, and ask about them at the end.",
};
