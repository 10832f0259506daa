/** Writes something down from the command line, or passes it to the kitchen that is open. */
import type { Command, Ref } from "../../kitchen/command.ts";
import type { Wish } from "../../kitchen/decide/decision.ts";
import type { HandedIntent } from "../../kitchen/facts/handed-slots.ts";
import { inShortSession } from "../../session/short-session.ts";
import { hand } from "../../session/tell/tell-client.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { type KitchenRead, type ReviewIo, withNotices } from "../record/review-io.ts";

/** What was answered, and what the log was found to lack. */
type Recorded =
  | { ok: true; lines: string[]; found: KitchenRead }
  | { ok: false; result: CommandResult };

/**
 * Carries out a command in a momentary session, or passes it to the kitchen that is open, which
 * shows `words` for it. `chosen` is the batch it is about.
 */
export async function recordOrTell(
  name: string,
  io: ReviewIo,
  command: Command<HandedIntent>,
  words: string,
  chosen?: Ref,
): Promise<Recorded> {
  const wish: Wish = { command };
  if (chosen !== undefined) wish.chosen = [chosen];
  const answer = inShortSession(io.folder, await io.library(), io.version, (session, opened) => {
    const reply = session.carry({ wish, words });
    // What came due while nobody was there is announced now, and will not be announced again.
    const told = opened.told.map(({ text }) => text);
    const refused = reply.refused || session.waitingFor !== undefined;
    return { refused, lines: [...told, ...reply.lines] };
  });
  if (answer.ok) return outcome(name, answer.value, answer);
  if (answer.why !== "held") {
    return { ok: false, result: failed(3, `${name}: ${answer.message}`) };
  }
  const reply = await hand(io.folder, { wish, words });
  if (reply.ok) return outcome(name, reply, { notices: [], incomplete: false });
  return { ok: false, result: failed(3, `${name}: ${reply.message}`) };
}

function outcome(
  name: string,
  reply: { refused: boolean; lines: string[] },
  found: KitchenRead,
): Recorded {
  if (!reply.refused) return { ok: true, lines: reply.lines, found };
  const why = reply.lines.join(" ") || "that cannot be";
  return { ok: false, result: withNotices(failed(1, `${name}: ${why}`), name, found) };
}
