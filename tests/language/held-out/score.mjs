/**
 * How the built program hears sentences by writers it was not made with: `npm run held-out -- days`
 * or `commands`. Each look is written to openings.tsv, and three looks at a file are all it is good
 * for; afterwards others have to be written. `score.mjs FILE [--values]` scores any other file in
 * the form of the corpus, as often as wanted. By kind of speaker: exact (meaning, and values where
 * they are to match), partly, asked about with the right meaning first, asked wrongly, acted
 * wrongly, answered wrongly, not understood; of what is no message, acted on, asked about and left.
 */
import { execFileSync, spawnSync } from "node:child_process";
import { appendFileSync, existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const HERE = import.meta.dirname;
const MOST_LOOKS = 3;
const OPENINGS = join(HERE, "openings.tsv");
const PROGRAM = join(HERE, "../../../dist/brinebell.js");
const CORPUS = join(HERE, "../../../src/language/corpus");
/** In these frames nothing that is named is to be done or believed. */
const INDIRECT = new Set(["wished", "denied", "imagined", "reported", "past", "elsewhere", "idle"]);
const COLUMNS = [
  ...["exact", "partly", "asked", "asked wrongly", "acted wrongly", "answered wrongly", "unknown"],
  ...["trap left", "trap asked", "trap acted"],
];

/** The meanings, as the program declares them. */
async function declared() {
  const { outputFiles } = await build({
    entryPoints: [join(HERE, "../../../src/language/intents/all.ts")],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
  });
  const code = Buffer.from(outputFiles[0].contents).toString("base64");
  return import(`data:text/javascript;base64,${code}`);
}

const { MEANINGS, learned } = await declared();
/** What a mistake about each meaning costs. */
const COSTS = new Map(Object.entries(MEANINGS).map(([intent, { cost }]) => [intent, cost]));
/** An answer, and nothing else, comes of it. */
const isHarmless = ({ intent }) => intent === "unknown" || COSTS.get(intent) === "harmless";

/** Meanings by the names they had when the sentences were sealed. */
const RENAMED = { "new-brew": "brew-made" };

const key = (text) =>
  text
    .toLowerCase()
    .replace(/[^a-z0-9 ]/g, "")
    .trim();

function rowsOf(path) {
  const lines = readFileSync(path, "utf8")
    .split("\n")
    .filter((line) => line && line[0] !== "#");
  return lines.map((line) => {
    const [text, intents, frame, speaker, stage, question, values] = line.split("\t");
    const all = [JSON.parse(values || "{}")].flat();
    const meant = intents.split("+").map((name, at) => {
      const { intent, slots } = learned(RENAMED[name] ?? name);
      return { intent, slots: { ...slots, ...all[at] } };
    });
    return { text, meant, frame, speaker, stage, question };
  });
}

function heardOf(rows) {
  const groups = new Map();
  for (const row of rows) {
    const name = `${row.stage}|${row.question}`;
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  const heard = new Map();
  for (const [name, list] of groups) {
    const [stage, question] = name.split("|");
    const words = [PROGRAM, "understand", "--json", "--now", "2027-08-14T14:00:00"];
    words.push("--running", "dilled-green-beans:Provider,pickled-beets", "--timers", "rice");
    if (stage) words.push("--stage", `s1:${stage.split(",")[0]}`);
    if (question) words.push("--question", question);
    const input = list.map(({ text }) => text).join("\n");
    const { stdout } = spawnSync("node", words, { input, encoding: "utf8", maxBuffer: 1 << 28 });
    stdout
      .trim()
      .split("\n")
      .forEach((line, at) => {
        heard.set(list[at], JSON.parse(line));
      });
  }
  return heard;
}

function alike(wanted, found) {
  if (typeof wanted === "string" && typeof found === "string") {
    const [a, b] = [key(wanted), key(found)];
    return a === b || a.includes(b) || b.includes(a);
  }
  return JSON.stringify(wanted) === JSON.stringify(found);
}

function fits(meant, fact, valued) {
  if (meant.intent !== fact.intent) return false;
  return !valued || Object.entries(meant.slots).every(([slot, v]) => alike(v, fact.slots[slot]));
}

function kindOf({ meant, frame }, { reading, candidates, also = [], ...first }, valued) {
  const facts = reading === "sure" ? [first, ...also] : [];
  const names = meant.map(({ intent }) => intent);
  if (INDIRECT.has(frame) || names[0] === "unknown") {
    if (!facts.every(isHarmless)) return "trap acted";
    return reading === "ask" ? "trap asked" : "trap left";
  }
  if (reading === "sure") {
    if (meant.every((one) => facts.some((fact) => fits(one, fact, valued)))) return "exact";
    if (facts.some(({ intent }) => names.includes(intent))) return "partly";
    return facts.every(isHarmless) ? "answered wrongly" : "acted wrongly";
  }
  if (reading === "ask") return names.includes(candidates[0]?.intent) ? "asked" : "asked wrongly";
  return "unknown";
}

const [name = "", ...flags] = process.argv.slice(2);
const sealed = ["days", "commands"].includes(name);
if (!sealed && !existsSync(name)) {
  throw new Error(`there is no file ${name}; sealed are days and commands`);
}
const looks = readFileSync(OPENINGS, "utf8")
  .split("\n")
  .filter((line) => line.startsWith(`${name}\t`));
if (sealed && looks.length >= MOST_LOOKS) {
  throw new Error(`${name} was looked at ${MOST_LOOKS} times: it needs other sentences by others`);
}
const valued = name === "commands" || flags.includes("--values");
const file = sealed ? join(HERE, `${name}.tsv`) : name;
const known = new Set(
  readdirSync(CORPUS).flatMap((file) => rowsOf(join(CORPUS, file)).map(({ text }) => key(text))),
);
const tried = rowsOf(file).filter(({ text }) => !known.has(key(text)));
const table = new Map();
for (const [row, answer] of heardOf(tried)) {
  const kind = kindOf(row, answer, valued);
  for (const group of ["all", row.speaker]) {
    const counts = table.get(group) ?? { all: 0 };
    counts.all += 1;
    counts[kind] = (counts[kind] ?? 0) + 1;
    table.set(group, counts);
  }
}
console.log("".padEnd(14), ...["all", ...COLUMNS].map((column) => column.padStart(9)));
for (const [group, counts] of [...table].sort()) {
  console.log(
    group.padEnd(14),
    ...["all", ...COLUMNS].map((column) => String(counts[column] ?? 0).padStart(9)),
  );
}
if (sealed) {
  const commit = execFileSync("git", ["rev-parse", "--short", "HEAD"], { encoding: "utf8" }).trim();
  const all = table.get("all");
  const figures = COLUMNS.map((column) => `${column} ${all[column] ?? 0}`).join(", ");
  appendFileSync(
    OPENINGS,
    `${name}\t${new Date().toISOString().slice(0, 10)}\t${commit}\tof ${all.all}: ${figures}\n`,
  );
}
