import { describe, expect, it } from "vitest";
import { decide } from "../../src/kitchen/decide/decide.ts";
import { takeBack } from "../../src/kitchen/decide/decide-corrections.ts";
import { filled } from "../../src/kitchen/jars/lots.ts";
import { theLibrary } from "../scenarios/play.ts";
import { at, commandOf, Story, told } from "./story.ts";

function beansInCanner() {
  const story = new Story();
  const batch = story.begins(0, "dilled-green-beans");
  const load = story.loads(60, batch, 8);
  return { story, batch, load };
}

describe("a report of a boil", () => {
  it("starts the process once it says that the lids are covered", () => {
    const { story, load } = beansInCanner();
    expect(told(story.says(70, "boiling", { covered: true }))).toEqual(["boil"]);
    expect(load.stages.find((run) => run.id === "process")?.state).toBe("running");
    expect(load.stages.find((run) => run.id === "come-up")?.state).toBe("complete");
  });

  it("that comes twice unconfirmed counts from the first", () => {
    const { story, load } = beansInCanner();
    story.says(70, "boiling", {});
    story.says(74, "boiling", { covered: true });
    const process = load.stages.find((run) => run.id === "process");
    expect(process?.startedAt).toBe(process?.kept?.stretches[0]?.from);
    expect(story.state.lastW - (process?.startedAt ?? 0)).toBe(4 * 60_000);
  });

  it("is refused while it is known to boil", () => {
    const { story } = beansInCanner();
    story.says(70, "boiling", { covered: true });
    expect(told(story.says(71, "boiling", {}))).toBe("I already have it boiling.");
  });

  it("before any jar is in the canner is about the canner's water", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    story.happened(1, { type: "stage-done", owner: batch.id, stage: "trim" });
    expect(told(story.says(2, "boiling", { target: "canner" }))).toContain("stage-done");
  });
});

describe("jars that are reported filled", () => {
  it.each([-1, 2.5, 5000, 0])("are refused where there cannot be that many: %s", (count) => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans");
    for (const run of batch.stages) {
      if (run.spec.kind === "fill") break;
      story.happened(1, { type: "stage-done", owner: batch.id, stage: run.id });
    }
    expect(told(story.says(2, "jars-filled", { count }))).toMatch(/can't be right|none filled/i);
    expect(filled(batch)).toBe(0);
  });
});

describe("a reminder", () => {
  it("is refused for a day that no line of a log may hold", () => {
    const story = new Story();
    const on = (when: string) => told(story.says(1, "remind", { text: "wipe the jars", when }));
    expect(on("2199-12-30T09:00:00")).toEqual(["reminder-set"]);
    expect(on("2200-01-02T09:00:00")).toContain("too far off for a reminder");
  });
});

describe("jars that are reported loaded", () => {
  it("are refused where another batch needs a different process", () => {
    const story = new Story();
    const beans = story.begins(0, "dilled-green-beans");
    const beets = story.begins(0, "pickled-beets");
    for (const batch of [beans, beets]) {
      for (const run of batch.stages) {
        if (run.spec.kind === "fill") break;
        story.happened(1, { type: "stage-done", owner: batch.id, stage: run.id });
      }
    }
    story.passes(2);
    const load = Object.values(story.state.loads)[0];
    story.happened(60, { type: "stage-done", owner: load?.id ?? "", stage: "canner" });
    story.happened(61, { type: "jars-filled", batch: beans.id, count: 4, size: null });
    story.happened(61, { type: "jars-filled", batch: beets.id, count: 4, size: null });
    const other = load?.batch === beans.id ? "the beets" : "the beans";
    const outcome = told(story.says(62, "loaded", { target: other }));
    expect(outcome).toMatch(/^They can't share the canner: /);
  });

  it("are refused while the canner is taken", () => {
    const { story } = beansInCanner();
    expect(told(story.says(70, "loaded", { count: 3 }))).toBe(
      "The canner is taken. These jars go in the next load.",
    );
  });
});

describe("taking jars out", () => {
  it("in time is the normal end of the load", () => {
    const { story } = beansInCanner();
    story.says(70, "boiling", { covered: true });
    story.passes(86);
    expect(told(story.says(90, "done", { target: "jars" }))).toEqual(["unloaded"]);
  });

  it("early is asked about, and the question says how much time the jars have had", () => {
    const { story } = beansInCanner();
    story.says(70, "boiling", { covered: true });
    expect(told(story.says(76, "done", { target: "jars" }))).toMatch(/6 of 15 minutes/);
  });

  it("is refused where none are in", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans");
    const command = commandOf(story.state, "done", { target: "jars" });
    const ref = command.ref && { ...command.ref, sorts: [...command.ref.sorts, "out" as const] };
    const wish = { command: { ...command, ...(ref ? { ref } : {}) } };
    expect(told(decide(story.state, wish, at(1), theLibrary()))).toBe("No jars are in a canner.");
  });
});

describe("heat that is told to be back where nobody told of its loss", () => {
  const POUNDS = { value: 15, unit: "psi" } as const;
  const back = (about: "boil" | "pressure") => ({
    evidence: { strength: "suspicion", about, text: "again", returned: true } as const,
  });

  /** Beans in boiling water and beets under pressure, each in its time. */
  function twoCanners() {
    const story = new Story();
    const gauge = { kind: "dial", testedSeason: 2027, readsHighPsi: 0 } as const;
    const holds = { pint: 9 };
    const canners = [
      { id: "canner", name: "canner", holds },
      { id: "other", name: "other canner", holds, gauge },
    ];
    story.happened(0, { type: "kitchen-set", canners });
    const beans = story.loads(60, story.begins(0, "dilled-green-beans"), 8);
    const beets = story.loads(60, story.begins(0, "beets", { canner: "other" }), 8);
    story.says(61, "venting");
    story.passes(72);
    story.says(72, "pressure", POUNDS);
    story.says(72, "boiling", { covered: true });
    return { story, heard: () => [beans.heard.length, beets.heard.length] };
  }

  it("is a doubt about the loads in boiling water where it is a boil", () => {
    const { story, heard } = twoCanners();
    story.says(77, "boiling", {}, back("boil"));
    expect(heard()).toEqual([1, 0]);
  });

  it("is a doubt about the loads under pressure where it is a pressure", () => {
    const { story, heard } = twoCanners();
    story.says(77, "pressure", POUNDS, back("pressure"));
    expect(heard()).toEqual([0, 1]);
  });
});

describe("a disposition", () => {
  it("is refused where nothing waits for one", () => {
    const { story } = beansInCanner();
    expect(told(story.says(70, "disposition", { what: "freeze" }))).toBe(
      "No jars are waiting for that decision.",
    );
  });

  it("of more jars than are waiting is asked about", () => {
    const { story } = beansInCanner();
    story.says(70, "boiling", { covered: true });
    story.says(75, "done", { target: "jars" }, { confirmed: true });
    const many = story.says(76, "disposition", { what: "freeze", count: 12 });
    expect(told(many)).toContain("8 jars are waiting");
    story.says(77, "disposition", { what: "freeze", count: 3 });
    expect(told(story.says(78, "disposition", { what: "refrigerate" }))).toEqual(["disposed"]);
  });

  it("to reprocess uses the hot pack, each batch of the load its own", () => {
    const story = new Story();
    const batch = story.begins(0, "peaches", { pack: "raw", jar: "quart" });
    story.loads(90, batch, 5);
    story.says(100, "boiling", { covered: true });
    story.says(105, "done", { target: "jars" }, { confirmed: true });
    expect(told(story.says(106, "disposition", { what: "reprocess" }))).toContain("disposed");
    expect(batch).toMatchObject({ pack: "hot" });
    expect(batch.lots[0]).toMatchObject({ again: 5, allFilled: false });
  });
});

describe("a second lot of the same recipe", () => {
  it("is refused without a variety, and begun with one", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans");
    expect(told(story.says(1, "begin", { recipe: "dilled-green-beans" }))).toContain(
      "Name a variety",
    );
    const other = story.begins(2, "dilled-green-beans", { variety: "Provider" });
    expect(other.lots.map(({ mark }) => mark)).toEqual(["D", "P"]);
  });

  it("shares the pots of the first; where its brine was boiled before, it is asked about", () => {
    const story = new Story();
    const first = story.begins(0, "dilled-green-beans", { variety: "Provider", weightLb: 4 });
    story.says(1, "begin", { recipe: "dilled-green-beans", variety: "Blue Lake", weightLb: 3 });
    expect(first.lots.map(({ variety }) => variety)).toEqual(["Provider", "Blue Lake"]);
    expect(Object.keys(story.state.batches)).toHaveLength(1);
    story.happened(20, { type: "stage-done", owner: first.id, stage: "brine" });
    const late = { recipe: "dilled-green-beans", variety: "Dragon Tongue", weightLb: 3 };
    expect(told(story.says(21, "begin", late))).toMatch(/enough brine for the Dragon Tongue/);
    expect(told(story.says(21, "begin", late, { confirmed: true }))).toEqual(["lot-added"]);
    expect(
      told(story.says(22, "begin", { ...late, variety: "Contender" }, { confirmed: false })),
    ).toContain("batch-begun");
  });

  it("is a batch of its own where jars, pack or recipe differ", () => {
    const story = new Story();
    const first = story.begins(0, "dilled-green-beans", { variety: "Provider" });
    story.begins(1, "dilled-green-beans", { variety: "Blue Lake", jar: "half-pint" });
    story.begins(1, "pickled-beets", { variety: "Chioggia" });
    expect(first.lots).toHaveLength(1);
    expect(Object.keys(story.state.batches)).toHaveLength(3);
  });

  it("gets a different lid mark from one that begins with the same letter", () => {
    const story = new Story();
    const first = story.begins(0, "dilled-green-beans", { variety: "Provider" });
    const second = story.begins(0, "dilled-green-beans", { variety: "Purple Queen" });
    expect(second).toBe(first);
    expect(first.lots.map(({ mark }) => mark)).toEqual(["P", "PU"]);
  });
});

describe("a stage that waits for a word", () => {
  it("is begun by it, and asked about where several batches have one", () => {
    const story = new Story();
    story.begins(0, "dilled-green-beans");
    expect(told(story.says(1, "begin", { named: "brine" }))).toContain("stage-begun");
    story.begins(2, "pears", { variety: "Bartlett" });
    story.begins(2, "peaches", { variety: "Redhaven" });
    expect(told(story.says(3, "begin", { named: "syrup" }))).toBe(
      "Which syrup: Bartlett or Redhaven?",
    );
    const named = story.says(4, "begin", { named: "redhaven syrup" });
    expect(told(named)).toContain("stage-begun");
  });
});

describe("filled jars that went into a canner", () => {
  it("are not taken back before the loading is", () => {
    const story = new Story();
    const batch = story.begins(0, "dilled-green-beans", { variety: "Provider", weightLb: 4 });
    for (const run of batch.stages) {
      if (run.spec.kind === "fill") break;
      story.happened(60, { type: "stage-done", owner: batch.id, stage: run.id });
    }
    const [load] = Object.keys(story.state.loads);
    story.happened(61, { type: "stage-done", owner: load ?? "", stage: "canner" });
    expect(told(story.says(70, "jars-filled", { count: 8, size: "pint" }))).toContain(
      "jars-filled",
    );
    const filled = story.state.history.findLast(({ type }) => type === "jars-filled");
    expect(told(story.says(72, "loaded", {}))).toContain("loaded");
    const present = { state: story.state, now: at(73), library: theLibrary() };
    const outcome = takeBack(present, filled?.cmd ?? "");
    expect(outcome.kind === "refused" && outcome.reason).toMatch(
      /^I can't take back .* came after/,
    );
  });
});
