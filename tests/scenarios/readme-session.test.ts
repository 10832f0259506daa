/** README's first session, word for word, and what it says is answered. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { reckonCommand } from "../../src/commands/reckon/reckon.ts";
import { upper } from "../../src/kitchen/spoken-names.ts";
import type { Line } from "../../src/ports/view.ts";
import { countWords } from "../../src/reckon/number-words.ts";
import { review } from "../../src/review/batch-log.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { type Played, Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { theLibrary } from "./play.ts";

const README = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");
const FROM = README.indexOf("## A first session, step by step");
const TO = README.indexOf("\nWhere it asks what you ", FROM);
const SECTION = README.slice(FROM, TO);

/** What README says aloud, in its order, without the calls of a shell. */
const QUOTED = [...SECTION.matchAll(/`([^`]+)`/g)]
  .map(([, words = ""]) => words.replace(/\s+/g, " "))
  .filter((words) => !/^(npm|brinebell)\b/.test(words));

/** When each line is said after the one before, and what is answered to it. */
type Step = readonly [after: string, words: string, answer: RegExp];

/** What README leaves to the cook: other answers, and a second lot to compare with. */
const BESIDES = new Set([
  ...["got it", "half an inch", "yes", "heat's off"],
  "start the Dragon Tongue dilly beans, three pounds",
]);

const DAY: readonly Step[] = [
  ["0:00", "we're at six thousand two hundred feet", /Altitude 6200 feet/],
  ["+0:01", "start the Provider dilly beans, four pounds", /Expect about 8 pints/],
  ["+0:00", "what now", /Wash the beans|wash and trim/i],
  ["+0:00", "what next", /brine|canner|fill/i],
  ["+0:00", "what's running", /Provider dilled green beans.*wash and trim/],
  ["+0:00", "how much dill per jar", /dill heads: .* in each pint/],
  ["+0:00", "what headspace", /Headspace half an inch/],
  ["+0:14", "done", /Trimmed/],
  ["+0:10", "it's boiling", /Brine boiling.*vinegar/],
  ["+0:00", "five percent", /Noted/],
  ["+0:00", "timer for twelve minutes", /12 minute timer/],
  ["+0:00", "how long", /12 minute timer|minutes/],
  ["+0:00", "hush", /Quiet, safety alarms aside/],
  ["+0:13", "got it", /.?/],
  ["+0:10", "the canner's ready", /dill heads.*in each jar/],
  ["+0:10", "eight pints filled", /8 pints/],
  ["+0:00", "undo", /Taken back/],
  ["+0:00", "eight pints filled, new lids", /8 pints/],
  ["+0:00", "half an inch", /Noted/],
  ["+0:01", "the jars are in", /full boil with the lids covered/],
  ["+0:10", "it's boiling and the lids are covered", /Fifteen minutes, until/],
  ["+0:16", "yes", /log/i],
  ["+0:00", "heat's off", /Wait 5 minutes/],
  ["+0:06", "the jars are out", /Let the jars stand/],
  ["+0:10", "that was ten minutes ago", /Corrected/],
  ["+12:30", "all sealed", /All 8 sealed/],
  ["+0:01", "number six didn't seal", /7 sealed, 1 not/],
  ["+60d 0:00", "opened a pint of the Provider", /Taken off the shelf/],
  ["+0:01", "Anna gives the Provider crunch four, flavor three", /Tasting noted/],
  ["+0:01", "opened a leaking jar of the Provider", /Do not taste it/],
  ["+0:01", "start the Dragon Tongue dilly beans, three pounds", /Dragon Tongue/],
  ["+0:01", "Ben likes the Dragon Tongue better", /Tasting noted/],
];

async function played(steps: readonly Step[]): Promise<Played> {
  const read = readScript(steps.map(([after, words]) => `${after} ${words}`).join("\n"));
  if (!read.ok) throw new Error(read.message);
  return new Rehearsal({
    library: theLibrary(),
    recipes: [],
    begin: {},
    startMs: Date.parse("2027-08-14T08:00:00-06:00"),
    zone: "America/Denver",
    setUp: [],
    script: read.lines,
    demoAltitudeFt: 6200,
    version: "0.0.0",
  }).play();
}

describe("README's first session", () => {
  let day: Played;
  /** What was said from a line on, up to the next that was heard. */
  let replies: { words: string; lines: Line[] }[];

  beforeAll(async () => {
    day = await played(DAY);
    replies = [];
    for (const line of day.kitchen.lines) {
      if (line.kind === "heard") replies.push({ words: line.text, lines: [] });
      else replies.at(-1)?.lines.push(line);
    }
  }, 60_000);

  it("is found, with each of its lines, and all of them are played", () => {
    expect(FROM).toBeGreaterThan(0);
    expect(TO).toBeGreaterThan(FROM);
    expect(QUOTED.length).toBeGreaterThanOrEqual(27);
    const lines = DAY.map(([, words]) => words).filter((words) => !BESIDES.has(words));
    expect([...lines].sort()).toEqual([...new Set(QUOTED)].sort());
    expect(replies.map(({ words }) => words)).toEqual(DAY.map(([, words]) => words));
  });

  it.each(DAY.map(([, words, answer], at) => ({ words, answer, at })))(
    "is answered as it says: $words",
    ({ words, answer, at }) => {
      const reply = replies[at];
      expect(reply?.words).toBe(words);
      expect(reply?.lines.filter(({ kind }) => kind === "refused")).toEqual([]);
      expect(reply?.lines.map(({ text }) => text).join(" ")).toMatch(answer);
    },
  );

  it("has the jars to expect and the minutes that it promises", () => {
    const said = day.kitchen.lines.map(({ text }) => text).join("\n");
    const [, jars] = /about (\d+) pints/.exec(SECTION) ?? [];
    const [, minutes] = /tested time runs: (\d+) minutes/.exec(SECTION) ?? [];
    expect([jars, minutes]).toEqual([expect.any(String), expect.any(String)]);
    expect(said).toContain(`Expect about ${jars} pints`);
    expect(said).toContain(`${upper(countWords(Number(minutes), "minute"))}, until `);
  });

  it("finds the altitude of its kitchen by the thermometer that it names", async () => {
    const [, call = ""] = /`brinebell reckon (altitude [^`]+)`/.exec(SECTION) ?? [];
    const { stdout } = await reckonCommand(call.split(" "), { readFile: () => "", zone: "UTC" });
    const range = /range ([\d,]+) to ([\d,]+) ft/.exec(stdout) ?? [];
    const [low = 0, high = 0] = range.slice(1).map((feet) => Number(feet.replace(",", "")));
    expect(low).toBeGreaterThan(0);
    expect(low).toBeLessThan(6200);
    expect(high).toBeGreaterThan(6200);
  });

  it("is left by the word that README names", () => {
    const [, word = ""] = /To leave, say `([^`]+)`/.exec(README) ?? [];
    const { session } = day.kitchen;
    expect(session.left).toBe(false);
    session.hear(word);
    expect(session.left).toBe(true);
  });

  it("leaves a true record", () => {
    const { state } = day.kitchen.session;
    const [provider] = review(state, day.kitchen.session.now()).batches;
    expect(provider?.lot).toMatchObject({ variety: "Provider", weightLb: 4 });
    expect(provider?.process).toMatchObject({ testedMinutes: 15, state: "complete" });
    const factors = provider?.confirmed.map(({ factor }) => factor);
    expect(factors).toEqual(["vinegar-5-percent", "new-lids", "headspace"]);
    expect(provider?.verdict).toBe("as-tested");
    expect(provider?.deviations.map(({ detail }) => detail)).toEqual(["1 did not seal (6)"]);
  });
});
