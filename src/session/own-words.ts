/** The person's own words in the talk: learned by a yes, dropped by a no. */
import type { Command } from "../kitchen/command.ts";
import { takeBack } from "../kitchen/decide/decide-corrections.ts";
import { forgotten } from "../kitchen/decide/decide-words.ts";
import type { Decision, Present } from "../kitchen/decide/decision.ts";
import type { DatedFact } from "../kitchen/events.ts";
import type { OwnWords } from "../kitchen/own-words.ts";
import { answerKind, PATIENCE_MS, shownQuestion } from "../kitchen/questions/questions.ts";
import type { Context } from "../language/context.ts";
import type { Heard } from "../language/heard.ts";
import { learnable } from "../language/own-words.ts";
import { type Pending, SURE_ENOUGH } from "./dialogue.ts";
import type { HeardStep } from "./hearing.ts";

type Taught = Omit<OwnWords, "at">;

export class OwnWordsTalk {
  private asked: { question: Pending; taught: Taught } | undefined;
  private acted: { memory: OwnWords; cmd: string | undefined; at: number } | undefined;

  /** A question about what words mean is asked: a yes to it would teach them. */
  asks(
    heard: Heard,
    [step]: readonly HeardStep[],
    said: { text: string; confidence: number },
    context: Context,
  ): void {
    if (heard.reading !== "ask" || !step?.question || said.confidence < SURE_ENOUGH) return;
    const taught = learnable(said.text, step.command, context);
    if (taught) this.asked = { question: step.question, taught };
  }

  /** What a yes to a question teaches, where it is followed. */
  taught(question: Pending, outcome: Decision, now: number): DatedFact[] {
    const { asked } = this;
    if (asked?.question !== question || outcome.kind === "refused") return [];
    return [{ type: "words-learned", ...asked.taught, t: now }];
  }

  /** What was done by a memory, under which id; without one where nothing was written down. */
  did(memory: OwnWords | undefined, cmd: string | undefined, now: number): void {
    this.acted = memory && { memory, cmd, at: now };
  }

  /**
   * What a no, or an undo, right after an act comes to: the memory is dropped, and a no that
   * answers no question takes the act back. Undefined where it says nothing of the sort.
   */
  contradicted(
    { commands }: Heard,
    open: Pending | undefined,
    present: Present,
  ): { dropped: DatedFact; back?: Decision } | undefined {
    const { acted } = this;
    const [said] = commands;
    if (!acted || commands.length !== 1 || !said || !DISOWNS.has(said.intent)) return undefined;
    const { state, now } = present;
    if (now - acted.at > PATIENCE_MS) return undefined;
    const shown = shownQuestion(state);
    if (said.intent === "no" && !open && shown && answerKind(shown) === "yes-no") return undefined;
    const dropped = forgotten(acted.memory, now);
    if (said.intent !== "no" || open) return { dropped };
    if (acted.cmd === undefined) return { dropped, back: { kind: "done", facts: [] } };
    return { dropped, back: takeBack(present, acted.cmd) };
  }
}

const DISOWNS: ReadonlySet<Command["intent"]> = new Set(["no", "undo"]);
