/**
 * How much the built program says on whole days: words, questions, and seconds of speech as
 * espeak-ng renders it at the program's own rate. `desk MAIN` measures the program that MAIN
 * begins.
 */
import { spawnSync } from "node:child_process";
import { join } from "node:path";

type Said = { at: string; rank: string; text: string };
type Played = { said: Said[]; asked: { at: string; text: string }[]; trouble?: string };

const DAYS: [name: string, file: string][] = [
  ["golden Saturday", "golden-saturday"],
  ["pressure beans", "pressure-beans"],
  ["kraut, three weeks", "kraut-three-weeks"],
  ["three recipes, two cooks", "two-cooks"],
];

const WORDS_PER_MINUTE = "165";
const SAMPLE_BYTES = 2;
const SAMPLES_PER_SECOND = 22_050;
const HEADER_BYTES = 44;

/** Seconds that espeak-ng takes to say it. */
function secondsOf(text: string): number {
  const args = ["--stdin", "-v", "en-us", "-s", WORDS_PER_MINUTE, "--stdout"];
  const { stdout } = spawnSync("espeak-ng", args, { input: text, maxBuffer: 1e8 });
  return (stdout.length - HEADER_BYTES) / SAMPLE_BYTES / SAMPLES_PER_SECOND;
}

function words(texts: readonly string[]): number {
  return texts.join(" ").split(/\s+/).filter(Boolean).length;
}

function isNight({ at }: Said): boolean {
  const minute = Number(at.slice(11, 13)) * 60 + Number(at.slice(14, 16));
  return minute >= 21 * 60 + 30 || minute < 6 * 60 + 30;
}

function figures({ said, asked }: Played): string[] {
  const texts = said.map(({ text }) => text);
  const from = Date.parse(said[0]?.at ?? "");
  const first = said.filter(({ at }) => Date.parse(at) - from <= 60_000);
  const sentences = texts.flatMap((text) => text.split(/(?<=[.!?;]) /));
  const longest = Math.max(...sentences.map(secondsOf));
  const unasked = said.filter(({ rank }) => rank !== "answer").length;
  const total = texts.reduce((sum, text) => sum + secondsOf(text), 0);
  return [
    words(texts),
    words(first.map(({ text }) => text)),
    asked.length,
    unasked,
    Math.round(total),
    longest.toFixed(1),
    said.filter(isNight).length,
  ].map(String);
}

const HEADS = "words, first minute, questions, unasked, seconds, longest s, at night";
console.log(`| day | ${HEADS.split(", ").join(" | ")} |`);
const handed = process.argv.find((one) => one.endsWith(".js"));
const main = handed ?? join("dist", "brinebell.js");
for (const [name, file] of DAYS) {
  const script = join("tests/scenarios", `${file}.script.txt`);
  const args = [main, "rehearse", "--json", "--script", script, "--altitude", "6200ft"];
  const { stdout, stderr } = spawnSync(process.execPath, args, { maxBuffer: 1e9 });
  if (stdout.length === 0) throw new Error(`${name}: ${stderr.toString()}`);
  const played: Played = JSON.parse(stdout.toString());
  if (played.trouble) console.error(`${name}: ${played.trouble}`);
  if (process.argv.includes("--said")) {
    for (const { at, rank, text } of played.said) console.log(`${at} ${rank}: ${text}`);
  }
  console.log(`| ${[name, ...figures(played)].join(" | ")} |`);
}
