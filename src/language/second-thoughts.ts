/**
 * What somebody corrects in the same breath: "two jars, well three actually", "quarts, no wait,
 * pints", "the beans, I mean the beets". The first of the two goes, what was said of it stays.
 */
import { type Context, runs } from "./context.ts";
import { phraseBook } from "./grammar/phrase-book.ts";
import { wordSet } from "./grammar/word-set.ts";
import { isTarget } from "./values/named-recipe.ts";
import { slotReader } from "./values/slots.ts";
import { spokenNames } from "./values/targets.ts";
import { type Utterance, utteranceOf } from "./words.ts";

/** What takes back what was just said, longest first. */
const CORRECTIONS: readonly (readonly string[])[] = [
  "no wait",
  "no sorry",
  "no no",
  "hang on",
  "hold on",
  "i mean",
  "i meant",
  "make that",
  "make it",
  "scratch that",
  "strike that",
  "or rather",
  "or it was",
  "or that was",
  "not that",
  "correction",
  "actually",
  "rather",
  "sorry",
  "wait",
  "well",
  "nope",
  "no",
].map((words) => words.split(" "));

/** The longest correction that begins at this word; undefined where none does. */
export function correctionAt(words: Utterance["words"], at: number): readonly string[] | undefined {
  return CORRECTIONS.find((one) => one.every((word, step) => words[at + step]?.word === word));
}

/** These are said in other ways too: they put right only what stands close before them. */
const WEAK = wordSet("no well wait sorry actually rather nope");
/** What may stand between what takes back and what is meant. */
const LEADS = wordSet("the a an my our it is was that i mean meant make at for in of to or with");

type Value = { at: number; next: number };
/** Where what takes back stands; `weak` where it is a word that is said otherwise too. */
type Correction = Value & { weak: boolean };

/** Kinds of values that can take each other's place. */
const KINDS = [
  ...(["moment", "length", "weight", "jars", "ordinal", "tally", "size", "target"] as const),
  "number" as const,
];
const MOST_BETWEEN = 5;
/** A reason may be given before what is meant: "five, no, I weighed the bowl too, four". */
const LONGEST_REASON = 10;
/** What says the value anew behind a reason. */
const RESTATES = new Set(["make it", "make that", "put down", "call it", "it is", "that is"]);
/** Where a boil, pressure or seal is talked of, a reason may tell of its loss: it stays said. */
const GRAVE = new RegExp(
  "\\b(boil|press|seal|steam|vent|gauge|needle|dial|lid|pop|broke|crack|leak|lost|lose|stop|" +
    "quit|drop|fell)",
  "i",
);
const OFF_A_GAUGE = /^(at|to|reads?|says?|shows?|hits?|holding|reading|showing)$/;
/** Kinds that need no such words to be known for what is meant. */
const ALONE: ReadonlySet<string> = new Set(["length", "weight", "ordinal", "tally", "size"]);
const JARS = /^(jars?|pints?|quarts?)$/;
const MOST_NAME_WORDS = 3;

class Thoughts {
  private readonly read: ReturnType<typeof slotReader>;
  /** Something is in a canner, or on its way to it: pounds may be a pressure. */
  private readonly gauged: boolean;

  constructor(
    private readonly said: Utterance,
    context: Context,
  ) {
    this.read = slotReader(said, context, spokenNames(context), phraseBook().plain);
    const { running, loads = [] } = context;
    this.gauged = loads.length > 0 || runs(running, ({ food }) => food === "pot");
  }

  private word(at: number): string {
    return this.said.words[at]?.word ?? "";
  }

  /** Where what takes back begins and ends, the last one first. */
  private *corrections(): Generator<Correction> {
    for (let at = this.said.words.length - 2; at > 0; at -= 1) {
      const found = correctionAt(this.said.words, at);
      if (!found || this.isInside(at)) continue;
      let next = at + found.length;
      while (this.isCorrection(next) || LEADS.has(this.word(next))) next += 1;
      yield { at, next, weak: found.length === 1 && WEAK.has(found[0] ?? "") };
    }
  }

  private isCorrection(at: number): boolean {
    return correctionAt(this.said.words, at) !== undefined;
  }

  /** Part of a longer one that begins before it. */
  private isInside(at: number): boolean {
    return this.isCorrection(at - 1) || (LEADS.has(this.word(at - 1)) && this.isCorrection(at - 2));
  }

  private values(kind: (typeof KINDS)[number], at: number): Value[] {
    if (kind === "jars" && !/^(jars?|numbers?)$/.test(this.word(at))) return [];
    if (kind === "ordinal") return this.nth(at);
    if (kind === "tally") return this.tally(at);
    const found = this.read(kind, at).filter(({ value }) => {
      return kind !== "target" || (isTarget(value) && value.exact);
    });
    return found.map(({ next }) => ({ at, next })).sort((a, b) => b.next - a.next);
  }

  /** "The fourth one", "the second jar". */
  private nth(at: number): Value[] {
    const [found] = this.read("ordinal", at);
    const jar = found && /^(jar|lid|one|pint|quart)$/.test(this.word(found.next));
    return found && jar ? [{ at, next: found.next + 1 }] : [];
  }

  /** How many jars: "seven pints". */
  private tally(at: number): Value[] {
    const list = this.read("whole", at).filter(({ next }) => JARS.test(this.word(next)));
    return list.map(({ next }) => ({ at, next: next + 1 }));
  }

  /** The last value of these kinds in front of a place, from its first word on. */
  private valueBefore(place: number, kinds: readonly (typeof KINDS)[number][]): Value | undefined {
    let last: Value | undefined;
    for (let at = place - 1; at >= 0; at -= 1) {
      if (last && place - at > MOST_BETWEEN + last.next - last.at) break;
      const here = kinds
        .flatMap((kind) => this.values(kind, at))
        .filter(({ next }) => next <= place);
      const [found] = here.sort((a, b) => b.next - a.next);
      if (found && (!last || found.next >= last.next)) last = found;
    }
    return last;
  }

  /** A name with capitals where no sentence begins. */
  private name(at: number): Value | undefined {
    const capital = (place: number) => {
      const word = this.said.words[place];
      return (
        place > 0 && word !== undefined && /^[A-Z][a-z]/.test(this.said.text.slice(word.start))
      );
    };
    let next = at;
    while (next - at < MOST_NAME_WORDS && capital(next)) next += 1;
    return next > at && !capital(at - 1) ? { at, next } : undefined;
  }

  /** The value in front of a correction that the one behind it takes the place of. */
  private pair(correction: Correction): { first: Value; second: Value } | undefined {
    const { at, next } = correction;
    const name = this.name(next);
    const named = name && this.nameBefore(at);
    if (name && named && named.next === at) return { first: named, second: name };
    for (const kind of KINDS) {
      const [second] = this.values(kind, next);
      const first = second && this.firstOf(kind, at);
      if (first && this.isNear(first, second, correction)) return { first, second };
    }
    return name && named && { first: named, second: name };
  }

  /** What is put right, the last first; before that, what is behind a reason that is given. */
  *pairs(): Generator<{ correction: Correction; first: Value; second: Value }> {
    const all = [...this.corrections()];
    for (const correction of all) {
      const found = this.pair(correction) ? undefined : this.behindReason(correction);
      if (found) yield { correction, ...found };
    }
    for (const correction of all) {
      const found = this.pair(correction);
      if (found) yield { correction, ...found };
    }
  }

  /** What a value of this kind that is said behind a place takes the place of. */
  private firstOf(kind: (typeof KINDS)[number], place: number): Value | undefined {
    const kinds = kind === "length" || kind === "weight" ? [kind, "number" as const] : [kind];
    return this.valueBefore(place, kinds);
  }

  /** "Quarts, no, I haven't enough quarts, make it pints": the value behind a reason. */
  private behindReason({ at, next }: Correction): { first: Value; second: Value } | undefined {
    const grave = GRAVE.test(this.said.text);
    for (let place = next + 1; place <= next + LONGEST_REASON; place += 1) {
      if (!this.isMarked(place)) continue;
      const lead = this.leadAt(place);
      for (const kind of KINDS) {
        if (grave && kind !== "ordinal") continue;
        if (lead.restates ? kind === "target" : !ALONE.has(kind)) continue;
        const [second] = this.values(kind, lead.next);
        const first = second && this.firstOf(kind, at);
        const near = first && at - first.next <= MOST_BETWEEN;
        if (!near || (kind === "number" && !this.isMeasured(first))) continue;
        if (!this.isPressure(first, second)) return { first, second };
      }
    }
    return undefined;
  }

  /** Where a value may begin, and whether words stand before it that say it anew. */
  private leadAt(place: number): { next: number; restates: boolean } {
    let next = /^(so|and|then|but)$/.test(this.word(place)) ? place + 1 : place;
    const restates = RESTATES.has(`${this.word(next)} ${this.word(next + 1)}`);
    if (restates) next += 2;
    while (LEADS.has(this.word(next))) next += 1;
    return { next, restates };
  }

  /** Pounds of nothing that could be read off a gauge: what is said of its fall stays said. */
  private isPressure(first: Value, second: Value): boolean {
    const pounds = [first, second].flatMap(({ at }) => this.values("weight", at));
    if (pounds.length === 0) return false;
    const of = pounds.some(({ next }) => this.word(next) === "of");
    return OFF_A_GAUGE.test(this.word(first.at - 1)) || (!of && this.gauged);
  }

  /** Pounds, minutes: no reading of a gauge without its unit, and no count. */
  private isMeasured({ at, next }: Value): boolean {
    const whole = [...this.values("weight", at), ...this.values("length", at)];
    return whole.some((one) => one.next > next);
  }

  private nameBefore(place: number): Value | undefined {
    for (let at = place - 1; at > 0; at -= 1) {
      const found = this.name(at);
      if (found && found.next <= place) return found;
    }
    return undefined;
  }

  /** "Six sealed, no lids left" corrects nothing: a little word stands alone or beside both. */
  private isNear(first: Value, second: Value, { at, next, weak }: Correction): boolean {
    if (!weak) return true;
    if (at - first.next > MOST_BETWEEN) return false;
    if (first.next === at || next > at + 1) return true;
    if (this.word(first.next) === this.word(second.next)) return true;
    return this.isMarked(at + 1) || (this.word(at) !== "no" && this.isMarked(at));
  }

  /** Whether a comma or the like stands before a word. */
  private isMarked(at: number): boolean {
    const { words, text } = this.said;
    return /[,.;–—-]/.test(text.slice(words[at - 1]?.end, words[at]?.start));
  }

  /** The text with the second value in place of the first, and what was said of both once. */
  spliced(correction: Value, { first, second }: { first: Value; second: Value }): string {
    const { words, text } = this.said;
    const start = (at: number) => words[at]?.start ?? text.length;
    const end = (at: number) => words[at - 1]?.end ?? 0;
    const between = text
      .slice(end(first.next), end(correction.at))
      .replace(/[\s,]+(or|and|but)$/, "");
    const again = this.word(first.next) !== "" && this.word(second.next) === this.word(first.next);
    const kept = first.next === correction.at || again ? "" : between;
    const [before, behind] = [text.slice(0, start(first.at)), text.slice(end(second.next))];
    return `${before}${text.slice(start(second.at), end(second.next))}${kept}${behind}`;
  }
}

const MOST_CORRECTIONS = 3;

/** The words as they are meant once everything is put right; as they were said where nothing is. */
export function withoutFirstThoughts(text: string, context: Context): Utterance {
  let said = utteranceOf(text);
  for (let times = 0; times < MOST_CORRECTIONS; times += 1) {
    if (!said.words.some(({ word }) => MARKING.has(word))) return said;
    const thoughts = new Thoughts(said, context);
    const [found] = thoughts.pairs();
    if (!found) return said;
    said = utteranceOf(thoughts.spliced(found.correction, found));
  }
  return said;
}

const MARKING = new Set(CORRECTIONS.map(([first]) => first ?? ""));
