/**
 * Announces what came due while no kitchen was open: over the desk, as a line, a desktop notice,
 * and aloud.
 */
import { Desk } from "../desk/desk.ts";
import type { State } from "../kitchen/state.ts";
import { localDay } from "../kitchen/time.ts";
import type { BellPort } from "../ports/bell.ts";
import type { VoicePort } from "../ports/voice.ts";
import { dayAndTime } from "../review/day-and-time.ts";
import { lineWords } from "../speech/line-words.ts";
import { AND } from "./conversation.ts";
import type { ShowNotice } from "./desktop-notice.ts";
import type { CameDue } from "./open-session.ts";

type AnnouncerParts = {
  print(line: string): void;
  notice: ShowNotice | undefined;
  /** Undefined where nothing is spoken. */
  voice: VoicePort | undefined;
  bell: BellPort;
};

type Announcement = {
  told: readonly CameDue[];
  hushed: boolean;
  wallMs: number;
  zone: State["zone"];
};

export class Announcer {
  readonly parts: AnnouncerParts;
  private readonly desk = new Desk();

  constructor(parts: AnnouncerParts) {
    this.parts = parts;
  }

  /** Prints what the desk makes of it, shows and speaks it, and rings where neither works. */
  async announce({ told, hushed, wallMs, zone }: Announcement): Promise<void> {
    const { print, notice, voice, bell } = this.parts;
    const moment = { now: wallMs, day: localDay(wallMs, zone), ringing: [] };
    for (const line of this.desk.decide(told, moment)) {
      const text = lineWords(line)
        .replace(/[\p{Cc}\u2028\u2029]+/gu, " ")
        .trim();
      print(`${dayAndTime(wallMs, zone)}  ${text}`);
      const { guards = false } = line;
      const rank = line.rank === "alarm" ? "alarm" : "prompt";
      const aloud = !hushed || guards;
      if (aloud) voice?.say({ rank, text, key: line.keys.join(AND), guards });
      const shown = (await notice?.("Brinebell", text)) ?? false;
      if (!shown && aloud && !voice) bell.ring();
    }
  }
}
