/** What guards safety in the declaration of each meaning, compared with a second list. */
import { describe, expect, it } from "vitest";
import type { Intent } from "../../src/kitchen/command.ts";
import { meanings } from "../../src/language/intents/all.ts";
import type { MeaningOf } from "../../src/language/intents/meaning.ts";

function having(test: (meaning: MeaningOf<Intent>) => unknown): string[] {
  return meanings()
    .flatMap(([name, meaning]) => (test(meaning) ? [name] : []))
    .sort();
}

const REPORTS = [
  ...[
    "added",
    "boil-lost",
    "boiling",
    "brew-made",
    "brew-of",
    "done",
    "gauge",
    "given",
    "jar-broken",
    "jars-filled",
    "labeled",
    "loaded",
    "looked",
    "opened",
  ],
  ...[
    "pressure",
    "pressure-lost",
    "returned",
    "seal-failed",
    "sealed",
    "set-aside",
    "spoiled",
    "temperature",
  ],
  ...["topped-up", "venting", "was-away", "water-low", "weight-rocking"],
];

describe("the declarations of meanings", () => {
  it("say which clear a doubt if misunderstood", () => {
    expect(having(({ cost }) => cost === "clearing")).toEqual([
      ...[
        "answer",
        "boiling",
        "brew-of",
        "done",
        "factor",
        "pressure",
        "sealed",
        "temperature",
        "venting",
      ],
      ...["weight-rocking", "yes"],
    ]);
  });

  it("say which ends any step, and is taken back at the table", () => {
    expect(having(({ anyStep }) => anyStep)).toEqual(["done"]);
  });

  it("say which raise one", () => {
    expect(having(({ cost }) => cost === "raising")).toEqual([
      ...["added", "boil-lost", "jar-broken", "no", "pressure-lost", "seal-failed", "spoiled"],
      ...["topped-up", "was-away", "water-low"],
    ]);
  });

  it("say which change nothing: only those are done in any frame", () => {
    expect(having(({ cost }) => cost === "harmless")).toEqual([
      ...[
        "away",
        "canner-state",
        "coming",
        "convert",
        "emergency",
        "explain",
        "finish-time",
        "focus",
      ],
      ...[
        "heap",
        "help",
        "how-much",
        "ingredients",
        "is-safe",
        "learned",
        "may-i",
        "more",
        "overview",
        "own-words",
      ],
      "pantry",
      ...["ready-when", "recipes", "repeat", "seeds", "short-of", "standing", "time-left"],
      ...["trouble", "unhush", "unknown", "what-next", "what-now", "which", "which-jar"],
    ]);
  });

  it("say which report that something happened", () => {
    expect(having(({ report }) => report)).toEqual(REPORTS);
  });

  it("say which doubting words belong to a report", () => {
    const doubting = meanings().flatMap(([name, meaning]) => {
      return meaning.doubting ? [`${name}: ${meaning.doubting.join(" ")}`] : [];
    });
    expect(doubting.sort()).toEqual([
      ...["boiling: once", "done: once", "given: would", "opened: used", "pressure-lost: should"],
      ...["seal-failed: when would", "set-aside: would", "spoiled: used would"],
    ]);
  });

  it("say where a guess or a near match is read back: what sets a count or clears a doubt", () => {
    expect(having(({ plainly }) => plainly)).toEqual([
      ...[
        "altitude",
        "boiling",
        "brew-made",
        "brew-of",
        "gauge",
        "jars-filled",
        "lids-marked",
        "loaded",
        "looked",
        "pressure",
        "sealed",
        "temperature",
      ],
      ...["venting", "weight-rocking"],
    ]);
  });

  it("say which are not meant by a question", () => {
    expect(having(({ unasked }) => unasked)).toEqual([
      ...["abandon", "altitude", "away", "back", "begin", "change-batch", "correct-time"],
      ...[
        "disposition",
        "factor",
        "forget-words",
        "instead",
        "no",
        "quit",
        "redo",
        "skip",
        "taste",
        "yes",
      ],
    ]);
  });

  it("say which may contain an unexpected word: nothing that raises or clears", () => {
    expect(having(({ forgiving }) => forgiving)).toEqual([
      ...["altitude", "begin", "finish-time", "focus", "help", "hold", "hush", "overview"],
      ...["repeat", "resume", "taste", "time-left", "timer-add", "timer-cancel", "timer-set"],
      ...["unhush", "what-next", "what-now"],
    ]);
  });

  it("say which answer the open question, and which comes before all else", () => {
    expect(having(({ answer }) => answer)).toEqual(["answer", "no", "yes"]);
    expect(having(({ urgent }) => urgent)).toEqual(["emergency"]);
  });
});
