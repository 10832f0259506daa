/** What the kitchen says of its own accord: turns that came, what is due, alarms and their end. */

import type { DueItem } from "../kitchen/agenda.ts";
import type { DatedFact } from "../kitchen/events.ts";
import { isLoad } from "../kitchen/owners.ts";
import type { State } from "../kitchen/state.ts";
import type { SpeechRank } from "../ports/voice.ts";
import { dueSentence } from "../speech/due-sentences.ts";
import { newTurns, prompt } from "../speech/prompts.ts";
import { Alarms, itemOf } from "./alarms.ts";
import type { Conversation } from "./conversation.ts";

export class Announcements {
  private readonly alarms = new Alarms();
  private readonly talk: Conversation;
  private readonly state: State;

  constructor(talk: Conversation, state: State) {
    this.talk = talk;
    this.state = state;
  }

  /** The alarm that was spoken last, by its key. */
  get lastAlarm(): string | undefined {
    return this.alarms.last;
  }

  /** When an alarm is to be said again; Infinity where none rings. */
  nextRepeatAt(): number {
    const at = this.state.ringing.length > 0 ? this.alarms.nextAt(this.state) : undefined;
    return at ?? Number.POSITIVE_INFINITY;
  }

  /** Prompts the stages whose turn came since an earlier state. */
  turns(before: State, now: number): void {
    for (const { owner, run } of newTurns(before, this.state, now)) {
      if (!isLoad(owner) && owner.state === "held") continue;
      const text = prompt(this.state, owner, run, now);
      if (text) this.talk.say("prompt", text, `${owner.id}/${run.id}`);
    }
  }

  /** Says what came due; an alarm is taken up to be said again until someone answers it. */
  due(item: DueItem, now: number): void {
    const text = dueSentence(this.state, item);
    if (!text) return;
    if (item.rank === "alarm") this.alarms.spoke(item.key, text, now);
    this.talk.say(item.rank, text, item.key);
  }

  /** What opening found; an alarm's repeats say what is due, not how long ago that was. */
  opening(lines: readonly { rank: SpeechRank; text: string; key?: string }[], now: number): void {
    for (const { rank, text, key } of lines) {
      this.talk.say(rank, text, key);
      if (rank !== "alarm" || key === undefined || !this.state.ringing.includes(key)) continue;
      this.alarms.spoke(key, this.sentence(key, now), now);
    }
  }

  /** Says again what still rings and was not answered. */
  repeats(now: number): void {
    for (const { key, text } of this.alarms.repeats(this.state, now)) {
      this.talk.say("alarm", text, key);
    }
  }

  /** Names the alarms that were answered. */
  answered(facts: readonly DatedFact[], now: number): void {
    for (const fact of facts) {
      const [key] = fact.type === "acknowledged" ? fact.keys : [];
      if (key !== undefined) this.talk.say("answer", `Got it: ${this.sentence(key, now)}`);
    }
  }

  /** Alarms that no longer ring are not said any more. */
  quietened(): void {
    const { last } = this.alarms;
    if (last !== undefined && !this.state.ringing.includes(last)) this.talk.cancel(last);
  }

  private sentence(key: string, now: number): string {
    return dueSentence(this.state, itemOf(this.state, key, this.state.due[key] ?? now));
  }
}

/** Terms that are told of at once, whoever set them. */
export function speaksOfAltitude(fact: DatedFact): boolean {
  return fact.type === "load-terms" || fact.type === "altitude-doubt";
}
