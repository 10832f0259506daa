/** Deciding on answers: a yes, a no, a number or a name said while a question waits. */
import { doubtAnswer } from "../altitude-doubts.ts";
import type { DatedFact, GaugeRecord } from "../events.ts";
import { inCanner } from "../owners.ts";
import { type Question, questions, seasonOf } from "../questions.ts";
import { altitudeFacts } from "./decide-kitchen.ts";
import { decideDisposition, decideSealed, decideSealFailed } from "./decide-seals.ts";
import { gaugeAnswer, gaugeOffAnswer, poundsOff, trueGauge } from "./gauge-answers.ts";
import { type Deciding, done, type Outcome, refused } from "./outcome.ts";

/** A yes or no to the question that is open; with none open it records nothing. */
export function decideYesNo(deciding: Deciding, yes: boolean): Outcome {
  const question = openQuestion(deciding);
  if (!question || deciding.state.asked[question.key] === undefined) return { kind: "tell" };
  const facts = yesNoFacts(deciding, question, yes);
  if (!facts) return refused(question.text);
  return done(...facts);
}

/**
 * Words that answer the open question about a critical factor by naming it: "five percent", "yes,
 * new lids". Questions and denials name it too, and confirm nothing.
 */
export function decideByFactorWords(deciding: Deciding): Outcome {
  const question = openQuestion(deciding);
  const off = question?.kind === "gauge-off" ? poundsOff(deciding.wish.command.text) : undefined;
  if (question && off !== undefined) return gaugeOffAnswer(deciding, question, off);
  if (question?.kind !== "factor" || deciding.state.asked[question.key] === undefined) {
    return { kind: "tell" };
  }
  const said = deciding.wish.command.text.toLowerCase();
  const batch = deciding.state.batches[question.about ?? ""];
  const factor = batch?.recipe.critical.find((one) => one.id === question.detail);
  const names = factor?.words.some((word) => said.includes(word)) ?? false;
  const doubtful = /\?|n't|\b(not|no|never|is it|are they|if|should|must|maybe|think|old)\b/;
  if (!names || doubtful.test(said)) return { kind: "tell" };
  return done(...(yesNoFacts(deciding, question, true) ?? []));
}

/** The question that was asked last and still waits. */
function openQuestion(deciding: Deciding): Question | undefined {
  return questions(deciding.state)[0];
}

function yesNoFacts(deciding: Deciding, question: Question, yes: boolean): DatedFact[] | undefined {
  const { now, state } = deciding;
  const about = question.about ?? "";
  switch (question.kind) {
    case "factor":
      return [
        { type: "confirmed", batch: about, factor: question.detail ?? "", held: yes, t: now },
      ];
    case "cover":
    case "still-covered":
      return [{ type: "cover", load: about, covered: yes, t: now }];
    case "gap":
      return [{ type: "vouched", load: about, gap: 0, held: yes, t: now }];
    case "sealed-line":
      return [{ type: "line-settled", seal: question.detail ?? "", held: yes, t: now }];
    case "end":
      return [{ type: "end-answer", load: about, yes, t: now }];
    case "altitude-doubt":
    case "no-boil":
      return doubtAnswer(state, yes, now);
    case "gauge-tested": {
      const season = seasonOf(state, now);
      const gauge: GaugeRecord = yes
        ? { kind: "dial", testedSeason: season }
        : { kind: "dial", untestedSeason: season };
      return [{ type: "gauge-set", canner: about, gauge, t: now }];
    }
    case "gauge-off": {
      if (yes) return undefined;
      return [{ type: "gauge-set", canner: about, gauge: trueGauge(deciding, 0), t: now }];
    }
    case "seals":
      return undefined;
    default:
      return undefined;
  }
}

/** A bare number or name, understood by the question that waits for it. */
export function decideAnswer(deciding: Deciding): Outcome {
  const { value } = deciding.wish.command.slots as { value: number | string };
  const question = openQuestion(deciding);
  if (!question) return refused(`I have not asked anything just now.${unitWanted(deciding)}`);
  const number = typeof value === "number" ? value : Number(value);
  const words = String(value).toLowerCase();
  switch (question.kind) {
    case "altitude":
      if (Number.isNaN(number)) return refused(question.text);
      return altitudeFacts(deciding, number);
    case "gauge":
      return gaugeAnswer(deciding, question, words);
    case "gauge-tested":
    case "gauge-off":
      return gaugeOffAnswer(deciding, question, number);
    case "seals":
      return sealsAnswer(deciding, number, words);
    case "disposition":
      return dispositionAnswer(deciding, question, words);
    default:
      return refused(`${question.text} Say yes or no.`);
  }
}

/** A bare number is never taken for a reading by guess; what to say with it is said. */
function unitWanted({ state, wish }: Deciding): string {
  const { value } = wish.command.slots as { value: number | string };
  if (typeof value !== "number") return "";
  const methods = inCanner(state).flatMap((load) => (load.loadedAt ? [load.terms?.method] : []));
  if (methods.includes("pressure")) return ` If that is the pressure, say ${value} pounds.`;
  const warm = methods.includes("low-temperature") || methods.includes("steam");
  return warm ? ` If that is the temperature, say ${value} degrees.` : "";
}

function sealsAnswer(deciding: Deciding, number: number, words: string): Outcome {
  const command = deciding.wish.command;
  if (/\b(none|all|every)/.test(words)) {
    const sealed = { ...command, intent: "sealed" as const, slots: { all: true as const } };
    return decideSealed({ ...deciding, wish: { command: sealed } });
  }
  if (Number.isNaN(number)) return refused("Say the numbers of the jars that did not seal.");
  const failed = { ...command, intent: "seal-failed" as const, slots: { jars: [number] } };
  return decideSealFailed({ ...deciding, wish: { command: failed } });
}

function dispositionAnswer(deciding: Deciding, question: Question, words: string): Outcome {
  const what = question.choices?.find((choice) => words.includes(choice.slice(0, 6)));
  if (!what) return refused(question.text);
  const slots = { what: what as "reprocess" };
  const command = { ...deciding.wish.command, intent: "disposition" as const, slots };
  return decideDisposition({ ...deciding, wish: { command } });
}
