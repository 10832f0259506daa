/** The person's own words: asked about once, done at once after a yes, dropped by a no. */

import { beforeEach, describe, expect, it } from "vitest";
import type { Intent } from "../../src/kitchen/command.ts";
import { historyOf } from "../../src/kitchen/events.ts";
import { fork, replay } from "../../src/kitchen/evolve.ts";
import { answerKind, shownQuestion } from "../../src/kitchen/questions/questions.ts";
import { initialState } from "../../src/kitchen/state.ts";
import { hear } from "../../src/language/hear.ts";
import { learnable } from "../../src/language/own-words.ts";
import { OwnWordsTalk } from "../../src/session/own-words.ts";
import type { Session } from "../../src/session/session.ts";
import { theLibrary } from "../scenarios/play.ts";
import { kitchenAt } from "./kitchen-moments.ts";

/** Sentences that no wording has; what the model makes of them is found out in each test. */
const SAYINGS = [
  "at three I have to be reminded of the hens by somebody",
  "the compost at half past two, tap me on the shoulder",
  "at half past two it is the compost, sing it out",
  "three is hens, mind me",
  "at three let the word hens be said",
  "let the beans sit it out a while",
  "beans can wait their turn",
  "holler at ten past three to feed the hens",
  "give me a shout at half past two to turn the compost",
  "give us a nudge at half past two about the compost",
  "leave the beans be a while",
  "give the beans a rest",
  "let the beans off the hook for a while",
  "eggs clock's had its day",
  "eggs clock can go",
  "pester me at half past two about the compost",
  "ding me at three for the hens",
  "knock on my head at three about the hens",
  "put it in the book that the garlic was old",
  "mark it the garlic was old",
];

/** Such a sentence as is asked about with this meaning here. */
function askedAs(session: Session, intent: Intent, sayings = SAYINGS): string {
  const found = sayings.find((text) => {
    const { reading, candidates, evidence } = hear(text, session.context());
    return (
      reading === "ask" && candidates[0]?.intent === intent && evidence?.strength !== "suspicion"
    );
  });
  if (found === undefined) throw new Error(`none of these is asked about as ${intent} any more`);
  return found;
}

/** The kind of answer that the question takes which guards safety and was asked. */
function kindAsked({ state }: Session) {
  const shown = shownQuestion(state);
  return shown && answerKind(shown);
}

const reminders = ({ state }: Session) => Object.keys(state.reminders).length;
const known = ({ state }: Session) => state.ownWords.map(({ intent }) => intent);
const asks = (session: Session, text: string) => {
  session.hear(text);
  return session.waitingFor?.expects;
};

describe("words that were asked about and confirmed", () => {
  let session: Session;
  let words: string;

  beforeEach(async () => {
    session = await kitchenAt("brine and trimming");
    words = askedAs(session, "remind");
  });

  it("are asked about no more in the same moment", () => {
    expect(asks(session, words)).toBe("heard");
    session.hear("yes");
    expect(reminders(session)).toBe(1);
    expect(known(session)).toEqual(["remind"]);
    expect(asks(session, words)).toBeUndefined();
    expect(reminders(session)).toBe(2);
  });

  it("are facts: the log has them, and a kitchen opened again knows them", () => {
    session.hear(words);
    session.hear("yes");
    const { ownWords } = session.state;
    const history = historyOf(session.state);
    expect(history.filter(({ type }) => type === "words-learned")).toHaveLength(1);
    expect(replay(history).ownWords).toEqual(ownWords);
    expect(ownWords).toHaveLength(1);
  });

  it("are asked about in another moment", () => {
    session.hear(words);
    session.hear("yes");
    session.hear("five percent");
    expect(hear(words, session.context()).memory).toBeUndefined();
  });

  it("teach nothing by a no, by other words, or where they were hardly heard", () => {
    session.hear(words);
    session.hear("no");
    session.hear(words);
    session.hear("what now");
    session.hear("yes");
    session.hear(words, 0.5);
    session.hear("yes");
    expect(known(session)).toEqual([]);
    expect(reminders(session)).toBe(1);
  });

  it("are asked about where they were hardly heard, and then a no drops nothing", () => {
    session.hear(words);
    session.hear("yes");
    session.hear(words, 0.5);
    expect(session.waitingFor?.expects).toBe("heard");
    session.hear("no");
    expect(known(session)).toEqual(["remind"]);
    expect(reminders(session)).toBe(1);
  });

  it("are not what an undo takes back", () => {
    session.hear(words);
    session.hear("yes");
    session.hear("undo that");
    expect(reminders(session)).toBe(0);
    expect(known(session)).toEqual(["remind"]);
  });
});

describe("a no right after such an act", () => {
  let session: Session;
  let words: string;

  beforeEach(async () => {
    session = await kitchenAt("brine and trimming");
    words = askedAs(session, "remind");
    session.hear(words);
    session.hear("yes");
    session.hear(words);
    expect(reminders(session)).toBe(2);
  });

  it("takes back that act and no other, and drops the memory", () => {
    const { lines, refused } = session.hear("no");
    expect(refused).toBe(false);
    expect(lines.join(" ")).toMatch(/Taken back: .*reminder.*Forgotten/);
    expect(reminders(session)).toBe(1);
    expect(known(session)).toEqual([]);
    expect(asks(session, words)).toBe("heard");
  });

  it("can itself be taken back: the act and the memory are there again", () => {
    session.hear("no");
    session.hear("put that back");
    expect(reminders(session)).toBe(2);
    expect(known(session)).toEqual(["remind"]);
  });

  it("is an undo with the memory dropped, where it is said as one", () => {
    session.hear("undo that");
    expect(reminders(session)).toBe(1);
    expect(known(session)).toEqual([]);
  });

  it("says nothing to it five minutes later", () => {
    const talk = new OwnWordsTalk();
    const [memory] = session.state.ownWords;
    const disowned = (minutes: number) => {
      talk.did(memory, undefined, 0);
      const present = { state: initialState(), now: minutes * 60_000, library: theLibrary() };
      return talk.contradicted(hear("no", session.context()), undefined, present);
    };
    expect(disowned(4)?.dropped).toMatchObject({ type: "words-forgotten", words: memory?.words });
    expect(disowned(6)).toBeUndefined();
  });

  it("says nothing to it where it was hardly heard", () => {
    session.hear("no", 0.5);
    expect(reminders(session)).toBe(2);
    expect(known(session)).toEqual(["remind"]);
  });

  it("says nothing to it once something else was said", () => {
    session.hear("what now");
    session.hear("no");
    expect(reminders(session)).toBe(2);
    expect(known(session)).toEqual(["remind"]);
  });
});

describe("a no to a question that guards safety", () => {
  it("answers the question, also right after an act by a memory", async () => {
    const session = await kitchenAt("boiling-water process");
    session.hear("the water is low");
    expect(kindAsked(session)).toBe("yes-no");
    const words = "flumpet the wazzle at half past two";
    const meant = { intent: "remind", slots: { text: "wazzle" }, confidence: 0.5 } as const;
    const taught = learnable(words, meant, session.context());
    if (!taught) throw new Error("these words cannot be learned");
    session.setDown([{ type: "words-learned", ...taught, t: session.now() }]);
    session.hear(words);
    expect(reminders(session)).toBe(1);
    session.hear("no");
    expect(reminders(session)).toBe(1);
    expect(known(session)).toEqual(["remind"]);
    expect(Object.values(session.state.loads)[0]?.covered).toBe(false);
  });
});

describe("own words", () => {
  let session: Session;

  beforeEach(async () => {
    session = await kitchenAt("brine and trimming");
    for (const saying of SAYINGS) {
      if (known(session).length < 2 && asks(session, saying) === "heard") session.hear("yes");
    }
    expect(known(session)).toHaveLength(2);
  });

  it("are told when that is asked", () => {
    const [first, second] = session.state.ownWords;
    const told = session.hear("what have you learned of my words").lines.join(" ");
    expect(told).toContain(`Number 1, "${first?.words}"`);
    expect(told).toContain(`Number 2, "${second?.words}"`);
  });

  it.each([
    ["forget the last of my words", [0]],
    ["forget number one of my words", [1]],
    ["forget my words", []],
    ["forget everything you have learned from me", []],
  ])("are forgotten: %s", (said, left) => {
    const { ownWords: before } = session.state;
    const { refused } = session.hear(said);
    expect(refused).toBe(false);
    expect(session.state.ownWords).toEqual(left.map((at) => before[at]));
    session.hear("undo that");
    expect(session.state.ownWords).toEqual(before);
  });

  it("are not forgotten by a number there is none of", () => {
    const { lines, refused } = session.hear("forget number three of my words");
    expect(refused).toBe(true);
    expect(lines.join(" ")).toContain("I have learned 2");
    expect(known(session)).toHaveLength(2);
  });

  it("are copied with the state", () => {
    const copy = fork(session.state);
    session.hear("forget my words");
    expect(copy.ownWords).toHaveLength(2);
  });
});
