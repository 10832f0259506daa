/** What must hold of every sentence the program says: those of days played, and those of tables. */
import { beforeAll, describe, expect, it } from "vitest";
import { GLOSSARY } from "../../src/kitchen/glossary.ts";
import { CAUTIONS } from "../../src/recipe/cautions.ts";
import { CRITICAL_FACTORS } from "../../src/recipe/critical-factors.ts";
import { EMERGENCIES } from "../../src/speech/texts/emergencies.ts";
import { TROUBLES } from "../../src/speech/texts/troubles.ts";
import { play, theLibrary } from "../scenarios/play.ts";

const DAYS = [
  "dilled-green-beans pickled-beets",
  "snap-beans",
  "sauerkraut",
  "berry-jam",
  "crushed-tomatoes",
  "cucumber-seed",
  "bread-and-butter-pickles",
];

const MOST_WORDS = 25;

/** What a fault looks like, by its name. */
const FAULTS: Record<string, RegExp> = {
  "a doubled article": /\b(the|a|an) (the|a|an)\b/i,
  "an id": /\b\d{6}-[A-Z]?\d+\b/,
  "a code":
    /\b(boil|pressure|steam|process|rest|cool|seal|jar)-(lost|short|long|failed|count|restarted)\b/,
  "a unit abbreviation": /\d ?(psi|kPa|min|hrs?|lbs?|oz|tsp|tbsp|ml|°F|F|ft|in)\b/,
  "a number that disagrees":
    /\b(beans|beets|jars|lids|pickles|tomatoes|pints|minutes|pounds) (is|was|has)\b/,
  "one of several": /\b1 (jars|pints|quarts|minutes|hours|pounds)\b/,
  "a night of tomorrow": /at night tomorrow|at night today/,
};

const said: string[] = [];

beforeAll(async () => {
  for (const day of DAYS) said.push(...(await play(day)).said.map(({ text }) => text));
  const flat = (texts: object): string[] => {
    return Object.values(texts).flatMap((one) => (typeof one === "string" ? one : flat(one)));
  };
  said.push(...flat(CAUTIONS), ...flat(GLOSSARY));
  for (const { text } of [...Object.values(EMERGENCIES), ...Object.values(TROUBLES)])
    said.push(text);
  for (const { ask, askShort, otherwise, later } of CRITICAL_FACTORS) {
    said.push(...[ask, askShort, otherwise, later].filter((one) => one !== undefined));
  }
  for (const { stages } of theLibrary().recipes.values()) {
    for (const stage of stages)
      said.push(...[stage.say, stage.short, stage.done].filter((one) => one !== undefined));
  }
}, 120_000);

describe("every sentence that is said", () => {
  it.each(Object.entries(FAULTS))("is without %s", (_name, fault) => {
    expect(said.length).toBeGreaterThan(800);
    expect([...new Set(said.filter((text) => fault.test(text)))]).toEqual([]);
  });

  it("has at most 25 words", () => {
    const sentences = said.flatMap((text) => text.split(/(?<=[.!?;]) /));
    const long = sentences.filter((one) => one.split(/\s+/).length > MOST_WORDS);
    expect([...new Set(long)]).toEqual([]);
  });

  it("is at most 20 words where it is the short form of a prompt", () => {
    const shorts = [...theLibrary().recipes.values()].flatMap(({ stages }) => {
      return stages.flatMap(({ short }) => short ?? []);
    });
    expect(shorts.filter((one) => one.split(/\s+/).length > 20)).toEqual([]);
  });
});
