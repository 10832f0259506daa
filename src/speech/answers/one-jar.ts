/** What is known of one jar: what is in it, how it was put up, and what became of it. */
import type { CommandOf } from "../../kitchen/command.ts";
import { type LotOf, lotsIn } from "../../kitchen/jars/lots.ts";
import { lotsOf } from "../../kitchen/meant.ts";
import { lotName, upper } from "../../kitchen/spoken-names.ts";
import type { State } from "../../kitchen/state.ts";
import type { Answer, JarLine, Known } from "./known.ts";
import { dayWords, inPages } from "./stores.ts";

const VERDICTS: Readonly<Record<string, string>> = {
  "as-tested": "as tested",
  "not-as-tested": "not as tested",
  unfinished: "not finished yet",
};

/** "P6 is the Provider dilled green beans of August 14, as tested. It is in the pantry." */
export function jarAnswer(
  state: State,
  { slots, ref }: CommandOf<"which-jar">,
  now: number,
  known: Known,
): Answer {
  const { jars = [], target } = slots;
  if (jars.length === 0) return "Which jar? Say the mark on its lid, like P 3.";
  const all = Object.values(state.batches).flatMap(lotsIn);
  const lots = ref ? lotsOf(state, ref.recorded) : all;
  const found = lots.flatMap((one) => {
    const numbers = one.lot.jars.flatMap(({ number, id }) => (jars.includes(number) ? [id] : []));
    return known
      .jars(one)
      .filter(({ id }) => numbers.includes(id))
      .map((jar) => jarSentence(state, one, jar, now));
  });
  if (found.length === 0) return `I have no such jar${target ? ` of ${target}` : ""} on record.`;
  return inPages(found);
}

function jarSentence(state: State, one: LotOf, jar: JarLine, now: number): string {
  const day = dayWords(state, jar.putUp, now);
  const verdict = VERDICTS[jar.verdict] ?? jar.verdict;
  const why = jar.verdict === "not-as-tested" && jar.reasons[0] ? `: ${jar.reasons[0]}` : "";
  const name = jar.mark ? `${jar.mark}, ${jar.short},` : `${upper(jar.short)}`;
  return `${name} is ${lotName(one)} of ${day}, ${verdict}${why}. ${fateWords(state, jar, now)}`;
}

function fateWords(state: State, { fate, fateAt, place }: JarLine, now: number): string {
  const day = fateAt === null ? "" : ` on ${dayWords(state, fateAt.slice(0, 10), now)}`;
  if (fate === "opened") return `It was opened${day}.`;
  if (fate === "given") return `It was given away${day}.`;
  if (fate === "spoiled") return `It was found spoiled${day}.`;
  if (fate === "discarded") return `It was thrown out${day}.`;
  return place === null ? "It is not put away yet." : `It is in the ${place}.`;
}
