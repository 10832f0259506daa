/** A kitchen of the built program over pipes, and words handed to it over its socket. */
import { spawn } from "node:child_process";
import { connect } from "node:net";
import { join } from "node:path";
import { must, PROGRAM, until } from "./tally.mjs";

/** Sends bytes to the kitchen's socket; what came back until it hung up, or so many ms. */
export function rawly(home, bytes, ms = 3000, ends = false) {
  return new Promise((resolve) => {
    let heard = "";
    const socket = connect(join(home, "tell", "socket"), () => {
      if (ends) socket.end(bytes);
      else socket.write(bytes);
    });
    socket.on("data", (data) => {
      heard += data;
    });
    socket.on("error", () => {});
    const late = setTimeout(() => socket.destroy(), ms);
    socket.on("close", () => {
      clearTimeout(late);
      resolve(heard);
    });
  });
}

export class Kitchen {
  out = "";
  err = "";
  code = undefined;

  constructor(home, { args = [], env = {} } = {}) {
    this.home = home;
    const words = [PROGRAM, "--plain", "--silent", "--home", home, ...args];
    this.child = spawn(process.execPath, words, {
      stdio: ["pipe", "pipe", "pipe"],
      env: { ...process.env, TZ: "America/Denver", ...env },
    });
    this.child.stdin.on("error", () => {});
    this.child.stdout.on("data", (data) => {
      this.out += data;
    });
    this.child.stderr.on("data", (data) => {
      this.err += data;
    });
    this.ended = new Promise((resolve) => {
      this.child.on("close", (code, signal) => {
        this.code = signal ?? code;
        resolve();
      });
    });
  }

  /** Waits until it is open and answers over its socket. */
  async opened() {
    let answer = "";
    await until(async () => {
      answer = await rawly(this.home, "what time is it\n", 2000);
      return answer !== "" || this.code !== undefined;
    }, "it answers nothing");
    must(this.code === undefined, `it ended with ${this.code}: ${this.err}${this.out}`);
    return this;
  }

  /** What it answers to words. */
  async tell(words) {
    const answer = await rawly(this.home, `${words}\n`, 5000);
    must(/^(done|refused)\n/.test(answer), `no answer to ${words}: ${answer}`);
    return answer;
  }

  async close() {
    this.child.stdin.end();
    await this.ended;
    return this.code;
  }

  async kill() {
    this.child.kill("SIGKILL");
    await this.ended;
  }
}
