/**
 * In anything asked, wished, imagined, denied, reported of others, about another day or said to
 * somebody else, orders and clearing reports change nothing, and what raises a doubt leaves one.
 */
import { beforeAll, describe, expect, it } from "vitest";
import { decide } from "../../src/kitchen/decide/decide.ts";
import type { DatedFact, KitchenEvent } from "../../src/kitchen/events.ts";
import { apply, fork } from "../../src/kitchen/evolve.ts";
import { questions } from "../../src/kitchen/questions/questions.ts";
import type { State } from "../../src/kitchen/state.ts";
import type { Context } from "../../src/language/context.ts";
import { hear } from "../../src/language/hear.ts";
import { MEANINGS } from "../../src/language/intents/all.ts";
import { contextOf } from "../../src/session/context-of.ts";
import { NOT_UNDERSTOOD, stepsOf } from "../../src/session/hearing.ts";
import { theLibrary } from "../scenarios/play.ts";
import { kitchenAt } from "./kitchen-moments.ts";

/** Sentences in the frame, each around a statement, or around an order. */
const FRAMES: Record<string, { said: string[]; ordered: string[] }> = {
  asked: {
    said: ["is it true that %?", "did you hear that %?", "how would I know that %?", "%?"],
    ordered: ["should I % or not?", "why would anybody %?", "what happens when I %?"],
  },
  wished: {
    said: ["I wish %", "I hope %", "if only %", "I was hoping that %"],
    ordered: ["I wish I could %", "I would love to % some day", "I hope to % next week"],
  },
  imagined: {
    said: ["if %, what then", "suppose %", "imagine that %", "what if %", "in case %"],
    ordered: ["suppose I %", "what if I %", "if I % now, what happens"],
  },
  denied: {
    said: ["it is not true that %", "I never said that %", "I don't think that %"],
    ordered: ["don't %", "do not %", "please don't %", "never % without me", "I won't %"],
  },
  reported: {
    said: [
      "my neighbor says %",
      "she said %",
      "the book says %",
      "Anna thinks %",
      "they told me %",
    ],
    ordered: ["my neighbor says to %", "the book says to %", "she told me to %", "mom said: %"],
  },
  past: {
    said: ["last year %", "yesterday %", "the other day %", "back in the spring %"],
    ordered: ["last year we had to %", "yesterday I was told to %", "I used to % all the time"],
  },
  elsewhere: {
    said: ["I told Anna %", "no, not you: I said to Ben that %", "on the radio they said %"],
    ordered: ["Ben, could you % for me", "I told the kids to %", "I'm asking my husband to %"],
  },
};

const CLEARING = [
  "it's boiling and the lids are covered",
  "it is boiling again",
  "the lids are covered",
  "all the jars sealed",
  "it never stopped boiling",
  "the jars are out",
  "the vinegar is five percent",
  "the lids are new",
  "eight pints are filled",
];

const ORDERS = [
  "start the pickled beets",
  "set a timer for ten minutes",
  "stop the timer",
  "abandon the batch",
  "hold the beans",
  "undo that",
  "start the brine",
  "throw the jars out",
  "turn the heat off",
];

const RAISING = [
  "the flame went out",
  "it stopped boiling",
  "it went off the boil",
  "it is only simmering",
  "it was not boiling",
  "the burner is out",
  "the water is below the lids",
  "the lids are out of the water",
  "the power went out",
  "we lost the boil",
];

function spread(frames: readonly string[], sentences: readonly string[]): string[] {
  return frames.flatMap((frame) => sentences.map((one) => frame.replace("%", one)));
}

describe("a frame", () => {
  let running: State;
  let lost: State;
  let now: number;

  beforeAll(async () => {
    const session = await kitchenAt("boiling-water process");
    now = session.now() + 5 * 60_000;
    running = fork(session.state);
    lost = fork(session.state);
    for (const fact of effect(lost, "it stopped boiling")) write(lost, fact);
  });

  function write(state: State, fact: DatedFact): void {
    apply(state, { ...fact, cmd: "c999", w: now } as KitchenEvent);
  }

  function contextAt(state: State): Context {
    const library = theLibrary();
    return contextOf(state, now, library, undefined);
  }

  /** What a sentence writes down, as a session does it; a question back writes nothing. */
  function effect(state: State, text: string): DatedFact[] {
    const heard = hear(text, contextAt(state));
    const library = theLibrary();
    const decided = (command: Parameters<typeof decide>[1]["command"]): DatedFact[] => {
      const outcome = decide(state, { command }, now, library);
      return "facts" in outcome ? (outcome.facts ?? []) : [];
    };
    const { evidence } = heard;
    const kept = evidence ? decided({ ...NOT_UNDERSTOOD, evidence }) : [];
    const steps = stepsOf(heard, { text, confidence: 1 }, questions(state).length > 0);
    return [
      ...kept,
      ...steps.flatMap(({ command, question }) => (question ? [] : decided(command))),
    ];
  }

  function isAnswered(text: string): boolean {
    const { reading, commands } = hear(text, contextAt(running));
    return (
      reading === "sure" && commands.every(({ intent }) => MEANINGS[intent].cost === "harmless")
    );
  }

  const cases = Object.entries(FRAMES);

  it.each(cases)("%s: orders and clearing reports change nothing", (_name, { said, ordered }) => {
    const sentences = [...spread(said, CLEARING), ...spread(ordered, ORDERS)];
    const acted = [running, lost].flatMap((state) =>
      sentences.flatMap((text) => {
        const types = effect(state, text).map(({ type }) => type);
        // "I don't think it's boiling" is a loss.
        const other = types.filter((type) => type !== "heard" && !LOSSES.has(type));
        return other.length > 0 ? [`${text} -> ${other.join(", ")}`] : [];
      }),
    );
    expect(acted).toEqual([]);
  });

  it.each(cases)("%s: what raises a doubt leaves one, and nothing else", (_name, { said }) => {
    const sentences = spread(said, RAISING);
    const wrong = sentences.flatMap((text) => {
      const types = new Set(effect(running, text).map(({ type }) => type));
      const others = [...types].filter((type) => type !== "heard" && !LOSSES.has(type));
      // A hypothetical that was answered is a question.
      const none = types.size === 0 && !isAnswered(text);
      return none || others.length > 0 ? [`${text} -> ${[...types]}`] : [];
    });
    expect(wrong).toEqual([]);
  });

  const LOSSES: ReadonlySet<string> = new Set(["boil-lost", "cover", "water-low", "heard"]);
});
