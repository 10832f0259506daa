import { EventEmitter } from "node:events";
import { describe, expect, it } from "vitest";
import { streamOutlet } from "../../src/screen/outlet.ts";
import { runPlain } from "../../src/screen/plain.ts";
import { madeUp } from "./made-up-screen.ts";

function pipes(isTTY: boolean) {
  const stdin = Object.assign(new EventEmitter(), { isTTY, setEncoding() {}, pause() {} });
  let text = "";
  const outlet = streamOutlet({
    write(more: string, done: () => void) {
      text += more;
      done();
      return true;
    },
  } as never);
  return {
    io: { stdin, stdout: { isTTY }, outlet } as never,
    send: (chunk: string) => stdin.emit("data", chunk),
    end: () => stdin.emit("end"),
    lines: () => text.split("\n").filter(Boolean),
  };
}

describe("plain lines", () => {
  it("say each thing once, with a time and a word for what it is", async () => {
    const { host } = await madeUp();
    const pipe = pipes(false);
    const done = runPlain(host, pipe.io);
    pipe.send("start the dil");
    pipe.send("ly beans\nwhat next\n");
    pipe.end();
    await done;
    const lines = pipe.lines();
    expect(lines[0]).toBe("08:00 you said: start the dilly beans");
    expect(lines).toContain("08:00 answer: The dilled green beans. Expect about 8 pints.");
    expect(lines.filter((line) => line.includes("to do: Wash the beans"))).toHaveLength(1);
    expect(lines.at(-1)).toContain("the dilled green beans");
  });

  it("ignore a blank line in a pipe, and take it as the one key in a terminal", async () => {
    for (const [isTTY, state] of [
      [false, "running"],
      [true, "complete"],
    ] as const) {
      const made = await madeUp();
      const pipe = pipes(isTTY);
      const done = runPlain(made.host, pipe.io);
      pipe.send("start the dilly beans\r\n\n");
      pipe.end();
      await done;
      const batch = Object.values(made.kitchen.session.state.batches)[0];
      expect(batch?.stages[0]?.state).toBe(state);
    }
  });

  it("hear a last line without a line end", async () => {
    const made = await madeUp();
    const pipe = pipes(false);
    const done = runPlain(made.host, pipe.io);
    pipe.send("start the dilly beans");
    pipe.end();
    await done;
    expect(Object.values(made.kitchen.session.state.batches)).toHaveLength(1);
  });

  it("let no control characters through", async () => {
    const made = await madeUp();
    const pipe = pipes(false);
    const done = runPlain(made.host, pipe.io);
    made.kitchen.session.notice("a\u001b]0;owned\u0007\u001b[2Jb\u202e");
    pipe.end();
    await done;
    expect(pipe.lines().join("")).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202e]/);
    expect(pipe.lines()[0]).toBe("08:00 note: ab");
  });
});
