/**
 * A whole Saturday as the cook hears it. Its text is kept beside this test: whoever changes it
 * reads it aloud to the end. Run with `-u`, this test writes it anew.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { type Played, play } from "./play.ts";

const SCRIPT = readFileSync(join(import.meta.dirname, "golden-saturday.script.txt"), "utf8");

/**
 * Before there was a desk: 2,774 words, 302 in the first minute, 22 questions, 4 at night. Before
 * lots shared a brine: 17 questions.
 */
const MOST_WORDS = 900;
const MOST_WORDS_IN_THE_FIRST_MINUTE = 70;
const MOST_QUESTIONS = 11;
const MOST_WORDS_OF_A_SHORT_FORM = 20;
const LONGEST_SENTENCE = 25;

let played: Played;

beforeAll(async () => {
  played = await play([], SCRIPT, { altitude: "6200ft" });
}, 60_000);

function words(texts: readonly string[]): number {
  return texts.join(" ").split(/\s+/).length;
}

function minuteOfDay(at: string): number {
  return Number(at.slice(11, 13)) * 60 + Number(at.slice(14, 16));
}

describe("the golden Saturday", () => {
  it("is said in these words", async () => {
    const text = played.said.map(
      ({ at, rank, text: said }) => `${at.slice(11, 16)} ${rank}: ${said}`,
    );
    await expect(`${text.join("\n")}\n`).toMatchFileSnapshot("golden-saturday.txt");
  });

  it("keeps its jars as tested, the lost boil and the wrong lids and all", () => {
    expect(played.review.batches.map(({ verdict }) => verdict)).toEqual(Array(4).fill("as-tested"));
  });

  it("is short, and shortest while everything begins", () => {
    const texts = played.said.map(({ text }) => text);
    expect(words(texts)).toBeLessThanOrEqual(MOST_WORDS);
    const from = Date.parse(played.said[0]?.at ?? "");
    const first = played.said.filter(({ at }) => Date.parse(at) - from <= 60_000);
    expect(words(first.map(({ text }) => text))).toBeLessThanOrEqual(
      MOST_WORDS_IN_THE_FIRST_MINUTE,
    );
    expect(played.asked.length).toBeLessThanOrEqual(MOST_QUESTIONS);
    for (const sentence of texts.flatMap((text) => text.split(/(?<=[.!?;]) /))) {
      expect(words([sentence]), sentence).toBeLessThanOrEqual(LONGEST_SENTENCE);
    }
  });

  it("is whole once, and short after, in twenty words at most", () => {
    const opening = (text: string) => text.split(/(?<=[.!?]) /)[0];
    const short = played.desk.filter(({ said, wanted }) => {
      return said !== null && opening(said) !== opening(wanted);
    });
    expect(short.length).toBeGreaterThan(10);
    for (const { said } of short) {
      expect(words([said ?? ""]), said ?? "").toBeLessThanOrEqual(MOST_WORDS_OF_A_SHORT_FORM);
    }
  });

  it("has one brine for three lots, asked about once", () => {
    const vinegar = played.asked.filter(({ text }) => /vinegar/.test(text));
    expect(vinegar.map(({ text }) => text)).toEqual([
      "Dilly beans: What percent is the vinegar?",
      "What percent is the vinegar?",
    ]);
    const [provider] = played.review.batches;
    expect(provider?.sharesWith).toHaveLength(2);
    expect(played.review.loads.map(({ jars }) => jars)).toEqual([9, 9, 6, 8]);
  });

  it("says nothing at night, and in the morning what waited, with its time", () => {
    const night = played.said.filter(
      ({ at }) => minuteOfDay(at) >= 21 * 60 + 30 || minuteOfDay(at) < 6 * 60 + 30,
    );
    expect(night).toEqual([]);
    const morning = played.said.find(({ at }) => minuteOfDay(at) === 6 * 60 + 30);
    expect(morning?.text).toMatch(
      /^Check the seals: Provider and Dragon Tongue by .*; Blue Lake by .*; Beets by /,
    );
    const put = played.desk.filter((one) => one.deferredTill !== null);
    expect(put.map(({ why }) => why)).toEqual(Array(4).fill("night"));
    for (const { deferredTill } of put) expect(deferredTill).toContain("T06:30");
  });

  it("defers and drops no alarm, and names whose it is", () => {
    const alarms = played.said.filter(({ rank }) => rank === "alarm");
    expect(alarms.length).toBeGreaterThanOrEqual(10);
    for (const { text } of alarms) expect(text).toMatch(/^(Dilly beans|Beets): /);
    const due = played.journal.filter((event) => event.type === "due" && event.rings === true);
    for (const { at } of due) expect(alarms.map((one) => one.at)).toContain(at);
  });
});
