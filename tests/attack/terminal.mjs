/** The built program on a terminal that can be stalled, resized and hung up; and what is on it. */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";
import xterm from "@xterm/headless";

/** The line that is typed on: where no color is drawn, ink drops the blank behind the prompt. */
export const PROMPT = /^>/m;

export class Terminal {
  /** @param argv the program and its arguments. */
  constructor(argv, { columns = 100, rows = 40, env = {} } = {}) {
    this.screen = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true });
    this.raw = "";
    this.pid = undefined;
    this.ended = undefined;
    const call = { argv, size: [columns, rows], env: { TERM: "xterm-256color", ...env } };
    const script = join(import.meta.dirname, "pty.py");
    this.child = spawn("python3", [script, JSON.stringify(call)], {
      stdio: ["pipe", "pipe", "inherit"],
    });
    this.child.stdin.on("error", () => {});
    this.over = new Promise((resolve) => {
      createInterface({ input: this.child.stdout }).on("line", (line) => {
        const told = JSON.parse(line);
        if (told.pid) this.pid = told.pid;
        if (told.out) {
          const bytes = Buffer.from(told.out, "base64");
          this.raw += bytes.toString("utf8");
          this.screen.write(bytes);
        }
        if (told.exit === undefined) return;
        this.ended = { code: told.exit, signal: told.signal, atMs: performance.now() };
        resolve(this.ended);
      });
    });
  }

  #tell(todo) {
    this.child.stdin.write(`${JSON.stringify(todo)}\n`);
  }

  type(send) {
    this.#tell({ send });
  }

  /** Words and an Enter of their own, as a person sends them. */
  async say(words) {
    this.type(words);
    await new Promise((resolve) => setTimeout(resolve, 60));
    this.type("\r");
  }

  stall(stall = true) {
    this.#tell({ stall });
  }

  resize(columns, rows) {
    this.screen.resize(columns, rows);
    this.#tell({ size: [columns, rows] });
  }

  hangUp() {
    this.#tell({ hangup: true });
  }

  signal(signal) {
    this.#tell({ signal });
  }

  /** Takes the terminal and the program away, whatever they do. */
  async kill() {
    if (this.ended) return;
    this.signal("KILL");
    await this.over;
  }

  async lines() {
    await new Promise((resolve) => this.screen.write("", resolve));
    const { active } = this.screen.buffer;
    return Array.from({ length: this.screen.rows }, (_, row) => {
      return active.getLine(active.viewportY + row)?.translateToString(true) ?? "";
    });
  }

  async text() {
    return (await this.lines()).join("\n");
  }

  /** Waits until a text is on the screen; throws with what is there instead. */
  async shows(what, ms = 10_000) {
    for (const end = performance.now() + ms; ; ) {
      const text = await this.text();
      if (what instanceof RegExp ? what.test(text) : text.includes(what)) return text;
      if (performance.now() > end) throw new Error(`${what} is not on the screen:\n${text}`);
      await new Promise((resolve) => setTimeout(resolve, 30));
    }
  }
}
