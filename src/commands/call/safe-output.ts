/**
 * The last step before a command's output reaches a terminal: what people said and what recipes
 * contain may include sequences that control it, and none of them get through.
 */

/**
 * Control characters (except line ends and tabs), eight-bit ones included, and marks that reverse
 * text.
 */
const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]|\r(?!\n)/;
const TURN = /[\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/;
const STEERS = new RegExp(`${CONTROL.source}|${TURN.source}`);

function escapedCharacter(character: string): string {
  return `\\u${character.charCodeAt(0).toString(16).padStart(4, "0")}`;
}

/**
 * One line, plain or of JSON, in which whatever could control a terminal is written as an escape.
 */
export function safeLine(line: string): string {
  return STEERS.test(line) ? line.replace(new RegExp(STEERS, "g"), escapedCharacter) : line;
}

/**
 * The same text; in JSON, control sequences are written as escapes, elsewhere they are left out.
 */
export async function safeOutput(text: string): Promise<string> {
  if (!STEERS.test(text)) return text;
  if (/^\s*[{[]/.test(text)) return text.replace(new RegExp(STEERS, "g"), escapedCharacter);
  const { printable } = await import("../../screen/printable.ts");
  return text.replace(/[^\r\n]+|\r(?!\n)/g, printable);
}
