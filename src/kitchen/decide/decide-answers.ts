/** Deciding on answers: a yes, a no, a number or a name said while a question waits. */
import { doubtAnswer } from "../altitude-doubts.ts";
import type { Confirm } from "../command.ts";
import type { DatedFact, GaugeRecord } from "../events.ts";
import { inCanner } from "../owners.ts";
import { type Question, questions, seasonOf } from "../questions.ts";
import type { State } from "../state.ts";
import { altitudeFacts } from "./decide-kitchen.ts";
import { decideDisposition, decideSealed, decideSealFailed } from "./decide-seals.ts";
import { gaugeOffAnswer, trueGauge } from "./gauge-answers.ts";
import { type Deciding, done, type Outcome, type Present, refused } from "./outcome.ts";

/** A yes or no to the question that is open; with none open it records nothing. */
export function decideYesNo(deciding: Present, yes: boolean): Outcome {
  const question = openQuestion(deciding);
  if (!question || deciding.state.asked[question.key] === undefined) return { kind: "tell" };
  const facts = yesNoFacts(deciding, question, yes);
  if (!facts) return refused(question.text);
  return done(...facts);
}

/**
 * Critical factors that are said to hold, or not to: each answers the question about it that
 * waits, the one asked last where several batches wait for the same.
 */
export function decideConfirm(deciding: Deciding<"confirm">): Outcome {
  const { state, now } = deciding;
  const open = questions(state).filter((one) => one.kind === "factor");
  const facts: DatedFact[] = [];
  for (const { factor, held } of deciding.wish.command.confirms ?? []) {
    const [question, other] = open.filter((one) => one.detail === factor);
    if (!question) continue;
    const asked = state.asked[question.key] !== undefined;
    if ((other && !asked) || held === "unsure") return refused(question.text);
    const batch = question.about ?? "";
    facts.push({ type: "confirmed", batch, factor, held: held === "yes", t: now });
  }
  return facts.length > 0 ? done(...facts) : refused("I have not asked about that yet.");
}

/** A report that already says what would be asked ("eight pints filled, new lids"). */
export function confirmedBeside(
  state: State,
  facts: readonly DatedFact[],
  confirms: readonly Confirm[],
  t: number,
): DatedFact[] {
  const ids = facts.flatMap((fact) => {
    if (fact.type === "jars-filled") return [fact.batch];
    return fact.type === "stage-done" ? [fact.owner] : [];
  });
  const batch = state.batches[ids[0] ?? ""];
  const list: DatedFact[] = [];
  for (const { factor, held } of batch ? confirms : []) {
    if (held === "unsure" || !batch?.recipe.critical.some((one) => one.id === factor)) continue;
    if (batch.confirmed.some((one) => one.factor === factor)) continue;
    list.push({ type: "confirmed", batch: batch.id, factor, held: held === "yes", t });
  }
  return list;
}

/** The question that was asked last and still waits. */
function openQuestion(deciding: Present): Question | undefined {
  return questions(deciding.state)[0];
}

function yesNoFacts(deciding: Present, question: Question, yes: boolean): DatedFact[] | undefined {
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
    default:
      return undefined;
  }
}

/** A bare number or name, taken by the question that waits for it. */
export function decideAnswer(deciding: Deciding<"answer">): Outcome {
  const { slots } = deciding.wish.command;
  const question = openQuestion(deciding);
  if (!question) return refused(`I have not asked anything just now.${unitWanted(deciding)}`);
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
      return gaugeOffAnswer(deciding, question, slots.readsHighPsi ?? number);
    case "seals":
      return sealsAnswer(deciding, number);
    case "disposition": {
      if (!slots.what) return refused(question.text);
      return decideDisposition({
        ...deciding,
        wish: { command: { intent: "disposition", slots: { what: slots.what }, confidence: 1 } },
      });
    }
    default:
      return refused(`${question.text} Say yes or no.`);
  }
}

/** A bare number is never taken for a reading by guess; what to say with it is said. */
function unitWanted({ state, wish }: Deciding<"answer">): string {
  const { value } = wish.command.slots;
  if (typeof value !== "number") return "";
  const methods = inCanner(state).flatMap((load) => (load.loadedAt ? [load.terms?.method] : []));
  if (methods.includes("pressure")) return ` If that is the pressure, say ${value} pounds.`;
  const warm = methods.includes("low-temperature") || methods.includes("steam");
  return warm ? ` If that is the temperature, say ${value} degrees.` : "";
}

function sealsAnswer(deciding: Deciding<"answer">, number: number): Outcome {
  if (deciding.wish.command.slots.all) {
    const command = { intent: "sealed", slots: { all: true }, confidence: 1 } as const;
    return decideSealed({ ...deciding, wish: { command } });
  }
  if (Number.isNaN(number)) return refused("Say the numbers of the jars that did not seal.");
  const slots = { jars: [number] };
  const command = { intent: "seal-failed" as const, slots, confidence: 1 };
  return decideSealFailed({ ...deciding, wish: { command } });
}
