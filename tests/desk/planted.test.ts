import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, describe, expect, it } from "vitest";
import { Desk } from "../../src/desk/desk.ts";
import { brokenProperties } from "./properties.ts";

const SRC = join(import.meta.dirname, "../../src/desk");
const folder = mkdtempSync(join(tmpdir(), "desk-"));
afterAll(() => rmSync(folder, { recursive: true }));

const SEEDS = [1, 2, 3, 4, 5, 6];

/** A line of the desk, and what somebody might carelessly make of it. */
const PLANTED: Record<string, [file: string, line: string, instead: string]> = {
  "answers before alarms": ["want.ts", '["alarm", "answer",', '["answer", "alarm",'],
  "prompts wait for the morning": [
    "desk.ts",
    'wants.filter(({ rank }) => rank !== "news")',
    'wants.filter(({ rank }) => rank !== "news" && rank !== "prompt")',
  ],
  "a merged alarm loses its name": ["desk.ts", 'same && line.rank !== "alarm"', "same"],
  "an alarm is said once and never again": [
    "alarms.ts",
    "left(want, 0) <= 0",
    '!this.known.has(want.key ?? "")',
  ],
  "a broken process grows rarer": ["alarms.ts", "before && !broken", "before"],
  "alarms keep their pace for ever": ["alarms.ts", "before.waitMs * 2", "before.waitMs"],
  "yesterday's whole is enough for today": [
    "desk.ts",
    "this.said.get(lesson.id) === day",
    "this.said.has(lesson.id)",
  ],
  "prompts are always whole": ["desk.ts", "known ? lesson.short : text", "text"],
  "cautions about steam go with the others": [
    "desk.ts",
    "return short === undefined ? [] : [short];",
    "return [];",
  ],
  "cautions are said each time": ["desk.ts", "if (!known) return [text];", "return [text];"],
  "what is over is said all the same": ["desk.ts", "now < want.until", "true"],
  "news of the night is forgotten": ["desk.ts", "this.held.push(...news);", ""],
  "a name is never said again": ["desk.ts", "now - topic.at < TOPIC_MS", "true"],
  "a name holds whatever is said between": [
    "desk.ts",
    "this.topic = name === undefined ? undefined : { name, at: now };",
    "this.topic = name === undefined ? this.topic : { name, at: now };",
  ],
  "what was done and what follows are both said": [
    "desk.ts",
    "return plain && wants",
    "return false && wants",
  ],
  "what follows of another is taken for the answer": [
    "desk.ts",
    "FOLLOWS.has(one.rank) && one.name === name",
    "FOLLOWS.has(one.rank)",
  ],
  "what is done is answered by nothing": [
    "desk.ts",
    "follows(one) && this.hasWords(one, moment)",
    "follows(one)",
  ],
  "a prompt that is the answer is still a prompt": [
    "desk.ts",
    '{ ...want, rank: "answer", instructs',
    "{ ...want, instructs",
  ],
  "an alarm that guards does not say so": ["desk.ts", "group.some((want) => want.guards)", "false"],
  "nothing is written down of what was dropped": ["desk.ts", "dropped: true, why", "dropped: true"],
};

async function deskWith(name: string): Promise<typeof Desk> {
  const [file, line, instead] = PLANTED[name] ?? ["", "", ""];
  const outfile = join(folder, `${Object.keys(PLANTED).indexOf(name)}.mjs`);
  await build({
    entryPoints: [join(SRC, "desk.ts")],
    bundle: true,
    format: "esm",
    outfile,
    plugins: [
      {
        name: "planting",
        setup({ onLoad }) {
          onLoad({ filter: new RegExp(`${file}$`) }, ({ path }) => {
            const source = readFileSync(path, "utf8");
            if (!source.includes(line)) throw new Error(`${file} has no "${line}"`);
            return { contents: source.replace(line, instead), loader: "ts" };
          });
        },
      },
    ],
  });
  return (await import(outfile)).Desk;
}

describe("a bug planted in the desk", () => {
  it("is none in the desk as it is", () => {
    for (const seed of SEEDS) expect(brokenProperties(Desk, seed)).toEqual([]);
  });

  it.each(Object.keys(PLANTED))("is caught: %s", async (name) => {
    const Planted = await deskWith(name);
    const broken = SEEDS.flatMap((seed) => brokenProperties(Planted, seed));
    expect(broken).not.toEqual([]);
  });
});
