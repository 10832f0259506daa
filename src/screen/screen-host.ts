/** What the screen and the plain lines need of the kitchen they show. */
import type { LabelledKey, Line, ScreenParts, View } from "../ports/view.ts";

export type ScreenHost = {
  /** The conversation, the oldest first; it grows at its end. */
  readonly lines: readonly Line[];
  /** Tells of anything that happened; the function returned stops that. */
  onChange(listener: () => void): () => void;
  /** Kitchen time to show, ms. */
  now(): number;
  /** All that is shown at this moment. */
  view(parts: ScreenParts): View;
  /** The labelled keys that mean something at this moment. */
  labelledKeys(): LabelledKey[];
  /** `14:03`, where the kitchen is. */
  timeOf(wallMs: number): string;
  /** What runs, each in a few words; empty in an empty kitchen. */
  running(): string[];
  /** The lines left in the terminal after closing. */
  farewell(): string[];
  /** True once somebody asked to leave. */
  left(): boolean;
  /** Words typed by the person. */
  hear(words: string): void;
  /** The one key. */
  press(): void;
};

export type ScreenIo = { stdin: NodeJS.ReadStream; stdout: NodeJS.WriteStream };
