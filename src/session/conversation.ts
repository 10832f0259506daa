/** What is said and shown in one session: all of it passes the desk. */
import { Desk } from "../desk/desk.ts";
import type { DeskDecision, Rank, Want, SpokenLine as WordedLine } from "../desk/want.ts";
import { MINUTE_MS } from "../kitchen/time.ts";
import type { Line, LineKind } from "../ports/view.ts";
import type { SpeechRank, VoicePort } from "../ports/voice.ts";
import type { ReadOut } from "../speech/answers/known.ts";
import { lineWords } from "../speech/line-words.ts";

/** The moment in which something is said. */
export type TalkMoment = {
  now: number;
  wallMs: number;
  day: string;
  /** It is night and nobody is up: kitchen time until when. */
  asleepUntil?: number | undefined;
  /** Only short forms are wanted. */
  short: boolean;
  /** Only alarms that guard a process are spoken. */
  hushed: boolean;
};

type ConversationParts = {
  voice: VoicePort;
  moment(): TalkMoment;
  /** Says quantities in the units of the kitchen. */
  worded(text: string): string;
  /** Everything that rings, as it is said now. */
  ringing(): Want[];
  /** Receives the new lines. */
  onLines(lines: Line[]): void;
  /** Receives what the desk decided. */
  onDecided?(decisions: DeskDecision[]): void;
};

/** For this long, "next" asks for the next piece of what is being read out. */
const READING_PATIENCE_MS = 15 * MINUTE_MS;

/** The key of the alarm for a log that is not being written. */
export const LOG_KEY = "log";

/** Between the keys of alarms that are said in one breath. */
export const AND = " + ";

const SPOKEN_AS: Record<Rank, SpeechRank> = {
  alarm: "alarm",
  answer: "answer",
  "read-back": "question",
  question: "question",
  prompt: "prompt",
  news: "prompt",
};

const SHOWN_AS: Record<Rank, LineKind> = {
  alarm: "alarm",
  answer: "answer",
  "read-back": "asked",
  question: "asked",
  prompt: "prompt",
  news: "prompt",
};

export class Conversation {
  private readonly parts: ConversationParts;
  readonly desk = new Desk();
  private collected: Line[] = [];
  private wants: Want[] = [];
  private lastSaid = "";
  private hushed = false;
  /** The alarms that were said last, in one breath. */
  lastAlarms: readonly string[] = [];
  private reading: (ReadOut & { atMs: number }) | undefined;

  constructor(parts: ConversationParts) {
    this.parts = parts;
  }

  /** Shows what was heard, or a notice that is not spoken. */
  show(kind: "heard" | "notice", text: string): void {
    this.collected.push({ wallMs: Math.round(this.parts.moment().wallMs), kind, text });
  }

  /** Passes a want to the desk. */
  want(want: Want): void {
    this.wants.push(want);
  }

  say(rank: Rank, text: string, key?: string): void {
    this.want({ rank, text, ...(key === undefined ? {} : { key }) });
  }

  refuse(reason: string): void {
    this.want({ rank: "answer", text: reason, refuses: true });
  }

  /** Begins to read something out, a piece at a time. */
  read({ pages, paced }: ReadOut): void {
    this.reading = { pages, paced, atMs: this.parts.moment().wallMs };
    this.readOn();
  }

  /** Says the next piece of what is read out. */
  readOn(): void {
    const [page, ...rest] = this.reading?.pages ?? [];
    this.say("answer", page ?? "That was all.");
    const atMs = this.parts.moment().wallMs;
    this.reading =
      this.reading && rest.length > 0 ? { ...this.reading, pages: rest, atMs } : undefined;
  }

  /** Stops reading out. */
  stopReading(): void {
    this.reading = undefined;
  }

  /** Whether there is more to read out; and whether the cook's "next" asks for it. */
  get toRead(): { paced: boolean } | undefined {
    const { reading } = this;
    const late = reading && this.parts.moment().wallMs - reading.atMs > READING_PATIENCE_MS;
    return late ? undefined : reading;
  }

  /** Says the last thing once more, slower or louder from now on where that was asked. */
  repeat(manner: { slower?: boolean; louder?: boolean }): void {
    if (manner.slower) this.parts.voice.adjust({ rate: 0.75 });
    if (manner.louder) this.parts.voice.adjust({ volume: 1.5 });
    this.say("answer", this.lastSaid || "I have not said anything yet.");
  }

  hush(on: boolean): void {
    this.hushed = on;
    this.parts.voice.hush(on);
  }

  /** Says and shows what the desk makes of all that is wanted; the lines since the last time. */
  flush(): Line[] {
    const { moment, ringing, onLines, onDecided } = this.parts;
    const { wallMs, hushed, ...at } = moment();
    // The answer that ends a hush is spoken, and so is the one that begins it.
    if (!hushed) this.hush(false);
    const rings = ringing();
    const wants = this.wants;
    this.wants = [];
    for (const line of this.desk.decide(wants, { ...at, ringing: rings })) {
      this.put(line, Math.round(wallMs));
    }
    const live = new Set(rings.map(({ key }) => key));
    if (this.lastAlarms.length > 0 && !this.lastAlarms.some((key) => live.has(key))) {
      this.parts.voice.cancel(this.lastAlarms.join(AND));
      this.lastAlarms = [];
    }
    const lines = this.collected;
    this.collected = [];
    onLines(lines);
    onDecided?.(this.desk.decisions());
    return lines;
  }

  private put(line: WordedLine, wallMs: number): void {
    const { rank, keys, guards = false, refuses, instructs } = line;
    const text = this.parts.worded(lineWords(line));
    const kind = refuses ? "refused" : SHOWN_AS[instructs ? "prompt" : rank];
    const unspoken = this.hushed && !(rank === "alarm" && guards);
    const more = {
      ...(unspoken ? { unspoken } : {}),
      ...(instructs ? { answers: instructs } : {}),
    };
    this.collected.push({ wallMs, kind, text, ...more });
    const key = keys.length > 0 ? { key: keys.join(AND) } : {};
    this.parts.voice.say({ rank: SPOKEN_AS[rank], text, ...key, ...(guards ? { guards } : {}) });
    this.lastSaid = text;
    if (rank === "alarm" && keys.some((one) => one !== LOG_KEY)) this.lastAlarms = keys;
    // A short form keeps its full text for a person who asks for more.
    if (line.whole !== undefined && !this.reading) {
      this.reading = { pages: [this.parts.worded(line.whole)], paced: false, atMs: wallMs };
    }
  }
}

/** What is answered while the disk refuses must not say that anything was written down. */
export function withoutClaims(answer: string): string {
  const sentences = answer.split(/(?<=[.!?]) /);
  return sentences.filter((one) => !/\b(log|written|noted)\b/i.test(one)).join(" ");
}
