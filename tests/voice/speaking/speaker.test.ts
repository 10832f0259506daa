import { beforeEach, describe, expect, it } from "vitest";
import type { SpokenSentence, VoiceEngine } from "../../../src/ports/voice.ts";
import { Speaker } from "../../../src/voice/speaking/speaker.ts";
import { QUEUE_MAX } from "../../../src/voice/speaking/speech-queue.ts";
import { FakeBell, FakeVoice, HandClock, SpeakerDiary } from "../fakes.ts";

const ADVICE = "For a voice: sudo apt install espeak-ng";

let clock: HandClock;
let voice: FakeVoice;
let bell: FakeBell;
let diary: SpeakerDiary;
let speaker: Speaker;

function speakerWith(engine: VoiceEngine | undefined): Speaker {
  return new Speaker({ engine, bell, clock, advice: ADVICE, ...diary.callbacks });
}

beforeEach(() => {
  clock = new HandClock();
  voice = new FakeVoice(clock);
  bell = new FakeBell();
  diary = new SpeakerDiary();
  speaker = speakerWith(voice);
});

const prompt = (text: string, more: Partial<SpokenSentence> = {}): SpokenSentence => {
  return { rank: "prompt", text, ...more };
};
const alarm = (text: string, more: Partial<SpokenSentence> = {}): SpokenSentence => {
  return { rank: "alarm", text, ...more };
};
const answer = (text: string): SpokenSentence => ({ rank: "answer", text });

describe("the speaking queue", () => {
  it("speaks one sentence at a time, answers before prompts, in order of arrival", async () => {
    for (const each of [prompt("c"), prompt("d"), answer("a"), answer("b")]) speaker.say(each);
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["c", "a", "b", "c", "d"]);
    expect(voice.mostAtOnce).toBe(1);
  });

  it("lets an alarm cut in, begins it with the bell, and then says the whole prompt", async () => {
    speaker.say(prompt("slice the beets"));
    await clock.pass(200);
    speaker.say(alarm("the boil is lost"));
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["slice the beets", "the boil is lost", "slice the beets"]);
    expect(bell.rings).toBe(1);
    expect(voice.mostAtOnce).toBe(1);
  });

  it("answers at once what was said meanwhile, then goes on with what it was saying", async () => {
    speaker.say(answer("the clock is stopped"));
    await clock.pass(300);
    speaker.say(answer("eight pints"));
    speaker.say({ rank: "question", text: "how much headspace" });
    await clock.pass(100);
    expect(voice.texts).toEqual(["the clock is stopped", "eight pints"]);
    await clock.pass(10_000);
    const after = ["the clock is stopped", "how much headspace"];
    expect(voice.texts).toEqual(["the clock is stopped", "eight pints", ...after]);
  });

  it("does not go back to an answer that was heard when something else was said", async () => {
    voice.takesMs = 3000;
    speaker.say(
      answer("the clock is stopped, bring it back to a full boil and tell me when it is"),
    );
    await clock.pass(1600);
    speaker.say(answer("eight pints"));
    await clock.pass(10_000);
    expect(voice.texts).toHaveLength(2);
  });

  it("answers the newest words first after an alarm, whatever waited from before", async () => {
    speaker.say(alarm("the eggs timer is done"));
    speaker.say(answer("how much salt"));
    await clock.pass(300);
    speaker.say(answer("how much headspace"));
    speaker.say(answer("and the rest of it"));
    await clock.pass(10_000);
    const [, ...answers] = voice.texts;
    expect(answers).toEqual(["how much headspace", "and the rest of it", "how much salt"]);
  });

  it("answers the newest words where many cut each other short without a pause", async () => {
    for (let n = 0; n < QUEUE_MAX + 10; n++) {
      speaker.say(answer(`answer ${n}`));
      await clock.pass(250);
      expect(voice.texts.at(-1)).toBe(`answer ${n}`);
    }
  });

  it("begins an answer anew after one alarm, and not after every one", async () => {
    voice.takesMs = 3000;
    const long = "the eggs timer has twelve minutes and the rice timer has four and a half minutes";
    speaker.say(answer(long));
    for (const name of ["eggs", "rice", "beets"]) {
      await clock.pass(name === "eggs" ? 1600 : 4800);
      speaker.say(alarm(name));
    }
    await clock.pass(20_000);
    expect(voice.texts).toEqual([long, "eggs", long, "rice", "beets"]);
  });

  it("says an answer that alarms left nobody time to hear, however many they were", async () => {
    speaker.say(answer("the clock is stopped"));
    for (const name of ["eggs", "rice", "beets"]) {
      await clock.pass(100);
      speaker.say(alarm(name));
      await clock.pass(1100);
    }
    await clock.pass(20_000);
    expect(voice.texts.at(-1)).toBe("the clock is stopped");
  });

  it("lets go of an answer that is old by the time it could come again", async () => {
    voice.takesMs = 3000;
    const long =
      "eleven minutes are left of the fifteen of the beans and nothing else is running now";
    speaker.say(answer(long));
    await clock.pass(1600);
    for (let n = 0; n < 12; n++) speaker.say(alarm(`the timer of pot number ${n} is done`));
    await clock.pass(120_000);
    expect(voice.texts.filter((text) => text === long)).toHaveLength(1);
  });

  it("lets an answer cut short a question, which is asked again after it", async () => {
    speaker.say({ rank: "question", text: "new lids or used" });
    await clock.pass(100);
    speaker.say(answer("noted"));
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["new lids or used", "noted", "new lids or used"]);
  });

  it("drops a prompt whose moment has passed, or that nobody wants any more", async () => {
    let wanted = true;
    speaker.say(answer("first"));
    speaker.say(prompt("late", { untilMs: clock.nowMs() + 500 }));
    speaker.say(prompt("moot", { wanted: () => wanted }));
    wanted = false;
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["first"]);
    expect(diary.outcomes).toContainEqual(["late", "moment-passed"]);
    expect(diary.outcomes).toContainEqual(["moot", "moment-passed"]);
  });

  it("replaces a waiting sentence by a newer one with the same key", async () => {
    speaker.say(answer("first"));
    speaker.say(prompt("five minutes left", { key: "clock" }));
    speaker.say(prompt("four minutes left", { key: "clock" }));
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["first", "four minutes left"]);
  });

  it("stops an alarm that was answered, and does not repeat it", async () => {
    speaker.say(alarm("the rice", { key: "timer" }));
    await clock.pass(100);
    speaker.cancel("timer");
    await clock.pass(10_000);
    expect(diary.outcomes).toEqual([["the rice", "stopped"]]);
  });

  it("is bounded: the oldest of the lowest rank is dropped first", async () => {
    speaker.say(alarm("now"));
    for (let n = 0; n < QUEUE_MAX; n++) speaker.say(answer(`answer ${n}`));
    speaker.say(alarm("later"));
    expect(diary.outcomes).toEqual([["answer 0", "queue-full"]]);
    await clock.pass(100_000);
    expect(voice.texts.slice(0, 3)).toEqual(["now", "later", "answer 1"]);
  });

  it("says only alarms that guard a process when hushed", async () => {
    speaker.say(prompt("being said"));
    speaker.say(prompt("waiting"));
    await clock.pass(10);
    speaker.hush(true);
    speaker.say(alarm("the rice is done"));
    speaker.say(alarm("the canner is off the boil", { guards: true }));
    await clock.pass(10_000);
    expect(voice.texts).toEqual(["being said", "the canner is off the boil"]);
    expect(bell.rings).toBe(1);
    speaker.hush(false);
    speaker.say(answer("speaking again"));
    await clock.pass(10_000);
    expect(voice.texts.at(-1)).toBe("speaking again");
  });

  it("speaks slower and louder when asked, within limits", async () => {
    expect(speaker.adjust({ rate: 0.8, volume: 1.5 })).toEqual({ rate: 0.8, volume: 1.5 });
    speaker.say(answer("slowly"));
    await clock.pass(2000);
    expect(voice.heard[0]).toEqual({ text: "slowly", rate: 0.8, volume: 1.5 });
    expect(speaker.adjust({ rate: 9, volume: 0 })).toEqual({ rate: 2, volume: 0.5 });
  });

  it("reports when it may be heard, once for a run of sentences", async () => {
    speaker.say(answer("one"));
    speaker.say(answer("two"));
    await clock.pass(10_000);
    expect(diary.speaking).toEqual([true, false]);
  });

  it("reduces text before any engine gets it, and skips what cannot be read", async () => {
    speaker.say(answer('-f "$(reboot)"'));
    speaker.say(answer("🫙🫙"));
    await clock.pass(5000);
    expect(voice.texts).toEqual(["f reboot"]);
    expect(diary.outcomes).toContainEqual(["🫙🫙", "nothing-to-read"]);
  });

  it("is silent after closing", async () => {
    speaker.say(answer("one"));
    speaker.say(answer("two"));
    const closing = speaker.close();
    await clock.pass(1000);
    await closing;
    speaker.say(answer("three"));
    await clock.pass(5000);
    expect(voice.texts).toEqual(["one"]);
  });
});

describe("with a voice in trouble, only the voice is lost", () => {
  it("is missing: it says once how to get one, and the bell rings instead", async () => {
    speaker = speakerWith(undefined);
    speaker.say(prompt("fill the jars"));
    speaker.say(alarm("the boil is lost"));
    speaker.say(answer("eight"));
    await clock.pass(1000);
    expect(diary.problems).toEqual([`There is no voice on this system. ${ADVICE}`]);
    expect(bell.rings).toBe(2);
  });

  it.each(["dies", "throws"] as const)(
    "%s: told once, the bell rings, tried later",
    async (mood) => {
      voice.mood = mood;
      speaker.say(prompt("one"));
      speaker.say(prompt("two"));
      await clock.pass(100);
      expect(diary.problems).toHaveLength(1);
      expect(diary.problems[0]).toMatch(/^The voice failed: |^No sound card/);
      expect(diary.problems[0]).not.toContain(ADVICE);
      expect(bell.rings).toBe(2);
      voice.mood = "works";
      await clock.pass(5_000);
      speaker.say(prompt("three"));
      await clock.pass(2_000);
      expect(voice.texts.at(-1)).toBe("three");
      expect(diary.recoveries).toBe(1);
    },
  );

  it.each([
    ["ALSA lib confmisc.c:855:(parse_card) cannot find card '0'", /^No sound card or loudspeaker/],
    ["the voice ended with 3", /^The voice failed: the voice ended with 3\. /],
  ])("says what is wrong, and advises no install where a voice is: %s", async (reason, told) => {
    const failing: VoiceEngine = {
      name: "failing",
      start: () => ({ done: Promise.resolve({ kind: "failed", reason }), stop: () => {} }),
    };
    speaker = speakerWith(failing);
    speaker.say(prompt("one"));
    await clock.pass(100);
    expect(diary.problems).toEqual([expect.stringMatching(told)]);
    expect(diary.problems[0]).not.toContain("install");
  });

  it.each(["hangs", "deaf-to-stop"] as const)("%s: it is given up in time", async (mood) => {
    voice.mood = mood;
    speaker.say(prompt("fill the jars"));
    await clock.pass(30_000);
    expect(diary.outcomes).toEqual([["fill the jars", "timed-out"]]);
    expect(diary.problems[0]).toContain("did not answer in time");
    expect(diary.speaking).toEqual([true, false]);
  });

  it("hangs while an alarm comes: the alarm does not wait for it", async () => {
    voice.mood = "deaf-to-stop";
    speaker.say(prompt("fill the jars"));
    await clock.pass(100);
    voice.mood = "works";
    speaker.say(alarm("the boil is lost"));
    await clock.pass(1000);
    expect(voice.texts[1]).toBe("the boil is lost");
  });

  it("is tried less and less often while it stays broken", async () => {
    voice.mood = "dies";
    for (let minute = 0; minute < 60; minute++) {
      speaker.say(prompt(`minute ${minute}`));
      await clock.pass(60_000);
    }
    expect(voice.texts.length).toBeLessThan(20);
    expect(diary.problems).toHaveLength(1);
    expect(bell.rings).toBe(60);
  });
});
