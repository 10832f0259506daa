import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { OptionCalls } from "../../src/commands/call/calls.ts";
import { nearestName } from "../../src/commands/call/nearest.ts";
import { isOn, optionValue, optionValues, parseOptions } from "../../src/commands/call/options.ts";
import { good, wrong } from "../reckon/good-result.ts";

const KINDS: OptionCalls = {
  altitude: { takes: "quantity", about: "" },
  salt: { takes: "quantity", about: "" },
  produce: { takes: "quantities", about: "" },
  gauge: { takes: "text", about: "" },
  tag: { takes: "texts", about: "" },
  json: { takes: "switch", about: "" },
};
const read = (line: string) => good(parseOptions(line.split(" "), KINDS));

describe("options", () => {
  it.each([
    ["--altitude 6200ft", "altitude", "6200ft"],
    ["--altitude=6200ft", "altitude", "6200ft"],
    ["--altitude 1890 m beans", "altitude", "1890 m"],
    ["--altitude -200ft", "altitude", "-200ft"],
    ["--salt 3 1/2 cups --json", "salt", "3 1/2 cups"],
    ["--salt=3 1/2 cups", "salt", "3 1/2 cups"],
    ["--salt 5 lb 4 oz beans", "salt", "5 lb 4 oz"],
    ["--salt 8 fl oz", "salt", "8 fl oz"],
    ["--salt 5lb 4 beans", "salt", "5lb"],
    ["--gauge dial beans", "gauge", "dial"],
  ])("in %j give --%s as %j", (line, name, value) => {
    expect(optionValue(read(line), name)).toBe(value);
  });

  it("keep words, switches and repeated values apart", () => {
    const options = read("beans --produce cucumbers=6 lb --json --produce onion=3lb beets --tag a");
    expect(options.words).toEqual(["beans", "beets"]);
    expect(optionValues(options, "produce")).toEqual(["cucumbers=6 lb", "onion=3lb"]);
    expect(optionValues(options, "tag")).toEqual(["a"]);
    expect(isOn(options, "json")).toBe(true);
    expect(isOn(options, "gauge")).toBe(false);
  });

  it("end at a double dash, and a lone dash is a word", () => {
    expect(read("- -- --json").words).toEqual(["-", "--json"]);
  });

  it.each([
    ["--altitud 3ft", "did you mean --altitude?"],
    ["--jsn", "did you mean --json?"],
    ["--zzzzzzzz", "there are --altitude"],
    ["-x", "not an option here"],
    ["--constructor", "not an option here"],
    ["--altitude", "--altitude needs a value"],
    ["--altitude --json", "--altitude needs a value"],
    ["--json=yes", "--json takes no value"],
    ["--gauge dial --gauge weighted", "--gauge is given twice"],
  ])("refuse %j: %s", (line, reason) => {
    expect(wrong(parseOptions(line.split(" "), KINDS))).toContain(reason);
  });

  it("never lose or invent a word", () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 8 }), { maxLength: 12 }), (args) => {
        const options = parseOptions(["--", ...args], KINDS);
        expect(good(options).words).toEqual(args);
      }),
    );
  });
});

describe("the nearest name", () => {
  it("is found after a slip of the fingers, but not across the alphabet", () => {
    const known = ["boiling-point", "brine", "heat-up"];
    expect(nearestName("birne", known)).toBe("brine");
    expect(nearestName("boiling", known)).toBe("boiling-point");
    expect(nearestName("xylophone", known)).toBeUndefined();
    expect(nearestName("b".repeat(100_000), known)).toBeUndefined();
  });
});
