/** How jars of lots tasted, in words: "the Provider was mushy, the Dragon Tongue lovely". */
import { commandOf } from "../../kitchen/command.ts";
import type { Context, NamedBatch } from "../context.ts";
import { signIn } from "../evidence/gone-off.ts";
import { clausesIn } from "../evidence/split.ts";
import { wordSet } from "../grammar/word-set.ts";
import { beginsAsking } from "../guards.ts";
import { refFor } from "../values/finish-slots.ts";
import { runningLotAt } from "../values/running-lots.ts";
import { type Utterance, wordAt } from "../words.ts";
import { TASTES } from "./facts-together.ts";
import type { LotWords } from "./lot-counts.ts";

const LEADS = wordSet("the our my and but that those well so oh while whereas jar of");
const BESIDE = wordSet(
  "was were is are tastes tasted taste a an bit little too very really so quite rather just and",
  "but kind of all not much more less than the others other pretty still nicely came out turned",
);

/** One of each variety on record: which lot of it is meant is asked of the kitchen. */
function varietiesOf(lots: readonly NamedBatch[]): NamedBatch[] {
  return [...new Map(lots.map((lot) => [lot.variety, lot])).values()].filter(
    ({ variety }) => variety !== undefined,
  );
}

type Taste = { lot: NamedBatch; told: string };

/**
 * The lot that a clause is about, and how it tasted; a clause without a lot goes on about the one
 * before. Undefined where it says anything else.
 */
function tasteIn(clause: Utterance, lots: readonly NamedBatch[], before: Taste | undefined) {
  const { words } = clause;
  let at = 0;
  while (LEADS.has(wordAt(words, at))) at += 1;
  const lot = runningLotAt(clause, at, lots);
  const rest = words.slice(lot?.next ?? at);
  if (!(lot || before) || !rest.some(({ word }) => TASTES.has(word))) return undefined;
  if (!rest.every(({ word }) => TASTES.has(word) || BESIDE.has(word))) return undefined;
  const from = rest.findIndex(({ word }) => !/^(was|were|is|are|tastes?|tasted)$/.test(word));
  const told = clause.text.slice(rest[Math.max(0, from)]?.start, rest.at(-1)?.end);
  return { lot: lot?.value, told };
}

/** How each lot tasted; undefined where a clause is about anything else. */
function tastesIn(clauses: readonly Utterance[], lots: readonly NamedBatch[]) {
  const tastes: Taste[] = [];
  for (const clause of clauses) {
    const before = tastes.at(-1);
    const taste = tasteIn(clause, lots, before);
    if (!taste) return undefined;
    const { lot, told } = taste;
    if (lot) tastes.push({ lot, told });
    else if (before) before.told += `, ${told}`;
  }
  return tastes.length > 0 ? tastes : undefined;
}

/**
 * Undefined where a clause is about anything else, where lots of that name are still being put up,
 * and where words tell that something spoiled.
 */
export function toldTastes(said: Utterance, context: Context): LotWords | undefined {
  const asks = said.asked || said.cut || beginsAsking(said.words.map(({ word }) => word));
  if (asks || context.running.length > 0 || signIn(said.text)) return undefined;
  const lots = varietiesOf(context.onRecord?.batches ?? []);
  const clauses = clausesIn(said);
  const tastes = tastesIn(clauses, lots);
  if (!tastes) return undefined;
  const commands = tastes.map(({ lot, told }) => {
    const target = lot.variety?.toLowerCase() ?? "";
    const ref = refFor(target, "taste", said, context);
    return commandOf("taste", { target, words: told }, { ref });
  });
  return { commands, clauses: [...clauses], others: [], accounted: true };
}
