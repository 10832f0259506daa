import { tell } from "../../session/tell/tell-client.ts";
import { CALLS } from "../call/calls.ts";
import { isOn, parseOptions } from "../call/options.ts";

/** Where the kitchen's data is, and where output goes. */
type TellIo = {
  folder: string;
  out: (line: string) => void;
  err: (line: string) => void;
};

const USAGE = 'say it like this: brinebell tell "it\'s boiling"';

/**
 * `brinebell tell "WORDS" [--json]`: passes the words to the kitchen that is open and prints its
 * answer. Returns the exit status: 0 done, 1 refused, 2 no usable words, 3 no kitchen or no answer.
 */
export async function tellCommand(args: readonly string[], io: TellIo): Promise<number> {
  const parsed = parseOptions(args, CALLS.tell.options);
  if (!parsed.ok) {
    io.err(`brinebell tell: ${parsed.error}; ${USAGE}`);
    return 2;
  }
  const { words } = parsed.value;
  const reply = await tell(io.folder, words.join(" "));
  if (!reply.ok) {
    const hint = reply.why === "bad-words" ? `; ${USAGE}` : "";
    io.err(`brinebell tell: ${reply.message}${hint}`);
    return reply.why === "bad-words" ? 2 : 3;
  }
  const { refused, lines } = reply;
  if (isOn(parsed.value, "json")) io.out(JSON.stringify({ refused, lines }));
  else for (const line of lines) io.out(line);
  return refused ? 1 : 0;
}
