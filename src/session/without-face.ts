/** The kitchen once its terminal is gone: it goes on as long as somebody waits for what runs. */
import { ringsUnanswered, waitedFor } from "../kitchen/watched.ts";
import type { ShowNotice } from "./desktop-notice.ts";
import type { LiveKitchen } from "./live-kitchen.ts";

/** How long an alarm that nobody answers keeps the kitchen open, ms. */
const LONGEST_RINGING_MS = 60 * 60_000;
const LOOK_MS = 1000;

/** What it needs of the kitchen. */
type Faceless = Pick<LiveKitchen, "session" | "lines" | "onChange" | "glasses">;

type WithoutFace = {
  kitchen: Faceless;
  /** Shows alarms on the desktop, where the system can. */
  notice: ShowNotice | undefined;
  /** Milliseconds of a steady clock. */
  nowMs(): number;
  lookMs?: number;
};

/** True where the kitchen may not be closed because its terminal is gone. */
export function mayNotEnd({ session }: Pick<LiveKitchen, "session">): boolean {
  return waitedFor(session.state) !== undefined || ringsUnanswered(session.state);
}

/**
 * Keeps clocks, log, voice and `tell` going, and resolves once nothing runs that is waited for, no
 * other window looks in, and what rang was answered or has rung for an hour; or when asked to
 * leave. Says aloud that it goes on.
 */
export function goOnWithoutFace({
  kitchen,
  notice,
  nowMs,
  lookMs = LOOK_MS,
}: WithoutFace): Promise<void> {
  const { session } = kitchen;
  const running = waitedFor(session.state) ?? "an alarm rings";
  session.witness(
    [],
    `The terminal is gone; the kitchen goes on without it: ${running}. Open brinebell to see it.`,
  );
  let lastMs = nowMs();
  let rangMs = lastMs;
  const stopListening = kitchen.onChange(noticing(kitchen, notice));
  return new Promise((resolve) => {
    const looking = setInterval(() => {
      const now = nowMs();
      const runs = waitedFor(session.state) !== undefined || kitchen.glasses() > 0;
      if (runs || !ringsUnanswered(session.state)) rangMs = now;
      const rings = ringsUnanswered(session.state) && now - rangMs < LONGEST_RINGING_MS;
      if (!session.left && (runs || rings)) lastMs = now;
      // A moment later, so that whoever spoke last gets an answer.
      if (now - lastMs < lookMs) return;
      clearInterval(looking);
      stopListening();
      resolve();
    }, lookMs);
  });
}

/** Shows alarms on the desktop while no window does. */
function noticing(kitchen: Faceless, notice: ShowNotice | undefined): () => void {
  const shown = new WeakSet<object>(kitchen.lines);
  return () => {
    for (const line of kitchen.lines) {
      if (shown.has(line)) continue;
      shown.add(line);
      if (line.kind === "alarm" && kitchen.glasses() === 0) void notice?.("Brinebell", line.text);
    }
  };
}
