/**
 * Lids that are told one by one or lot by lot: "P one yes, P two no", "Provider all good, Blue Lake
 * all but B two, which gives when I press it".
 */
import { commandOf } from "../../kitchen/command.ts";
import { type Context, type NamedBatch, runs } from "../context.ts";
import { refFor } from "../values/finish-slots.ts";
import { lotOfRef } from "../values/jar-names.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";
import type { LotWords } from "./lot-counts.ts";

/** With one of these no lid was pressed, or nobody is sure of what was felt. */
const UNSURE = new RegExp(
  "\\b(if|think|thought|guess|maybe|perhaps|probably|might|may|hope|hopefully|should|would|could|" +
    "will|wish|looks?|looking|seems?|trust|sure|almost|nearly|never mind|what|why|who|how|where|" +
    "reckon|suppose|suspect|wait|load|loads|yesterday|last)\\b",
);

const PRESSED = "(?: (?:when|if|as) (?:i|you|we) (?:press|push|touch|tap)(?: on)?(?: it| them)?)?";
const FAILED = new RegExp(
  `^(?:${[
    "(?:(?:goes|go|went|pops|moves) )?(?:up and down|down and up|in and out)",
    "(?:that |which )?(?:you|i) can (?:push|press)(?: (?:it|them|down|in))*",
    "(?:makes?|made|goes) click(?: click)*",
    "(?:gives?|moves?|flexe?s?|clicks?|pops?|springs?)(?: (?:a (?:bit|little)|back|up|still))*",
    "popped(?: back)? up(?: again)?",
    "not (?:quite )?(?:sealed|down|tight|took|taken|take|good|fine|held|holding|sound)(?: down)?",
    "(?:did|does|do|has|have) not(?: quite)?(?: (?:seal(?:ed)?|take|taken|took|hold|held|catch|" +
      "caught|go(?:ne)? down|make it))?",
    "failed(?: to seal)?|loose|up|open|bad|no good|no(?:pe)?|a? ?duds?",
  ].join("|")})${PRESSED}(?= |$)`,
);
const HELD = new RegExp(
  "^(?:(?:sealed|gone|went|popped|sucked) (?:down|up|tight)|sealed|down|tight|hard|sound|solid|" +
    `firm|held|holding|took|taken|yes|yep|yeah|good|fine|okay|all right|perfect)${PRESSED}(?= |$)`,
);
const UNCHECKED = new RegExp(
  "^(?:i |we )?(?:(?:do|did|have) )?not (?:yet )?(?:check(?:ed)?|tried|try|done|pressed)" +
    "(?: yet)?(?= |$)",
);
const OTHERS = /^(?:all )?(?:the )?(?:others?|rest|everything else)(?: ones)?(?= |$)/;
const OF_THAT = /^(?:of|in) (?:that|the same) (?:one|lot)(?= |$)/;
const BUT = /^(?:but|except(?: for)?|save|bar|less)(?= |$)/;
const ALL = /^(?:all(?: of (?:them|those))?|everything|every one|they|them all)(?= |$)/;
/** What changes nothing about a call. */
const BESIDE = new RegExp(
  "^(?:it|they|them|those|these|that|this|is|are|was|were|has|have|got|the|a|lids?|jars?|ones?|" +
    "of|and|but|too|so far|now|just|still|well|um|uh|hmm?|oh|which|both|all|nice|lovely|right|" +
    "again|already|there|then|sorry)(?= |$)",
);

/** Who a call is about, and what it says; `but` are those it is not about. */
type Call = {
  jars: number[];
  lots: NamedBatch[];
  all?: true;
  others?: true;
  but?: { jars: number[]; lots: NamedBatch[]; count?: number };
  said?: "held" | "failed" | "unchecked";
};

function isAbout({ jars, lots, all, others }: Call): boolean {
  return jars.length > 0 || lots.length > 0 || all === true || others === true;
}

/** "J's fine": a lot by its mark, with nothing between it and its verb. */
function markedLotAt({ words }: Utterance, at: number, { running }: Context) {
  const [letter, verb] = [words[at], words[at + 1]];
  if (!letter || letter.start !== verb?.start) return undefined;
  const [lot, other] = running.filter(({ mark }) => mark?.toLowerCase() === letter.word);
  return lot && !other ? { value: lot, next: at + 1 } : undefined;
}

class Calls {
  readonly calls: Call[] = [];
  private now: Call = { jars: [], lots: [] };

  constructor(
    private readonly said: Utterance,
    private readonly context: Context,
  ) {}

  /** Undefined where a word is none of a call's. */
  read(): Call[] | undefined {
    let at = 0;
    while (at < this.said.words.length) {
      const next = this.subject(at) ?? this.verdict(at);
      if (next === undefined) return undefined;
      at = next;
    }
    this.close();
    return this.calls.every(({ said, but }) => said !== undefined || but) ? this.calls : undefined;
  }

  private close(): void {
    if (isAbout(this.now)) this.calls.push(this.now);
    this.now = { jars: [], lots: [] };
  }

  /** Where a subject that begins here ends, once it is taken into the call. */
  private subject(at: number): number | undefined {
    const jar = this.jarAt(at);
    const lot = jar ? undefined : this.lotAt(at);
    if (!jar && !lot) return undefined;
    if (this.now.said) this.close();
    const into = this.now.but ?? this.now;
    if (jar) into.jars.push(jar.value);
    if (lot) into.lots.push(lot.value);
    return (jar ?? lot)?.next;
  }

  /** "Jar 61", or a further number in a list of them. */
  private jarAt(at: number) {
    const { words } = this.said;
    const from = /^(jars?|lids?|numbers?)$/.test(wordAt(words, at)) ? at + 1 : at;
    const number = smallWholeAt(words, from);
    return number && this.context.jarsSaid?.has(number.value) ? number : undefined;
  }

  private lotAt(at: number) {
    return (
      runningLotAt(this.said, at, this.context.running) ?? markedLotAt(this.said, at, this.context)
    );
  }

  private verdict(at: number): number | undefined {
    const { words } = this.said;
    const rest = textOf(words.slice(at));
    const take = (pattern: RegExp) => {
      const found = pattern.exec(rest)?.[0];
      return found === undefined ? undefined : at + found.split(" ").length;
    };
    const unchecked = take(UNCHECKED);
    if (unchecked) return this.says("unchecked", unchecked);
    const others = take(OTHERS);
    if (others) return this.rest(others);
    const same = take(OF_THAT);
    if (same && this.now.others) {
      this.now.lots = this.lotsBefore();
      return same;
    }
    const but = this.now.said ? undefined : take(BUT);
    if (but && isAbout(this.now)) {
      this.now.but = { jars: [], lots: [] };
      return but;
    }
    const count = this.now.but ? smallWholeAt(words, at) : undefined;
    if (count && this.now.but) {
      this.now.but.count = count.value;
      return count.next;
    }
    const failed = take(FAILED);
    if (failed) return this.says("failed", failed);
    const held = take(HELD);
    if (held && isAbout(this.now)) return this.says("held", held);
    const all = isAbout(this.now) && !this.now.said ? undefined : take(ALL);
    if (all && !this.isVerb(all)) {
      this.close();
      this.now.all = true;
      return all;
    }
    return take(BESIDE);
  }

  /** "They are hard" goes on about what was named before. */
  private isVerb(at: number): boolean {
    return this.now.said !== undefined && /^(is|are|has|have)$/.test(wordAt(this.said.words, at));
  }

  private rest(next: number): number {
    if (this.now.said || isAbout(this.now)) this.close();
    this.now.others = true;
    return next;
  }

  private lotsBefore(): NamedBatch[] {
    const last = this.calls.findLast(({ jars, lots }) => jars.length + lots.length > 0);
    const place = last?.jars.at(-1);
    const refs = place === undefined ? [] : (this.context.jarsSaid?.get(place)?.refs ?? []);
    const lots = refs.flatMap((ref) => lotOfRef(ref, this.context.running) ?? []);
    return lots.length > 0 ? lots : (last?.lots ?? []);
  }

  /** What is told twice has to be the same; undefined where it is not, or of nothing. */
  private says(said: NonNullable<Call["said"]>, next: number): number | undefined {
    const { now } = this;
    if (!isAbout(now)) return undefined;
    if (now.said !== undefined && now.said !== said) return undefined;
    now.said = said;
    return next;
  }
}

/** Whether jars are out of a canner and wait for their lids to be pressed. */
function isOut({ loads = [], question }: Context): boolean {
  return question?.kind === "jars" || runs(loads, ({ ofCanner }) => ofCanner === "after");
}

/** The commands of calls: what failed comes first, so that what held is the rest. */
function commandsOf(calls: readonly Call[], said: Utterance, context: Context) {
  const failed = calls.flatMap((one) => [
    ...(one.said === "failed" && !one.but ? one.jars : []),
    ...(one.but?.jars ?? []),
  ]);
  const held = calls.flatMap((one) => (one.said === "held" && !one.but ? one.jars : []));
  if (held.some((jar) => failed.includes(jar))) return undefined;
  const named = (lot: NamedBatch) => {
    const target = lot.variety?.toLowerCase() ?? "";
    return { target, ref: refFor(target, "sealed", said, context) };
  };
  const without = calls.flatMap(({ but }) =>
    (but?.lots ?? []).map((lot) => {
      const { target, ref } = named(lot);
      return commandOf("seal-failed", { target, count: but?.count ?? 0 }, { ref });
    }),
  );
  const whole = calls.filter((one) => one.but !== undefined || one.said === "held");
  const lots = [...new Set(whole.flatMap((one) => one.lots))].map((lot) => {
    const { target, ref } = named(lot);
    return commandOf("sealed", { target, all: true as const }, { ref });
  });
  const everything = whole.some(({ all, others, lots: of }) => (all || others) && of.length === 0);
  return [
    ...(failed.length > 0 ? [commandOf("seal-failed", { jars: failed })] : []),
    ...without,
    ...(held.length > 0 ? [commandOf("sealed", { jars: held })] : []),
    ...(everything ? [commandOf("sealed", { all: true as const })] : lots),
  ];
}

/** Calls that leave open who is meant, or how many. */
function isOpen(calls: readonly Call[]): boolean {
  const unchecked = calls.some(({ said }) => said === "unchecked");
  return calls.some(({ lots, jars, all, others, but, said }) => {
    const rest = (all || others) && lots.length === 0;
    const uncounted = (but?.lots.length ?? 0) > 0 && (but?.count ?? 0) < 1;
    const empty = but && but.jars.length + but.lots.length === 0;
    const whole = said === "failed" && !but && jars.length === 0;
    const stray = others && rest && calls.length === 1;
    return (rest && unchecked) || uncounted || empty || whole || stray;
  });
}

/**
 * What is told of several lids; undefined where a word is none of that, where who is meant is left
 * open, and where a wording of one report says it all.
 */
export function lidCalls(said: Utterance, context: Context): LotWords | undefined {
  if (said.asked || said.cut || !isOut(context) || UNSURE.test(textOf(said.words)))
    return undefined;
  const calls = new Calls(said, context).read();
  if (!calls || isOpen(calls)) return undefined;
  if (calls.length < 2 && !calls.some(({ but }) => but)) return undefined;
  const commands = commandsOf(calls, said, context);
  if (!commands || commands.length === 0) return undefined;
  return { commands, clauses: [said], others: [], accounted: true };
}
