/** A microphone with a recognizer that hears what it is told to, for rehearsals. */
import type { EarsEvents, EarsGrammar, EarsPort, HeardWords } from "../../ports/ears.ts";

const GONE = "The microphone gives nothing: it is gone. Typing goes on.";

export class MadeUpEars implements EarsPort {
  /** What is listened for; undefined before the start and after the end. */
  grammar: EarsGrammar | undefined;
  private readonly events: EarsEvents;
  private deaf = false;
  private gone: boolean;

  /** @param gone true where there is no microphone to begin with. */
  constructor(events: EarsEvents, gone: boolean) {
    this.events = events;
    this.gone = gone;
  }

  start(grammar: EarsGrammar): void {
    this.grammar = grammar;
    if (this.gone) this.events.onProblem(GONE);
  }

  expect(grammar: EarsGrammar): void {
    this.grammar = grammar;
  }

  deafen(speaking: boolean): void {
    this.deaf = speaking;
  }

  stop(): Promise<void> {
    this.grammar = undefined;
    return Promise.resolve();
  }

  /** Unplugs the microphone, or plugs it in; reported once each. */
  unplug(gone: boolean): void {
    if (gone === this.gone) return;
    this.gone = gone;
    if (!this.grammar) return;
    if (gone) this.events.onProblem(GONE);
    else this.events.onRecovered?.();
  }

  /** Hears words, unless it is gone, or Brinebell speaks; true where it heard them. */
  hears(heard: Pick<HeardWords, "text" | "confidence" | "orElse">, wallMs: number): boolean {
    if (!this.grammar || this.gone || this.deaf) return false;
    this.events.onHeard({ ...heard, heardAtMs: wallMs, delayMs: 0 });
    return true;
  }
}
