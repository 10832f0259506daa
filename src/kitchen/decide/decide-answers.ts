/** Deciding on answers: a yes, a no, a number or a name said while a question waits. */

import { type CommandOf, commandOf } from "../command.ts";
import type { Canner, DatedFact, GaugeRecord } from "../events.ts";
import { tally } from "../jars/lots.ts";
import { inCanner } from "../owners.ts";
import { doubtAnswer } from "../questions/altitude-doubts.ts";
import type { AnswerMeant } from "../questions/answer-meant.ts";
import { factorOf, isRight } from "../questions/factor-questions.ts";
import { answerKind, gaugeYear, type Question, shownQuestion } from "../questions/questions.ts";
import { isNeeded, mayWait } from "../questions/set-up.ts";
import type { SetUpTopic } from "../questions/set-up-topic.ts";
import type { Batch, State } from "../state.ts";
import { answerFromGuide } from "./begin/begin-guide.ts";
import { stillAnswer } from "./decide-heard.ts";
import { altitudeFacts } from "./decide-kitchen.ts";
import { decideDisposition, decideSealed, decideSealFailed, othersSealed } from "./decide-seals.ts";
import { type Deciding, type Decision, done, type Present, refused } from "./decision.ts";
import { gaugeOffAnswer, untestedGauge } from "./gauge-answers.ts";

/** A yes or no to the question that is shown; with none it records nothing. */
export function decideYesNo(deciding: Present, yes: boolean): Decision {
  const question = shownQuestion(deciding.state);
  if (!question) return { kind: "tell" };
  const facts = answerKind(question) === "yes-no" ? yesNoFacts(deciding, question, yes) : undefined;
  if (facts) return done(...facts);
  return refused(question.kind === "seals" ? "Which others did not seal?" : question.text);
}

function yesNoFacts(deciding: Present, question: Question, yes: boolean): DatedFact[] | undefined {
  const { now, state } = deciding;
  const about = question.about ?? "";
  switch (question.kind) {
    case "factor":
      return batchesAsked(state, question).map((batch) => {
        const fact = { type: "confirmed", batch: batch.id, held: yes, t: now } as const;
        return { ...fact, factor: question.detail ?? "", ...roundOf(question) };
      });
    case "cover":
    case "still-covered":
      return [{ type: "cover", load: about, covered: yes, t: now }];
    case "gap":
      return [{ type: "vouched", load: about, gap: 0, held: yes, t: now }];
    case "sealed-line":
      return [{ type: "line-settled", seal: question.detail ?? "", held: yes, t: now }];
    case "heard":
      return [{ type: "heard-settled", load: about, held: yes, t: now }];
    case "end":
      return [{ type: "end-answer", load: about, yes, t: now }];
    case "seals":
      return yes ? othersSealed(state, about, now) : undefined;
    case "altitude-doubt":
    case "no-boil":
      return doubtAnswer(state, yes, now);
    case "gauge-tested": {
      const season = gaugeYear(state, now);
      const gauge: GaugeRecord = yes
        ? { kind: "dial", testedSeason: season }
        : { kind: "dial", untestedSeason: season };
      return [{ type: "gauge-set", canner: about, gauge, t: now }];
    }
    case "set-up":
      return [{ type: "set-up", topic: "voice", became: "answered", yes, t: now }];
    default:
      return undefined;
  }
}

/** Which brew or filling an answer is of, where it is not the first. */
function roundOf({ round = 0 }: Question): { round?: number } {
  return round > 0 ? { round } : {};
}

/** The batches whose factor a question is about. */
export function batchesAsked(state: State, { about, batches }: Question): Batch[] {
  return (batches ?? [about ?? ""]).flatMap((id) => state.batches[id] ?? []);
}

function isYes(held: AnswerMeant["held"]): boolean | undefined {
  return held && held === "yes";
}

/** A value, or one of two choices, given in answer to a question about a factor. */
function factorValue(
  { state, now }: Present,
  question: Question,
  { value, held: choice }: CommandOf<"answer">["slots"],
): Decision {
  const facts = batchesAsked(state, question).flatMap((batch): DatedFact[] => {
    const factor = factorOf(batch, question.detail ?? "");
    const chosen = factor?.answer?.type === "choice";
    const held = chosen ? isYes(choice) : factor && isRight(batch, factor, value);
    if (held === undefined) return [];
    const measure = !chosen && typeof value === "number" ? { value } : {};
    const said = { ...measure, ...roundOf(question) };
    return [
      { type: "confirmed", batch: batch.id, factor: factor?.id ?? "", held, ...said, t: now },
    ];
  });
  return facts.length > 0 ? done(...facts) : refused(question.text);
}

/** A guess, or "I don't know": an answer that leaves the doubt. */
function unsure(deciding: Present, question: Question): Decision {
  const { now } = deciding;
  switch (question.kind) {
    case "factor":
    case "guide":
    case "end":
      return done({ type: "left-open", key: question.key, t: now });
    case "gauge-tested":
    case "gauge-off":
      return done(untestedGauge(deciding, question.about ?? ""));
    case "set-up":
      return leave(deciding, question);
    default:
      return refused(question.text);
  }
}

/** A question of the first opening is left for when it is needed. */
function leave({ now }: Present, question: Question): Decision {
  const { key, kind, detail } = question;
  if (isNeeded(key)) return done({ type: "left-open", key, t: now });
  const topic = kind === "set-up" ? (detail as SetUpTopic) : "altitude";
  return done({ type: "set-up", topic, became: "left", t: now });
}

/** More jars than any household canner takes (our choice). */
const MOST_JARS = 50;

function holdsOf({ halfPints, pints, quarts }: AnswerMeant): Canner["holds"] | undefined {
  const sizes = { "half-pint": halfPints, pint: pints, quart: quarts };
  const said = Object.entries(sizes).filter(([, count]) => count !== undefined);
  const fits = said.every(([, count]) => {
    return Number.isInteger(count) && Number(count) > 0 && Number(count) <= MOST_JARS;
  });
  return said.length > 0 && fits ? Object.fromEntries(said) : undefined;
}

/** What was said of the canner, its gauge or the units; an answer of another type is none. */
function setUpAnswer(deciding: Deciding<"answer">, question: Question): Decision {
  const { state, now, wish } = deciding;
  const { gauge, units } = wish.command.slots;
  const holds = holdsOf(wish.command.slots);
  const [canner, ...others] = state.kitchen.canners;
  if (question.detail === "canner" && holds && canner) {
    return done({ type: "kitchen-set", canners: [{ ...canner, holds }, ...others], t: now });
  }
  if (question.detail === "gauge" && canner) {
    if (!gauge) return done({ type: "set-up", topic: "gauge", became: "answered", t: now });
    return done({ type: "gauge-set", canner: canner.id, gauge: { kind: gauge }, t: now });
  }
  if (question.detail === "units" && units) return done({ type: "kitchen-set", units, t: now });
  return refused(question.text);
}

/** A bare number or name, taken by the question that is shown. */
export function decideAnswer(deciding: Deciding<"answer">): Decision {
  const { slots } = deciding.wish.command;
  const question = shownQuestion(deciding.state);
  if (!question) return refused(`I have not asked anything just now.${unitWanted(deciding)}`);
  if (slots.later && mayWait(deciding.state, question)) return leave(deciding, question);
  if (slots.unsure) return unsure(deciding, question);
  const number = Number(slots.value);
  switch (question.kind) {
    case "altitude":
      if (Number.isNaN(number)) return refused(question.text);
      return altitudeFacts(deciding, number, slots);
    case "gauge": {
      if (!slots.gauge) return refused(question.text);
      const gauge: GaugeRecord = { kind: slots.gauge };
      return done({ type: "gauge-set", canner: question.about ?? "", gauge, t: deciding.now });
    }
    case "gauge-tested":
    case "gauge-off":
      if (slots.untested) return done(untestedGauge(deciding, question.about ?? ""));
      return gaugeOffAnswer(deciding, question, slots.readsHighPsi ?? number);
    case "factor":
      if (answerKind(question) === "yes-no") return refused(`${question.text} Say yes or no.`);
      return factorValue(deciding, question, slots);
    case "guide":
      return answerFromGuide(deciding, question, number);
    case "still":
      return stillAnswer(deciding, question, isYes(slots.held));
    case "heard": {
      const held = isYes(slots.held);
      if (held === undefined) return refused(question.text);
      return done({ type: "heard-settled", load: question.about ?? "", held, t: deciding.now });
    }
    case "broken":
      return brokenAnswer(deciding, question, number);
    case "seals":
      return sealsAnswer(deciding, number);
    case "set-up":
      return setUpAnswer(deciding, question);
    case "disposition": {
      if (!slots.what) return refused(question.text);
      return decideDisposition({
        ...deciding,
        wish: { command: commandOf("disposition", { what: slots.what }) },
      });
    }
    default:
      return refused(`${question.text} Say yes or no.`);
  }
}

/** A bare number is never guessed to be a reading; the person is told what to say with it. */
function unitWanted({ state, wish }: Deciding<"answer">): string {
  const { value } = wish.command.slots;
  if (typeof value !== "number") return "";
  const methods = inCanner(state).flatMap((load) => (load.loadedAt ? [load.terms?.method] : []));
  if (methods.includes("pressure")) return ` If that is the pressure, say ${value} pounds.`;
  const warm = methods.includes("low-temperature") || methods.includes("steam");
  return warm ? ` If that is the temperature, say ${value} degrees.` : "";
}

/** How many jars were found broken at unloading: at most those that went in. */
function brokenAnswer({ state, now }: Present, question: Question, count: number): Decision {
  const load = state.loads[question.about ?? ""];
  const part = load?.parts.find((one) => one.lot === question.detail);
  const left = load && part ? tally(state, load, part).unaccounted : 0;
  if (!part || !(Number.isInteger(count) && count >= 0 && count <= left)) {
    return refused(question.text);
  }
  return done({ type: "jar-broken", batch: part.lot, count, t: now });
}

function sealsAnswer(deciding: Deciding<"answer">, number: number): Decision {
  if (deciding.wish.command.slots.all) {
    const command = commandOf("sealed", { all: true });
    return decideSealed({ ...deciding, wish: { command } });
  }
  if (Number.isNaN(number)) return refused("Say the numbers of the jars that did not seal.");
  const command = commandOf("seal-failed", { jars: [number] });
  return decideSealFailed({ ...deciding, wish: { command } });
}
