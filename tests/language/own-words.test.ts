/** Which readings a yes may stand for the next time, and where a memory is heard. */
import { describe, expect, it } from "vitest";
import type { Command, Intent } from "../../src/kitchen/command.ts";
import type { OwnWords } from "../../src/kitchen/own-words.ts";
import type { Context } from "../../src/language/context.ts";
import { hear } from "../../src/language/hear.ts";
import { meanings } from "../../src/language/intents/all.ts";
import { learnable, mayBeLearned } from "../../src/language/own-words.ts";
import { kitchenContext } from "./kitchen-context.ts";

const DAY_MS = 24 * 3_600_000;
const context = kitchenContext({
  running: [
    {
      id: "b-1",
      recipe: "dilled-green-beans",
      variety: "Provider",
      stages: [{ id: "brine", title: "boil the brine", kind: "heat", state: "running" }],
    },
  ],
  timers: [{ id: "t-1", label: "eggs" }],
});

/** A command with one slot filled, whatever the value, or with none. */
const command = (intent: Intent, slot?: string) =>
  ({ intent, slots: slot ? { [slot]: 1 } : {}, confidence: 0.5 }) as unknown as Command;

const memory = (words: string, intent: Intent): OwnWords => {
  return { words, stages: ["heat"], question: null, intent, at: 0 };
};
const knowing = (...ownWords: OwnWords[]): Context => ({ ...context, ownWords });
const acts = (text: string, at: Context) => {
  const { reading, commands } = hear(text, at);
  return reading === "sure" ? commands.map(({ intent }) => intent) : [];
};

const processing = kitchenContext({
  loads: [
    {
      id: "l-1",
      canner: "canner",
      stages: [{ id: "process", title: "process", kind: "process", state: "running" }],
    },
  ],
});

/** What has no wording, and is likely to raise or clear a doubt while jars are in the canner. */
const DEAR = [
  "she has gone right off the simmer",
  "every last one of them went plink",
  "the whole lot of them popped down nicely",
  "we've a good rolling bubble on",
  "steam's pouring out like a chimney",
  "all seven are down in the water with the rack level",
];

/** Means nothing to anybody, so that only a memory can act on it. */
const ODD = "flumpet the wazzle";

describe("a yes to a reading", () => {
  it("is remembered for these meanings and for no others", () => {
    const learned = meanings().filter(([intent]) => mayBeLearned(command(intent)));
    const changing = learned.filter(([, { cost }]) => cost !== "harmless");
    expect(changing.map(([intent]) => intent).sort()).toEqual([
      ...["abandon", "acknowledge", "back", "begin", "change-batch", "correct-time"],
      ...[
        "disposition",
        "forget-it",
        "forget-words",
        "germination",
        "given",
        "hold",
        "hush",
        "instead",
      ],
      ...[
        "labeled",
        "note",
        "opened",
        "place",
        "plan",
        "prefer",
        "quit",
        "redo",
        "remind",
        "resume",
        "returned",
      ],
      ...[
        "seed-saved",
        "set-aside",
        "settings",
        "skip",
        "taste",
        "timer-add",
        "timer-cancel",
        "timer-set",
      ],
      ...["undo", "warn-ahead"],
    ]);
    const harmless = meanings().filter(([, { cost }]) => cost === "harmless");
    expect(learned.length - changing.length).toBe(harmless.length - 1);
  });

  it.each(meanings().filter(([, { cost }]) => cost === "raising" || cost === "clearing"))(
    "is never remembered where it raises or clears: %s",
    (intent, { slots }) => {
      expect(mayBeLearned(command(intent))).toBe(false);
      for (const slot of Object.keys(slots))
        expect(mayBeLearned(command(intent, slot))).toBe(false);
    },
  );

  it("is never remembered with how many jars, which size or what pressure", () => {
    const refused = meanings().flatMap(([intent, { slots }]) => {
      if (!mayBeLearned(command(intent))) return [];
      const kept = Object.keys(slots).filter((slot) => !mayBeLearned(command(intent, slot)));
      return kept.map((slot) => `${intent} ${slot}`);
    });
    expect(refused.sort()).toEqual([
      ...["begin atPsi", "begin jar", "change-batch jar", "disposition count", "disposition jars"],
      ...["germination of", "germination sprouted", "given count", "given jars", "given size"],
      ...["how-much size", "instead jars", "opened count", "opened jars"],
      ...[
        "opened size",
        "place jars",
        "returned count",
        "returned jars",
        "set-aside count",
        "set-aside jars",
        "which-jar jars",
      ],
    ]);
  });

  it("is not remembered where it says something about a critical factor besides", () => {
    const confirms = [{ factor: "new-lids", held: "yes" }] as const;
    expect(mayBeLearned({ ...command("hold"), confirms })).toBe(false);
  });

  it("teaches the words as they are read, with their moment", () => {
    expect(learnable("Give 'em a rest, I'm off!", command("hold"), context)).toEqual({
      words: "give them a rest i am off",
      stages: ["heat"],
      question: null,
      intent: "hold",
    });
  });

  it.each(["Ben, give the beans a rest", "give the beans a rest for Ben"])(
    "teaches nothing where somebody is named: %s",
    (text) => {
      expect(learnable(text, command("hold"), context)).toBeUndefined();
    },
  );

  it("teaches words with the names of the kitchen in them", () => {
    const hold = { ...command("hold"), slots: { target: "provider" } } as Command;
    expect(learnable("give the Provider a rest", hold, context)).toBeDefined();
  });

  it("teaches nothing where the sentence goes on unread", () => {
    expect(learnable("and so on ".repeat(40), command("hold"), context)).toBeUndefined();
  });
});

describe("a memory", () => {
  it("acts at once on the same words in the same moment, however they are written", () => {
    const known = knowing(memory(ODD, "hold"));
    expect(acts(ODD, context)).toEqual([]);
    expect(acts(ODD, known)).toEqual(["hold"]);
    expect(acts("  Flumpet the WAZZLE! ", known)).toEqual(["hold"]);
  });

  it("is not heard in other words, in another moment, or as a question", () => {
    const known = knowing(memory(ODD, "hold"));
    expect(acts(`${ODD} again`, known)).toEqual([]);
    expect(acts(`${ODD}?`, known)).toEqual([]);
    expect(acts(ODD, { ...known, question: { kind: "percent", key: "vinegar" } })).toEqual([]);
    expect(acts(ODD, { ...known, running: [] })).toEqual([]);
  });

  it("finds its values anew", () => {
    const words = `${ODD} at half past two`;
    const known = knowing(memory(words, "remind"));
    const when = (at: Context) => hear(words, at).commands.map(({ slots }) => slots);
    expect(when(known)).toMatchObject([{ when: "2027-08-14T14:30:00" }]);
    const next = { ...known, nowMs: known.nowMs + DAY_MS };
    expect(when(next)).toMatchObject([{ when: "2027-08-15T14:30:00" }]);
  });

  it("does nothing where a needed value is not in the words", () => {
    expect(acts(ODD, knowing(memory(ODD, "timer-set")))).toEqual([]);
  });

  it.each(["boiling", "boil-lost", "done", "yes", "factor", "altitude", "loaded"] as const)(
    "never acts, whoever wrote it, where it would raise, clear or set what matters: %s",
    (intent) => {
      expect(acts(ODD, knowing(memory(ODD, intent)))).toEqual([]);
    },
  );

  it("never acts with a count or a size of jar in the words", () => {
    const words = `${ODD} jars two and five`;
    expect(acts(words, knowing(memory(words, "set-aside")))).toEqual([]);
  });

  it("leaves no doubt of words that only fitted nothing", () => {
    const known = hear(ODD, knowing(memory(ODD, "hold")));
    expect(known.memory).toBeDefined();
    expect(known.evidence).toBeUndefined();
  });

  it("gives way to a question whether something raises or clears a doubt", () => {
    const dear = (text: string) => {
      const { reading, candidates } = hear(text, processing);
      return reading === "ask" && candidates[0] && !mayBeLearned(candidates[0]);
    };
    const text = DEAR.find(dear);
    expect(text, "none of these is asked about as dear any more").toBeDefined();
    const words = learnable(text ?? "", command("hold"), processing);
    const known = { ...processing, ownWords: words ? [{ ...words, at: 0 }] : [] };
    expect(known.ownWords).toHaveLength(1);
    expect(hear(text ?? "", known)).toMatchObject({ reading: "ask", commands: [] });
  });

  it("of a meaning that nobody knows says nothing", () => {
    const unknown = { ...memory(ODD, "hold"), intent: "fly-to-the-moon" };
    expect(acts(ODD, knowing(unknown))).toEqual([]);
  });

  it.each([
    ["if you flumpet the wazzle", "if you flumpet the wazzle"],
    ["my neighbor says flumpet the wazzle", "my neighbor says flumpet the wazzle"],
    ["Ben, flumpet the wazzle", "ben flumpet the wazzle"],
    ["do not flumpet the wazzle", "do not flumpet the wazzle"],
    ["yesterday we had to flumpet the wazzle", "yesterday we had to flumpet the wazzle"],
  ])("does not act on what its frame stops, or what is said to somebody: %s", (text, words) => {
    expect(acts(text, knowing(memory(words, "hold")))).toEqual([]);
  });

  it("takes nothing from a doubt that the words raise", () => {
    const words = "keep that lid handy and flumpet the wazzle";
    const { evidence } = hear(words, context);
    expect(evidence).toBeDefined();
    const known = hear(words, knowing(memory(words, "hold")));
    expect(known.memory).toBeDefined();
    expect(known.evidence).toEqual(evidence);
  });
});
