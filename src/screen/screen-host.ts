/** What the screen and the plain lines need of the kitchen they show; the session fits it. */
import type { State } from "../kitchen/state.ts";
import type { PlannedTask } from "./planned-lanes.ts";

export type LineKind = "heard" | "answer" | "prompt" | "alarm" | "asked" | "refused" | "notice";
/** One line of the conversation, at a wall instant. */
export type ShownLine = { wallMs: number; kind: LineKind; text: string };

export type ScreenSession = {
  readonly state: State;
  now(): number;
  readonly notRecorded: boolean;
  /** Tasks of the day's plan, in wall time. */
  readonly plannedTasks?: readonly PlannedTask[];
  readonly waitingFor: { text: string; expects: string; choices: { label: string }[] } | undefined;
  hear(text: string): { refused: boolean; lines: string[] };
  press(): { refused: boolean; lines: string[] };
};

export type ScreenHost = {
  readonly session: ScreenSession;
  readonly lines: ShownLine[];
  /** Tells of anything that changed; the function returned stops that. */
  onChange(listener: () => void): () => void;
  status(): { listening?: string; voice?: string };
  close(): void | Promise<void>;
};

export type ScreenIo = { stdin: NodeJS.ReadStream; stdout: NodeJS.WriteStream };
