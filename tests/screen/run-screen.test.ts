import { afterEach, describe, expect, it } from "vitest";
import { runScreen } from "../../src/screen/run-screen.tsx";
import { FakeTerminal } from "./fake-terminal.ts";
import { type MadeUp, madeUp, settled } from "./made-up-screen.ts";

const SIZES = [
  [120, 40],
  [100, 40],
  [80, 24],
  [60, 20],
  [40, 12],
  [20, 5],
  [1, 1],
] as const;

/** A clear of the whole screen or of what was scrolled out. */
const CLEARS = /\u001b\[[23]J|\u001bc/;

let open: { terminal: FakeTerminal; end: Promise<unknown> } | undefined;

function show(made: MadeUp, columns: number, rows: number): FakeTerminal {
  const terminal = new FakeTerminal(columns, rows);
  open = { terminal, end: runScreen(made.host, terminal.io) };
  return terminal;
}

async function close(): Promise<void> {
  if (!open) return;
  open.terminal.type("\u0003");
  open.terminal.type("\u0003");
  await open.end;
  open = undefined;
}

afterEach(close);

describe("the kitchen screen", () => {
  it("tells a newcomer how to begin", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    const text = await terminal.text();
    expect(text).toContain("start the dilly beans");
    expect(text).toContain("help");
    expect(text).toContain("local extension service");
    expect(text).toContain("6,200 ft");
  });

  it("plays a morning by typed words and the one key, at every size", async () => {
    for (const [columns, rows] of SIZES) {
      const made = await madeUp();
      const terminal = show(made, columns, rows);
      terminal.type("start the dilly beans");
      terminal.type("\r");
      terminal.type("timer for 9 minutes\r");
      made.kitchen.clock.advance(60_000);
      made.changed();
      terminal.type(" ");
      await settled();
      const batch = Object.values(made.kitchen.session.state.batches)[0];
      expect(batch?.stages[0]?.state).toBe("complete");
      const lines = await terminal.lines();
      expect(lines.length).toBe(rows);
      // The last row stays free, so that nothing is ever scrolled or cleared.
      expect(lines.at(-1)).toBe("");
      expect(terminal.scrolled).toBe(0);
      expect(terminal.raw).not.toMatch(CLEARS);
      if (rows >= 20) expect(lines.join("\n")).toContain("canner warming");
      await close();
    }
  });

  it("shows the soonest clock large and keeps it going", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    terminal.type("timer for 9 minutes\r");
    expect(await terminal.text()).toContain("██████");
    const before = await terminal.text();
    made.kitchen.clock.advance(125_000);
    await settled(1100);
    expect(await terminal.text()).not.toBe(before);
    expect(await terminal.text()).toContain("2:05 of 9:00");
  });

  it("repeats an alarm until somebody answers it", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    terminal.type("timer for one minute for the eggs\r");
    made.kitchen.clock.advance(61_000);
    await settled();
    expect(await terminal.text()).toContain("ALARM: The eggs timer is done. Say got it.");
    expect(await terminal.text()).toContain("ended 08:01:00");
    terminal.type("got it\r");
    expect(await terminal.text()).not.toContain("ALARM: ");
    expect(await terminal.text()).not.toContain("ended");
  });

  it("says in words that a boil is lost", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    const { clock, session } = made.kitchen;
    terminal.type("start the dilly beans\r");
    for (const words of ["trimmed", "the brine is boiling", "yes", "the canner is ready"]) {
      clock.advance(60_000);
      session.hear(words);
    }
    for (const words of ["8 pints filled", "yes", "yes", "yes", "the jars are in"]) {
      clock.advance(60_000);
      session.hear(words);
    }
    session.hear("it's boiling and the lids are covered");
    expect(await terminal.text()).toContain("[-] boil lost");
    clock.advance(60_000);
    terminal.type("-");
    expect(await terminal.text()).toContain("Bring it back to a full boil and tell me");
    expect(await terminal.text()).toContain("[!] canner: a full boil");
  });

  it("opens the whole talk by Tab, leafs in it, and closes it again", async () => {
    const made = await madeUp();
    const terminal = show(made, 60, 20);
    for (let at = 1; at <= 30; at++) made.kitchen.session.hear(`note: crock ${at}`);
    expect(await terminal.text()).not.toContain("crock 28");
    terminal.type("\t");
    expect(await terminal.text()).toContain("crock 28");
    expect(await terminal.text()).not.toContain("crock 14");
    terminal.type("\u001b[5~\u001b[5~\u001b[5~");
    expect(await terminal.text()).toContain("crock 14");
    terminal.type("\t");
    expect(await terminal.text()).not.toContain("crock 28");
    expect(await terminal.text()).toContain("crock 30");
    terminal.type("a\tb");
    expect(await terminal.text()).toContain("> a b");
  });

  it("says how a question of the moment is answered", async () => {
    const made = await madeUp();
    const terminal = show(made, 100, 40);
    terminal.type("remind me to check the dill\r");
    expect(await terminal.text()).toContain("(answer with a time, or no)");
    terminal.type("no\r");
    made.kitchen.session.hear("kitchen altitude 6400 feet", 0.4);
    expect(await terminal.text()).toContain("(answer yes or no)");
  });

  it("draws only when something changed", async () => {
    const made = await madeUp();
    const terminal = show(made, 100, 40);
    terminal.type("start the dilly beans\r");
    await settled();
    const count = terminal.writes.length;
    for (let look = 0; look < 50; look++) made.changed();
    await settled(2100);
    expect(terminal.writes.length).toBe(count);
    made.kitchen.session.hear("note: the dill is from the north bed");
    expect(terminal.writes.length).toBe(count + 1);
    // One more line of the conversation does not send the whole screen again.
    expect(terminal.writes.at(-1)?.length).toBeLessThan(1500);
  });

  it("has one frame under way in a terminal that takes none, and then draws all anew", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    const before = terminal.writes.length;
    terminal.stall();
    for (let at = 1; at <= 20; at++) {
      made.kitchen.session.hear(`note: crock ${at}`);
      made.changed();
      terminal.type("\u000c");
    }
    expect(made.kitchen.lines.filter(({ text }) => text.includes("crock 20")).length).toBe(1);
    await settled(300);
    terminal.stall(false);
    const sent = terminal.writes.slice(before);
    expect(sent.length).toBeLessThanOrEqual(3);
    // What was cut is ended, the page is cleared, and the newest frame is a whole one.
    expect(sent.at(-2)).toMatch(/^\u001b\\.*\u001b\[J$/);
    expect(sent.at(-1)?.split("\u001b[K").length).toBeGreaterThan(23);
    expect(await terminal.text()).toContain("crock 20");
    expect(sent.join("")).not.toContain("crock 10\u001b");
  });

  it("is not stopped while something must be kept", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    terminal.type("timer for 9 minutes\r");
    terminal.type("\u001a");
    expect(await terminal.text()).toContain("Not stopped: the 9 minute timer runs");
    expect(await terminal.ownPage()).toBe(true);
  });

  it("ends as lost where its terminal is gone", async () => {
    const terminal = show(await madeUp(), 80, 24);
    terminal.stdin.emit("end");
    expect(await open?.end).toBe("lost");
    open = undefined;
    expect(await terminal.text()).not.toContain("Brinebell is closed");
  });

  it("puts the cursor where the next letter goes", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    terminal.type("hello");
    terminal.type("\u001b[D");
    const lines = await terminal.lines();
    const { x, y } = terminal.cursor;
    expect(lines[y]).toBe("> hello");
    expect(x).toBe(6);
  });

  it("follows the window when it changes, even down to nothing", async () => {
    const made = await madeUp();
    const terminal = show(made, 120, 40);
    terminal.type("start the dilly beans\r");
    for (const [columns, rows] of [...SIZES, [200, 60], [5, 2], [80, 24]] as const) {
      terminal.resize(columns, rows);
      await settled();
      const lines = await terminal.lines();
      expect(lines.at(-1)).toBe("");
      expect(terminal.scrolled).toBe(0);
    }
    expect(await terminal.text()).toContain("wash and trim");
    expect(terminal.raw).not.toMatch(CLEARS);
  });

  it("says what is running on Ctrl-C, closes on a second, restores the terminal", async () => {
    const made = await madeUp();
    const terminal = show(made, 80, 24);
    expect(terminal.stdin.rawMode).toBe(true);
    expect(await terminal.ownPage()).toBe(true);
    terminal.type("start the dilly beans\r");
    terminal.type("\u0003");
    expect(await terminal.text()).toContain("Ctrl-C again closes");
    terminal.type("x\u007f");
    expect(await terminal.text()).not.toContain("Ctrl-C again closes");
    terminal.type("\u0003");
    terminal.type("\u0003");
    await open?.end;
    open = undefined;
    expect(terminal.stdin.rawMode).toBe(false);
    expect(await terminal.ownPage()).toBe(false);
    const text = await terminal.text();
    expect(text).toContain("the clocks are kept");
    expect(text).toContain("the dilled green beans, wash and trim");
    expect(terminal.raw.lastIndexOf("\u001b[?25h")).toBeGreaterThan(
      terminal.raw.lastIndexOf("\u001b[?25l"),
    );
    expect(terminal.raw).toContain("\u001b[?2004l");
  });

  it("closes an empty kitchen at the first Ctrl-C", async () => {
    const terminal = show(await madeUp(), 80, 24);
    terminal.type("\u0003");
    await open?.end;
    open = undefined;
    expect(await terminal.text()).toContain("Nothing is running");
  });

  it("paints everything again on Ctrl-L", async () => {
    const terminal = show(await madeUp(), 80, 24);
    const before = await terminal.text();
    terminal.stdout.write("\u001b[3;3Hlitter from elsewhere");
    terminal.type("\u000c");
    expect(await terminal.text()).toBe(before);
  });
});

describe("hostile text", () => {
  const EVIL = [
    "x\u001b]0;owned\u0007\u001b]52;c;ZXZpbA==\u0007\u001b[2J",
    "\u001b[31m\u009b5A\u202Ereversed\u0000\r\n\u0008",
  ].join("");

  it("from a recipe, a note, a label or a person never reaches the terminal", async () => {
    const made = await madeUp();
    const terminal = show(made, 100, 40);
    terminal.type("start the dilly beans\r");
    const batch = Object.values(made.kitchen.session.state.batches)[0]!;
    batch.recipe = { ...batch.recipe, title: EVIL };
    for (const lot of batch.lots) lot.variety = EVIL;
    for (const run of batch.stages) {
      run.spec = { ...run.spec, title: EVIL, say: EVIL, cautions: [EVIL], pot: EVIL };
    }
    made.kitchen.session.hear(`note: ${EVIL}`);
    made.kitchen.session.hear(`timer for ten minutes for the ${EVIL}`);
    made.kitchen.session.notice(EVIL);
    await settled();
    terminal.type("\u0003");
    expect(await terminal.text()).toContain("xreversed");
    await close();
    for (const sign of ["]0;", "]52;", "\u0007", "\u009b", "\u202e", "\u0000", "\u0008"]) {
      expect(terminal.raw).not.toContain(sign);
    }
    expect(terminal.raw).not.toMatch(CLEARS);
  });
});
