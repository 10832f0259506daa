import { spawn } from "node:child_process";
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { SpeechOutcome } from "../../../src/ports/voice.ts";
import { findProgram } from "../../../src/voice/find-program.ts";
import { chooseVoice } from "../../../src/voice/speaking/choose-voice.ts";
import { espeakEngine } from "../../../src/voice/speaking/espeak-engine.ts";
import { readable } from "../../../src/voice/speaking/readable.ts";
import { sayEngine } from "../../../src/voice/speaking/say-engine.ts";
import { nasties } from "../nasties.ts";

const MANNER = { rate: 1, volume: 1 };
const LONG = "The canner has been boiling for fifteen minutes, take the jars out.";
const PATH = process.env.PATH ?? "";
const espeak = findProgram(["espeak-ng"], PATH, process.platform);
const festival = findProgram(["festival"], PATH, process.platform);

let folder = "";
let pathBefore = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "voice-"));
  pathBefore = process.env.PATH ?? "";
});
afterAll(() => {
  process.env.PATH = pathBefore;
  rmSync(folder, { recursive: true, force: true });
});

function program(name: string, body: string): string {
  const path = join(folder, name);
  writeFileSync(path, `#!/bin/sh\n${body}\n`);
  chmodSync(path, 0o755);
  return path;
}

async function runs(pid: number): Promise<boolean> {
  await new Promise((resolve) => setTimeout(resolve, 50));
  try {
    return !readFileSync(`/proc/${pid}/stat`, "utf8").includes(") Z ");
  } catch {
    return false;
  }
}

describe.skipIf(process.platform === "win32")("a program that speaks", () => {
  const speak = (path: string, deadlineMs = 5000): Promise<SpeechOutcome> =>
    espeakEngine({ program: path, deadlineMs }).start(LONG, MANNER).done;

  it("that is missing is a failure, not the end of the program", async () => {
    expect(await speak("/nowhere/espeak-ng")).toMatchObject({ kind: "failed" });
  });

  it("that ends before it reads its input is a failure", async () => {
    expect(await speak(program("dies", "exit 1"))).toMatchObject({ kind: "failed" });
  });

  it("that complains at once and reports success was not heard", async () => {
    const path = program("no-device", "cat >/dev/null; echo 'no sound card' >&2; exit 0");
    expect(await speak(path)).toEqual({ kind: "failed", reason: "no sound card" });
  });

  it("that complains but takes its time has spoken, whatever its exit says", async () => {
    const path = program("noisy", "cat >/dev/null; echo 'underrun' >&2; sleep 1; exit 3");
    expect(await speak(path)).toEqual({ kind: "spoken" });
  });

  it("that hangs is ended at the deadline", async () => {
    const pidFile = join(folder, "hang.pid");
    const path = program("hangs", `echo $$ >${pidFile}; exec sleep 60`);
    expect(await speak(path, 300)).toEqual({ kind: "timed-out", afterMs: 300 });
    expect(await runs(Number(readFileSync(pidFile, "utf8")))).toBe(false);
  });

  it("that floods standard error does not fill memory or block", async () => {
    const path = program("floods", "cat >/dev/null; head -c 3000000 /dev/zero >&2; sleep 1");
    expect(await speak(path)).toEqual({ kind: "spoken" });
  });

  it("is stopped with what it started, and no other process is touched", async () => {
    const pidFile = join(folder, "tree.pid");
    const bystander = spawn("sleep", ["60"]);
    const path = program("tree", `sleep 60 & echo $! >${pidFile}; wait`);
    const handle = espeakEngine({ program: path }).start(LONG, MANNER);
    await expect.poll(() => existsSync(pidFile)).toBe(true);
    handle.stop();
    expect(await handle.done).toEqual({ kind: "stopped" });
    const player = Number(readFileSync(pidFile, "utf8"));
    if (process.platform === "linux") expect(await runs(player)).toBe(false);
    expect(await runs(bystander.pid ?? 0)).toBe(true);
    bystander.kill();
  });
});

describe("the package say", () => {
  it("is not loaded before the first sentence", () => {
    let loads = 0;
    const load = () => {
      loads++;
      return import("say");
    };
    const engine = sayEngine({ platform: "linux", load });
    expect(loads).toBe(0);
    engine.start("hello", MANNER).stop();
    expect(loads).toBe(1);
  });

  it("that cannot be loaded is a failure", async () => {
    const engine = sayEngine({ platform: "linux", load: () => Promise.reject(new Error("gone")) });
    const outcome = await engine.start("hello", MANNER).done;
    expect(outcome).toEqual({ kind: "failed", reason: "gone" });
  });

  it.skipIf(process.platform === "win32")("without festival on PATH is a failure", async () => {
    process.env.PATH = folder;
    const outcome = await sayEngine({ platform: "linux" }).start(LONG, MANNER).done;
    process.env.PATH = pathBefore;
    expect(outcome).toMatchObject({ kind: "failed" });
  });

  it.skipIf(process.platform !== "linux")("is stopped by its own child and its tree", async () => {
    const pidFile = join(folder, "player.pid");
    program("festival", `cat >/dev/null; sleep 60 & echo $! >${pidFile}; wait`);
    process.env.PATH = `${folder}:${pathBefore}`;
    const handle = sayEngine({ platform: "linux" }).start(LONG, MANNER);
    await expect.poll(() => existsSync(pidFile)).toBe(true);
    process.env.PATH = pathBefore;
    rmSync(join(folder, "festival"));
    handle.stop();
    expect(await handle.done).toEqual({ kind: "stopped" });
    expect(await runs(Number(readFileSync(pidFile, "utf8")))).toBe(false);
  });
});

describe("text that would be a program elsewhere", () => {
  it.skipIf(!festival)("does nothing in the real festival", { timeout: 120_000 }, async () => {
    const marker = join(folder, "festival-marker");
    const texts = nasties(marker)
      .map(readable)
      .filter((text) => text !== "");
    for (const text of texts) await sayEngine({ platform: "linux" }).start(text, MANNER).done;
    expect(existsSync(marker)).toBe(false);
  });

  it.skipIf(!festival)("would have been run by festival as it stands", async () => {
    const marker = join(folder, "proof");
    const payload = `beans" (system "touch ${marker}") "`;
    await sayEngine({ platform: "linux" }).start(payload, MANNER).done;
    expect(existsSync(marker)).toBe(true);
  });

  it.skipIf(!espeak)("is read aloud by the real espeak-ng, as data", async () => {
    const marker = join(folder, "espeak-marker");
    for (const nasty of nasties(marker)) {
      const text = readable(nasty);
      if (text === "") continue;
      let bytes = 0;
      const sink = (chunk: Buffer) => {
        bytes += chunk.length;
      };
      const engine = espeakEngine({ program: espeak ?? "", sink });
      expect(await engine.start(text, MANNER).done).toEqual({ kind: "spoken" });
      expect(bytes, text).toBeGreaterThan(1000);
    }
    expect(existsSync(marker)).toBe(false);
  });
});

describe.skipIf(process.platform === "win32")("the choice of a voice", () => {
  const choose = (platform: NodeJS.Platform, ...names: string[]) => {
    const path = mkdtempSync(join(folder, "path-"));
    for (const name of names) {
      writeFileSync(join(path, name), "");
      chmodSync(join(path, name), 0o755);
    }
    return chooseVoice({ platform, searchPath: path });
  };

  it("is espeak-ng on Linux, else festival, else none with the command that installs one", () => {
    expect(choose("linux", "espeak-ng", "festival").engine?.name).toBe("espeak-ng");
    expect(choose("linux", "festival").engine?.name).toBe("festival");
    const none = choose("linux", "dnf");
    expect(none.engine).toBeUndefined();
    expect(none.advice).toBe("For a voice: sudo dnf install espeak-ng");
    expect(choose("linux", "apt").advice).toBe("For a voice: sudo apt install espeak-ng");
  });

  it("is the system's own voice on macOS, and espeak-ng where that is missing", () => {
    expect(choose("darwin", "say", "espeak-ng").engine?.name).toBe("say");
    expect(choose("darwin", "espeak-ng").engine?.name).toBe("espeak-ng");
    expect(choose("darwin").advice).toBe("For a voice: brew install espeak-ng");
  });
});
