import { execFileSync, spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { at16kHz, readWav, writeWav } from "./wav.ts";

/** A synthetic voice: what speaks a text into WAV bytes. */
export type SyntheticVoice = { name: string; speak: (text: string) => Int16Array };

const CACHE = join(tmpdir(), "brinebell-voice-loop");

/** The same text of the same voice is spoken once and kept. */
function kept(name: string, text: string, speak: () => Buffer): Int16Array {
  mkdirSync(CACHE, { recursive: true });
  const key = createHash("sha1").update(`${name}\n${text}`).digest("hex");
  const path = join(CACHE, `${key}.wav`);
  if (existsSync(path)) return readWav(readFileSync(path)).samples;
  const samples = at16kHz(readWav(speak()));
  writeFileSync(path, writeWav({ sampleRate: 16_000, samples }));
  return samples;
}

function run(program: string, args: string[], input: string): Buffer {
  return execFileSync(program, args, {
    input,
    maxBuffer: 1 << 28,
    stdio: ["pipe", "pipe", "ignore"],
  });
}

function espeak(name: string, ...args: string[]): SyntheticVoice {
  const full = `espeak ${name}`;
  return {
    name: full,
    speak: (text) =>
      kept(full, text, () => run("espeak-ng", ["--stdin", "--stdout", ...args], text)),
  };
}

function flite(name: string): SyntheticVoice {
  const full = `flite ${name}`;
  const speak = (text: string) =>
    kept(full, text, () => {
      const path = join(CACHE, `flite-${process.pid}.wav`);
      execFileSync("flite", ["-voice", name, "-t", text, "-o", path]);
      return readFileSync(path);
    });
  return { name: full, speak };
}

function festival(name: string): SyntheticVoice {
  const full = `festival ${name}`;
  // text2wave opens its input by name, which fails for the socket Node gives a child.
  const speak = (text: string) =>
    kept(full, text, () => {
      const path = join(CACHE, `festival-${process.pid}`);
      writeFileSync(`${path}.txt`, text);
      const args = ["-eval", `(voice_${name})`, "-o", `${path}.wav`, `${path}.txt`];
      execFileSync("text2wave", args, { stdio: "ignore" });
      return readFileSync(`${path}.wav`);
    });
  return { name: full, speak };
}

function has(program: string): boolean {
  return !spawnSync(program, ["--version"], { stdio: "ignore" }).error;
}

/** The voices this machine has, in a fixed order. */
export function syntheticVoices(): SyntheticVoice[] {
  const voices: SyntheticVoice[] = [];
  if (has("espeak-ng")) {
    voices.push(
      espeak("en-us", "-v", "en-us"),
      espeak("en-gb", "-v", "en-gb"),
      espeak("en-gb-rp", "-v", "en-gb-x-rp"),
      espeak("scotland", "-v", "en-gb-scotland"),
      espeak("f2", "-v", "en-us+f2"),
      espeak("f4", "-v", "en-us+f4"),
      espeak("m3", "-v", "en-us+m3"),
      espeak("slow", "-v", "en-us", "-s", "130"),
      espeak("fast", "-v", "en-us", "-s", "200"),
    );
  }
  if (has("flite")) voices.push(...["awb", "kal16", "rms", "slt"].map(flite));
  if (has("text2wave")) voices.push(festival("kal_diphone"));
  return voices;
}

/** Voices that no threshold was tuned on. */
export function otherVoices(): SyntheticVoice[] {
  const names = ["en-us+m1", "en-us+m7", "en-us+f3", "en-gb-x-gbclan", "en-us-nyc"];
  return has("espeak-ng") ? names.map((name) => espeak(name, "-v", name)) : [];
}
