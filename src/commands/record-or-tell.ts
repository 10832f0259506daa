/** Writes something down from the command line, or hands it to the kitchen that is open. */
import type { Command } from "../kitchen/command.ts";
import { inShortSession } from "../session/short-session.ts";
import { tell } from "../session/tell-client.ts";
import { type CommandResult, failed } from "./command-result.ts";
import type { ReviewIo } from "./review-io.ts";

export type Recorded = { ok: true; lines: string[] } | { ok: false; result: CommandResult };

/**
 * Carries a command out in a sitting of a moment. Where a kitchen is open, `words` say the same to
 * it; without words the person is told to close it.
 */
export async function recordOrTell(
  name: string,
  io: ReviewIo,
  command: Pick<Command, "intent" | "slots">,
  words: string | undefined,
  chosen?: string,
): Promise<Recorded> {
  const text = words ?? command.intent;
  const wish = { command: { ...command, confidence: 1, text } as Command };
  const answer = inShortSession(io.folder, await io.library(), io.version, (session) => {
    const reply = session.carry(chosen ? { ...wish, chosen: [{ owner: chosen }] } : wish);
    return { ...reply, refused: reply.refused || session.waitingFor !== undefined };
  });
  if (!answer.ok && answer.why === "held") return toldIt(name, io, answer.message, words);
  if (!answer.ok) return { ok: false, result: failed(3, `${name}: ${answer.message}`) };
  return outcome(name, answer.value);
}

async function toldIt(
  name: string,
  io: ReviewIo,
  held: string,
  words: string | undefined,
): Promise<Recorded> {
  if (words === undefined) {
    const message = `${name}: ${held}; close that kitchen and say it again`;
    return { ok: false, result: failed(1, message) };
  }
  const reply = await tell(io.folder, words);
  if (!reply.ok) return { ok: false, result: failed(3, `${name}: ${reply.message}`) };
  return outcome(name, reply);
}

function outcome(name: string, reply: { refused: boolean; lines: string[] }): Recorded {
  if (!reply.refused) return { ok: true, lines: reply.lines };
  const why = reply.lines.join(" ") || "that cannot be";
  return { ok: false, result: failed(1, `${name}: ${why}`) };
}
