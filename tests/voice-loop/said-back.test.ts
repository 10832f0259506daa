import { describe, expect, it } from "vitest";
import { Recognizer } from "../../src/voice/listening/recognizer.ts";
import { loadSphinx } from "../../src/voice/listening/sphinx-library.ts";
import { espeakEngine } from "../../src/voice/speaking/espeak-engine.ts";
import { readable } from "../../src/voice/speaking/readable.ts";
import { missingForLoop } from "./loop-bench.ts";
import { at16kHz, readWav } from "./wav.ts";

const missing = missingForLoop();

/** What may be said in a kitchen: a sentence, its number and its food all have to be found. */
const RULES = `
<food> = beans | beets | pickles | tomatoes | brine | syrup | kraut;
<number> = two | three | four | five | six | seven | eight | nine | ten | eleven | twelve |
  thirteen | fourteen | fifteen | sixteen | seventeen | eighteen | nineteen | twenty | thirty |
  forty | forty five | fifty | sixty;
<command> = fill the canner and put a kettle beside it |
  the canner is at a full boil are the lids covered |
  <number> minutes left for the <food> |
  the boil is lost the whole time starts again |
  turn off the heat and wait <number> minutes |
  lift the jars straight up and leave them for <number> hours |
  how many (pints | quarts) did you fill |
  check the water and top it up with boiling water |
  the pressure is (below | above) <number> pounds |
  the <food> (is | are) done |
  at filling leave (a half | a quarter of an) inch of headspace;`;

const PROMPTS = [
  "Fill the canner, and put a kettle beside it.",
  "The canner is at a full boil. Are the lids covered?",
  "Ten minutes left for the beans.",
  "Fifteen minutes left for the beets.",
  "Forty five minutes left for the kraut.",
  "The boil is lost. The whole time starts again.",
  "Turn off the heat, and wait five minutes.",
  "Lift the jars straight up, and leave them for twelve hours.",
  "How many pints did you fill?",
  "Check the water, and top it up with boiling water.",
  "The pressure is below eleven pounds.",
  "The beets are done.",
  "The syrup is done.",
  "At filling, leave a half inch of headspace.",
  "At filling, leave a quarter of an inch of headspace.",
];

function words(text: string): string[] {
  return text.toLowerCase().match(/[a-z']+/g) ?? [];
}

/** The prompt as the voice engine would send it to the loudspeaker, written down instead. */
async function written(prompt: string): Promise<Int16Array> {
  const chunks: Buffer[] = [];
  const sink = (bytes: Buffer) => void chunks.push(bytes);
  const engine = espeakEngine({ program: "espeak-ng", sink });
  const outcome = await engine.start(readable(prompt), { rate: 1, volume: 1 }).done;
  expect(outcome.kind).toBe("spoken");
  return at16kHz(readWav(Buffer.concat(chunks)));
}

function heardBack(recognizer: Recognizer, speech: Int16Array): string[] {
  const silence = new Int16Array(8000).map((_, at) => (at % 7) - 3);
  recognizer.begin();
  for (const part of [silence, speech, silence]) {
    for (let at = 0; at < part.length; at += 1600) recognizer.feed(part.slice(at, at + 1600));
  }
  return words(recognizer.end().text);
}

describe.skipIf(missing)("what it says", () => {
  it("can be written to a file and recognized back word by word", async () => {
    const loaded = loadSphinx();
    if ("missing" in loaded) throw new Error(loaded.missing.join());
    const recognizer = new Recognizer(loaded.library, loaded.modelFolder, []);
    recognizer.expect({ rules: RULES, command: "command" });
    let all = 0;
    let right = 0;
    let whole = 0;
    for (const prompt of PROMPTS) {
      const wanted = words(prompt);
      const heard = heardBack(recognizer, await written(prompt));
      const same = wanted.filter((word, at) => heard[at] === word).length;
      if (same < wanted.length) console.log(`  said: ${prompt}  heard: ${heard.join(" ")}`);
      else if (heard.length === wanted.length) whole += 1;
      all += wanted.length;
      right += same;
    }
    recognizer.close();
    console.log(`said back: ${right} of ${all} words, ${whole} of ${PROMPTS.length} prompts`);
    expect(right / all).toBeGreaterThan(0.95);
  });
});
