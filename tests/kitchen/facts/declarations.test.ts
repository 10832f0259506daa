/**
 * What is declared about each kind of fact, compared with a second list, so that no line is lost.
 */
import { describe, expect, it } from "vitest";
import type { KitchenEvent } from "../../../src/kitchen/events.ts";
import {
  type AnyDeclaration,
  declarationOf,
  FACTS,
  type FactType,
} from "../../../src/kitchen/facts/all-facts.ts";
import { idsOf, withNames } from "../../../src/kitchen/facts/references.ts";
import { GOLDEN, goldenEvents, LATER_EVENTS } from "./golden-journals.ts";

const TYPES = Object.keys(FACTS) as FactType[];

function having(test: (declared: AnyDeclaration) => unknown): string[] {
  return TYPES.filter((type) => test(declarationOf(type))).sort();
}

const LOSSES = ["boil-lost", "heat-off", "pressure-lost", "steam-lost"];
const STARTS = ["boil", "pressure", "rocking", "steam"];

describe("the declarations", () => {
  it("say what needs a yes to be taken back: a loss, a raise, a spoiled jar", () => {
    const warns = (type: FactType, event: object) =>
      declarationOf(type).undoWarns?.(event as never);
    const dear = [
      ...LOSSES,
      "brew-told",
      "confirmed",
      "end-reopened",
      "factor-reopened",
      "heard",
      "spoiled",
    ].concat("jars-discarded");
    expect(TYPES.filter((type) => warns(type, {})).sort()).toEqual(dear.sort());
    expect(TYPES.filter((type) => warns(type, { raised: true })).sort()).toEqual(
      [...dear, "load-terms"].sort(),
    );
    expect(TYPES.filter((type) => warns(type, { cause: "away" })).sort()).toEqual(
      [...dear, "gap"].sort(),
    );
  });

  it("say which times are bounded as a start's or a loss's, and which are free", () => {
    expect(having(({ timed }) => timed === "loss")).toEqual(LOSSES);
    expect(having(({ timed }) => timed === "start")).toEqual(STARTS);
    expect(having(({ timed }) => timed === "told")).toEqual([
      ...[
        "batch-begun",
        "brew-made",
        "jars-filled",
        "loaded",
        "looked",
        "lot-added",
        "note",
        "stage-begun",
      ],
      ...["stage-done", "temperature", "unloaded", "water-low"],
    ]);
  });

  it("say which reports silence an alarm", () => {
    expect(having(({ quiets }) => quiets)).toEqual([
      ...["abandoned", "boil", "boil-lost", "brew-made", "disposed", "heat-off", "jars-filled"],
      ...["loaded", "pressure"],
      ...[
        "pressure-lost",
        "rocking",
        "seal-failed",
        "sealed",
        "spoiled",
        "stage-begun",
        "stage-done",
      ],
      ...["stage-skipped", "steam", "temperature", "unloaded"],
    ]);
  });

  it("say which are never taken back, and which only along with others", () => {
    expect(having(({ undo }) => undo === "never")).toEqual([
      "asked",
      "joined",
      "merged",
      "withdrawn",
      "words-learned",
    ]);
    expect(having(({ undo }) => undo === "along")).toEqual(["acknowledged"]);
  });

  it("say which the program writes by itself", () => {
    expect(having(({ own }) => own)).toEqual([
      ...["acknowledged", "asked", "due", "focused", "joined", "line-sealed", "load-opened"],
      ...["load-terms", "merged", "words-learned"],
    ]);
  });

  it("say which begin something, and which field holds its name", () => {
    const begins = TYPES.flatMap((type) => {
      const field = declarationOf(type).begins;
      return field === undefined ? [] : [`${type} ${field}`];
    });
    expect(begins.sort()).toEqual([
      ...["batch-begun batch", "line-sealed seal", "load-opened load", "lot-added id"],
      ...["reminder-set reminder", "seed-saved seed", "timer-set timer"],
    ]);
  });

  it("say which change no stage", () => {
    expect(having(({ follows }) => follows === "nothing")).toEqual([
      ...["acknowledged", "altitude-then", "amended", "asked", "broken-inside", "clock-set"],
      ...["closed", "day-plan-dropped"],
      ...["day-planned", "due", "end-reopened", "factor-reopened", "focused", "germination"],
      ...["guide-compared", "heard", "heard-settled"],
      ...[
        "hushed",
        "jar-opened",
        "jars-discarded",
        "jars-given",
        "jars-moved",
        "jars-returned",
        "joined",
        "kitchen-set",
        "labeled",
        "left-open",
        "lids-marked",
      ],
      "line-sealed",
      ...[
        "line-settled",
        "log-failed",
        "merged",
        "name-settled",
        "note",
        "opened",
        "preferred",
        "probe",
      ],
      "probe-is",
      ...["reminder-cancelled", "reminder-set", "seed-saved", "set-up", "tasted"],
      ...["timer-added", "timer-cancelled", "timer-set", "unhushed", "warning-set"],
      ...["withdrawn", "words-forgotten", "words-learned"],
    ]);
  });

  it("say which concern the shelf, and which accompany others", () => {
    expect(having(({ ofTheShelf }) => ofTheShelf)).toEqual([
      ...[
        "jar-opened",
        "jars-discarded",
        "jars-given",
        "jars-moved",
        "jars-returned",
        "labeled",
        "preferred",
        "spoiled",
        "tasted",
      ],
    ]);
    expect(having(({ passing }) => passing)).toEqual([
      ...["confirmed", "due", "guide-compared", "heard", "joined", "load-opened", "load-terms"],
      ...["merged", "name-settled"],
    ]);
  });
});

describe("the names in a fact", () => {
  const of = (type: FactType, fields: object) =>
    ({ type, cmd: "c1", t: 0, w: 0, ...fields }) as KitchenEvent;

  it("are found wherever a fact has them", () => {
    const parts = [
      { batch: "B1", jars: 3, first: 1 },
      { batch: "B2", jars: 4, first: 4 },
    ];
    expect(idsOf(of("loaded", { load: "L1", parts }))).toEqual(["L1", "B1", "B2"]);
    expect(idsOf(of("disposed", { owner: "L1", batch: "B1" }))).toEqual(["L1", "B1"]);
    expect(idsOf(of("note", { owner: null }))).toEqual([]);
    expect(idsOf(of("line-sealed", { seal: "s", touches: ["B1", "L1"] }))).toEqual(["B1", "L1"]);
    expect(idsOf(of("timer-set", { timer: "T1" }))).toEqual([]);
  });

  it("are all that changes where they are renamed", () => {
    const named = new Set(["batch", "owner", "load", "timer", "reminder", "seed", "over"]);
    for (const event of [...GOLDEN.flatMap(goldenEvents), ...LATER_EVENTS]) {
      const renamed = withNames(event, (name) => `${name}!`) as Record<string, unknown>;
      const { begins } = declarationOf(event.type);
      for (const [field, value] of Object.entries(event)) {
        const name = (named.has(field) || field === begins) && typeof value === "string";
        const inside = ["parts", "key", "keys", "target", "seal", "touches"].includes(field);
        if (name) expect(renamed[field]).toBe(`${value}!`);
        else if (inside) expect(JSON.stringify(renamed[field])).toContain("!");
        else expect(renamed[field]).toEqual(value);
      }
    }
  });
});
