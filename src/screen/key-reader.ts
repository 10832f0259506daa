/**
 * Turns bytes from a terminal into keys: typed text, pasted text, and the few special keys used.
 */

export type KeyName =
  | "enter"
  | "backspace"
  | "delete"
  | "left"
  | "right"
  | "up"
  | "down"
  | "home"
  | "end"
  | "cut-line"
  | "cut-word"
  | "cut-rest"
  | "escape"
  | "interrupt"
  | "end-of-input"
  | "suspend"
  | "repaint"
  | "talk"
  | "page-up"
  | "page-down";

export type Key =
  | { kind: "text"; text: string }
  /** Pasted: its line ends send lines, its blanks are never the one key. */
  | { kind: "paste"; text: string }
  | { kind: "key"; name: KeyName };

const CONTROLS: Record<string, KeyName> = {
  "\r": "enter",
  "\n": "enter",
  "\u007f": "backspace",
  "\b": "backspace",
  "\u0001": "home",
  "\u0005": "end",
  "\u0002": "left",
  "\u0006": "right",
  "\u0010": "up",
  "\u000e": "down",
  "\u0015": "cut-line",
  "\u0017": "cut-word",
  "\u000b": "cut-rest",
  "\u0003": "interrupt",
  "\u0004": "end-of-input",
  "\u001a": "suspend",
  "\u000c": "repaint",
  "\t": "talk",
};

/** Endings of the sequences `ESC [` and `ESC O`. */
const SEQUENCES: Record<string, KeyName> = {
  A: "up",
  B: "down",
  C: "right",
  D: "left",
  H: "home",
  F: "end",
  "1~": "home",
  "7~": "home",
  "4~": "end",
  "8~": "end",
  "3~": "delete",
  "5~": "page-up",
  "6~": "page-down",
};

const PASTE_BEGINS = "\u001b[200~";
const PASTE_ENDS = "\u001b[201~";
/** A paste whose end never comes is dropped at this length. */
const LONGEST_PASTE = 1_000_000;
const CSI = /^\u001b\[([0-?]*[ -/]*[@-~])/;
const UNFINISHED = /^\u001b(?:\[[0-?]*[ -/]*|O)?$/;

/** Takes chunks as they arrive; a sequence cut in two waits for its rest. */
export class KeyReader {
  private pending = "";
  private pasting = false;
  private pasted = "";

  /** True while an Escape may be the key itself or the beginning of a sequence. */
  get waits(): boolean {
    return !this.pasting && this.pending !== "";
  }

  push(chunk: string): Key[] {
    const keys: Key[] = [];
    let rest = this.pending + chunk;
    this.pending = "";
    while (rest !== "") {
      if (this.pasting) rest = this.paste(rest, keys);
      else if (rest.startsWith("\u001b")) rest = this.escape(rest, keys);
      else rest = plain(rest, keys);
    }
    return keys;
  }

  /** What waited was the Escape key itself. */
  settle(): Key[] {
    if (!this.waits) return [];
    this.pending = "";
    return [{ kind: "key", name: "escape" }];
  }

  private paste(rest: string, keys: Key[]): string {
    this.pasted += rest;
    const end = this.pasted.indexOf(PASTE_ENDS);
    if (end < 0 && this.pasted.length < LONGEST_PASTE) return "";
    const text = end < 0 ? this.pasted : this.pasted.slice(0, end);
    const after = end < 0 ? "" : this.pasted.slice(end + PASTE_ENDS.length);
    this.pasting = false;
    this.pasted = "";
    keys.push({ kind: "paste", text });
    return after;
  }

  private escape(rest: string, keys: Key[]): string {
    if (rest.startsWith(PASTE_BEGINS)) {
      this.pasting = true;
      return rest.slice(PASTE_BEGINS.length);
    }
    if (UNFINISHED.test(rest)) {
      this.pending = rest;
      return "";
    }
    const sequence = CSI.exec(rest);
    const ending = sequence?.[1] ?? (rest[1] === "O" ? rest[2] : undefined);
    if (ending === undefined) {
      // A letter with Alt held, or garbage: nothing here uses it.
      return rest.slice(1 + [...rest.slice(1, 3)][0]!.length);
    }
    const name = SEQUENCES[ending];
    if (name) keys.push({ kind: "key", name });
    return rest.slice(sequence ? sequence[0].length : 3);
  }
}

/** Text up to the next control or escape, and that control. */
function plain(rest: string, keys: Key[]): string {
  const at = rest.search(/[\u0000-\u001f\u007f]/);
  const text = at < 0 ? rest : rest.slice(0, at);
  if (text !== "") keys.push({ kind: "text", text });
  if (at < 0) return "";
  const control = rest.charAt(at);
  if (control === "\u001b") return rest.slice(at);
  const name = CONTROLS[control];
  if (name) keys.push({ kind: "key", name });
  // Carriage return and line feed together are one Enter.
  return rest.slice(rest.startsWith("\r\n", at) ? at + 2 : at + 1);
}
