/** What is said of lids, call by call: who it is about, and whether they held. */
import type { Context, NamedBatch } from "../context.ts";
import { lotOfRef } from "../values/jar-names.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";

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
const OF_LOT = /^(of|the|my|our|them|those|these|jars?|lids?|pints?|quarts?)$/;
const WHOLE = /^(?:all|both)(?: of (?:them|those))?(?= |$)/;
const NONE = /^(?:none|not one|not a one) of(?= |$)/;
const BUT = /^(?:but|except(?: for)?|save|bar|less)(?= |$)/;
const ALL = /^(?:all(?: of (?:them|those))?|everything|every one|they|them all)(?= |$)/;
/** What changes nothing about a call. */
const BESIDE = new RegExp(
  "^(?:it|they|them|those|these|that|this|is|are|was|were|has|have|got|the|a|lids?|jars?|ones?|" +
    "of|and|but|too|so far|now|just|only|still|well|um|uh|hmm?|oh|which|both|all|nice|lovely|" +
    "right|again|already|there|then|sorry)(?= |$)",
);

/** Jars of a lot; how many was not said where the count is missing. */
export type Some = { lot: NamedBatch; count?: number };

/** Who a call is about, and what it says; `but` are those it is not about. */
export type Call = {
  jars: number[];
  lots: NamedBatch[];
  all?: true;
  others?: true;
  /** How many of its only lot; without a lot, how many the calls behind it name. */
  count?: number;
  /** "None of the Blue Lake". */
  none?: true;
  but?: { jars: number[]; lots: Some[]; count?: number };
  said?: "held" | "failed" | "unchecked";
};

function isAbout({ jars, lots, all, others, count }: Call): boolean {
  const any = all === true || others === true || count !== undefined;
  return any || jars.length > 0 || lots.length > 0;
}

/** A number of jars that are named behind it: "two failed, P one and D two". */
export function isTotal({ jars, lots, count }: Call): boolean {
  return count !== undefined && jars.length + lots.length === 0;
}

/** "J's fine": a lot by its mark, with nothing between it and its verb. */
function markedLotAt({ words }: Utterance, at: number, { running }: Context) {
  const [letter, verb] = [words[at], words[at + 1]];
  if (!letter || letter.start !== verb?.start) return undefined;
  const [lot, other] = running.filter(({ mark }) => mark?.toLowerCase() === letter.word);
  return lot && !other ? { value: lot, next: at + 1 } : undefined;
}

export class Calls {
  readonly calls: Call[] = [];
  private now: Call = { jars: [], lots: [] };

  constructor(
    private readonly said: Utterance,
    private readonly context: Context,
  ) {}

  /** Undefined where a word does not belong to a call. */
  read(): Call[] | undefined {
    let at = 0;
    while (at < this.said.words.length) {
      const next = this.subject(at) ?? this.verdict(at);
      if (next === undefined) return undefined;
      at = next;
    }
    this.close();
    this.shareVerdicts();
    return this.calls.every(({ said, but }) => said !== undefined || but) ? this.calls : undefined;
  }

  /** "Four Provider sealed, two Dragon Tongue": of counts in a row, one verdict is said for all. */
  private shareVerdicts(): void {
    const counted = ({ count, said }: Call) => count !== undefined && said === undefined;
    const [first] = this.calls;
    if (first && isTotal(first)) for (const one of this.calls) one.said ??= first.said;
    for (const [at, call] of this.calls.entries()) {
      if (call.none) call.said ??= this.calls[at - 1]?.said;
      if (!counted(call)) continue;
      const next = this.calls.slice(at).find((one) => !counted(one));
      const said = [this.calls[at - 1], next].find((one) => (one?.lots.length ?? 0) > 0)?.said;
      if (said) call.said = said;
    }
  }

  private close(): void {
    if (isAbout(this.now)) this.calls.push(this.now);
    this.now = { jars: [], lots: [] };
  }

  /** Where a subject that begins here ends, once it is taken into the call. */
  private subject(at: number): number | undefined {
    const jar = this.jarAt(at);
    const counted = jar || this.now.but ? undefined : this.countAt(at);
    if (counted) {
      if (this.now.said || isAbout(this.now)) this.close();
      Object.assign(this.now, { lots: [counted.lot], count: counted.count });
      return counted.next;
    }
    const total = jar ? undefined : this.totalAt(at);
    if (total) {
      this.now.count = total.value;
      return total.next;
    }
    const lot = jar ? undefined : this.lotAt(at);
    if (!jar && !lot) return undefined;
    const another = lot && this.now.count !== undefined && this.now.lots.length > 0;
    if (this.now.said || another) this.close();
    const { but } = this.now;
    if (jar) (but ?? this.now).jars.push(jar.value);
    if (lot && but) but.lots.push({ lot: lot.value });
    else if (lot) this.now.lots.push(lot.value);
    return (jar ?? lot)?.next;
  }

  /** "Jar 61", or a further number in a list of them. */
  private jarAt(at: number) {
    const { words } = this.said;
    const from = /^(jars?|lids?|numbers?)$/.test(wordAt(words, at)) ? at + 1 : at;
    const number = smallWholeAt(words, from);
    return number && this.context.jarsSaid?.has(number.value) ? number : undefined;
  }

  /** A number that begins the sentence and is no jar's: "two failed", "only one didn't take". */
  private totalAt(at: number) {
    if (this.calls.length > 0 || isAbout(this.now)) return undefined;
    const number = smallWholeAt(this.said.words, at);
    return number && !this.context.jarsSaid?.has(number.value) ? number : undefined;
  }

  /** "Four Provider", "two jars of the Dragon Tongue". */
  private countAt(at: number) {
    const { words } = this.said;
    const one = this.now.but && /^an?$/.test(wordAt(words, at)) && { value: 1, next: at + 1 };
    const number = smallWholeAt(words, at) ?? one;
    if (!number) return undefined;
    let from = number.next;
    while (OF_LOT.test(wordAt(words, from))) from += 1;
    const lot = this.lotAt(from);
    return lot && { count: number.value, lot: lot.value, next: lot.next };
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
    const but = this.now.said === undefined || this.now.said === "held" ? take(BUT) : undefined;
    if (but && isAbout(this.now)) {
      this.now.but = { jars: [], lots: [] };
      return but;
    }
    const counted = this.exceptAt(at);
    if (counted) return counted;
    const too =
      this.now.said || !isAbout(this.now) ? undefined : take(/^(?:too|as well|also)(?= |$)/);
    const before = this.calls.at(-1)?.said;
    if (too && before) return this.says(before, too);
    const failed = take(FAILED);
    if (failed) return this.says("failed", failed);
    const held = take(HELD);
    if (held && isAbout(this.now)) return this.says("held", held);
    const none = isAbout(this.now) ? undefined : take(NONE);
    if (none) {
      this.now.none = true;
      return none;
    }
    const all = isAbout(this.now) && !this.now.said ? undefined : take(ALL);
    const whole = this.now.lots.length > 0 && !this.now.said && !this.now.but ? take(WHOLE) : 0;
    if (whole) {
      this.now.all = true;
      return whole;
    }
    if (all && !this.isVerb(all)) {
      this.close();
      this.now.all = true;
      return all;
    }
    return take(BESIDE);
  }

  /** How many a call is not about: "all but one", "everything except two P and one B". */
  private exceptAt(at: number): number | undefined {
    const { now } = this;
    const { words } = this.said;
    if (!now.but) return undefined;
    const number = smallWholeAt(words, at);
    const some = this.countAt(at);
    if (!number && !some) return undefined;
    const first = now.but.count === undefined && now.but.jars.length + now.but.lots.length === 0;
    if (some && first && now.all && !now.said && wordAt(words, number?.next ?? 0) === "of") {
      // "All but one of the Provider sealed": of the other lots nothing is said.
      this.now = { jars: [], lots: [some.lot], but: { jars: [], lots: [], count: some.count } };
    } else if (some) now.but.lots.push(some);
    else if (first && number) now.but.count = number.value;
    else return undefined;
    return some?.next ?? number?.next;
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
