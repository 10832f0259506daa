/** What README shows of the screen and of the plain lines is what is drawn and printed. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Line } from "../../src/ports/view.ts";
import { layOut } from "../../src/screen/layout.ts";
import { PREFIX, plainText } from "../../src/screen/plain.ts";
import { textOf } from "../../src/screen/row.ts";
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import { timeText } from "../../src/session/view/clock-text.ts";
import { view } from "../../src/session/view/view.ts";
import { MORNING, recipes, ZONE } from "./made-up-screen.ts";

const README = readFileSync(join(import.meta.dirname, "../../README.md"), "utf8");
const SHOWN = README.slice(README.indexOf("## What it looks like"));
const [, SCREEN = "", , LINES = ""] = SHOWN.split(/^```\n/m).map((part) => part.trimEnd());

type Parts = ConstructorParameters<typeof Rehearsal>[0];

async function rehearsal(parts: Partial<Parts>): Promise<Rehearsal> {
  const gauge = { kind: "dial", testedSeason: 2027, readsHighPsi: 0 } as const;
  const canner = { id: "canner", name: "canner", holds: { pint: 9, quart: 7 }, gauge };
  return new Rehearsal({
    library: await recipes(),
    recipes: [],
    begin: {},
    startMs: MORNING,
    zone: ZONE,
    setUp: [{ type: "kitchen-set", altitudeFt: 6200, canners: [canner], burners: 4, t: 0 }],
    demoAltitudeFt: 6200,
    version: "0",
    ...parts,
  });
}

/** Lines as they were before they were broken at the width of the page. */
function unbroken(block: string): string[] {
  return block.replace(/\n {6}/g, " ").split("\n");
}

describe("README shows", () => {
  it("a screen of 80 by 24 that its rehearsal draws", async () => {
    const lines: Line[] = [];
    const frames: string[] = [];
    const wanted = /^\d\d:\d\d/.exec(SCREEN)?.[0];
    const played: Rehearsal = await rehearsal({
      recipes: ["dilled-green-beans", "pickled-beets"],
      onLines: (added) => lines.push(...added),
      pace: async () => {
        const { session } = played.kitchen;
        const shown = view(session.state, session.now(), {
          lines,
          pending: session.waitingFor,
          notRecorded: false,
        });
        if (shown.time !== wanted) return;
        const rows = layOut(shown, 80, 24).rows.map((row) => textOf(row).trimEnd());
        frames.push(rows.join("\n").trimEnd());
      },
    });
    await played.play();
    expect(frames.length).toBeGreaterThan(0);
    expect(frames).toContain(SCREEN);
  }, 60_000);

  it("the word for each kind of plain line", () => {
    const [, list = ""] = /a word for what it is: ([^.]+)\./.exec(SHOWN) ?? [];
    const words = [...list.matchAll(/`([^`]+)`/g)].map(([, word]) => word);
    expect(words.sort()).toEqual(Object.values(PREFIX).sort());
  });

  it("plain lines of a day under pressure, word for word", async () => {
    const shown = unbroken(LINES);
    const said = shown.flatMap((line) => {
      const [, hour, minute, words] = /^(\d\d):(\d\d) you said: (.*)$/.exec(line) ?? [];
      return words ? [`${Number(hour) - 8}:${minute} ${words}`] : [];
    });
    expect(said.length).toBeGreaterThan(5);
    const begin = "0:00 start the snap beans, nine pounds\n+0:00 [cook until process]";
    const script = readScript(`${begin}\n${said.join("\n")}`);
    if (!script.ok) throw new Error(script.message);
    const played = await rehearsal({ script: script.lines });
    const { trouble, kitchen } = await played.play();
    expect(trouble).toBeUndefined();
    const printed = kitchen.lines.map((line) => plainText(line, timeText(line.wallMs, ZONE)));
    expect(printed.slice(-shown.length)).toEqual(shown);
  }, 60_000);
});
