/** Announces what came due to whoever is near: as a line, a desktop notice, and aloud. */
import type { State } from "../kitchen/state.ts";
import type { BellPort } from "../ports/bell.ts";
import type { VoicePort } from "../ports/voice.ts";
import { dayAndTime } from "../review/day-and-time.ts";
import type { ShowNotice } from "./desktop-notice.ts";
import type { CameDue } from "./open-session.ts";

export type AnnouncerParts = {
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

/** Prints each, shows and speaks it where possible, and rings where neither works. */
export async function announce(
  { told, hushed, wallMs, zone }: Announcement,
  parts: AnnouncerParts,
): Promise<void> {
  for (const { key, rank, text } of told) {
    const line = text.replace(/[\p{Cc}\u2028\u2029]+/gu, " ").trim();
    parts.print(`${dayAndTime(wallMs, zone)}  ${line}`);
    if (!hushed) parts.voice?.say({ rank, text, key });
    const shown = (await parts.notice?.("Brinebell", line)) ?? false;
    if (!shown && !hushed && !parts.voice) parts.bell.ring();
  }
}
