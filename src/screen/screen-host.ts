/** What the screen and the plain lines need from the kitchen they show. */
import type { LabeledKey, Line, ScreenParts, View } from "../ports/view.ts";
import type { Outlet } from "./outlet.ts";

export type ScreenHost = {
  /** The conversation, the oldest first; it grows at its end. */
  readonly lines: readonly Line[];
  /** Calls back whenever anything happened; the function returned stops that. */
  onChange(listener: () => void): () => void;
  /** Kitchen time to show, ms. */
  now(): number;
  /** All that is shown at this moment. */
  view(parts: ScreenParts): View;
  /** The labeled keys that mean something at this moment. */
  labeledKeys(): LabeledKey[];
  /** `14:03`, where the kitchen is. */
  timeOf(wallMs: number): string;
  /** What is running, each in a few words; empty in an empty kitchen. */
  running(): string[];
  /** Names what may not be left alone, so that the program is not stopped; else undefined. */
  needed(): string | undefined;
  /** The lines left in the terminal after closing. */
  farewell(): string[];
  /** True once somebody asked to leave. */
  left(): boolean;
  /** Words typed by the person. */
  hear(words: string): void;
  /** The one key. */
  press(): void;
};

/** The terminal: its keys, its size, and where what is drawn goes. */
export type ScreenIo = {
  stdin: NodeJS.ReadStream & { fd?: number };
  stdout: NodeJS.WriteStream;
  outlet: Outlet;
};

/** How a face ended: a person closed it, or its terminal is gone. */
export type FaceEnd = "closed" | "lost";
