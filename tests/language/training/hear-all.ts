/**
 * Writes what every sentence of the corpus and of the tests is heard as, and those sentences
 * mangled, one a line: `run.mjs hear-all FILE [ONE-IN]`. Two programs that hear alike write the
 * same bytes.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { questionFrom } from "../../../src/commands/open/understand.ts";
import { FACTOR_WORDINGS } from "../../../src/language/answers/factor-wordings.ts";
import type { Context } from "../../../src/language/context.ts";
import { hear } from "../../../src/language/hear.ts";
import type { Sentence } from "../../../src/language/model/corpus.ts";
import { understand } from "../../../src/language/understand.ts";
import { loadLibrary } from "../../../src/session/reading/load-library.ts";
import { CHATTER } from "../chatter.ts";
import { COMMANDS } from "../commands.ts";
import { kitchenContext, underWayOf } from "../kitchen-context.ts";
import { SAMPLE } from "../sample.ts";
import { allSentences } from "./corpus-files.ts";

const [file = "", oneIn = "1"] = process.argv.slice(2);
if (file === "") throw new Error("run.mjs hear-all FILE [ONE-IN]");
const library = await loadLibrary([join(process.cwd(), "recipes")], {});
const recipes = [...library.recipes.values()];

/** A kitchen in which this was said; every second one is asked for all its critical factors. */
function contextOf({ situation }: Sentence, at: number): Context {
  const { stages, question: key } = situation;
  const question = questionFrom(key);
  const named = stages.map(underWayOf);
  return kitchenContext({
    recipes: at % 3 === 0 ? [] : recipes,
    ...(at % 3 === 0 ? {} : { library }),
    running: [
      { id: "b-1", recipe: "dilled-green-beans", variety: "Provider" },
      { id: "b-2", recipe: "pickled-beets" },
    ],
    timers: [{ id: "t-1", label: "rice" }],
    loads: named.length > 0 ? [{ id: "L1", canner: "canner", stages: named }] : [],
    ...(question ? { question } : {}),
    ...(at % 2 === 0 ? { factors: [...FACTOR_WORDINGS.keys()].map((id) => ({ id })) } : {}),
  });
}

/** The sentence with a word left out, two in each other's place, or another sentence behind it. */
function mangled(text: string, at: number, behind: string): string {
  const words = text.split(" ");
  const place = (at * 7919) % words.length;
  const kept = words.filter((_, index) => index !== place).join(" ");
  const turned = [...words.slice(place), ...words.slice(0, place)].join(" ");
  return [kept, turned, `${text}, ${behind}`, `${text} and ${kept}`][at % 4] ?? text;
}

const short = [...SAMPLE.map(([text]) => text), ...COMMANDS.map(([text]) => text), ...CHATTER];
const bare = short.map((text) => ({ text, situation: { stages: [] } }) as unknown as Sentence);
const all = [...allSentences(), ...bare];
const lines = all.flatMap((sentence, at): string[] => {
  if (at % Number(oneIn) !== 0) return [];
  const context = contextOf(sentence, at);
  const wrong = mangled(sentence.text, at, all[(at + 13) % all.length]?.text ?? "");
  return [sentence.text, wrong].map((text) => {
    const { reading, commands, candidates, frame, evidence, memory } = hear(text, context);
    const heard = { reading, commands, candidates, frame, evidence, memory };
    return JSON.stringify({ text, heard, plain: understand(text, context) });
  });
});
writeFileSync(file, `${lines.join("\n")}\n`);
console.log(`${lines.length} lines`);
