/** "No, the Dragon Tongue": what was done last is moved to what it was really about. */
import type { Command } from "../kitchen/command.ts";
import { decide } from "../kitchen/decide/decide.ts";
import { movedTo } from "../kitchen/decide/decide-corrections.ts";
import type { Deciding, Decision } from "../kitchen/decide/decision.ts";

/** The last command, and the id it was written under. */
export type LastDone = { command: Command; cmd: string };

/** Undefined where the wish is something else. */
export function moved(
  { state, now, library, wish }: Deciding,
  last: LastDone | undefined,
): Decision | undefined {
  const { command } = wish;
  if (command.intent !== "instead") return undefined;
  return movedTo({ state, now, library, wish: { ...wish, command } }, last, (without, meant) =>
    decide(without, meant, now, library),
  );
}
