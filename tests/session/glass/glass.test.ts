import * as fs from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type Glass, openGlass } from "../../../src/session/glass/open-glass.ts";
import { serveGlass } from "../../../src/session/glass/serve-glass.ts";
import { tell } from "../../../src/session/tell/tell-client.ts";
import { PROTOCOL, protocolFile, usualAddress } from "../../../src/session/tell/tell-protocol.ts";
import { openTellServer, type TellServer } from "../../../src/session/tell/tell-server.ts";
import { type MadeUp, madeUp, settled, ZONE } from "../../screen/made-up-screen.ts";

let folder = "";
let server: TellServer;
let made: MadeUp;

beforeEach(async () => {
  folder = fs.mkdtempSync(join(tmpdir(), "glass-"));
  made = await madeUp();
  const { session } = made.kitchen;
  const opened = await openTellServer(
    folder,
    () => true,
    (said) => (typeof said === "string" ? session.hear(said) : session.carry(said)),
    (socket, hello, rest) =>
      serveGlass(socket, hello, rest, {
        host: made.host,
        zone: () => ZONE,
        build: "this",
        take(act) {
          act();
          return session.left;
        },
      }),
  );
  if (!opened.ok) throw new Error(opened.message);
  server = opened.server;
});
afterEach(async () => {
  await server.close();
  fs.rmSync(folder, { recursive: true, force: true });
});

async function glass(build = "this", plain = false): Promise<Glass> {
  const opened = await openGlass(folder, { build, plain });
  if (!opened) throw new Error("no glass");
  return opened;
}

const NO_INPUT = { input: { text: "", cursor: 0 } };

describe("a glass on a kitchen", () => {
  it.each([
    ["no JSON", "{{{"],
    [
      "a zone there is none of",
      '{"kind":"lines","now":1,"zone":"\\u001b","lines":[],"running":[]}',
    ],
    ["no lines", '{"kind":"lines","now":1,"zone":"UTC","running":[]}'],
    [
      "lines without words",
      '{"kind":"lines","now":1,"zone":"UTC","lines":[{"wallMs":1}],"running":[]}',
    ],
  ])("is not opened on what sends %s", async (_what, line) => {
    await server.close();
    const other = createServer((socket) => socket.resume().end(`${line}\n`));
    await new Promise<void>((resolve) => other.listen(usualAddress(folder), resolve));
    fs.writeFileSync(protocolFile(folder), PROTOCOL);
    expect(await openGlass(folder, { build: "this", plain: false })).toBeUndefined();
    await new Promise((resolve) => other.close(resolve));
  });

  it("shows what the kitchen shows, and what is typed at it is heard there", async () => {
    const one = await glass();
    expect(one.kind).toBe("view");
    one.host.hear("timer for 9 minutes");
    await expect.poll(() => one.host.running()).toHaveLength(1);
    const own = made.host.view(NO_INPUT);
    expect(own.timers).toHaveLength(1);
    expect(one.host.view(NO_INPUT)).toEqual(own);
    expect(one.host.running()).toEqual(made.host.running());
    one.close();
  });

  it("keeps a clock that stands still due at no time at all", async () => {
    const one = await glass();
    for (const words of ["start the dilly beans", "trimmed", "the brine is boiling", "yes"]) {
      made.kitchen.session.hear(words);
      made.kitchen.clock.advance(60_000);
    }
    await settled(300);
    const never = (text: string) => text.split("Infinity").length;
    const text = (host: typeof one.host) =>
      JSON.stringify(host.view(NO_INPUT), (_, value) =>
        value === Number.POSITIVE_INFINITY ? "Infinity" : value,
      );
    expect(never(text(one.host))).toBe(never(text(made.host)));
    one.close();
  });

  it("of another build, or one that wants them, is sent lines", async () => {
    for (const other of [await glass("other"), await glass("this", true)]) {
      expect(other.kind).toBe("lines");
      made.kitchen.session.hear("note: the dill is from the north bed");
      const heard = () => other.host.lines.some(({ text }) => text.includes("north bed"));
      await expect.poll(heard).toBe(true);
      other.close();
    }
  });

  it("is left by its own words, and ends with the kitchen", async () => {
    const [one, two] = [await glass(), await glass()];
    one.host.hear("quit");
    expect(await one.ended).toBe("left");
    await server.close();
    expect(await two.ended).toBe("closed");
    expect(two.host.farewell()[0]).toContain("was closed or is gone");
  });

  it("is not opened on a kitchen that knows of none", async () => {
    fs.rmSync(join(folder, "tell", "protocol"));
    expect(await openGlass(folder, { build: "this", plain: false })).toBeUndefined();
    expect(await tell(folder, "note: as before")).toMatchObject({ ok: true });
  });
});

describe("a message whose answer was lost on the way", () => {
  it("is asked for again, and acted on once", async () => {
    let heard = 0;
    await server.close();
    const opened = await openTellServer(
      folder,
      () => true,
      async () => {
        heard += 1;
        await settled(150);
        return { refused: false, lines: ["Written down."] };
      },
    );
    if (!opened.ok) throw new Error(opened.message);
    server = opened.server;
    const proxied = await cutOnce(server.address);
    const reply = await tell(folder, "the jars are in");
    expect(reply).toEqual({ ok: true, refused: false, lines: ["Written down."] });
    expect(proxied.cut).toBe(true);
    expect(heard).toBe(1);
    proxied.close();
  });
});

/** Stands before the socket and breaks the first connection once its words have gone through. */
async function cutOnce(address: string): Promise<{ cut: boolean; close(): void }> {
  const { connect, createServer } = await import("node:net");
  const state = { cut: false, close: () => {} };
  const before = createServer((near) => {
    const far = connect(address);
    far.on("error", () => {});
    near.on("error", () => {});
    near.on("data", (data) => {
      far.write(data);
      if (state.cut) return;
      state.cut = true;
      setTimeout(() => near.destroy(), 50);
    });
    far.on("data", (data) => near.writable && near.write(data));
    far.on("end", () => near.end());
  });
  const path = join(folder, "before");
  await new Promise<void>((resolve) => before.listen(path, resolve));
  fs.writeFileSync(join(folder, "tell", "address"), path);
  state.close = () => void before.close();
  return state;
}
