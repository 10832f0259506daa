/** What stays whole, in its place and once on the screen, at every moment of whole days. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { openDoubts } from "../../src/kitchen/questions/heard-doubts.ts";
import { HOUR_MS } from "../../src/kitchen/time.ts";
import type { View } from "../../src/ports/view.ts";
import { bigDigits } from "../../src/screen/big-digits.ts";
import { layOut } from "../../src/screen/layout.ts";
import { textOf } from "../../src/screen/row.ts";
import { readScript, type ScriptLine } from "../../src/session/rehearsal/rehearsal-script.ts";
import { type Moment, momentsOf } from "./made-up-screen.ts";

const SATURDAY = readFileSync(
  join(import.meta.dirname, "../scenarios/golden-saturday.script.txt"),
  "utf8",
);
/** Windows in which what matters is never cut. */
const SIZES = [
  [60, 20],
  [80, 24],
  [100, 40],
  [160, 50],
] as const;

/** Words in the middle of a process that are kept for its closing question. */
const DOUBTED = `0:00 start the dilly beans, four pounds
+0:00 [cook until process]
+0:01 it's boiling and the lids are covered
+0:05 it's spitting all over
+0:02 the water is dancing funny
+0:12 yes
+0:01 heat's off`;

let moments: Moment[];

function scriptOf(text: string): ScriptLine[] {
  const script = readScript(text);
  if (!script.ok) throw new Error(script.message);
  return script.lines;
}

beforeAll(async () => {
  moments = (
    await Promise.all([
      momentsOf("", 1, { script: scriptOf(SATURDAY) }),
      momentsOf("", 1, { script: scriptOf(DOUBTED) }),
      momentsOf("snap-beans", 5),
      momentsOf("quick-fresh-pack-dills", 5, { begin: { method: "low-temperature" } }),
      momentsOf("bread-and-butter-pickles", 3),
      momentsOf("sauerkraut", 20),
    ])
  ).flat();
}, 120_000);

function rowsOf(view: View, columns: number, rows: number): string[] {
  return layOut(view, columns, rows).rows.map(textOf);
}

/** The screen as one text, its columns one after the other, blanks made one. */
function flat(view: View, columns: number, rows: number): string {
  const drawn = rowsOf(view, columns, rows);
  const left = Math.floor((columns - 1 - 3) * 0.56);
  const halves =
    columns - 1 >= 96
      ? [...drawn.map((row) => row.slice(0, left)), ...drawn.map((row) => row.slice(left + 3))]
      : [];
  return [...drawn, "|", ...halves].join(" ").replace(/\s+/g, " ");
}

function words(text: string): string {
  return text.replace(/\s+/g, " ").trim();
}

describe("at 60x20 and larger", () => {
  it("what the hands do now is there whole, or in its short form, with all amounts", () => {
    let amounts = 0;
    for (const { view } of moments) {
      const [first] = view.hands;
      if (!first) continue;
      for (const [columns, rows] of SIZES) {
        const text = flat(view, columns, rows);
        expect(text).toContain(first.title);
        const said = [first.say ?? "", first.brief ?? ""].map(words);
        expect(
          said.some((one) => text.includes(one)),
          `${first.title} at ${columns}`,
        ).toBe(true);
        for (const one of first.amounts ?? []) expect(text).toContain(`· ${words(one)}`);
      }
      amounts += first.amounts?.length ?? 0;
    }
    expect(amounts).toBeGreaterThan(0);
  });

  it("there is room at 100x40 for everything that Hands says, including its caution", () => {
    const says = moments.flatMap(({ view }) => (view.hands[0]?.say ? [view] : []));
    for (const view of says) {
      expect(flat(view, 100, 40)).toContain(words(view.hands[0]?.say ?? ""));
    }
    expect(says.some((view) => view.hands[0]?.say?.includes("go slowly"))).toBe(true);
  });

  it("the open question is there whole with what answers it, and no key line beside it", () => {
    let asked = 0;
    for (const { view } of moments) {
      if (!view.question) continue;
      asked += 1;
      for (const [columns, rows] of [...SIZES, [40, 24] as const]) {
        const text = flat(view, columns, rows);
        expect(text).toContain(words(view.question.text));
        expect(text).toContain(`(${words(view.question.answer)})`);
        expect(text).not.toContain(`Space ${view.key.text}`);
      }
    }
    expect(asked).toBeGreaterThan(10);
  });

  it("the clock stands under the first row, always as large, with its end to the second", () => {
    let seen = 0;
    for (const { view } of moments) {
      const { clock } = view;
      if (!clock) continue;
      seen += 1;
      for (const [columns, rows, size] of [
        [40, 24, "half"],
        [60, 20, "half"],
        [80, 24, 1],
        [100, 40, 1],
        [160, 51, 2],
      ] as const) {
        const drawn = rowsOf(view, columns, rows);
        const digits = bigDigits(clock.digits, size);
        const from = columns < 60 ? 2 : 1;
        for (const [index, line] of digits.entries()) {
          expect(drawn[from + index]?.trimStart()).toContain(line.trim());
        }
        expect(drawn.join("\n")).toContain(clock.ends);
        if (clock.done && columns >= 60) expect(drawn.join("\n")).toContain(clock.done.text);
      }
    }
    expect(seen).toBeGreaterThan(10);
  });
});

describe("the one clock", () => {
  it("is for what ends within the hour: weeks of fermenting have no large digits", () => {
    const fermenting = moments.filter(({ view }) =>
      view.rest.some(({ title }) => title === "ferment"),
    );
    expect(fermenting.length).toBeGreaterThan(3);
    for (const { view } of fermenting) {
      const days = view.rest.find(({ title }) => title === "ferment")?.clock?.text ?? "";
      if (days.includes("days")) expect(view.clock).toBeUndefined();
    }
    for (const { view, state, now } of moments) {
      const { clock } = view;
      if (!clock || clock.state === "stopped") continue;
      expect(clock.digits).toMatch(/^\+?\d{1,2}:\d\d$/);
      const timer = state.timers[clock.id];
      if (timer) expect(Math.abs(timer.endsAt - now)).toBeLessThanOrEqual(HOUR_MS);
    }
  });

  it("says STOP and what to do where the boil is lost, in place of digits", () => {
    const stopped = moments.filter(({ view }) => view.clock?.state === "stopped");
    expect(stopped.length).toBeGreaterThan(0);
    for (const { view } of stopped) {
      expect(view.clock?.digits).toBe("STOP");
      for (const [columns, rows] of [...SIZES, [40, 24] as const]) {
        const text = flat(view, columns, rows);
        expect(text).toContain(words(view.clock?.say ?? "nothing to do"));
        expect(text).toContain("Bring it back");
        expect(text).not.toContain("-:--");
      }
    }
  });
});

describe("nothing", () => {
  it("is shown twice", () => {
    const times = (text: string, part: string) => text.split(part).length - 1;
    for (const { view } of moments) {
      const drawn = rowsOf(view, 80, 24);
      const text = words(drawn.join(" "));
      const first = view.hands[0]?.say?.split(/(?<=[.!?]) /)[0];
      if (first) expect(times(text, first), first).toBeLessThanOrEqual(1);
      if (view.question) expect(times(text, words(view.question.text))).toBe(1);
      if (view.clock?.say) expect(times(text, words(view.clock.say))).toBe(1);
      for (const item of [...view.heat, ...view.rest, ...view.timers]) {
        const row = `${item.name}: ${item.title}`;
        const own = drawn.filter((line) => line.startsWith(row) && !line.startsWith(`${row} `));
        expect(own.length, row).toBeLessThanOrEqual(1);
        if (item.id === view.clock?.id) expect(own).toEqual([]);
      }
      for (const { key, owner, label } of view.keys) {
        if (owner !== "") expect(times(text, `[${key}] ${label}`)).toBeLessThanOrEqual(1);
      }
    }
  });

  it("that was said and not explained goes out of sight before it is", () => {
    let seen = 0;
    for (const { view, state } of moments) {
      const open = Object.values(state.loads).flatMap(openDoubts);
      for (const { text: said } of open) {
        seen += 1;
        for (const [columns, rows] of SIZES) {
          expect(flat(view, columns, rows)).toContain(said);
        }
      }
      if (open.length === 0) expect(flat(view, 80, 24)).not.toContain("Not explained");
    }
    expect(seen).toBeGreaterThan(0);
  });
});

describe("the talk", () => {
  it("is what was heard and what was answered, and opens whole", () => {
    for (const { view } of moments) {
      expect(view.latest.length).toBeLessThanOrEqual(2);
      const last = view.talk.at(-1);
      if (!last) continue;
      const text = flat({ ...view, talkBack: 0 }, 80, 24);
      if (view.question) expect(text).toContain(words(view.question.text));
      if (view.clock) expect(text).toContain(view.clock.ends);
      expect(text.replace(/ {2,}/g, " ")).toContain(words(last.text).slice(-40));
    }
  });
});
