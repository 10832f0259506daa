/** What a sentence says of lots: begun, counted, given up; words beside them are read alone. */
import type { Command } from "../../kitchen/command.ts";
import type { Context } from "../context.ts";
import { MEANINGS } from "../intents/all.ts";
import { type Utterance, utteranceOf } from "../words.ts";
import { addedLot } from "./added-lots.ts";
import { type Hearing, MOST_CANDIDATES } from "./clause-facts.ts";
import { furtherBegins } from "./further-begins.ts";
import { givenUpLot, takenUpLot } from "./given-up-lots.ts";
import { lidCalls } from "./lid-calls.ts";
import { loadedLots } from "./loaded-lots.ts";
import { type LotWords, lotCounts } from "./lot-counts.ts";
import { lotWeights } from "./lot-weights.ts";
import { listedLots, pairedLots } from "./paired-lots.ts";
import { toldTastes } from "./told-tastes.ts";

/** Words read by themselves. */
type Alone = {
  reading: "sure" | "ask" | "unknown";
  commands: readonly Command[];
  clauses?: readonly Utterance[];
  left?: readonly Utterance[];
  whole?: boolean;
};

/** The beginnings in a sentence that puts in one lot more, or begins several. */
export function begunLots(said: Utterance, context: Context): Command[] {
  const added = addedLot(said, context);
  if (added) return [added];
  const pairs = pairedLots(said, context);
  if (pairs.length > 0) return pairs;
  const listed = listedLots(said, context);
  return listed.length > 0 ? listed : furtherBegins(said, context);
}

/** Lids called, running lots counted, weighed or given up, and what is told beside them. */
export function lotsRead(
  text: string,
  said: Utterance,
  hearing: Hearing,
  readAlone: (one: Utterance) => Alone,
) {
  const { context } = hearing;
  // A count that is put right in the same breath tells that it is.
  const whole = utteranceOf(text);
  const told =
    lidCalls(whole, context) ??
    loadedLots(whole, context) ??
    lotCounts(whole, context) ??
    givenUpLot(whole, context) ??
    takenUpLot(whole, context) ??
    toldTastes(whole, context);
  const found = told ?? lotCounts(said, context) ?? lotWeights(said, context);
  return found && withOthers(found, told ? whole : said, hearing, readAlone);
}

function withOthers(
  { commands, clauses, others, accounted }: LotWords,
  said: Utterance,
  hearing: Hearing,
  readAlone: (one: Utterance) => Alone,
) {
  const rest = utteranceOf(blanked(said.text, clauses));
  const alone = others.length > 0 ? readAlone(rest) : undefined;
  const sure = alone?.reading === "sure" ? alone.commands : [];
  const closes = sure.length > 0 && sure.every(({ intent }) => intent === "done");
  const facts = sure.filter(isBesideCounts);
  const all = [...commands, ...facts];
  // Why a count is put right, and that all of them are full now, are told by the count itself.
  const settled = commands.some(({ slots }) => "corrected" in slots || "not" in slots);
  const unread = settled ? [] : others.filter((one) => !hearing.isIdle(one));
  return {
    reading: "sure" as const,
    commands: all,
    candidates: all.slice(0, MOST_CANDIDATES),
    frame: "said" as const,
    intents: [],
    whole: others.length === 0 || (facts.length > 0 && alone?.whole === true),
    clauses: [...clauses, ...facts.map((_, at) => alone?.clauses?.[at] ?? rest)],
    left: facts.length > 0 || closes ? (alone?.left ?? []) : unread,
    rest,
    ...(accounted ? { accounted } : {}),
  };
}

/** What is told along with counts: no count again, no order, and no stage that these may end. */
function isBesideCounts({ intent, slots }: Command): boolean {
  if (intent === "done" && !("target" in slots)) return false;
  return intent === "factor" || (MEANINGS[intent].report === true && intent !== "jars-filled");
}

/** A text with nothing in the place of these clauses; every other word stays where it is. */
function blanked(text: string, clauses: readonly Utterance[]): string {
  return clauses.reduce((left, { words }) => {
    const [from, to] = [words[0]?.start ?? 0, words.at(-1)?.end ?? 0];
    return left.slice(0, from) + " ".repeat(to - from) + left.slice(to);
  }, text);
}
