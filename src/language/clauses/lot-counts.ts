/**
 * How many jars of which lot are filled, while jars are being filled: "eight Provider, one Dragon
 * Tongue", "plus two of the Blue Lake", "six, not five of the Dragon Tongue".
 */
import { type Command, commandOf, type SpokenJarSize } from "../../kitchen/command.ts";
import { hasRole } from "../../kitchen/stages/kinds.ts";
import type { Context, NamedBatch } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refFor } from "../values/finish-slots.ts";
import { sizesAt } from "../values/open-slots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";

/** Words that change nothing about a count. */
const BESIDE = wordSet(
  "a an the of from for them those these that this there is are it they and so now then just",
  "only about all also in i we have has got get me my our you put did done made makes make",
  "gave came to at up full filled fill packed pack ready lidded capped wiped jar jars glass",
  "glasses one's good am was were oh okay right well yes yeah phew hey ah hm um uh already",
  "far what down say call hon honey love each apiece pretty finished with be as plus us",
  "counted count here bloody damn wretched lousy lovely after",
);
/** What puts right an earlier count. */
const CORRECTS = wordSet(
  "no not sorry wait wrong miscounted actually rather correction nope meant scratch strike",
);
const REMADE = /\bmake (that|it)\b/;
const FILLING_WORDS = wordSet("filled full packed jar jars pint pints quart quarts lidded");
/** Jars that go into the canner were counted before. */
const GO_IN = /\b(canner|loads?|go in|going in|goes in|in now|next go)\b/;
/** With one of these nothing has been filled, or not here and now. */
const UNTOLD = new RegExp(
  "\\b(if|should|would|could|might|may|maybe|perhaps|probably|wish|hopes?|think|guess|reckon|" +
    "believe|suppose|yet|yesterday|tomorrow|needs?|wants?|left|short|almost|nearly|will|going to|" +
    "last (year|week|time|summer))\\b",
);
const FILLED = /\b(filled|full|packed|ready)\b/;
const MOST_JARS = 60;

/** A clause: its numbers and lots in the order said, and whether it says anything else. */
type Item =
  | { count: number; more: boolean; size?: SpokenJarSize; implied?: true }
  | { lot: NamedBatch };
type Piece = {
  clause: Utterance;
  items: Item[];
  corrects: boolean;
  /** A count that was wrong: "not five". */
  not?: number;
  other: boolean;
};

type Counted = { lot: NamedBatch; count: number; more: boolean; size?: SpokenJarSize };

function isCount(item: Item | undefined): item is Extract<Item, { count: number }> {
  return item !== undefined && "count" in item;
}

/** Reads a clause word by word. */
function pieceOf(clause: Utterance, { running }: Context): Piece {
  const { words } = clause;
  const piece: Piece = { clause, items: [], corrects: false, other: false };
  let denied = false;
  let more = false;
  for (let at = 0; at < words.length; ) {
    const word = wordAt(words, at);
    const last = piece.items.at(-1);
    const lot = runningLotAt(clause, at, running);
    if (lot) {
      // "A Blue Lake" is one of them.
      const one = /^an?$/.test(wordAt(words, at - 1)) && !isCount(last);
      if (one) piece.items.push({ count: 1, more: false, implied: true });
      piece.items.push({ lot: lot.value });
      at = lot.next;
      continue;
    }
    const number = smallWholeAt(words, at);
    const [size] = sizesAt(words, at);
    if (number) {
      const { value, next } = number;
      const taken = denied || wordAt(words, at - 1) === "said";
      if (taken) Object.assign(piece, { corrects: true, not: value });
      else piece.items.push({ count: value, more });
      if (value < 1 || value > MOST_JARS) piece.other = true;
      [denied, more, at] = [false, false, next];
    } else if (word === "not" || (word === "no" && at + 1 < words.length)) {
      denied = smallWholeAt(words, at + 1) !== undefined;
      piece.corrects = true;
      if (!denied) piece.other = true;
      at += 1;
    } else if (word === "more" || word === "extra" || word === "another" || word === "further") {
      // "Another Dragon Tongue" is one more.
      if (isCount(last)) last.more = true;
      else if (word === "another" && !smallWholeAt(words, at + 1))
        piece.items.push({ count: 1, more: true });
      else more = true;
      at += 1;
    } else if (size) {
      if (isCount(last)) last.size = size.value as SpokenJarSize;
      at = size.next;
    } else {
      if (CORRECTS.has(word)) piece.corrects = true;
      else if (!BESIDE.has(word) && word !== "said") piece.other = true;
      at += 1;
    }
  }
  if (REMADE.test(textOf(words))) piece.corrects = true;
  return piece;
}

/** The lots and counts of a row of them, each with its own; undefined where that is not plain. */
function pairsIn(items: readonly Item[]): Counted[] | undefined {
  const pairs: Counted[] = [];
  for (let at = 0; at < items.length; at += 2) {
    const [one, other] = [items[at], items[at + 1]];
    const count = isCount(one) ? one : isCount(other) ? other : undefined;
    const named = one && "lot" in one ? one : other && "lot" in other ? other : undefined;
    if (!count || !named) return undefined;
    pairs.push({ lot: named.lot, ...count });
  }
  return pairs;
}

/** A count said twice, or put right by the next one, goes. */
function withoutFirstCounts(pieces: readonly Piece[]): Item[][] {
  const rows: Item[][] = [];
  for (const [at, { items }] of pieces.entries()) {
    const only = items.length === 1 ? items.find(isCount) : undefined;
    const before = rows.at(-1) ?? [];
    const again = only && before.length === 2 && before.find(isCount)?.count === only.count;
    const behind = pieces.slice(at + 1);
    const end = behind.findIndex((one) => one.items.length > 0);
    const next = behind[end]?.items ?? [];
    const corrects = behind.slice(0, end + 1).some((one) => one.corrects);
    const same = next.find(isCount)?.count === only?.count;
    const replaced = only && next.length > 1 && next.some(isCount) && (corrects || same);
    if (items.length > 0 && !again && !replaced) rows.push(items);
  }
  return rows;
}

/** Every count with its lot; a name and its count may stand in two pieces: "six, Dragon Tongue". */
function countedIn(pieces: readonly Piece[]): Counted[] | undefined {
  const rows = withoutFirstCounts(pieces);
  const counted: Counted[] = [];
  for (let at = 0; at < rows.length; at += 1) {
    const row = rows[at] ?? [];
    const next = rows[at + 1] ?? [];
    const halves = row.length === 1 && next.length === 1;
    const pairs = pairsIn(halves ? [...row, ...next] : row);
    if (!pairs) return undefined;
    counted.push(...pairs);
    if (halves) at += 1;
  }
  const lots = new Set(counted.map(({ lot }) => lot));
  return lots.size === counted.length ? counted : undefined;
}

const EACH = /^(each|apiece)$/;

/** "Three each of the Provider and the Blue Lake". */
function eachOf(pieces: readonly Piece[]): Counted[] | undefined {
  const items = pieces.flatMap((piece) => piece.items);
  const [count, another] = items.filter(isCount);
  if (!count || another) return undefined;
  return items.flatMap((item) => (isCount(item) ? [] : [{ lot: item.lot, ...count }]));
}

/** One lot and one number beside words that do not belong to a count: it is unclear how many. */
function mayCount({ items }: Piece): boolean {
  return items.length === 2 && isCount(items[0]) !== isCount(items[1]);
}

/** Whether a load waits for its jars, or for its process with them. */
export function isToLoad({ loads = [] }: Context): boolean {
  return loads.some(({ stages }) => {
    return stages.some((stage) => hasRole(stage, "treatment") && stage.state === "waiting");
  });
}

/** Whether jars of a recipe are being filled, by its stages or by what the words say. */
export function isFilling({ recipe }: NamedBatch, said: Utterance, context: Context): boolean {
  const { running } = context;
  const stages = running.filter((one) => one.recipe === recipe).flatMap((one) => one.stages ?? []);
  const fills = stages.filter((stage) => hasRole(stage, "filling"));
  if (stages.length === 0 || fills.some(({ state }) => state === "running")) return true;
  // What was counted last may have ended the filling, and more may come before the jars go in.
  if (isToLoad(context) && fills.some(({ state }) => state === undefined)) return true;
  return said.words.some(({ word }) => FILLING_WORDS.has(word));
}

/**
 * What a sentence says of running lots, where, and the clauses that are about something else;
 * `accounted` where every word of it was weighed, those of doubt and exception too.
 */
export type LotWords = {
  commands: Command[];
  clauses: Utterance[];
  others: Utterance[];
  accounted?: true;
};

/**
 * Counts of jars by the names of running lots; undefined where a clause with a count says anything
 * else, where it is not plain which count is whose, and where no jars are being filled.
 */
export function lotCounts(said: Utterance, context: Context): LotWords | undefined {
  const words = said.words.map(({ word }) => word);
  const all = textOf(said.words);
  if (said.asked || said.cut || beginsAsking(words)) return undefined;
  if (UNTOLD.test(all) || (GO_IN.test(all) && !FILLED.test(all))) return undefined;
  const pieces = clausesIn(said).map((clause) => pieceOf(clause, context));
  const told = pieces.filter(({ other }) => !other);
  const counted = words.some((word) => EACH.test(word)) ? eachOf(told) : countedIn(told);
  const numbers = told.flatMap(({ items }) => items).filter(isCount);
  if (!counted?.length || !numbers.some(({ implied }) => !implied)) return undefined;
  if (!counted.every(({ lot }) => isFilling(lot, said, context))) return undefined;
  const others = pieces.filter(({ other }) => other);
  if (others.some(mayCount)) return undefined;
  const corrects = pieces.some((piece) => piece.corrects);
  const wrong = counted.length === 1 ? pieces.find((piece) => piece.not !== undefined) : undefined;
  const joined = /^\s*(?:oh\s+|and\s+)*plus\b/i.test(said.text);
  const commands = counted.map(({ lot, count, size, ...own }) => {
    const target = lot.variety?.toLowerCase() ?? "";
    const more = own.more || (joined && counted.length === 1);
    const slots = {
      target,
      count,
      ...(size ? { size } : {}),
      ...(more ? { more: true as const } : {}),
      ...(wrong ? { not: wrong.not } : {}),
      ...(corrects && !more && !wrong ? { corrected: true as const } : {}),
    };
    const ref = refFor(target, "jars-filled", said, context);
    return commandOf("jars-filled", slots, { ref });
  });
  const clauses = told.filter(({ items }) => items.length > 0).map(({ clause }) => clause);
  return { commands, clauses, others: others.map(({ clause }) => clause) };
}
