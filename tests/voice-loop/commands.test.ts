import { describe, expect, it } from "vitest";
import { KITCHEN_GRAMMAR, NEAR_WAKE } from "./kitchen-talk.ts";
import {
  CONDITIONS,
  type Condition,
  commandsSaid,
  type Figures,
  figures,
  hearAll,
  heldOut,
  makeRecognizer,
  missingForLoop,
  READ_BACK,
  TABLE_HEAD,
  tableLine,
  talkSaid,
} from "./loop-bench.ts";
import { hearStream } from "./stream-trial.ts";
import { otherVoices, syntheticVoices } from "./synthetic-voices.ts";

/** `BRINEBELL_VOICE_LOOP=full` takes half an hour; otherwise a sample of two minutes. */
const full = process.env.BRINEBELL_VOICE_LOOP === "full";
const missing = missingForLoop();
if (missing) console.log(`voice loop: skipped, ${missing} is missing`);

/**
 * A share of 150 commands has an error of nearly two in a hundred, one of 27 of eight; a sample
 * so small fails only where it is twice that short, and the figures it prints are no claim.
 */
const SLACK = full ? 0.02 : 0.16;

/** Most commands wrongly acted on, read-backs taken off. */
const MOST_WRONG = 0.02;

/** From the end of speech to the command, in ms: the slowest of twenty, in noise of 20 dB. */
const LATEST_MS = 500;

/** What falls short of what is wanted, in words. */
function shortOf({ kind, snrDb, leastRight }: Condition, found: Figures): string[] {
  const name = `${kind} ${snrDb} dB`;
  const short: string[] = [];
  if (found.right < leastRight - SLACK) short.push(`${name}: right ${found.right}`);
  if (found.wrong > MOST_WRONG + SLACK) short.push(`${name}: wrong ${found.wrong}`);
  if (found.cpu > 0.1 + SLACK) short.push(`${name}: ${found.cpu} of a core`);
  const slow = full && snrDb > 10 && found.delayP95 > LATEST_MS;
  if (slow) short.push(`${name}: ${found.delayP95} ms`);
  return short;
}

describe.skipIf(missing)("commands spoken to it", () => {
  const voices = missing ? [] : syntheticVoices();

  it(`are understood over noise, in ${voices.length} voices`, () => {
    const recognizer = makeRecognizer();
    console.log(TABLE_HEAD);
    const short: string[] = [];
    for (const [index, condition] of CONDITIONS.entries()) {
      const said = commandsSaid(voices, full ? 5 : 29, index % 5);
      const result = hearAll(recognizer, said, condition, 2007 + index);
      const found = figures(result);
      console.log(tableLine(condition, found));
      if (full) console.log(`  ${heldOut(result)}`);
      if (process.env.SHOW) console.log([...result.wrong, "--", ...result.missed].join("\n"));
      short.push(...shortOf(condition, found));
    }
    recognizer.close();
    expect(short).toEqual([]);
  });

  it.runIf(full)("are understood in voices that no threshold was tuned on", () => {
    const recognizer = makeRecognizer();
    for (const condition of CONDITIONS.filter(({ kind }) => kind !== "fan").slice(1)) {
      const said = commandsSaid(otherVoices(), 5, 1);
      const found = figures(hearAll(recognizer, said, condition, 3007));
      console.log(tableLine(condition, found));
      expect(found.right).toBeGreaterThan(condition.leastRight - 3 * SLACK);
      expect(found.wrong).toBeLessThan(MOST_WRONG + 2 * SLACK);
    }
    recognizer.close();
  });

  it("are understood without wake words in a quiet kitchen", () => {
    const recognizer = makeRecognizer([]);
    const said = commandsSaid(voices, full ? 5 : 41, 1, []);
    const talk = talkSaid(voices, full ? 4 : 29);
    for (const snrDb of full ? [30, 20] : [30]) {
      const condition = { kind: "pink", snrDb, leastRight: 0.9 } as const;
      const found = figures(hearAll(recognizer, said, condition, 51, false));
      console.log(`${tableLine(condition, found)} | no wake words`);
      expect(shortOf(condition, found)).toEqual([]);
    }
    const result = hearAll(recognizer, talk, { kind: "pink", snrDb: 25 }, 52, false);
    recognizer.close();
    const minutes = result.audioMs / 60_000;
    const found = result.falseCommands;
    console.log(`no wake words, talk: ${minutes.toFixed(1)} min, false commands: ${found.length}`);
    for (const each of found) console.log(each);
    expect(found.length).toBeLessThan(1 + minutes / 5);
  });

  it("are not heard in talk", () => {
    const recognizer = makeRecognizer();
    const said = talkSaid(voices, full ? 1 : 9);
    const result = hearAll(recognizer, said, { kind: "pink", snrDb: 25 }, 41);
    const near = hearAll(recognizer, talkSaid(voices, full ? 1 : 9, NEAR_WAKE), CONDITIONS[1]!, 42);
    recognizer.close();
    const minutes = (result.audioMs / 60_000).toFixed(1);
    const surely = result.falseConfidences.filter((each) => each >= READ_BACK).length;
    const found = result.falseCommands;
    console.log(`talk: ${minutes} min, false commands: ${found.length}, ${surely} of them sure`);
    found.forEach((each, at) => {
      console.log(`${each} (${result.falseConfidences[at]?.toFixed(2)})`);
    });
    const nearSurely = near.falseConfidences.filter((each) => each >= READ_BACK).length;
    const tries = NEAR_WAKE.length * voices.length;
    console.log(
      `talk made to sound like the wake words: taken for commands ${near.falseCommands.length}` +
        ` of ${full ? tries : Math.ceil(tries / 9)}, ${nearSurely} of them sure`,
    );
    expect(surely).toBe(0);
    expect(found.length).toBeLessThanOrEqual(1);
  });

  it("are not heard in the noise of boiling", () => {
    const recognizer = makeRecognizer();
    const minutes = full ? 60 : 6;
    let found = 0;
    for (let part = 0; part < minutes / 2; part++) {
      const result = hearStream({
        recognizer,
        grammar: KITCHEN_GRAMMAR,
        said: [],
        kind: "boiling",
        snrDb: 0,
        seed: 100 + part,
        withWakeWords: true,
        leadMs: 120_000,
      });
      found += result.falseCommands.length;
    }
    recognizer.close();
    console.log(`boiling: ${minutes} min, false commands: ${found}`);
    expect(found).toBe(0);
  });
});
