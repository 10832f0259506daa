/** What is said and shown in one sitting: every line once, to the voice and to whoever watches. */
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Line, LineKind } from "../ports/view.ts";
import type { SpeechRank, VoicePort } from "../ports/voice.ts";
import type { ReadOut } from "../speech/answers/known.ts";

export type ConversationParts = {
  voice: VoicePort;
  wallMs(): number;
  /** Whether an alarm guards a process, and is said even when hushed. */
  guards(key: string): boolean;
  /** Handed the lines that are new. */
  onLines(lines: Line[]): void;
};

/** So long "next" asks for the next piece of what is read out. */
const READING_PATIENCE_MS = 15 * MINUTE_MS;

/** The key of the alarm that the log is not being written. */
export const LOG_KEY = "log";

export class Conversation {
  private readonly parts: ConversationParts;
  private collected: Line[] = [];
  private lastSaid = "";
  private reading: (ReadOut & { atMs: number }) | undefined;

  constructor(parts: ConversationParts) {
    this.parts = parts;
  }

  /** Forgets lines that were not handed on. */
  begin(): void {
    this.collected = [];
  }

  /** Shows a line without saying it. */
  show(kind: LineKind, text: string): void {
    this.collected.push({ wallMs: Math.round(this.parts.wallMs()), kind, text });
  }

  /** Says a sentence without showing it. */
  speak(rank: SpeechRank, text: string, key?: string): void {
    const guarding =
      rank === "alarm" && key !== undefined && (key === LOG_KEY || this.parts.guards(key));
    this.parts.voice.say({
      rank,
      text,
      ...(key === undefined ? {} : { key }),
      ...(guarding ? { guards: true } : {}),
    });
  }

  say(rank: SpeechRank, text: string, key?: string): void {
    this.show(rank, text);
    this.speak(rank, text, key);
    this.lastSaid = text;
  }

  /** A question: shown as one, said as a prompt. */
  ask(text: string, key?: string): void {
    this.show("asked", text);
    this.speak("prompt", text, key);
    this.lastSaid = text;
  }

  /** Begins to read something out, a piece at a time. */
  read({ pages, paced }: ReadOut): void {
    this.reading = { pages, paced, atMs: this.parts.wallMs() };
    this.readOn();
  }

  /** Says the next piece of what is read out. */
  readOn(): void {
    const [page, ...rest] = this.reading?.pages ?? [];
    this.say("answer", page ?? "That was all.");
    const atMs = this.parts.wallMs();
    this.reading =
      this.reading && rest.length > 0 ? { ...this.reading, pages: rest, atMs } : undefined;
  }

  /** No more of it is read out. */
  stopReading(): void {
    this.reading = undefined;
  }

  /** Whether there is more to read out; and whether the cook's "next" asks for it. */
  get toRead(): { paced: boolean } | undefined {
    const late = this.reading && this.parts.wallMs() - this.reading.atMs > READING_PATIENCE_MS;
    return late ? undefined : this.reading;
  }

  refuse(reason: string): void {
    this.show("refused", reason);
    this.speak("answer", reason);
    this.lastSaid = reason;
  }

  /** Says the last thing once more, slower or louder from now on where that was asked. */
  repeat(manner: { slower?: boolean; louder?: boolean }): void {
    if (manner.slower) this.parts.voice.adjust({ rate: 0.75 });
    if (manner.louder) this.parts.voice.adjust({ volume: 1.5 });
    this.say("answer", this.lastSaid || "I have not said anything yet.");
  }

  /** Takes back what waits or is being said under a key. */
  cancel(key: string): void {
    this.parts.voice.cancel(key);
  }

  hush(on: boolean): void {
    this.parts.voice.hush(on);
  }

  /** Hands on the lines since the last time, and gives them back. */
  flush(): Line[] {
    const lines = this.collected;
    this.collected = [];
    this.parts.onLines(lines);
    return lines;
  }
}

/** What is answered while the disk refuses must not say that anything was written down. */
export function withoutClaims(answer: string): string {
  const sentences = answer.split(/(?<=[.!?]) /);
  return sentences.filter((one) => !/\b(log|written|noted)\b/i.test(one)).join(" ");
}
