import type { Intent } from "../../kitchen/command.ts";
import { BESIDE, LIKENS, MOST_LIKENED } from "../beside-words.ts";
import { beginsAsking, TELLING } from "../guards.ts";
import { meanings } from "../intents/all.ts";
import type { Bag } from "../intents/meaning.ts";
import type { Grammar, Match, Phrase, Run, SlotCapture } from "./matcher.ts";
import { type Passable, startsFrom, tailsOf } from "./passing-over.ts";
import { wordSet } from "./word-set.ts";

/**
 * The last resort for commands in no known word order: an intent is taken where everything said
 * belongs to it. All of its required pieces have to be there, and no word besides the pieces it may
 * have; so an unforeseen word makes the command unknown, never something else.
 */

/** Longer utterances are stories. */
const MOST_WORDS = 20;

/** A command put together from its parts: its intent, and its slots as the phrases filled them. */
export type Joined = {
  intent: Intent;
  slots: Record<string, unknown>;
  hedged: boolean;
  /** Whether words were passed over that belong to no meaning and change none. */
  beside?: boolean;
};

type OpenBag = { intent: Intent; bag: Bag<Intent>; must: Phrase[]; may: Phrase };

/** How far a bag has got at one place: which required pieces it has, and what they filled. */
type Path = {
  has: number;
  captures: readonly SlotCapture[];
  cost: number;
  /** Whether words were passed over that change nothing. */
  beside: boolean;
};

/** A word that changes nothing costs more than one that belongs to the meaning. */
const BESIDE_COST = 4;

/** The bags of a grammar; their phrases are read at first use. */
export class BagReader {
  private opened: OpenBag[] | undefined;

  constructor(private readonly grammar: Grammar) {}

  private get bags(): OpenBag[] {
    this.opened ??= meanings().flatMap(([intent, { bags = [] }]) =>
      bags.map((bag) => ({
        intent,
        bag,
        must: bag.must.map((source) => this.grammar.phrase(source)),
        may: this.grammar.phrase(bag.may),
      })),
    );
    return this.opened;
  }

  /** The cheapest command that the words form; of equals, the first. */
  read(run: Run, book: Passable, refused: (intent: Intent) => boolean): Joined | undefined {
    if (run.words.length > MOST_WORDS) return undefined;
    const asks = beginsAsking(run.words);
    let best: { joined: Joined; cost: number } | undefined;
    for (const open of this.bags) {
      const { intent } = open;
      const { set, asking } = open.bag;
      if ((asks && !asking) || refused(intent)) continue;
      if (!open.must.every((phrase) => phrase.lastStart(run) >= 0)) continue;
      const path = walk(open, run, book);
      if (!path || (best && best.cost <= path.cost)) continue;
      const slots: Record<string, unknown> = { ...set };
      for (const { slot, value } of path.captures) slots[slot] = value;
      const { beside } = path;
      best = { joined: { intent, slots, hedged: false, beside }, cost: path.cost };
    }
    return best?.joined;
  }
}

/** Both lists of slots, or nothing where they fill one slot differently. */
function together(
  before: readonly SlotCapture[],
  more: readonly SlotCapture[],
): readonly SlotCapture[] | undefined {
  if (more.length === 0) return before;
  for (const { slot, value } of more) {
    const known = before.find((one) => one.slot === slot);
    if (known && JSON.stringify(known.value) !== JSON.stringify(value)) return undefined;
  }
  return [...before, ...more];
}

type Piece = { has: number; match: Match };

/** The pieces that can stand at a place; one stretch of words may be several required pieces. */
function piecesAt(must: readonly Phrase[], may: Phrase, run: Run, at: number): Piece[] {
  const pieces: Piece[] = [];
  must.forEach((phrase, index) => {
    for (const match of phrase.match(run, at)) {
      const same = pieces.find((one) => one.match.next === match.next);
      const captures = same && together(same.match.captures, match.captures);
      if (same && captures) {
        same.has |= 1 << index;
        same.match = { ...same.match, captures };
      } else if (match.next > at) pieces.push({ has: 1 << index, match });
    }
  });
  for (const match of may.match(run, at)) if (match.next > at) pieces.push({ has: 0, match });
  return pieces;
}

/** Words of a comparison that would make it a report of its own. */
const TOLD = wordSet(
  "stopped quit out off dropped low died lost gone empty fell falling dead cold",
);

/** Where words end that change nothing and begin here: one, or a comparison to the end of all. */
function besideAt(words: readonly string[], at: number): number[] {
  const word = words[at] ?? "";
  const rest = words.slice(at + 1);
  const likens = LIKENS.has(word) && rest.length > 0 && rest.length <= MOST_LIKENED;
  const like = likens && !rest.some((one) => TELLING.has(one) || TOLD.has(one));
  return [...(BESIDE.has(word) ? [at + 1] : []), ...(like ? [words.length] : [])];
}

/** The cheapest way through all words that has every required piece. */
function walk({ bag, must, may }: OpenBag, run: Run, book: Passable): Path | undefined {
  const end = run.words.length;
  const loose = bag.beside === true;
  const places: (Path[] | undefined)[] = [];
  const reach = (at: number, path: Path) => {
    places[at] ??= [];
    const here = places[at];
    const index = here.findIndex((known) => known.has === path.has);
    if (index < 0) here.push(path);
    else if (path.cost < here[index]!.cost) here[index] = path;
  };
  for (const [at, { cost, hedged }] of startsFrom(0, run, book, false)) {
    if (!hedged) reach(at, { has: 0, captures: [], cost, beside: false });
  }
  for (let at = 0; at < end; at += 1) {
    const here = places[at];
    if (!here) continue;
    const pieces = piecesAt(must, may, run, at);
    for (const path of here) {
      for (const { has, match } of pieces) {
        const captures = together(path.captures, match.captures);
        const cost = path.cost + match.cost + 1;
        if (captures) reach(match.next, { ...path, has: path.has | has, captures, cost });
      }
      if (!loose) continue;
      for (const next of besideAt(run.words, at)) {
        reach(next, { ...path, cost: path.cost + BESIDE_COST, beside: true });
      }
    }
  }
  const tails = tailsOf(run, book, false);
  const all = (1 << must.length) - 1;
  let best: Path | undefined;
  for (let at = 0; at <= end; at += 1) {
    const tail = tails[at];
    if (tail === undefined) continue;
    for (const path of places[at] ?? []) {
      if (path.has !== all) continue;
      if (!best || path.cost + tail < best.cost) best = { ...path, cost: path.cost + tail };
    }
  }
  return best;
}
