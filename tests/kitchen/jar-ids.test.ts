/** What tells every jar from every other: its id is given once, and never to another jar. */
import { describe, expect, it } from "vitest";
import { replay } from "../../src/kitchen/evolve.ts";
import { shortForms, WRITER_WORDS, writersIn } from "../../src/kitchen/jars/jar-ids.ts";
import type { State } from "../../src/kitchen/state.ts";
import { batchLog } from "../../src/review/batch-log.ts";
import { at, Story } from "./story.ts";

const CLOVER = "clover-k3f9";

function opened(story: Story, minute: number, writer?: string): Story {
  const facts = { version: "0", zone: "America/Denver", offsetMs: 0, rehearsal: true } as const;
  const named = writer === undefined ? {} : { writer };
  return story.happened(minute, { type: "opened", ...facts, ...named });
}

function idsIn(state: State): string[] {
  const lots = Object.values(state.batches).flatMap((batch) => batch.lots);
  return lots.flatMap((lot) => lot.jars.map((jar) => jar.id));
}

function numbersIn(state: State): string[] {
  return idsIn(state).map((id) => id.slice(id.lastIndexOf("-") + 1));
}

/** Jars of another batch that are filled. */
function fills(story: Story, minute: number, recipe: string, count: number): void {
  const { id } = story.begins(minute, recipe);
  story.happened(minute, { type: "jars-filled", batch: id, count, size: null });
}

/** Seven jars of beans in the canner, in a folder of this writer. */
function sevenLoaded(writer?: string): Story {
  const story = opened(new Story(), 0, writer);
  story.loads(30, story.begins(1, "dilled-green-beans", { variety: "Provider" }), 7);
  return story;
}

describe("the id of a jar", () => {
  it("is its writer's name and a number", () => {
    const { state } = sevenLoaded(CLOVER);
    expect(idsIn(state)).toEqual([1, 2, 3, 4, 5, 6, 7].map((number) => `${CLOVER}-${number}`));
    expect(shortForms(state)({ id: `${CLOVER}-7` })).toBe("clover 7");
  });

  it("is not given again once the filling was taken back", () => {
    const story = opened(new Story(), 0, CLOVER);
    const batch = story.begins(1, "pickled-beets");
    const filled = { type: "jars-filled", batch: batch.id, count: 3, size: null } as const;
    story.happened(30, filled);
    const { cmd } = story.events.findLast(({ type }) => type === "jars-filled") ?? { cmd: "" };
    story.happened(31, { type: "withdrawn", target: cmd });
    expect(idsIn(story.state)).toEqual([]);
    story.happened(32, filled);
    expect(numbersIn(story.state)).toEqual(["4", "5", "6"]);
    expect(idsIn(replay(story.events))).toEqual(idsIn(story.state));
  });

  it("goes on where the folder was opened again, and begins anew with a new writer", () => {
    const story = sevenLoaded(CLOVER);
    opened(story, 40, CLOVER);
    fills(story, 41, "pickled-beets", 1);
    opened(story, 60, "maple-77");
    fills(story, 61, "crushed-tomatoes", 1);
    expect(idsIn(story.state).slice(7)).toEqual([`${CLOVER}-8`, "maple-77-1"]);
  });

  it("follows from the journal alone where it names no writer, the same at each reading", () => {
    const { state, events } = sevenLoaded();
    expect(new Set(idsIn(state)).size).toBe(7);
    expect(idsIn(replay(events))).toEqual(idsIn(state));
    const [first, ...others] = events;
    if (!first) throw new Error("no events");
    const elsewhere = replay([{ ...first, w: first.w + 1 }, ...others]);
    expect(idsIn(elsewhere).filter((id) => idsIn(state).includes(id))).toEqual([]);
  });

  it("stays as it is in an older journal when something before it is taken back", () => {
    const story = sevenLoaded();
    fills(story, 40, "pickled-beets", 2);
    const ids = idsIn(story.state).slice(7);
    const { cmd } = story.events.find(({ type }) => type === "jars-filled") ?? { cmd: "" };
    story.happened(61, { type: "withdrawn", target: cmd });
    expect(idsIn(story.state).slice(-2)).toEqual(ids);
  });

  it("is said whole where two writers go by one word", () => {
    const story = sevenLoaded(CLOVER);
    opened(story, 60, "clover-zz");
    fills(story, 61, "pickled-beets", 1);
    expect(shortForms(story.state)({ id: `${CLOVER}-7` })).toBe(`${CLOVER}-7`);
  });

  it("is said short as long as the other writer of its word has no jar", () => {
    const story = sevenLoaded(CLOVER);
    opened(story, 60, "clover-zz");
    expect(writersIn(story.state)).toContain("clover-zz");
    expect(shortForms(story.state)({ id: `${CLOVER}-7` })).toBe("clover 7");
  });

  it("is said short whatever a journal without a writer would have been called", () => {
    for (const word of WRITER_WORDS) {
      const { state } = sevenLoaded(`${word}-k3f9`);
      expect(shortForms(state)({ id: `${word}-k3f9-7` })).toBe(`${word} 7`);
    }
  });
});

describe("the list of jars", () => {
  it("has each jar of a lot, with its mark and its load", () => {
    const { state } = sevenLoaded(CLOVER);
    const [batch] = Object.values(state.batches);
    if (!batch) throw new Error("no batch");
    const [load] = batch.loads;
    expect(batchLog(state, batch, at(40)).jarList.at(-1)).toEqual({
      ...{
        id: `${CLOVER}-7`,
        short: "clover 7",
        mark: "P7",
        putUp: "2027-08-14",
        load,
        position: null,
      },
      ...{ fate: "shelf", fateAt: null, place: null, verdict: "unfinished" },
      reasons: ["the batch is still running"],
    });
  });
});
