import { describe, expect, it } from "vitest";
import { COMMANDS } from "../../src/commands/command-table.ts";
import { helpOf } from "../../src/commands/run.ts";

describe("the help of a command", () => {
  it("says how it is called and what it is for", () => {
    expect(helpOf("plan", ["--help"])).toMatch(
      /^brinebell plan "RECIPE WEIGHT.*\n {2}several batches/,
    );
    expect(helpOf("seeds", ["add", "--help"])).toContain("add CROP");
  });

  it("is not asked for by words after a --, nor without it", () => {
    expect(helpOf("tell", ["--", "--help"])).toBeUndefined();
    expect(helpOf("plan", ["rhubarb 7lb"])).toBeUndefined();
  });

  it("is none for names that every object has", () => {
    for (const name of ["constructor", "toString", "__proto__"]) {
      expect(helpOf(name, ["--help"])).toBeUndefined();
    }
  });

  it("is there for every command, or the command gives its own", () => {
    const own = Object.keys(COMMANDS).filter((name) => helpOf(name, ["--help"]) === undefined);
    expect(own).toEqual(["recipes", "check", "reckon"]);
  });
});
