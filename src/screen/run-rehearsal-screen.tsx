/** A rehearsal on the real screen: the same session against a made-up clock, sped up to watch. */
import {
  FRAME_MS,
  type RehearsalHooks,
  RehearsalPace,
  type WatchedRehearsal,
} from "./rehearsal-pace.ts";
import { runScreen } from "./run-screen.tsx";
import type { ScreenIo } from "./screen-host.ts";

const HOLD_END_MS = 3000;

/**
 * Plays a rehearsal on the screen and resolves when it is over or the person ends it with q or
 * Ctrl-C. Words and keys go in as in a real kitchen.
 * @param speed made-up against real time; undefined for a pace of its own, about a minute for a
 *   day.
 */
export async function runRehearsalScreen(
  make: (hooks: RehearsalHooks) => WatchedRehearsal,
  io: ScreenIo,
  speed?: number,
): Promise<void> {
  const pace = new RehearsalPace(make, speed);
  const played = pace.play(HOLD_END_MS);
  await runScreen(pace.host, io, { rehearsal: true, ended: played, everyMs: FRAME_MS });
  pace.stop();
  await played;
}
