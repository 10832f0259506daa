/** What a session is made of: its connections to the outside, and its starting point. */

import type { DeskDecision } from "../desk/want.ts";
import type { Journal } from "../journal/journal.ts";
import type { State } from "../kitchen/state.ts";
import type { Clock } from "../ports/clock.ts";
import type { Disk } from "../ports/disk.ts";
import type { Line } from "../ports/view.ts";
import type { VoicePort } from "../ports/voice.ts";
import type { Library } from "../recipe/library.ts";
import type { KitchenTimeline } from "./time/kitchen-timeline.ts";
import type { TimeWatch } from "./time/time-watch.ts";

export type SessionParts = {
  clock: Clock;
  disk: Disk;
  folder: string;
  voice: VoicePort;
  library: Library;
  journal: Journal;
  state: State;
  timeline: KitchenTimeline;
  watch: TimeWatch;
  /** The longest time between two looks at the clocks, ms; shorter where something must be kept. */
  lookMs(kept: boolean): number;
  /** False where nobody is there to be asked. */
  asks: boolean;
  /** Does a piece of work once what is being answered has been answered. */
  later(work: () => void): void;
  /** Milliseconds since some fixed moment, the outer limit of a search for a plan. */
  elapsedMs(): number;
  /** Called after anything changed, with the new lines. */
  onLines(lines: Line[]): void;
  /** Receives what the desk decided, for programs that print it. */
  onDecided?(decisions: DeskDecision[]): void;
};
