/** When a cook tells what is wrong that no stove shows, and what the program keeps of it. */
import type { DayFlow } from "./day-flow.ts";
import { type Mishap, SPOKEN_OF } from "./mishaps.ts";
import type { Topic } from "./wordings.ts";

export type Moment = "prep" | "fill" | "load" | "process" | "out" | "late";

const MOMENTS: Partial<Record<Mishap, readonly Moment[]>> = {
  "weak-vinegar": ["prep", "process", "late"],
  "no-acid": ["fill", "process", "late"],
  "wrong-food": ["prep", "fill", "process"],
  "jars-stood": ["load", "process"],
  "filled-cold": ["fill"],
  "used-lids": ["fill", "process"],
  "taken-back": ["process", "late"],
  overfull: ["fill", "process"],
  unsterile: ["fill"],
  "gauge-high": ["prep", "process"],
  unvented: ["process"],
  "altitude-off": ["process", "late"],
  "early-off": ["out"],
  "forced-cooling": ["out"],
};

export class Tellings {
  private readonly flow: DayFlow;
  private readonly planned = new Map<Mishap, Moment>();

  constructor(flow: DayFlow) {
    this.flow = flow;
    const { dice, mishaps, cook } = flow.parts;
    for (const mishap of mishaps) {
      const moments = MOMENTS[mishap];
      if (!moments) continue;
      const moment = dice.pick(moments);
      this.planned.set(mishap, moment);
      // Until it is remembered it is taken for right.
      if (mishap === "taken-back" || moment === "late") cook.mistaken.add(SPOKEN_OF[mishap]);
    }
  }

  /** Tells, a little later, what belongs to this moment of the day. */
  at(moment: Moment): void {
    for (const [mishap, when] of this.planned) {
      if (when !== moment) continue;
      this.planned.delete(mishap);
      const wait = moment === "process" ? 4 : moment === "late" ? 90 : 0.4;
      this.flow.later(wait, () => this.tell(SPOKEN_OF[mishap]));
    }
  }

  tell(topic: Topic): boolean {
    const { cook, book, program, world, keepsLines } = this.flow.parts;
    cook.mistaken.delete(topic);
    const words = cook.tell(topic);
    if (!words) return false;
    if (keepsLines) book.lines.push(`${this.flow.minutes.toFixed(1)} > ${words.text}`);
    const inProcess = this.flow.stage("process")?.state === "running";
    const kept = program.told(words.text, topic);
    book.told.push({ topic, ...words, kept, inProcess });
    const still = this.flow.stage("process")?.boils;
    if (inProcess && kept === "loss" && still === false) book.lost = true;
    if (words.strength !== "trace") book.truthTold(topic);
    if (topic === "altitude" && program.altitudeFt === world.altitudeFt) world.altitudeIsKnown();
    this.flow.listen();
    return true;
  }
}
