/** How a day goes: hands and stove by the world's clock, and what is said of it to the program. */
import type { Line } from "../../../src/ports/view.ts";
import type { Dice } from "../dice.ts";
import type { Assumed } from "./assumptions.ts";
import type { DayBook, Policy } from "./day.ts";
import type { HomeCook } from "./home-cook.ts";
import type { Mishap } from "./mishaps.ts";
import type { Program, Stage } from "./program.ts";
import { kindOfQuestion, type QuestionKind, ROUTINE, SPEAKS_OF } from "./questions-read.ts";
import { StageHands } from "./stage-hands.ts";
import { StoveTrouble } from "./stove-trouble.ts";
import { Tellings } from "./tellings.ts";
import type { Topic } from "./wordings.ts";
import type { WorldKitchen } from "./world-kitchen.ts";

export type DayParts = {
  program: Program;
  world: WorldKitchen;
  cook: HomeCook;
  dice: Dice;
  book: DayBook;
  mishaps: readonly Mishap[];
  assumed: Assumed;
  policy: Policy;
  chatter: readonly string[];
  keepsLines: boolean;
};

const BUSY_STEP_S = 15;
const QUIET_STEP_S = 60;
const OVERNIGHT_STEP_S = 1800;
const MOST_MINUTES = 3 * 24 * 60;
/** After the jars are put away the cook may still remember something, for so long. */
const AFTERWARDS_MINUTES = 20 * 60;
const REACTS_S = { from: 3, to: 40 };

/** Asked by a rule or because of what was said, not for a doubt of the program's own. */
const FOLLOWS: ReadonlySet<QuestionKind> = new Set(["cover", "gap", "disposition", "which"]);
const ANSWERS_ALARM = 0.6;

type Due = { atMinute: number; say: () => void };

export class DayFlow {
  readonly parts: DayParts;
  private readonly due: Due[] = [];
  private readonly hands: StageHands;
  private readonly stove: StoveTrouble;
  private readonly tellings: Tellings;
  private readonly alarms = new Set<string>();
  private chatteredAt = 0;

  constructor(parts: DayParts) {
    this.parts = parts;
    this.stove = new StoveTrouble(this);
    this.tellings = new Tellings(this);
    this.hands = new StageHands(this, this.stove, this.tellings);
  }

  get minutes(): number {
    return this.parts.program.minutes;
  }

  /** The stage of an id. */
  stage(id: string): Stage | undefined {
    return this.parts.program.stages.find((one) => one.id === id);
  }

  /** Says something, now. */
  say(text: string): void {
    this.write(`> ${text}`);
    this.parts.program.hear(text);
    this.listen();
  }

  later(minutes: number, say: () => void): void {
    this.due.push({ atMinute: this.minutes + minutes, say });
  }

  /** Tells what went wrong; whether anything was said. */
  tell(topic: Topic): boolean {
    return this.tellings.tell(topic);
  }

  /** What the dial must show; zero where there is none. */
  get targetPsi(): number {
    return this.parts.world.card.method === "pressure" ? this.hands.target : 0;
  }

  /** Says that the boil or the pressure is back. */
  reportKept(): void {
    this.hands.reportKept("again");
  }

  private write(text: string): void {
    if (this.parts.keepsLines) this.parts.book.lines.push(`${this.minutes.toFixed(1)} ${text}`);
  }

  /** Takes in what the program has said, and means to answer what it asks. */
  listen(): void {
    const { program, book, cook, dice } = this.parts;
    for (const line of program.news()) {
      if (line.kind === "heard") continue;
      this.write(`${line.kind}: ${line.text}`);
      book.note(line);
      this.hands.heardMark(line.text);
      this.stove.heardCall(line.text);
      if (line.kind === "alarm") this.heardAlarm(line.text);
      if (line.kind !== "asked") continue;
      if (this.parts.policy === "asks-nothing") {
        this.answerAsHoped(line);
        continue;
      }
      book.ask(line.text);
      this.weighInterruption(line);
      const waits = dice.whole(REACTS_S.from, REACTS_S.to) / 60;
      const answer = cook.answer(line.text);
      if (!answer) book.answers.push({ kind: kindOfQuestion(line.text), is: "left", text: "" });
      if (answer) this.later(waits, () => this.give(answer));
    }
  }

  private heardAlarm(text: string): void {
    const { book } = this.parts;
    if (book.lost && text.endsWith("the time is full.")) book.fullWhileLost = true;
    if (this.alarms.has(text)) return;
    this.alarms.add(text);
    if (this.parts.dice.chance(ANSWERS_ALARM)) this.later(0.5, () => this.say("got it"));
  }

  private give(answer: NonNullable<ReturnType<HomeCook["answer"]>>): void {
    const { book, world } = this.parts;
    book.answers.push({ kind: answer.kind, is: answer.is, text: answer.text });
    // What was asked of a name before another order says nothing of what was begun by that.
    if (answer.is === "true" && answer.kind !== "variety")
      for (const topic of answer.topics) book.truthTold(topic);
    if (answer.is === "open") book.falsely(answer.topics, "hedged");
    if (answer.is.startsWith("false")) {
      const excuse = answer.is === "false by reflex" ? "reflex" : "good faith";
      const { kind, topics } = answer;
      const wrong = kind === "end" ? topics.filter((one) => world.wrongs.includes(one)) : topics;
      book.falsely(wrong, excuse);
    }
    this.say(answer.text);
  }

  /** A program that asks nothing takes for granted what it would have asked. */
  private answerAsHoped({ text }: Line): void {
    const words = this.parts.cook.asHoped(text);
    this.later(0.1, () => this.say(words));
  }

  /** A question in the midst of a process that no ideal run asks there. */
  private weighInterruption({ text }: Line): void {
    const { book, world, cook } = this.parts;
    const kind = kindOfQuestion(text);
    if (this.stage("process")?.state !== "running") return;
    if (ROUTINE.has(kind) || FOLLOWS.has(kind)) return;
    const right = !world.kept || SPEAKS_OF[kind].some((topic) => world.wrongs.includes(topic));
    const was = right && (this.stove.wrongSinceBoil || !world.kept);
    book.interruptions.push({ text, right: was });
    cook.interrupted(was);
  }

  play(): void {
    this.hands.begin();
    this.listen();
    let endsAt: number | undefined;
    while (this.minutes < (endsAt ?? MOST_MINUTES) && !this.hands.gaveUp) {
      this.step(endsAt === undefined ? this.pace() : OVERNIGHT_STEP_S);
      const { over } = this.parts.program;
      if (over && endsAt === undefined) {
        this.tellings.at("late");
        endsAt = this.minutes + AFTERWARDS_MINUTES;
      }
    }
  }

  private pace(): number {
    const { world } = this.parts;
    if (this.hands.idles) return this.due.length > 0 ? QUIET_STEP_S : OVERNIGHT_STEP_S;
    return world.loaded ? BUSY_STEP_S : QUIET_STEP_S;
  }

  private step(seconds: number): void {
    const { program, world } = this.parts;
    program.pass(seconds);
    world.pass(seconds);
    this.listen();
    if (this.stage("process")?.boils) this.parts.book.lost = false;
    this.stove.pass();
    this.sayWhatIsDue();
    this.hands.act();
    this.chatter();
  }

  private sayWhatIsDue(): void {
    this.due.sort((a, b) => a.atMinute - b.atMinute);
    while (this.due[0] && this.due[0].atMinute <= this.minutes) this.due.shift()?.say();
  }

  private chatter(): void {
    const { dice, assumed, book, program, chatter } = this.parts;
    if (this.hands.idles || this.minutes - this.chatteredAt < 20) return;
    this.chatteredAt = this.minutes;
    if (!dice.chance(assumed.chatters)) return;
    const text = dice.pick(chatter);
    this.write(`> ${text}`);
    book.chatter.push({ text, kept: program.told(text) });
    this.listen();
  }
}
