import * as fs from "node:fs";
import { connect, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import fc from "fast-check";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { Answerer } from "../../../src/session/tell/tell-callers.ts";
import { tell } from "../../../src/session/tell/tell-client.ts";
import { messageIn, messageLine } from "../../../src/session/tell/tell-protocol.ts";
import { openTellServer, type TellServer } from "../../../src/session/tell/tell-server.ts";

let folder = "";
let servers: TellServer[] = [];

beforeEach(() => {
  folder = fs.mkdtempSync(join(tmpdir(), "tell-"));
});
afterEach(async () => {
  await Promise.all(servers.map((server) => server.close()));
  servers = [];
  fs.rmSync(folder, { recursive: true, force: true });
});

async function serve(answer: Answerer, at = folder): Promise<TellServer> {
  const opened = await openTellServer(at, () => true, answer);
  if (!opened.ok) throw new Error(opened.message);
  servers.push(opened.server);
  return opened.server;
}

/** Sends raw bytes and returns what comes back until the end. */
function raw(address: string, bytes: string | Buffer): Promise<string> {
  return new Promise((resolve) => {
    let heard = "";
    const socket = connect(address, () => socket.write(bytes));
    socket.on("data", (chunk) => {
      heard += chunk;
    });
    socket.on("error", () => {});
    socket.on("close", () => resolve(heard));
  });
}

const echo: Answerer = (said) => ({ refused: false, lines: [String(said)] });

describe("words handed to an open kitchen", () => {
  it("reach it, and its answer comes back line by line", async () => {
    await serve((words) => ({ refused: false, lines: [`heard: ${words}`, "Ten minutes left."] }));
    expect(await tell(folder, "it's boiling")).toEqual({
      ok: true,
      refused: false,
      lines: ["heard: it's boiling", "Ten minutes left."],
    });
  });

  it("may be refused, and a failing answerer refuses too", async () => {
    await serve((words) => {
      if (words === "fail") throw new Error("no\nsuch thing");
      return { refused: true, lines: ["There is no boil to lose."] };
    });
    expect(await tell(folder, "lost it")).toMatchObject({ ok: true, refused: true });
    expect(await tell(folder, "fail")).toMatchObject({ ok: true, refused: true });
  });

  it("are refused where no kitchen is open, or its socket was left by a dead program", async () => {
    expect(await tell(folder, "hello")).toMatchObject({ ok: false, why: "no-kitchen" });
    const server = await serve(echo);
    await server.close();
    expect(await tell(folder, "hello")).toMatchObject({ ok: false, why: "no-kitchen" });
  });

  it("that get no answer in time are given up", async () => {
    await serve(() => new Promise(() => {}));
    expect(await tell(folder, "hello", 200)).toMatchObject({ ok: false, why: "no-answer" });
  });

  it("come in from many programs at once", async () => {
    await serve(echo);
    const texts = Array.from({ length: 12 }, (_, i) => `words ${i}`);
    const replies = await Promise.all(texts.map((text) => tell(folder, text)));
    expect(replies.map((reply) => reply.ok && reply.lines[0])).toEqual(texts);
  });
});

describe("hostile words", () => {
  it("arrive as one plain line, without anything a terminal would obey", async () => {
    const heard: string[] = [];
    await serve((words) => {
      heard.push(String(words));
      return { refused: false, lines: [`\u001b[2J${words}\n\u0007`] };
    });
    const reply = await tell(folder, "lids\non\u001b]0;x\u0007\u202e \u009b2Jand \u0000boil");
    expect(heard).toEqual(["lids on ]0;x   2Jand  boil"]);
    expect(reply).toMatchObject({ ok: true, lines: ["[2Jlids on ]0;x   2Jand  boil"] });
  });

  it("are taken up to 2,000 characters, whoever sends them", async () => {
    const { address } = await serve(echo);
    expect(await tell(folder, "x".repeat(2000))).toMatchObject({ ok: true, refused: false });
    expect(await tell(folder, "x".repeat(2001))).toMatchObject({ ok: false, why: "bad-words" });
    expect(await tell(folder, " \n\t ")).toMatchObject({ ok: false, why: "bad-words" });
    const answer = "refused\nat most 2000 characters at a time\n";
    expect(await raw(address, `${"x".repeat(2001)}\n`)).toBe(answer);
    expect(await raw(address, "x".repeat(500_000))).toBe(answer);
    expect(await raw(address, "\n")).toBe("refused\nno words came\n");
  });

  it("are passed on at most once and always answered, whatever their bytes", async () => {
    let count = 0;
    const { address } = await serve((words) => {
      count += 1;
      expect(words).not.toMatch(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/u);
      return { refused: false, lines: [] };
    });
    let sent = 0;
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 300 }), async (bytes) => {
        sent += 1;
        const reply = await raw(address, Buffer.concat([bytes, Buffer.from("\nmore\nmore\n")]));
        expect(reply).toMatch(/^(done|refused)\n/);
      }),
      { numRuns: 100 },
    );
    expect(count).toBeLessThanOrEqual(sent);
    expect(await tell(folder, "still there")).toMatchObject({ ok: true });
  });

  it("from a caller that hangs up leave the kitchen open", async () => {
    const { address } = await serve(async (words) => {
      await new Promise((resolve) => setTimeout(resolve, 20));
      return { refused: false, lines: [String(words).repeat(100)] };
    });
    for (let i = 0; i < 20; i += 1) {
      const socket = connect(address, () => {
        socket.write("hello there\n");
        socket.destroy();
      });
      socket.on("error", () => {});
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(await tell(folder, "hello")).toMatchObject({ ok: true });
  });
});

describe.skipIf(process.platform === "win32")("the socket", () => {
  it("is only for its owner, whatever the folder around it allows", async () => {
    fs.chmodSync(folder, 0o755);
    fs.mkdirSync(join(folder, "tell"), { mode: 0o777 });
    const { address } = await serve(echo);
    expect(fs.statSync(address).mode & 0o777).toBe(0o600);
    expect(fs.statSync(join(folder, "tell")).mode & 0o777).toBe(0o700);
  });

  it("left by a dead program is replaced, but only by the holder of the lock", async () => {
    const dead = join(folder, "tell", "socket");
    fs.mkdirSync(join(folder, "tell"));
    const other = createServer().listen(dead);
    await new Promise((resolve) => other.once("listening", resolve));
    const refused = await openTellServer(folder, () => false, echo);
    expect(refused).toMatchObject({ ok: false });
    expect(fs.existsSync(dead)).toBe(true);
    await serve(echo);
    expect(await tell(folder, "hello")).toMatchObject({ ok: true, lines: ["hello"] });
    other.close();
  });

  it("does not replace a file that is not a socket", async () => {
    fs.mkdirSync(join(folder, "tell"));
    fs.writeFileSync(join(folder, "tell", "socket"), "precious");
    const opened = await openTellServer(folder, () => true, echo);
    expect(opened).toMatchObject({ ok: false });
    if (!opened.ok) expect(opened.message).toMatch(/socket is in the way; remove it/);
    expect(fs.readFileSync(join(folder, "tell", "socket"), "utf8")).toBe("precious");
  });

  it("works where the folder's path is too long for one", async () => {
    const long = join(folder, "x".repeat(90), "y".repeat(90));
    const { address, close } = await serve(echo, long);
    expect(address.startsWith(tmpdir())).toBe(true);
    expect(fs.statSync(join(address, "..")).mode & 0o777).toBe(0o700);
    expect(await tell(long, "hello")).toMatchObject({ ok: true, lines: ["hello"] });
    await close();
    expect(fs.existsSync(join(address, ".."))).toBe(false);
  });

  it("is gone after closing", async () => {
    const { address, close } = await serve(echo);
    await close();
    expect(fs.existsSync(address)).toBe(false);
  });
});

describe("a message of tell", () => {
  it("is read back as it was written, and is none with an id that no program gives", () => {
    const message = { id: "a".repeat(64), again: true, said: "it's boiling" };
    expect(messageIn(messageLine(message))).toEqual(message);
    expect(messageIn(messageLine({ ...message, id: "a".repeat(65) }))).toBeUndefined();
    expect(messageIn("it's boiling")).toEqual({ id: "", again: false, said: "it's boiling" });
  });
});
