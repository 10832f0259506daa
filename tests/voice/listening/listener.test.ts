import { beforeEach, describe, expect, it } from "vitest";
import type { EarsGrammar, HeardWords, SoundLevel, Unheard } from "../../../src/ports/ears.ts";
import { ComfortNoise } from "../../../src/voice/listening/comfort-noise.ts";
import { Listener } from "../../../src/voice/listening/listener.ts";
import type { Progress, Recognized, Recognizer } from "../../../src/voice/listening/recognizer.ts";

const NEXT: Recognized = {
  text: "next",
  wakeFit: -1,
  fit: -1,
  commandFit: -1,
  longestGap: 0,
  frames: 120,
};

/** A recognizer that says what it is told to have heard, and what was asked of it. */
class FakeRecognizer {
  answer: Recognized = NEXT;
  rival: Recognized["rival"];
  come: Progress = "whole";
  fed = 0;
  log: string[] = [];

  expect(grammar: EarsGrammar): void {
    this.log.push(`expect ${grammar.command}`);
  }
  begin(): void {
    this.log.push("begin");
    this.fed = 0;
  }
  feed(samples: Int16Array): void {
    this.fed += samples.length;
  }
  noteSound(): void {}
  hearAhead(): void {
    this.log.push("ahead");
  }
  progress(): Progress {
    return this.come;
  }
  end(): Recognized {
    this.log.push("end");
    return this.answer;
  }
  secondOpinion(first: Recognized): Recognized {
    return this.rival ? { ...first, rival: this.rival } : first;
  }
}

let recognizer: FakeRecognizer;
let heard: HeardWords[];
let unheard: Unheard[];
let levels: SoundLevel[];
let listener: Listener;
let noise: ComfortNoise;

beforeEach(() => {
  recognizer = new FakeRecognizer();
  heard = [];
  unheard = [];
  levels = [];
  noise = new ComfortNoise();
  listener = new Listener({
    recognizer: recognizer as unknown as Recognizer,
    withWakeWords: true,
    wallMs: () => 1_000_000,
    monoMs: () => 0,
    events: {
      onHeard: (what) => heard.push(what),
      onUnheard: (what) => unheard.push(what),
      onLevel: (level) => levels.push(level),
    },
  });
  quiet(1000);
});

/** Syllables: a chord that comes and goes and moves, since a steady one would count as noise. */
function hum(ms: number, loud: number): Int16Array {
  const bare = Int16Array.from({ length: ms * 16 }, (_, at) => {
    const syllable = Math.floor(at / 4000);
    const swell = Math.max(0, Math.sin((2 * Math.PI * (at % 4000)) / 5000));
    const sum = [310, 620, 930, 1550, 2170, 2790].reduce((all, hertz) => {
      const moved = hertz * (1 + 0.23 * ((syllable * 7) % 5));
      return all + Math.sin((2 * Math.PI * moved * at) / 16000);
    }, 0);
    return Math.round(loud * swell * sum);
  });
  return noise.over(bare, 60);
}

function inChunks(samples: Int16Array): void {
  for (let at = 0; at < samples.length; at += 777) listener.hear(samples.slice(at, at + 777));
}

const quiet = (ms: number) => inChunks(hum(ms, 0));
const speak = (ms: number) => inChunks(hum(ms, 900));

describe("the listener", () => {
  it("hears a command once its speech has ended, with the sound from just before it", () => {
    speak(1200);
    expect(heard).toEqual([]);
    quiet(600);
    expect(heard.map(({ text }) => text)).toEqual(["next"]);
    expect(heard[0]?.delayMs).toBeGreaterThanOrEqual(300);
    expect(heard[0]?.delayMs).toBeLessThan(450);
    expect(heard[0]?.heardAtMs).toBe(1_000_000 - (heard[0]?.delayMs ?? 0));
    expect(recognizer.fed / 16).toBeGreaterThan(1500);
  });

  it("waits for the command after the wake words alone", () => {
    recognizer.come = "only-wake-words";
    speak(600);
    quiet(700);
    expect(heard).toEqual([]);
    speak(200);
    recognizer.come = "whole";
    speak(400);
    quiet(600);
    expect(heard).toHaveLength(1);
    expect(recognizer.log.filter((each) => each === "begin")).toHaveLength(1);
  });

  it("waits a little longer where more of the command may come", () => {
    recognizer.come = "perhaps-more";
    speak(1200);
    quiet(600);
    expect(heard[0]?.delayMs).toBeGreaterThanOrEqual(450);
    expect(heard[0]?.delayMs).toBeLessThan(600);
  });

  it("reports speech that is not a command, and why", () => {
    recognizer.answer = { ...NEXT, wakeFit: -9 };
    speak(1000);
    quiet(600);
    expect(heard).toEqual([]);
    expect(unheard).toMatchObject([{ why: "no-wake-words", nearest: "next" }]);
  });

  it("gives up on talk without a pause", () => {
    speak(8000);
    quiet(600);
    expect(unheard.map(({ why }) => why)).toEqual(["too-long"]);
    speak(800);
    quiet(600);
    expect(heard).toHaveLength(1);
  });

  it("is less certain when the number could as well be its sound-alike, and names it", () => {
    recognizer.rival = { text: "thirty", leadOver: 5 };
    speak(800);
    quiet(600);
    expect(heard[0]?.confidence).toBeLessThan(0.3);
    expect(heard[0]?.orElse).toBe("thirty");
  });

  it("does not hear itself, or the moment after", () => {
    speak(300);
    listener.deafen(true);
    speak(2000);
    listener.deafen(false);
    speak(350);
    quiet(600);
    expect(heard).toEqual([]);
    speak(800);
    quiet(600);
    expect(heard).toHaveLength(1);
  });

  it("changes the grammar only between utterances", () => {
    listener.expect({ command: "first", rules: "" });
    speak(500);
    listener.expect({ command: "second", rules: "" });
    expect(recognizer.log).toEqual(["expect first", "begin"]);
    quiet(600);
    expect(recognizer.log).toEqual(["expect first", "begin", "ahead", "end", "expect second"]);
  });

  it("reports the level about four times a second", () => {
    const before = levels.length;
    quiet(2000);
    expect(levels.length - before).toBeGreaterThanOrEqual(7);
    expect(levels.length - before).toBeLessThanOrEqual(9);
    expect(levels.at(-1)?.levelDb).toBeGreaterThan(-62);
    expect(levels.at(-1)?.levelDb).toBeLessThan(-48);
  });
});
