/** Readings of a sentence: by a wording, by its clauses, by the model; put together as one. */
import { type Command, commandOf, type Intent } from "../kitchen/command.ts";
import { type Hearing, MOST_CANDIDATES } from "./clauses/clause-facts.ts";
import type { ClauseFact } from "./clauses/facts-together.ts";
import { agreeing, likelihood, SURE_WHOLE } from "./clauses/guessed.ts";
import { begunLots } from "./clauses/lots-read.ts";
import { besideText } from "./clauses/whole-clauses.ts";
import type { Context } from "./context.ts";
import type { Heard, Read } from "./heard.ts";
import { MEANINGS } from "./intents/all.ts";
import type { Guess } from "./model/shipped.ts";
import { toldWithin } from "./polite-reports.ts";
import { CERTAIN, LEAST_KNOWN, surelyUnderstood, understandUtterance } from "./understand.ts";
import { contradicted, frameOf, isEmpty, isToAsk } from "./weighing.ts";
import { type Utterance, utteranceOf } from "./words.ts";

/** A report wrapped in a question or an order to write it down; a note as such is kept as well. */
function toldPolitely(said: Utterance, context: Context): Read | undefined {
  for (const told of toldWithin(said.text)) {
    const report = surelyUnderstood(utteranceOf(told), context);
    if (!report || !MEANINGS[report.intent].report) continue;
    const { cost } = MEANINGS[report.intent];
    const note = /\bnote\b/i.test(said.text) ? understandUtterance(said, context) : undefined;
    if (note?.intent === "note" && cost !== "raising") continue;
    const commands = note?.intent === "note" ? [report, note] : [report];
    return {
      reading: "sure",
      commands,
      candidates: [report],
      frame: "said",
      intents: [],
      whole: true,
      polite: true,
    };
  }
  return undefined;
}

/** No surer than this, a report was gathered from words in no known order. */
const GATHERED = 0.7;

/** Whether it says so itself. A jar that was opened and found spoiled is both (`orSpoiled`). */
function says(intent: Intent, whole: string): boolean {
  return intent === whole || (intent === "opened" && whole === "spoiled");
}

/** How likely a meaning has to be as a whole that a wording may fit. */
const LEAST_AGREED = 0.1;

/** Readings of one sentence, put together as what they come to. */
class Reader {
  private readonly whole: Guess;

  constructor(
    private readonly said: Utterance,
    private readonly hearing: Hearing,
  ) {
    this.whole = hearing.guess(said);
  }

  private read(reading: Heard["reading"], commands: Command[], all: readonly Command[]): Read {
    const once = all.filter(({ intent }, at) => all.findIndex((o) => o.intent === intent) === at);
    const { intents } = this.whole;
    const candidates = once.slice(0, MOST_CANDIDATES);
    return { reading, commands, candidates, frame: frameOf(this.whole), intents };
  }

  /** A wording covers the sentence: it is believed, unless the model is sure of another frame. */
  worded(plain: Command): Read {
    const answered =
      this.hearing.answeredFirst(this.said, plain, this.whole) ??
      this.orderedBefore(plain) ??
      besideText(this.said, plain, this.hearing.context) ??
      this.hearing.runTogether(this.said);
    if (answered) return this.facts(answered, []);
    if (!contradicted(plain, this.whole)) {
      const known = this.hearing.answerable(plain, this.said, this.whole);
      return { ...this.read("sure", [known], [known]), whole: true };
    }
    return this.read("ask", [], [...this.hearing.eachReading(this.said, this.whole), plain]);
  }

  /** "Start the beans and set a timer": what is ordered first is no label of the second. */
  private orderedBefore(plain: Command): readonly ClauseFact[] | undefined {
    if (!("label" in plain.slots)) return undefined;
    const { facts } = this.hearing.several(this.said, this.whole);
    const both = facts.length > 1 && facts[0]?.command.intent === "begin";
    return both && facts.some(({ command }) => command.intent === plain.intent) ? facts : undefined;
  }

  private facts(list: readonly ClauseFact[], readings: readonly Command[]): Read {
    const commands = list.map(({ command }) => command);
    const clauses = list.map(({ clause }) => clause);
    return { ...this.read("sure", commands, [...commands, ...readings]), clauses };
  }

  /** No wording covers it surely; `plain` is what one may. */
  guessed(plain: Command): Read {
    const readings = [...this.hearing.eachReading(this.said, this.whole)];
    const unsure = this.hearing.notKnown(this.said, plain, readings);
    if (unsure) return this.read("sure", [unsure], [unsure, ...readings]);
    const { facts: told, unused, asked: besides } = this.hearing.several(this.said, this.whole);
    const facts = this.withWhole(told, readings);
    const gathered = plain.confidence <= GATHERED && MEANINGS[plain.intent].report;
    const guarded = this.hearing.context.question?.guards === true;
    const agreed =
      (!gathered || (!guarded && agreeing(plain, this.whole))) && !this.speaksAgainst(plain);
    const known = plain.intent !== "unknown" && agreed;
    const surer = facts.some(({ command }) => command.confidence > plain.confidence);
    if (facts.length > 1 || (facts.length === 1 && (!known || surer)))
      return {
        ...this.facts(facts, readings),
        left: unused.filter((clause) => clause !== besides?.clause),
        ...(besides ? { asked: besides.command } : {}),
      };
    const all = [plain, ...readings];
    if (known && plain.confidence > LEAST_KNOWN) return this.read("sure", [plain], all);
    if (known) return this.read("ask", [], all);
    const [best] = readings;
    if (best && this.hearing.isToAct(best, this.whole)) return this.read("sure", [best], readings);
    const asked = readings.filter((one) => isToAsk(one, this.whole));
    return asked.length > 0
      ? this.read("ask", [], [...asked, ...readings])
      : this.byClause(readings);
  }

  /** The whole sentence is surely meant otherwise than a wording that may fit. */
  private speaksAgainst({ intent }: Command): boolean {
    const { cost, answer } = MEANINGS[intent];
    const [first] = this.whole.intents;
    const guarded = cost === "raising" || cost === "clearing" || answer;
    if (guarded || !first || says(intent, first.name)) return false;
    return first.probability >= SURE_WHOLE && likelihood(intent, this.whole) < LEAST_AGREED;
  }

  /**
   * What clauses say, as far as it goes with what the sentence surely means as a whole: where none
   * of them says that, only what raises a doubt or calls for help stands beside it.
   */
  private withWhole(
    facts: readonly ClauseFact[],
    [best]: readonly Command[],
  ): readonly ClauseFact[] {
    const told = facts.some(({ command }) => best && says(command.intent, best.intent));
    const certain = facts.length > 1 && facts.every(({ command }) => command.confidence >= CERTAIN);
    if (!best || told || certain || facts.length === 0) return facts;
    if (likelihood(best.intent, this.whole) < SURE_WHOLE) return facts;
    const kept = facts.filter(({ command }) => {
      const { cost, urgent, answer } = MEANINGS[command.intent];
      return cost === "raising" || urgent || answer || command.intent === "factor";
    });
    if (!this.hearing.isToAct(best, this.whole)) return kept;
    return [{ command: best, clause: this.said }, ...kept];
  }

  /** The likeliest of what the clauses say by themselves, where the whole is likely nothing. */
  private byClause(readings: readonly Command[]): Read {
    const likely = this.hearing.likelyClauses(this.said, this.whole);
    if (likely.length === 0) return this.read("unknown", [], readings);
    const all = [...likely.map(({ command }) => command), ...readings];
    return { ...this.read("ask", [], all), clauses: likely.map(({ clause }) => clause) };
  }
}

const UNKNOWN = commandOf("unknown", {}, { confidence: 0 });

/** What a sentence says by wordings, by its clauses and by the model. */
export function readIn(said: Utterance, context: Context, hearing: Hearing): Read {
  const begins = begunLots(said, context);
  if (begins.length > 0) {
    const candidates = begins.slice(0, MOST_CANDIDATES);
    return { reading: "sure", commands: begins, candidates, frame: "ordered", intents: [] };
  }
  const told = toldPolitely(said, context);
  if (told) return told;
  const whole = understandUtterance(said, context);
  const plain = whole.intent === "focus" && isEmpty(context) ? UNKNOWN : whole;
  const reader = new Reader(said, hearing);
  const certain = plain.intent !== "unknown" && plain.confidence >= CERTAIN;
  return certain ? reader.worded(plain) : reader.guessed(plain);
}
