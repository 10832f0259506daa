import { describe, expect, it } from "vitest";
import { ANY_EMERGENCY, EMERGENCIES } from "../../../src/speech/texts/emergencies.ts";
import { SAFETY } from "../../../src/speech/texts/fears.ts";
import type { OwnText } from "../../../src/speech/texts/own-text.ts";
import { withSource } from "../../../src/speech/texts/own-text.ts";
import { PERMISSIONS } from "../../../src/speech/texts/permissions.ts";
import { ANY_SHORTAGE, SHORTAGES } from "../../../src/speech/texts/shortages.ts";
import { ANY_TROUBLE, TROUBLES } from "../../../src/speech/texts/troubles.ts";

const TABLES = { EMERGENCIES, TROUBLES, SAFETY, SHORTAGES, PERMISSIONS };
const texts = Object.entries(TABLES).flatMap(([table, rows]) =>
  Object.entries<OwnText>(rows).map(([key, row]) => ({ name: `${table} ${key}`, row })),
);

/** What is too long to follow by ear. */
function tooLong(text: string): string[] {
  const sentences = text.split(/(?<=[.!?]) /);
  const long = sentences.filter((one) => one.split(" ").length > 25);
  return sentences.length > 3 ? [...long, text] : long;
}

describe("a fixed text", () => {
  it.each(texts)("is at most three sentences of 25 words: $name", ({ row }) => {
    expect(tooLong(row.text)).toEqual([]);
  });

  it.each([ANY_EMERGENCY, ANY_TROUBLE, ANY_SHORTAGE])(
    "is short where nothing is known: %s",
    (text) => {
      expect(tooLong(text)).toEqual([]);
    },
  );

  it("would be found if it were too long", () => {
    expect(tooLong("One. Two. Three. Four.")).toHaveLength(1);
    expect(tooLong(`${"word ".repeat(26)}end.`)).toHaveLength(1);
  });

  it.each(texts)("names its source, or says that it is from memory: $name", ({ row }) => {
    expect(withSource(row)).toMatch(row.source === null ? /That is from memory\.$/ : /By .+\.$/);
  });
});

describe("an emergency", () => {
  // National Health Service, burns and scalds: cool, not iced, running water for 20 minutes.
  it("of a burn is cooled with running water for twenty minutes, with no ice and no fat", () => {
    for (const key of ["burn", "scald"] as const) {
      expect(EMERGENCIES[key].text).toMatch(/running water.*twenty minutes.*[Nn]o ice and no fat/);
    }
  });

  // National Fire Protection Association: lid on, heat off, never water on a grease fire.
  it("of a fire never gets water", () => {
    expect(EMERGENCIES.fire.text).toMatch(
      /heat off.*lid over it.*[Nn]ever put water on burning fat/,
    );
  });

  it.each(["fire", "smoke", "gas", "faint", "ill", "cut"] as const)(
    "names the emergency number in its first sentence: %s",
    (key) => {
      expect(EMERGENCIES[key].text.split(". ")[0]).toContain("911 or your local emergency number");
    },
  );

  // Washington State University Extension, botulism: the signs; Poison Control: its number.
  it("of odd feelings after eating names the signs of botulism", () => {
    expect(EMERGENCIES.ill.text).toMatch(/^Double vision, or trouble swallowing.*breathing/);
    expect(EMERGENCIES.ill.text).toContain("1-800-222-1222");
  });
});

describe("what was tested in place of something", () => {
  // USDA Complete Guide, Guide 3: acid for a quart of tomatoes (University of Missouri GH1456).
  it("is the published acid for tomatoes", () => {
    expect(SHORTAGES["lemon-juice"].text).toMatch(/half a teaspoon a quart, a quarter a pint/);
    expect(SHORTAGES["lemon-juice"].text).toMatch(/four tablespoons of 5 percent vinegar a quart/);
    expect(SHORTAGES["citric-acid"].text).toMatch(/two tablespoons a quart, one a pint/);
  });

  it("is never made up", () => {
    expect(SHORTAGES.vinegar.text).toMatch(/^Nothing takes the place/);
    expect(SHORTAGES["pressure-canner"].text).toMatch(/^Nothing takes its place/);
    expect(ANY_SHORTAGE).toMatch(/^I know of nothing that was tested/);
  });
});
