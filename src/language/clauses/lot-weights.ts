/**
 * What running lots weigh, before their jars are filled: "the Provider was five, I forgot the
 * bowl", "Dragon Tongue is three pounds, Provider two", "take a pound off the Blue Lake".
 */
import { type Command, commandOf } from "../../kitchen/command.ts";
import type { Context, NamedBatch } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refFor } from "../values/finish-slots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { numbersAt } from "../values/spoken-numbers.ts";
import { weighedAt } from "../values/spoken-weights.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";
import { isFilling, type LotWords } from "./lot-counts.ts";

/** Words that change nothing about a weight. */
const BESIDE = wordSet(
  "a an the of for and so now then just only it that this there them those these was were is are",
  "am be been i we my our make made makes call put say said weighs weigh weighed comes came to at",
  "in all about around roughly more like really actually nearer closer well oh um hm ah okay right",
  "yeah no not sorry wrong wait rather meant mean scratch nope correction love hon honey dear good",
  "beans beets cucumbers tomatoes peppers got get have has had should instead after again",
);
const VERBS = /\b(was|were|is|are|weighs?|weighed|comes|came|makes?|made|call|put|should)\b/;
const CORRECTS =
  /\b(no|not|sorry|wrong|wait|rather|meant|scratch|nope|correction|actually|more like)\b/;
const LESS = /\b(take|took|knock|knocked|cut|drop|subtract|shave)\b.*\b(off|from)\b/;
const UNTOLD = new RegExp(
  "\\b(if|would|could|might|may|maybe|wish|think|guess|yesterday|tomorrow|last|jars?|pints?|" +
    "quarts?|filled|minutes?|hours?|degrees|percent|load|canner|sealed|what|how|when|why|who)\\b",
);
/** What a kitchen weighs of one lot; more is a count of something else. */
const HEAVIEST_LB = 60;

type Weight = { lb: number; unit: boolean };
type Piece = { clause: Utterance; lots: NamedBatch[]; weights: Weight[]; other: boolean };

function pieceOf(clause: Utterance, { running }: Context): Piece {
  const { words } = clause;
  const piece: Piece = { clause, lots: [], weights: [], other: false };
  const less = LESS.test(textOf(words));
  for (let at = 0; at < words.length; ) {
    const lot = runningLotAt(clause, at, running);
    const [weight] = weighedAt(words, at);
    const number = weight ?? numbersAt(words, at).toSorted((a, b) => b.next - a.next)[0];
    if (lot) {
      piece.lots.push(lot.value);
      at = lot.next;
    } else if (number) {
      const lb = weight ? weight.value.weightLb : (number.value as number);
      // "Three pounds, not four": what it was before.
      if (!/^(not|no)$/.test(wordAt(words, at - 1))) piece.weights.push({ lb, unit: !!weight });
      at = number.next;
    } else {
      const word = wordAt(words, at);
      const ofLess = less && /^(take|took|knock|knocked|cut|drop|off|from|both|each)$/.test(word);
      if (!BESIDE.has(word) && !ofLess) piece.other = true;
      at += 1;
    }
  }
  return piece;
}

/** "Take eleven ounces off both of those": every lot of what was begun last. */
function bothOf({ running }: Context): NamedBatch[] {
  const last = running.at(-1);
  const lots = running.filter(({ id }) => id === last?.id);
  return lots.length === 2 ? lots : [];
}

function changed(lot: NamedBatch, slots: object, said: Utterance, context: Context): Command {
  const target = lot.variety?.toLowerCase() ?? "";
  const ref = refFor(target, "change-batch", said, context);
  return commandOf("change-batch", { target, ...slots }, { ref });
}

/** "A pound less" of the lots named, or of both. */
function lessened(piece: Piece, said: Utterance, context: Context): Command[] {
  const both = /\b(both|each)\b/.test(textOf(piece.clause.words));
  const lots = piece.lots.length > 0 ? piece.lots : both ? bothOf(context) : [];
  const [weight, another] = piece.weights;
  if (!weight?.unit || another || lots.length === 0) return [];
  return lots.map((lot) => changed(lot, { moreLb: -weight.lb }, said, context));
}

function weighed({ lots: [lot, other], weights }: Piece, said: Utterance, context: Context) {
  const [weight, another] = weights;
  if (!lot || other || !weight || another) return undefined;
  if (!(weight.lb > 0 && weight.lb <= HEAVIEST_LB)) return undefined;
  return changed(lot, { weightLb: weight.lb }, said, context);
}

/**
 * Weights told of lots, each in a clause of its own; undefined where a clause with a weight and a
 * lot says anything else, where jars are being filled, and where it may be a beginning.
 */
export function lotWeights(said: Utterance, context: Context): LotWords | undefined {
  const all = textOf(said.words);
  if (said.asked || said.cut || context.question || UNTOLD.test(all)) return undefined;
  if (beginsAsking(said.words.map(({ word }) => word))) return undefined;
  const pieces = clausesIn(said).map((clause) => pieceOf(clause, context));
  const isTold = ({ clause, lots, weights }: Piece) =>
    weights.length > 0 && (lots.length > 0 || LESS.test(textOf(clause.words)));
  const told = pieces.filter(isTold);
  const stray = pieces.some((one) => !isTold(one) && one.weights.some(({ unit: of }) => of));
  if (stray) return undefined;
  if (told.length === 0 || told.some(({ other }) => other)) return undefined;
  const filling = told.flatMap(({ lots }) => lots).some((lot) => isFilling(lot, said, context));
  if (filling) return undefined;
  const commands = told.flatMap((piece) => {
    const text = textOf(piece.clause.words);
    if (LESS.test(text)) return lessened(piece, said, context);
    const plain = VERBS.test(text) || CORRECTS.test(all);
    return (plain && weighed(piece, said, context)) || [];
  });
  if (commands.length === 0) return undefined;
  const changes = told.filter(({ clause }) => !LESS.test(textOf(clause.words))).length;
  if (changes > 0 && commands.length !== told.length) return undefined;
  const idle = (piece: Piece) => told.includes(piece) || (!piece.other && piece.lots.length === 0);
  return {
    commands,
    clauses: told.map(({ clause }) => clause),
    others: pieces.filter((piece) => !idle(piece)).map(({ clause }) => clause),
  };
}
