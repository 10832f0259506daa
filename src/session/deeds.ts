/**
 * Carries out what is done: it is written down first, then answered, then its consequences are
 * said.
 */

import { agenda } from "../kitchen/agenda.ts";
import { latestCheck } from "../kitchen/day/checks.ts";
import { CarriedOut } from "../kitchen/decide/carried-out.ts";
import { OWN_COMMAND } from "../kitchen/decide/decide-corrections.ts";
import { wake } from "../kitchen/decide/wake.ts";
import type { DatedFact } from "../kitchen/events.ts";
import type { State } from "../kitchen/state.ts";
import type { Library } from "../recipe/library.ts";
import { type Acknowledged, acknowledgement, noted } from "../speech/acknowledge.ts";
import { dueSentence } from "../speech/due-sentences.ts";
import { type Conversation, withoutClaims } from "./conversation.ts";
import { type LogWriter, NOT_RECORDED } from "./log-writer.ts";
import { Outlook } from "./time/outlook.ts";
import { answeredWants, dueWants, reckoned, speaksOfAltitude, turnWants } from "./wants.ts";

type DeedsParts = {
  state: State;
  library: Library;
  log: LogWriter;
  talk: Conversation;
};

export class Deeds {
  private readonly parts: DeedsParts;
  private readonly outlook = new Outlook();

  constructor(parts: DeedsParts) {
    this.parts = parts;
  }

  /**
   * What was decided, and what the kitchen does of its own accord after it.
   * @param answers false where it is answered elsewhere.
   */
  decided(facts: readonly DatedFact[], cmd: string, now: number, answers: boolean): void {
    const { state, library, log } = this.parts;
    const done = new CarriedOut(state, log.mark(cmd)).add(facts).follow(now, library);
    this.written(done, now, answers ? noted(state, facts) : undefined);
  }

  /** What was seen: by a probe, by the clocks. */
  seen(facts: readonly DatedFact[], cmd: string, now: number): void {
    const { state, log } = this.parts;
    this.written(new CarriedOut(state, log.mark(cmd)).add(facts), now);
  }

  private written(done: CarriedOut, now: number, otherwise?: Acknowledged): void {
    const { state, log, talk } = this.parts;
    const { events } = done;
    const before = { ...state };
    const written = log.write(done);
    if (!written) talk.say("answer", NOT_RECORDED);
    const answer = acknowledgement(before, state, events, now);
    const known = answeredWants(state, events);
    this.comeDue(now, before);
    const turns = turnWants(before, state, now);
    const answered = answer.text !== "" || known.length > 0 || turns.length > 0;
    const said = answered ? answer : (otherwise ?? answer);
    const text = written ? said.text : withoutClaims(said.text);
    if (text) talk.want({ rank: "answer", ...said, text });
    for (const want of [...known, ...reckoned(state, events), ...turns]) talk.want(want);
  }

  /** Writes and says what has come due; `before` where a command's own prompts come after it. */
  comeDue(now: number, before?: State): void {
    const { state, library, log, talk } = this.parts;
    if (this.outlook.holds(state, now)) return;
    this.outlook.dealtWith(now);
    const items = new Map(agenda(state, now).map((item) => [item.key, item]));
    for (const item of items.values()) {
      if (item.at > now || item.tellAt <= now) continue;
      talk.desk.putOff(dueSentence(state, item), now, item.tellAt, "night");
    }
    const woken = wake(state, now, library, () => log.mark(log.nextId(now, OWN_COMMAND)));
    if (!woken) return;
    const was = before ?? { ...state };
    log.write(woken);
    // An altitude set from outside may have raised running processes: that is said, unlike other
    // terms.
    const raised = acknowledgement(was, state, woken.events.filter(speaksOfAltitude), now);
    if (raised.text) talk.want({ rank: "alarm", ...raised });
    for (const fact of woken.events) {
      const item = fact.type === "due" ? items.get(fact.key) : undefined;
      const told = item && latestCheck(state, item, now);
      for (const want of told ? dueWants(state, told) : []) talk.want(want);
    }
    if (before) return;
    for (const want of turnWants(was, state, now)) talk.want(want);
  }

  /** The next due moment, in kitchen time; Infinity where nothing will come due. */
  dueAt(now: number): number {
    return this.outlook.dueAt(this.parts.state, now);
  }
}
