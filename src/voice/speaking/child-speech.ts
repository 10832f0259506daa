import { type ChildProcess, execFile } from "node:child_process";
import { readFileSync } from "node:fs";
import type { SpeechHandle, SpeechOutcome } from "../../ports/voice.ts";

/** What has to be known about a speaking child process to judge its end. */
type ChildSpeech = {
  /** Longest it may take before it counts as hanging, in ms. */
  deadlineMs: number;
  /** If it ends sooner than this, it cannot have been heard, in ms. */
  hasteMs: number;
  platform: NodeJS.Platform;
};

const COMPLAINT_MAX = 200;

function childrenOf(pid: number): number[] {
  try {
    const text = readFileSync(`/proc/${pid}/task/${pid}/children`, "utf8");
    return text.split(" ").map(Number).filter(Boolean);
  } catch {
    return [];
  }
}

function endPid(pid: number): void {
  for (const child of childrenOf(pid)) endPid(child);
  try {
    process.kill(pid, "SIGKILL");
  } catch {
    // It had already ended by itself.
  }
}

/**
 * Ends a child process of ours and what it started (festival speaks through a player of its own).
 * Only ids reached from our own handle are signaled, and none once the child has been reaped: its
 * number may belong to somebody else by then.
 */
function endChild(child: ChildProcess, platform: NodeJS.Platform): void {
  if (child.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
  if (platform === "win32") {
    execFile("taskkill", ["/pid", String(child.pid), "/T", "/F"], () => child.kill());
    return;
  }
  for (const grandchild of platform === "linux" ? childrenOf(child.pid) : []) endPid(grandchild);
  child.kill("SIGKILL");
}

function complaintOf(text: string, fallback: string): string {
  const printable = text.replace(/[^ -~\n]+/g, " ").trim();
  const line = printable.split("\n").find((each) => each.trim() !== "");
  return line ? line.slice(0, COMPLAINT_MAX) : fallback;
}

/**
 * Follows a child process that is speaking. Must be called in the tick that started it: unhandled
 * errors of a child or its input would end the program. Neither the exit status nor what it prints
 * is trusted alone, since speech programs complain when they worked and report success when no
 * sound came out; either of them together with an end far too soon to have been heard is a failure.
 */
export function childSpeech(child: ChildProcess, about: ChildSpeech): SpeechHandle {
  const startedMs = performance.now();
  let complaint = "";
  let settle: (outcome: SpeechOutcome) => void = () => {};
  const done = new Promise<SpeechOutcome>((resolve) => {
    const deadline = setTimeout(() => {
      endChild(child, about.platform);
      settle({ kind: "timed-out", afterMs: about.deadlineMs });
    }, about.deadlineMs);
    settle = (outcome) => {
      clearTimeout(deadline);
      resolve(outcome);
    };
  });
  child.on("error", (error) => settle({ kind: "failed", reason: complaintOf(error.message, "") }));
  for (const stream of [child.stdin, child.stdout, child.stderr]) stream?.on("error", () => {});
  child.stderr?.on("data", (chunk: Buffer | string) => {
    if (complaint.length < COMPLAINT_MAX * 4) complaint += String(chunk);
  });
  child.on("close", (code, signal) => {
    const tooSoon = performance.now() - startedMs < about.hasteMs;
    if (signal !== null) settle({ kind: "failed", reason: `the voice was ended by ${signal}` });
    else if (tooSoon && (code !== 0 || complaint !== "")) {
      settle({ kind: "failed", reason: complaintOf(complaint, `the voice ended with ${code}`) });
    } else settle({ kind: "spoken" });
  });
  const stop = () => {
    settle({ kind: "stopped" });
    endChild(child, about.platform);
  };
  return { done, stop };
}

/** The longest that speaking a text can take, in ms, including slow speech and a slow start. */
export function speechDeadlineMs(text: string, rate: number): number {
  return 8000 + (text.length * 160) / rate;
}

/** The least time in which a text can have been heard, in ms. */
export function speechHasteMs(text: string, rate: number): number {
  return Math.min(1500, (text.length * 12) / rate);
}
