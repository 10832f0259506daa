import { describe, expect, it } from "vitest";
import { reviewCommand } from "../../src/commands/record/review.ts";
import { DEVIATION_CODES } from "../../src/kitchen/deviation-codes.ts";
import { deviationWords, reasonWords } from "../../src/review/pages/plain-words.ts";
import { BAD_SEAL, LOST_BOIL, opening, playedEvents } from "./demo-season.ts";
import { ioFor, LIBRARY } from "./kitchen-files.ts";
import { kitchenFolder } from "./kitchen-folder.ts";

describe("a deviation on a page", () => {
  it.each([
    ["boil-lost", "lost after 4 of 45 min", "The boil was lost after 4 min of the 45"],
    ["boil-lost", "heat off after 3 min", "The heat was off after 3 min"],
    ["boil-lost", "lids uncovered after 3 min", "The lids were uncovered after 3 min"],
    [
      "pressure-lost",
      "read 11 pounds, under the 14 to be kept",
      "The gauge read 11 pounds, under the 14 to be kept",
    ],
    ["pressure-lost", "the dial had to show 15 psi, not 14", "The dial had to show 15 psi, not 14"],
    ["process-restarted", "the whole 45 min again", "The time was begun again: the whole 45 min"],
    ["process-short", "4 of 45 min", "The process was too short: 4 of 45 min"],
    ["unwatched", "12 min unwatched: it held", "Nobody watched for 12 min: it held"],
    ["written-late", "jars filled: written 9 min after", "Written down 9 min late: jars filled"],
    ["skipped", "chill left out", "Left out: chill"],
    ["skipped", "boil the brine: 3 of 5 min", "Cut short: boil the brine, 3 of 5 min"],
    ["critical-unrecorded", "new-lids: nobody confirmed it", "Nobody confirmed: new lids"],
    ["contradicted", "new-lids: confirmed, then denied", "Confirmed, then denied: new lids"],
    ["seal-failed", "1 did not seal (3)", "1 jar did not seal (3)"],
    ["seal-failed", "2 did not seal", "2 jars did not seal"],
    [
      "unheard",
      '"hm: it went": nobody said how it was',
      'Words were not understood: "hm: it went"; nobody said how it was',
    ],
    ["altitude-raised", "at 8300 ft 50 min, not 45 min", "At 8300 ft it takes 50 min, not 45 min"],
    ["ingredient-changed", "more $1 % garlic", "An ingredient was changed: more $1 % garlic"],
  ])("of the code %s, %s, is said as a sentence", (code, detail, sentence) => {
    expect(deviationWords(code, detail)).toBe(sentence);
  });

  it("has a sentence for every code, and shows none of them", () => {
    const sentences = DEVIATION_CODES.map((code) => deviationWords(code));
    expect(new Set(sentences).size).toBe(DEVIATION_CODES.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z][a-z]* [a-z ]+$/);
  });

  it("that counts against a verdict is said the same way; other reasons stay as they are", () => {
    expect(reasonWords("process-short: the canner was not vented")).toBe(
      "The process was too short: the canner was not vented",
    );
    expect(reasonWords("the whole 45 minutes, by a guide: p. 6")).toBe(
      "the whole 45 minutes, by a guide: p. 6",
    );
  });
});

describe("codes of the record", () => {
  it("stay out of the page, and in the JSON", async () => {
    const beets = { recipe: "pickled-beets", weightLb: 7, jar: "pint" } as const;
    const beans = { recipe: "dilled-green-beans", weightLb: 4, jar: "pint" } as const;
    for (const [wanted, code, sentence] of [
      [{ ...beets, script: LOST_BOIL }, "boil-lost", "The boil was lost after 4 min of the 45"],
      [{ ...beans, script: BAD_SEAL }, "seal-failed", "1 jar did not seal (3)"],
    ] as const) {
      const events = await playedEvents(LIBRARY, wanted);
      const kitchen = kitchenFolder([...opening(events[0]?.t ?? 0), ...events]);
      const io = ioFor(kitchen.folder);
      const page = (await reviewCommand(["270814-1", "--html", "-"], io)).stdout;
      const json = (await reviewCommand(["270814-1", "--json"], io)).stdout;
      kitchen.done();
      expect(page).toContain(sentence);
      expect(json).toContain(`"${code}"`);
      const text = page.replace(/<style>.*?<\/style>|<[^>]*>/gs, " ");
      for (const one of DEVIATION_CODES.filter((name) => name.includes("-"))) {
        expect(text).not.toContain(one);
      }
    }
  });
});
