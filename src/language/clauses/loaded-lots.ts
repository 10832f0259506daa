/** Several lots that went into the canner: "five Provider and four Dragon Tongue are in". */
import { commandOf, type Meant } from "../../kitchen/command.ts";
import type { Context, NamedBatch } from "../context.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refOfLot } from "../values/jar-names.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { smallWholeAt } from "../values/spoken-numbers.ts";
import { textOf, type Utterance, wordAt } from "../words.ts";
import { isToLoad, type LotWords } from "./lot-counts.ts";

/** Words that change nothing about what is in the canner. */
const BESIDE = wordSet(
  "the of and a an my our those these jars jar pints pint quarts quart are is in into now we i",
  "have has just got put went go goes gone down lowered loaded set canner pot water bath kettle",
  "load loads up full first second third next this plus with then so okay right oh there it makes",
  "that for both all at last them together inside",
);
const INTO = new RegExp(
  "\\b(?:in|into|down|inside)(?: now| together)?$|" +
    "\\b(?:in|into) the (?:canner|pot|water|bath|kettle)\\b|" +
    "^(?:so |okay |right )*(?:we |i )?(?:have |just )*(?:loaded|lowered)\\b|" +
    "\\bcanner is (?:loaded|full)\\b|\\b(?:first|second|third|this|that) load (?:is|has|was)\\b",
);
const NOT_NOW = /\b(not|never|will|would|should|could|if|next|ready|wait|waits|still|left)\b/;

type Part = { lot: NamedBatch; count: number };
/** A clause's parts; `total` where it is nothing but how many went in of all. */
type Read = { parts: Part[]; total?: number };

/** The lots of a clause, each with its number, 0 for all of it; undefined where more is said. */
function partsIn(clause: Utterance, { running }: Context): Read | undefined {
  const { words } = clause;
  const parts: Part[] = [];
  let count: number | undefined;
  for (let at = 0; at < words.length; ) {
    const lot = runningLotAt(clause, at, running);
    const number = lot ? undefined : smallWholeAt(words, at);
    if (lot) {
      const one = /^an?$/.test(wordAt(words, at - 1)) ? 1 : 0;
      parts.push({ lot: lot.value, count: count ?? one });
      count = undefined;
    } else if (number) {
      if (count !== undefined || number.value < 1) return undefined;
      count = number.value;
    } else if (!BESIDE.has(wordAt(words, at))) return undefined;
    at = lot?.next ?? number?.next ?? at + 1;
  }
  if (count === undefined) return { parts };
  return parts.length === 0 ? { parts, total: count } : undefined;
}

function sum(counts: readonly number[]): number {
  return counts.reduce((all, one) => all + one, 0);
}

/** Undefined where fewer than two lots are said to be in, or anything else is said of them. */
export function loadedLots(said: Utterance, context: Context): LotWords | undefined {
  const all = textOf(said.words);
  const asks = said.asked || said.cut || beginsAsking(said.words.map(({ word }) => word));
  const clauses = clausesIn(said);
  const into = [said, ...clauses].some(({ words }) => INTO.test(textOf(words)));
  if (asks || NOT_NOW.test(all) || !into || !isToLoad(context)) return undefined;
  const read = clauses.map((clause) => partsIn(clause, context));
  const parts = read.flatMap((one) => one?.parts ?? []);
  const [total] = read.flatMap((one) => one?.total ?? []);
  if (total !== undefined && total !== sum(parts.map(({ count }) => count))) return undefined;
  const lots = new Set(parts.map(({ lot }) => lot));
  if (lots.size < 2 || lots.size < parts.length) return undefined;
  const refs = parts.map(({ lot }) => refOfLot(lot));
  const ref: Meant = {
    ...{ running: refs, recorded: refs },
    ...{ vessels: [], parts: [], sorts: [], sortAlone: false },
  };
  const target = parts.map(({ lot }) => lot.variety?.toLowerCase() ?? "").join(" and ");
  const counts = parts.map(({ count }) => count);
  const others = clauses.filter((_, at) => read[at] === undefined);
  const told = clauses.filter((_, at) => read[at] !== undefined);
  return {
    commands: [commandOf("loaded", { target, counts }, { ref })],
    clauses: told,
    others,
    ...(others.length === 0 ? { accounted: true as const } : {}),
  };
}
