/**
 * What keys do: edit the line, send it, be the one key on an empty line, be a labeled key, or
 * ask the screen to close, suspend or repaint. Pure except for the calls it is given.
 */
import type { LabeledKey } from "../ports/view.ts";
import type { Key, KeyName } from "./key-reader.ts";
import { type Editor, edit, insert, lineOf, newEditor, sent } from "./line-editor.ts";

type InputCalls = {
  /** Words to be heard. */
  say(words: string): void;
  /** The one key. */
  press(): void;
  /** The labeled keys that mean something now. */
  labeled(): LabeledKey[];
  interrupt(): void;
  suspend(): void;
  repaint(): void;
  /** Opens the whole talk or closes it, or leafs in it; false where there is nothing to do. */
  talk(key: "talk" | "page-up" | "page-down" | "escape"): boolean;
  /** Milliseconds of any steady clock. */
  nowMs(): number;
};

/** A labeled key pressed again within this time is a wet sleeve, ms. */
const SLEEVE_MS = 2000;
/** An Enter that bounces after the one that sent a line is not the one key, ms. */
const BOUNCE_MS = 500;

export class InputControl {
  editor: Editor = newEditor();
  private readonly calls: InputCalls;
  private labeledAt = { key: "", ms: Number.NEGATIVE_INFINITY };
  private sentMs = Number.NEGATIVE_INFINITY;

  constructor(calls: InputCalls) {
    this.calls = calls;
  }

  /** Takes the keys of one chunk, which arrived together. */
  take(keys: Key[]): void {
    // Blanks that come with other text belong to it; alone, they are the one key.
    const alone = keys.every((key) => isBlank(key));
    let pressed = false;
    for (const key of keys) {
      if (alone && this.isEmpty()) {
        if (!pressed) this.pressed(key);
        pressed = true;
      } else this.takeOne(key);
    }
  }

  private isEmpty(): boolean {
    return this.editor.characters.length === 0;
  }

  private pressed(key: Key): void {
    const bounced = key.kind === "key" && this.calls.nowMs() - this.sentMs < BOUNCE_MS;
    if (!bounced) this.calls.press();
  }

  private takeOne(key: Key): void {
    if (key.kind === "paste") {
      this.typed(key.text);
      return;
    }
    if (key.kind === "text") {
      if (!this.isLabeled(key.text)) this.typed(key.text);
      return;
    }
    this.named(key.name);
  }

  private named(name: KeyName): void {
    if (name === "enter") {
      if (!this.isEmpty()) this.send();
      return;
    }
    if (name === "interrupt") this.calls.interrupt();
    else if (name === "end-of-input") {
      if (this.isEmpty()) this.calls.interrupt();
      else this.editor = edit(this.editor, "delete");
    } else if (name === "suspend") this.calls.suspend();
    else if (name === "repaint") this.calls.repaint();
    else if (name === "page-up" || name === "page-down") this.calls.talk(name);
    else if (name === "escape" && this.isEmpty() && this.calls.talk(name)) return;
    else if (name === "talk" && this.isEmpty()) this.calls.talk(name);
    else if (name === "talk") this.typed(" ");
    else this.editor = edit(this.editor, name);
  }

  /** Line ends inside text send what comes before them; blank lines do nothing. */
  private typed(text: string): void {
    const lines = text.split(/\r\n|[\r\n]/);
    for (const [index, line] of lines.entries()) {
      if (index > 0) this.send();
      const clean = line.replace(/[\u0000-\u001f\u007f-\u009f]+/g, " ");
      this.editor = insert(this.editor, this.isEmpty() ? clean.trimStart() : clean);
    }
  }

  private send(): void {
    const words = lineOf(this.editor).trim();
    this.editor = sent(this.editor);
    if (words === "") return;
    this.sentMs = this.calls.nowMs();
    this.calls.say(words);
  }

  private isLabeled(text: string): boolean {
    if (!this.isEmpty()) return false;
    const sign = text.charAt(0);
    if (![...text].every((character) => character === sign)) return false;
    const now = this.calls.nowMs();
    if (sign === this.labeledAt.key && now - this.labeledAt.ms < SLEEVE_MS) return true;
    const found = this.calls.labeled().find((one) => one.key === sign);
    if (!found) return false;
    this.labeledAt = { key: sign, ms: now };
    this.calls.say(found.words);
    return true;
  }
}

/** Spaces, or an Enter. */
function isBlank(key: Key): boolean {
  if (key.kind === "text") return key.text.trim() === "";
  return key.kind === "key" && key.name === "enter";
}
