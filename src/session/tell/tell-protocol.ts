/**
 * How words reach the kitchen that is open: over a socket only its owner can reach, one whole line
 * in: a message as JSON with its id and its words (or a command, as handed-wish.ts has it), or the
 * words alone. Back come `done` or `refused` on a line of its own, then the answer's lines, then
 * the end. A line that opens a glass keeps the connection, see `../glass/glass-protocol.ts`.
 */
export type TellAnswer = { refused: boolean; lines: string[] };

/** The most characters of words accepted at a time. */
export const LONGEST_WORDS = 2000;

/** The most characters of an answer that are read. */
export const LONGEST_ANSWER = 100_000;

/** The folder inside the data folder that holds the socket; open to its owner alone. */
export const tellFolder = (folder: string): string => `${folder}/tell`;

/** The socket's place, unless the file of `addressFile` names another. */
export const usualAddress = (folder: string): string => `${tellFolder(folder)}/socket`;

/** Names the socket where its usual path is too long, or the system has pipes instead. */
export const addressFile = (folder: string): string => `${tellFolder(folder)}/address`;

/** Says which protocol the kitchen speaks, where it is newer than one of bare lines. */
export const protocolFile = (folder: string): string => `${tellFolder(folder)}/protocol`;

export const PROTOCOL = "2";

/** Begins a line that is a message; people's words never contain this character. */
const MESSAGE_MARK = "\u0002";

/**
 * What is handed over once: a message of an id that was acted on is answered as before, and does
 * nothing again. `again`: it was sent before, and no answer came.
 */
export type Message = { id: string; again: boolean; said: string };

/** How much longer than its words a message may be: its id, and what JSON adds. */
export const ENVELOPE = 200;

export function messageLine(message: Message): string {
  return `${MESSAGE_MARK}${JSON.stringify(message)}`;
}

/** The message in a line; a bare line is one without an id, and one that is none undefined. */
export function messageIn(line: string): Message | undefined {
  if (!line.startsWith(MESSAGE_MARK)) return { id: "", again: false, said: line };
  try {
    const { id, again, said } = JSON.parse(line.slice(MESSAGE_MARK.length));
    const fine = typeof id === "string" && id.length <= 64 && typeof said === "string";
    return fine ? { id, again: again === true, said } : undefined;
  } catch {
    return undefined;
  }
}

/** Turns escape sequences, line ends and marks that reverse text into spaces. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]+/gu, " ")
    .trim();
}

export function answerText({ refused, lines }: TellAnswer): string {
  return `${[refused ? "refused" : "done", ...lines.map(oneLine)].join("\n")}\n`;
}

/** The answer in what the kitchen sent; undefined where it is not one, or incomplete. */
export function answerFrom(text: string): TellAnswer | undefined {
  const [status, ...lines] = text.split("\n");
  if ((status !== "done" && status !== "refused") || lines.pop() !== "") return undefined;
  return { refused: status === "refused", lines: lines.map(oneLine) };
}
