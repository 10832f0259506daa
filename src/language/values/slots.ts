import { localIso, MINUTE_MS } from "../../kitchen/time.ts";
import type { Context } from "../context.ts";
import type { SlotMatch, SlotReader } from "../grammar/matcher.ts";
import { wordSet } from "../grammar/word-set.ts";
import type { Utterance } from "../words.ts";
import { clockAt, lastTimeOf, nightAt, pastMomentsAt } from "./clock-times.ts";
import { durationsAt } from "./durations.ts";
import { futureMomentsAt } from "./future-times.ts";
import { isTarget } from "./named-recipe.ts";
import { askedAt, labelsAt, scoreNameAt, scoresAt, sizesAt, textBetween } from "./open-slots.ts";
import { foodLotAt, lotAt, type SpokenLot } from "./spoken-lots.ts";
import { jarListAt, numbersAt, ordinalsAt, type Parsed } from "./spoken-numbers.ts";
import { producedAt, weighedAt } from "./spoken-weights.ts";
import { type Names, type PlainWords, type Target, targetsAt } from "./targets.ts";

/** Each word an open slot takes costs this much, so that closed phrases win. */
const OPEN_WORD_COST = 0.3;
/** Less than a filler, so that the words of a text are not taken for fillers after it. */
const TEXT_WORD_COST = 0.04;
/** A name that only a timer has is more likely meant where timers are mentioned. */
const TIMER_COST = 0.2;
const FUZZY_COST = 0.5;
/** A food that no recipe is named for is meant only where nothing else is. */
const FOOD_COST = 0.8;
/** Outside this range, a bare number is not a thermometer reading in a kitchen. */
const THERMOMETER = { from: 60, to: 450 };
const MOST_JARS = 200;

function sure<T>(readings: readonly Parsed<T>[]): SlotMatch[] {
  return readings.map(({ value, next }) => ({ value, next, cost: 0 }));
}

function isMore(said: Utterance, at: number, next: number): boolean {
  const word = (place: number) => said.words[place]?.word ?? "";
  return /^(more|longer|extra)$/.test(word(next)) || hasMore(said, at, next);
}

function hasMore(said: Utterance, at: number, next: number): boolean {
  return said.words.slice(at, next).some(({ word }) => /^(more|another|extra)$/.test(word));
}

function isTimerOnly({ meaning }: Target): boolean {
  return meaning.timers.length > 0 && meaning.batches.length + meaning.recipes.length === 0;
}

/** Words in the place of a name that name nobody whose vote could be counted. */
const NOBODY: ReadonlySet<string> = new Set(
  [
    "i we you he she they it this that these those who one ones all most some both none nobody",
    "everyone everybody anyone anybody someone somebody people folks guests kids would have and",
  ].flatMap((line) => line.split(" ")),
);
const MOST_NAME_WORDS = 3;

type Reader = (at: number) => SlotMatch[];

function isCount(value: unknown): boolean {
  return Number.isInteger(value) && Number(value) >= 0 && Number(value) <= MOST_JARS;
}

/** Counts of jars: a number, or "a", "one", "another", "a couple". */
function countReader(said: Utterance): Reader {
  return (at) => {
    const numbers = numbersAt(said.words, at)
      .filter(({ value }) => isCount(value))
      .map(({ value, next }) => ({ value, next, cost: 0 }));
    if (numbers.length > 0) return numbers;
    const word = said.words[at]?.word ?? "";
    return /^(a|an|another)$/.test(word) ? [{ value: 1, next: at + 1, cost: 0 }] : [];
  };
}

function targetReaders(said: Utterance, names: Names, plain: PlainWords): Record<string, Reader> {
  const known = new Map<number, SlotMatch[]>();
  const closed: Reader = (at) => {
    const before = known.get(at);
    if (before) return before;
    const found = closedAt(at);
    known.set(at, found);
    return found;
  };
  const closedAt: Reader = (at) =>
    targetsAt(said.words, at, names, plain).map(({ value, next }) => ({
      value,
      next,
      cost:
        (value.exact ? 0 : FUZZY_COST) +
        (isTimerOnly(value) ? TIMER_COST : 0) +
        (/^(timer|one)$/.test(said.words[next - 1]?.word ?? "") ? TIMER_COST : 0),
    }));
  const label: Reader = (at) =>
    labelsAt(said.words, at).map(({ value, next }) => ({
      value,
      next,
      cost: OPEN_WORD_COST * (next - at),
    }));
  const open: Reader = (at) => {
    const named: SlotMatch[] = label(at).map((match) => {
      const meaning = { recipes: [], batches: [], timers: [] };
      const target: Target = { said: String(match.value), meaning, exact: true };
      return { ...match, value: target };
    });
    return [...closed(at), ...named];
  };
  const knownTimer: Reader = (at) =>
    closed(at)
      .filter(({ value }) => isTarget(value) && isTimerOnly(value))
      .map((match) => ({ ...match, cost: match.cost - TIMER_COST }));
  const person: Reader = (at) => {
    return label(at).filter(({ value }) => {
      const words = String(value).split(" ");
      return words.length <= MOST_NAME_WORDS && !words.some((word) => NOBODY.has(word));
    });
  };
  const others = { timer: open, thing: label, person, "known-timer": knownTimer };
  return { target: closed, open, ...others };
}

function timeReaders(said: Utterance, context: Context): Record<string, Reader> {
  const { words } = said;
  const { nowMs, zone } = context;
  const iso = (instant: number) => localIso(instant, zone);
  const past: Reader = (at) =>
    pastMomentsAt(words, at, nowMs, zone).map(({ value, next }) => ({
      value: iso(value),
      next,
      cost: 0,
    }));
  const lasting: Reader = (at) =>
    durationsAt(words, at).map(({ value, next }) => ({
      value: iso(nowMs - value * MINUTE_MS),
      next,
      cost: 0,
    }));
  const clock: Reader = (at) => {
    const found = clockAt(words, at);
    const plain = found && (found.next - at > 1 || found.value.half !== undefined);
    const figures = /:/.test(words[at]?.word ?? "");
    if (!found || !(plain || figures)) return [];
    return [{ value: iso(lastTimeOf(found.value, nowMs, zone)), next: found.next, cost: 0 }];
  };
  return {
    past,
    lasting,
    ago: (at) => past(at).filter(({ next }) => words[next - 1]?.word === "ago"),
    moment: (at) => [...past(at), ...clock(at)],
    future: (at) =>
      futureMomentsAt(words, at, nowMs, zone).map(({ value, next }) => ({
        value: iso(value),
        next,
        cost: 0,
      })),
    hours: (at) => {
      const night = nightAt(words, at);
      return night ? sure([night]) : [];
    },
    length: (at) => sure(durationsAt(words, at)),
    duration: (at) => sure(durationsAt(words, at).filter(({ next }) => !hasMore(said, at, next))),
    more: (at) => sure(durationsAt(words, at).filter(({ next }) => isMore(said, at, next))),
  };
}

/** What may follow a lot, besides one or two other words: "…, let's start those". */
const BEHIND_LOT = wordSet("let so i we time to start begin go do is are");

/** A text never ends with these: they are said to the program. */
const POLITE = wordSet("please thanks okay kindly");

const PING = new RegExp(
  "^(a|another|one|one more|that is another) (lid|one|jar)( more)? (has |have )?(just )?" +
    "(pinged|popped|pinged down|went ping)( down)?$",
);

function textReaders(said: Utterance, names: Names, plain: PlainWords): Record<string, Reader> {
  const { words } = said;
  const end = words.length;
  const lots =
    (read: (at: number, next: number) => SpokenLot | undefined): Reader =>
    (at) => {
      const found: SlotMatch[] = [];
      for (let next = end; next > at; next -= 1) {
        const near = next > end - 3 || BEHIND_LOT.has(words[next]?.word ?? "");
        const lot = near ? read(at, next) : undefined;
        if (!lot) continue;
        const cost = lot.recipes.length === 0 ? FOOD_COST : 0.1;
        found.push({ value: lot, next, cost: lot.exact ? cost : FUZZY_COST });
      }
      return found;
    };
  return {
    text: (at) => {
      const found: SlotMatch[] = [];
      for (let next = at + 1; next <= end; next += 1) {
        if (next > at + 1 && POLITE.has(words[next - 1]?.word ?? "")) continue;
        const value = textBetween(said, at, next);
        found.push({ value, next, cost: TEXT_WORD_COST * (next - at) });
      }
      return found;
    },
    pinged: (at) => {
      const all = words
        .slice(at)
        .map(({ word }) => word)
        .join(" ");
      return PING.test(all) ? [{ value: textBetween(said, at, end), next: end, cost: 0 }] : [];
    },
    asked: (at) => {
      const asked = at === end ? undefined : askedAt(said, at, end);
      return asked ? [{ value: asked, next: end, cost: OPEN_WORD_COST }] : [];
    },
    lot: lots((at, next) => lotAt(said.text, words, at, next, names, plain)),
    food: lots((at, next) => foodLotAt(said.text, words, at, next)),
  };
}

/** A number after one of these is below zero, never above it. */
const MINUS = wordSet("minus negative");

function numberReaders(said: Utterance): Record<string, Reader> {
  const { words } = said;
  const below = (at: number) => MINUS.has(words[at]?.word ?? "");
  const numbers: Reader = (at) => {
    if (below(at - 1)) return [];
    const found = numbersAt(words, below(at) ? at + 1 : at);
    return sure(below(at) ? found.map((one) => ({ ...one, value: -one.value })) : found);
  };
  return {
    number: numbers,
    count: countReader(said),
    whole: (at) => numbers(at).filter(({ value }) => isCount(value)),
    temperature: (at) =>
      numbers(at).filter(({ value }) => {
        const degrees = Number(value);
        return degrees >= THERMOMETER.from && degrees <= THERMOMETER.to;
      }),
    jars: (at) => sure(jarListAt(words, at)),
    ordinal: (at) => {
      const found = ordinalsAt(words, at);
      return found ? sure([found]) : [];
    },
    "jar-list": (at) => sure(jarListAt(words, at).filter(({ value }) => value.length > 1)),
    produce: (at) => sure(producedAt(words, at)),
    weight: (at) => sure(weighedAt(words, at)),
    "score-name": (at) => sure(scoreNameAt(words, at)),
    size: (at) => sure(sizesAt(words, at)),
    scores: (at) => sure(scoresAt(words, at)),
  };
}

/** Reads the values of all kinds of slots from one utterance, each place at most once. */
export function slotReader(
  said: Utterance,
  context: Context,
  names: Names,
  plain: PlainWords,
): SlotReader {
  const makers = [
    () => targetReaders(said, names, plain),
    () => numberReaders(said),
    () => timeReaders(said, context),
    () => textReaders(said, names, plain),
  ];
  const made: Record<string, Reader>[] = [];
  const readerOf = (kind: string): Reader => {
    for (const [index, make] of makers.entries()) {
      made[index] ??= make();
      const reader = made[index][kind];
      if (reader) return reader;
    }
    throw new Error(`no slot is of the kind "${kind}"; see slots.ts`);
  };
  const known = new Map<string, (readonly SlotMatch[])[]>();
  return (kind, at) => {
    let places = known.get(kind);
    if (!places) {
      places = [];
      known.set(kind, places);
    }
    const before = places[at];
    if (before) return before;
    const found = at < said.words.length ? readerOf(kind)(at) : [];
    places[at] = found;
    return found;
  };
}

/** The kinds of slots that phrases may use. */
export const SLOT_KINDS: readonly string[] = [
  "target known-timer open timer thing person past lasting ago moment future duration length",
  "more hours text pinged asked lot food number count whole temperature jars jar-list ordinal size",
  "scores score-name produce weight",
]
  .join(" ")
  .split(" ");
