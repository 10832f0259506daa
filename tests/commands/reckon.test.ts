import { describe, expect, it } from "vitest";
import { reckonCommand } from "../../src/commands/reckon/reckon.ts";
import type { ReckonFiles } from "../../src/commands/reckon/reckon-kinds.ts";

const LOG = "time,temp F\n0,180\n15,180\n30,180\n";

const io: ReckonFiles = {
  readFile: (path) => {
    if (path === "log.csv") return LOG;
    throw new Error("no such file");
  },
  zone: "America/Denver",
};

/** Splits as a shell would, with double quotes only. */
function run(line: string) {
  const args = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);
  return reckonCommand(args as string[], io);
}

async function json(line: string): Promise<Record<string, unknown>> {
  const { code, stdout, stderr } = await run(`${line} --json`);
  expect(stderr).toBe("");
  expect(code).toBe(0);
  return JSON.parse(stdout);
}

const CALLS = [
  ["air-pressure --altitude 6200ft", 80.59, "kPa", "psi"],
  ['boiling-point --altitude "1890 m"', 200.63, "F", "celsius"],
  ["boiling-point --pressure 101.325kPa", 211.95, "F", "celsius"],
  ["altitude --boils-at 204F", 4358, "ft", "value"],
  ["jelling-point --altitude 6200ft", 208.63, "F", "celsius"],
  ["steam-temperature --gauge 11psi --altitude 0ft", 241.6, "F", "celsius"],
  ["gauge --steam-at 240F --altitude 6200ft", 13.3, "psi", "value"],
  ["brine --salt 50g --water 1L", 4.77, "%", "salometer"],
  ["brine --salt 50g --water 1L", 4.77, "%", "gramsPerLitre"],
  ["salt --percent 2.5 --for 25lb", 283.5, "g", "tablespoons"],
  ['syrup --sugar "1 1/2 cups" --water "5 3/4 cups"', 18.09, "%", "millilitres"],
  ["acid --vinegar 946mL --strength 5 --water 946mL --produce beans=4lb", 1.28, "%", "ph"],
  ["lethality --readings log.csv --reference 160F --z 16.7F", 472.9, "min", "heatingMinutes"],
  ["heat-up --water 8L --from 60F --power 2500W --altitude 6200ft", 34.5, "min", "value"],
] as const;

describe("brinebell reckon", () => {
  it.each(CALLS)("%s gives %d %s and %s", async (line, value, unit, extra) => {
    const answer = await json(line);
    expect(Math.abs(Number(answer.value) / value - 1)).toBeLessThan(0.005);
    expect(answer.unit).toBe(unit);
    expect(typeof answer[extra]).toBe("number");
    expect(String(answer.source).length).toBeGreaterThan(5);
    expect(Array.isArray(answer.notes)).toBe(true);
    expect(typeof answer.estimate).toBe("boolean");
    expect(answer.range !== null).toBe(answer.estimate);
  });

  it.each(CALLS)("%s prints plain lines, the value and unit first", async (line, value, unit) => {
    const { code, stdout } = await run(line);
    expect(code).toBe(0);
    const [first = ""] = stdout.split("\n");
    const said = Number(first.split(" ")[0]?.replaceAll(",", ""));
    expect(Math.abs(said / value - 1)).toBeLessThan(0.005);
    expect(first).toContain(unit);
    expect(stdout).toContain("source: ");
  });

  it("gives the pH with its own range, and null for unknown produce", async () => {
    const acid = "acid --vinegar 4cups --strength 5 --water 4cups";
    const known = await json(`${acid} --produce cucumbers=4lb --produce onions=1lb`);
    expect(known.phRange).toHaveLength(2);
    const unknown = await json(`${acid} --produce okra=4lb`);
    expect(unknown).toMatchObject({ ph: null, phRange: null });
    expect(unknown.value).toBeGreaterThan(0.5);
  });

  it("counts sugar and salt in the jar's weight", async () => {
    const acid = "acid --vinegar 4cups --strength 5 --water 0L --produce cucumbers=6lb";
    const plain = await json(acid);
    const sweet = await json(`${acid} --sugar 4 1/2 cups --salt 1/2 cup`);
    expect(Number(sweet.value)).toBeLessThan(Number(plain.value));
  });

  it("answers the same call twice with the same bytes", async () => {
    const line = "heat-up --water 8L --from 60F --power 2500W --json";
    expect(await run(line)).toEqual(await run(line));
  });
});

describe("bad words", () => {
  it.each([
    ["", 2, "help reckon lists them"],
    ["brin --salt 5g", 2, "did you mean brine?"],
    ["constructor", 2, "not something to reckon"],
    ["air-pressure", 2, "--altitude is missing"],
    ["air-pressure --altitude 6200", 2, "has no unit"],
    ["air-pressure --altitude 90000ft", 2, "where people cook"],
    ["air-pressure --altitude 12lb", 2, "is a weight"],
    ["air-pressure --altitude 6200ft extra", 2, "belongs to no option"],
    ["air-pressure --altitud 6200ft", 2, "did you mean --altitude?"],
    ["boiling-point", 2, "either --altitude or --pressure"],
    ["boiling-point --altitude 0ft --pressure 101kPa", 2, "either --altitude or --pressure"],
    ["altitude --boils-at 500F", 2, "check the thermometer"],
    ["steam-temperature --gauge 500psi --altitude 0ft", 2, "--gauge"],
    ["brine --salt 50g", 2, "--water is missing"],
    ["brine --salt=-50g --water 1L", 2, "cannot be negative"],
    ["brine --salt 5kg --water 1L", 2, "water holds no more"],
    ["brine --salt 1cup --water 1L --salt-kind sea", 2, "none of canning-salt"],
    ["salt --percent 120 --for 5lb", 2, "--percent"],
    ["salt --percent 2 --for -3lb", 2, "a weight cannot be negative"],
    ["salt --percent two --for 3lb", 2, "not a percentage"],
    ["acid --vinegar 1L --strength 50 --water 1L", 2, "50 grain is 5 %"],
    ["acid --vinegar 1L --water 1L", 2, "--strength is missing"],
    ["acid --vinegar 1L --strength 5 --water 1L --produce beans", 2, "has no amount"],
    ["acid --vinegar 1L --strength 5 --water 1L --produce kale=2cups", 2, "give its weight"],
    ["lethality --readings log.csv --reference 160 --z 16F", 2, "has no unit"],
    ["lethality --readings none.csv --reference 160F --z 16F", 3, "check the path"],
    ["heat-up --water 8L --from 60F --power 2500", 2, "has no unit"],
    ["heat-up --water 10L --from 60F --power 600W --burner gas", 1, "stalls at"],
  ])("%j end with %d and one line", async (line, code, reason) => {
    const made = await run(line);
    expect(made.stdout).toBe("");
    expect(made.stderr).toContain(reason);
    expect(made.stderr).toMatch(/^brinebell reckon.{1,300}\n$/);
    expect(made.code).toBe(code);
  });
});
