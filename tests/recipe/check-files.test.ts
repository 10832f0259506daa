import { describe, expect, it } from "vitest";
import {
  type CheckFile,
  checkFiles,
  checkSentences,
  findingsOf,
  judgedRight,
} from "./check-files/check-file.ts";

const files = [...checkFiles("danger.txt"), ...checkFiles("safe.txt")];
const mended = [...files.filter(({ heldOut }) => !heldOut), ...checkSentences()];
const heldOut = files.filter((file) => file.heldOut);
const wrong = (some: CheckFile[], safe: boolean) =>
  some.filter((file) => file.safe === safe && !judgedRight(file)).length;

describe(`${files.length} recipe files, of ${heldOut.length} only the score is looked at`, () => {
  for (const file of mended) {
    const name = `${file.safe ? "safe" : "dangerous"}: ${file.id}, ${file.why} (${file.from})`;
    it(name, () => {
      const dangers = findingsOf(file).filter(({ severity }) => severity === "danger");
      const told = dangers.map(({ rule, where, message }) => `${rule}, ${where}: ${message}`);
      if (file.about === undefined) expect(told).toEqual([]);
      else expect(told.join("\n")).toMatch(file.about);
    });
  }

  it("of those held out, two dangers are missed and one safe file is called dangerous", () => {
    expect(wrong(heldOut, false)).toBeLessThanOrEqual(2);
    expect(wrong(heldOut, true)).toBeLessThanOrEqual(1);
  });

  it("every finding says where it stands and what it rests on", () => {
    for (const { where, source, message } of mended.flatMap(findingsOf)) {
      expect(where).not.toBe("");
      expect(source).not.toBe("");
      expect(message.length).toBeGreaterThan(20);
    }
  });
});
