import { describe, expect, it } from "vitest";
import { spokenGrammar } from "../../../src/language/grammar/spoken-grammar.ts";
import { understand } from "../../../src/language/understand.ts";
import { contextOf } from "../../../src/session/context-of.ts";
import { grammarNow } from "../../../src/session/listening/listening.ts";
import { momentOf } from "../../../src/session/listening/listening-moment.ts";
import { GrammarSentences } from "../../language/grammar-sentences.ts";
import { theLibrary } from "../../scenarios/play.ts";
import { seeded } from "../../voice-loop/noise.ts";
import { kitchenAt, MOMENT_NAMES } from "../kitchen-moments.ts";

const DRAWN = 150;

describe("what can be said to a kitchen that listens", () => {
  it.each(MOMENT_NAMES)("is only a little at any moment: %s", async (name) => {
    const { rules, command } = grammarNow(await kitchenAt(name));
    expect(new GrammarSentences(rules).forms(command)).toBeLessThanOrEqual(150);
    expect(rules.length).toBeLessThan(10_000);
  });

  it.each(MOMENT_NAMES)("is understood as what it was listened for: %s", async (name) => {
    const session = await kitchenAt(name);
    const context = contextOf(session.state, session.now(), theLibrary(), undefined);
    const moment = momentOf(session.state, undefined);
    const { question, ...unasked } = context;
    const wrong: string[] = [];
    for (const intent of moment.intents ?? []) {
      const { rules, command } = spokenGrammar(unasked, { ...moment, intents: [intent] });
      if (/<VOID>/.test(rules)) continue;
      const sentences = new GrammarSentences(rules);
      const random = seeded(intent.length);
      for (let drawn = 0; drawn < DRAWN; drawn += 1) {
        const said = sentences.draw(command, random);
        const understood = understand(said, unasked).intent;
        if (understood !== intent) wrong.push(`${intent}: ${said} -> ${understood}`);
      }
    }
    expect([...new Set(wrong)]).toEqual([]);
  });

  it("includes the answers to the open question, and all are taken as answers", async () => {
    const session = await kitchenAt("empty kitchen");
    const base = contextOf(session.state, session.now(), theLibrary(), undefined);
    const choices = ["the Provider dilled green beans", "the pickled beets"];
    for (const question of [{ kind: "choice", choices }, { kind: "number" }] as const) {
      const context = { ...base, question };
      const { rules, command } = spokenGrammar(context, { intents: [] });
      const sentences = new GrammarSentences(rules);
      const random = seeded(3);
      for (let drawn = 0; drawn < DRAWN; drawn += 1) {
        const said = sentences.draw(command, random);
        expect({ said, ...understand(said, context) }).toMatchObject({ said, intent: "answer" });
      }
    }
  });

  it("follows what is running: pressure is heard only where there is some", async () => {
    const intents = async (name: (typeof MOMENT_NAMES)[number]) => {
      return momentOf((await kitchenAt(name)).state, undefined).intents ?? [];
    };
    expect(await intents("pressure process")).toContain("pressure");
    expect(await intents("boiling-water process")).not.toContain("pressure");
    expect(await intents("filling")).toContain("jars-filled");
    expect(await intents("empty kitchen")).not.toContain("done");
    expect(await intents("seal check")).toContain("seal-failed");
  });
});
