/** Reads a rehearsal's script: lines of a time and a text or a stage direction in brackets. */

import { DAY_MS, HOUR_MS, MINUTE_MS, SECOND_MS } from "../../kitchen/time.ts";
import { STAGE_KINDS, type StageKind } from "../../recipe/recipe.ts";

export type Direction =
  | { kind: "cook-until"; until: StageKind | "done" }
  | { kind: "crash" }
  | { kind: "closed"; ms: number }
  | { kind: "asleep"; ms: number }
  | { kind: "clock-set"; byMs: number }
  | { kind: "disk"; full: boolean }
  /** Every disk call takes this long. */
  | { kind: "slow-disk"; ms: number }
  | { kind: "voice"; mood: "well" | "gone" | "hangs" | "late" }
  /** Faults for tests: what a machine may do to a program at its worst moment. */
  | { kind: "stands-still"; ms: number }
  | { kind: "power-cut"; ms: number }
  | { kind: "dies-at-write"; write: number; half: boolean }
  | { kind: "write-fails"; call: "append" | "sync" }
  | { kind: "bad-end"; end: "torn" | "repeated" }
  /** Takes the folder over, or only looks in. */
  | { kind: "another-program"; stays: boolean }
  /** What a microphone makes of a sound: words, how certain, and what else they might have been. */
  | { kind: "hears"; text: string; confidence: number; orElse?: string }
  | { kind: "microphone"; gone: boolean }
  /** A probe's line, once or every two seconds for a while. */
  | { kind: "probe"; line: string; ms: number }
  | { kind: "say"; text: string };

/** One line: when (since the rehearsal began, or since the line before had finished), and what. */
export type ScriptLine = { line: number; ms: number; relative: boolean; direction: Direction };

type ScriptRead = { ok: true; lines: ScriptLine[] } | { ok: false; message: string };

const TIME = /^(\+)?(?:(\d+)d\s+)?(\d{1,3}):(\d{2})(?::(\d{2}))?$/;

/**
 * Milliseconds of `[Nd ]H:MM[:SS]`, and whether it had a leading `+`; undefined where it is not a
 * time.
 */
function scriptTime(text: string): { ms: number; relative: boolean } | undefined {
  const match = TIME.exec(text);
  if (!match) return undefined;
  const [, plus, days = "0", hours = "0", minutes = "0", seconds = "0"] = match;
  if (Number(minutes) > 59 || Number(seconds) > 59) return undefined;
  const ms =
    Number(days) * DAY_MS +
    Number(hours) * HOUR_MS +
    Number(minutes) * MINUTE_MS +
    Number(seconds) * SECOND_MS;
  return { ms, relative: plus !== undefined };
}

function span(text: string): number | undefined {
  return scriptTime(text.trim())?.ms;
}

function bracketed(text: string): Direction | string {
  const words = text.trim().toLowerCase().replace(/\s+/g, " ");
  const until = /^cook until ([a-z-]+)$/.exec(words)?.[1];
  if (until !== undefined) {
    if (until === "done" || STAGE_KINDS.some((kind) => kind === until)) {
      return { kind: "cook-until", until: until as StageKind | "done" };
    }
    return `no stage kind is called ${until}; there are ${STAGE_KINDS.join(", ")}, and done`;
  }
  if (words === "crash") return { kind: "crash" };
  const lasting = /^(closed|asleep|stands still|power cut) for (.+)$/.exec(words);
  if (lasting) {
    const ms = span(lasting[2] ?? "");
    if (ms === undefined) return `${lasting[2]} is no length of time; write H:MM`;
    return { kind: lasting[1]?.replace(" ", "-") as "closed", ms };
  }
  const slow = /^disk slow by (.+)$/.exec(words);
  if (slow) {
    const ms = span(slow[1] ?? "");
    if (ms === undefined) return `${slow[1]} is no length of time; write H:MM:SS`;
    return { kind: "slow-disk", ms };
  }
  const set = /^clock set ([+-])(.+)$/.exec(words);
  if (set) {
    const ms = span(set[2] ?? "");
    if (ms === undefined) return `${set[2]} is no length of time; write H:MM`;
    return { kind: "clock-set", byMs: set[1] === "-" ? -ms : ms };
  }
  const probe = /^probe (.+?)(?: for ([\d: d]+))?$/.exec(text.trim());
  if (probe?.[1] !== undefined) {
    const ms = probe[2] === undefined ? 0 : span(probe[2]);
    if (ms === undefined) return `${probe[2]} is no length of time; write H:MM`;
    return { kind: "probe", line: probe[1], ms };
  }
  const heard = /^hears (100|\d{1,2})% (.+?)(?: or else (.+))?$/.exec(words);
  if (heard?.[2] !== undefined) {
    const orElse = heard[3] === undefined ? {} : { orElse: heard[3] };
    return { kind: "hears", text: heard[2], confidence: Number(heard[1]) / 100, ...orElse };
  }
  const death = /^dies at (half of )?write (\d{1,4})$/.exec(words);
  if (death) return { kind: "dies-at-write", write: Number(death[2]), half: Boolean(death[1]) };
  return PLAIN[words] ?? `[${text}] is no stage direction`;
}

/** Directions that are only words. */
const PLAIN: Record<string, Direction> = {
  "disk full": { kind: "disk", full: true },
  "disk ok": { kind: "disk", full: false },
  "microphone gone": { kind: "microphone", gone: true },
  "microphone ok": { kind: "microphone", gone: false },
  "voice gone": { kind: "voice", mood: "gone" },
  "voice hangs": { kind: "voice", mood: "hangs" },
  "voice late": { kind: "voice", mood: "late" },
  "voice ok": { kind: "voice", mood: "well" },
  "write fails": { kind: "write-fails", call: "append" },
  "sync fails": { kind: "write-fails", call: "sync" },
  "torn line": { kind: "bad-end", end: "torn" },
  "repeated line": { kind: "bad-end", end: "repeated" },
  "another program": { kind: "another-program", stays: true },
  "another program looks in": { kind: "another-program", stays: false },
};

/** Reads a whole script; an error names the first invalid line. */
export function readScript(text: string): ScriptRead {
  const lines: ScriptLine[] = [];
  for (const [index, raw] of text
    .replace(/^\uFEFF/, "")
    .split(/\r?\n/)
    .entries()) {
    const line = index + 1;
    const body = raw.trim();
    if (body === "" || body.startsWith("#")) continue;
    const match = /^(\+?(?:\d+d\s+)?\d{1,3}:\d{2}(?::\d{2})?)\s+(.+)$/.exec(body);
    const time = match?.[1] === undefined ? undefined : scriptTime(match[1]);
    if (!match || !time) {
      return {
        ok: false,
        message: `script line ${line}: "${body}" has no time; write H:MM and the words`,
      };
    }
    const words = match[2] ?? "";
    const inside = /^\[(.*)\]$/.exec(words)?.[1];
    const direction =
      inside === undefined ? ({ kind: "say", text: words } as const) : bracketed(inside);
    if (typeof direction === "string") {
      return { ok: false, message: `script line ${line}: ${direction}` };
    }
    lines.push({ line, ...time, direction });
  }
  return { ok: true, lines };
}
