/**
 * How words reach the kitchen that is open: over a socket only its owner can reach, one line of
 * words (or of a command, as handed-wish.ts has it) in; back come `done` or `refused` on a line of
 * its own, then the answer's lines, then the end.
 */
export type TellAnswer = { refused: boolean; lines: string[] };

/** So many characters of words are taken at a time. */
export const LONGEST_WORDS = 2000;

/** So many characters of an answer are read. */
export const LONGEST_ANSWER = 100_000;

/** The folder inside the data folder that holds the socket; open to its owner alone. */
export const tellFolder = (folder: string): string => `${folder}/tell`;

/** The socket's place, unless the file of `addressFile` names another. */
export const usualAddress = (folder: string): string => `${tellFolder(folder)}/socket`;

/** Names the socket where its usual path is too long, or the system has pipes instead. */
export const addressFile = (folder: string): string => `${tellFolder(folder)}/address`;

/** Escape sequences, line ends and marks that turn text around become spaces. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u2028\u2029\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]+/gu, " ")
    .trim();
}

export function answerText({ refused, lines }: TellAnswer): string {
  return `${[refused ? "refused" : "done", ...lines.map(oneLine)].join("\n")}\n`;
}

/** The answer in what the kitchen sent; undefined where it is none, or not all of it. */
export function answerFrom(text: string): TellAnswer | undefined {
  const [status, ...lines] = text.split("\n");
  if ((status !== "done" && status !== "refused") || lines.pop() !== "") return undefined;
  return { refused: status === "refused", lines: lines.map(oneLine) };
}
