/** The line being typed: plain data, changed by keys, with the lines sent earlier. */
import type { KeyName } from "./key-reader.ts";

export type Editor = {
  /** By character, so that the cursor never stands inside one. */
  characters: string[];
  cursor: number;
  /** Lines sent, oldest first. */
  sent: string[];
  /** Which of them is being shown again; the length of the list where none is. */
  at: number;
  /** What was typed before going back through the history. */
  draft: string;
};

/** Longer than anything anybody says; the rest is cut off. */
const LONGEST_LINE = 2000;
const MOST_SENT = 200;

export function newEditor(): Editor {
  return { characters: [], cursor: 0, sent: [], at: 0, draft: "" };
}

export function lineOf(editor: Editor): string {
  return editor.characters.join("");
}

function withLine(editor: Editor, text: string): Editor {
  const characters = [...text];
  return { ...editor, characters, cursor: characters.length };
}

export function insert(editor: Editor, text: string): Editor {
  const { characters, cursor } = editor;
  const added = [...text].slice(0, Math.max(0, LONGEST_LINE - characters.length));
  return {
    ...editor,
    characters: [...characters.slice(0, cursor), ...added, ...characters.slice(cursor)],
    cursor: cursor + added.length,
  };
}

/** The line was sent: it is empty again, and remembered unless it repeats the last one. */
export function sent(editor: Editor): Editor {
  const line = lineOf(editor).trim();
  const again = line === "" || editor.sent.at(-1) === line;
  const list = again ? editor.sent : [...editor.sent, line].slice(-MOST_SENT);
  return { characters: [], cursor: 0, sent: list, at: list.length, draft: "" };
}

/** What an editing key does; keys that do not edit leave the line as it is. */
export function edit(editor: Editor, name: KeyName): Editor {
  const { characters, cursor } = editor;
  const without = (from: number, to: number): Editor => ({
    ...editor,
    characters: [...characters.slice(0, from), ...characters.slice(to)],
    cursor: from,
  });
  switch (name) {
    case "left":
      return { ...editor, cursor: Math.max(0, cursor - 1) };
    case "right":
      return { ...editor, cursor: Math.min(characters.length, cursor + 1) };
    case "home":
      return { ...editor, cursor: 0 };
    case "end":
      return { ...editor, cursor: characters.length };
    case "backspace":
      return without(Math.max(0, cursor - 1), cursor);
    case "delete":
      return without(cursor, Math.min(characters.length, cursor + 1));
    case "cut-line":
      return without(0, cursor);
    case "cut-rest":
      return without(cursor, characters.length);
    case "cut-word":
      return without(wordStart(characters, cursor), cursor);
    case "escape":
      return without(0, characters.length);
    case "up":
      return back(editor);
    case "down":
      return forward(editor);
    default:
      return editor;
  }
}

function wordStart(characters: string[], cursor: number): number {
  let at = cursor;
  while (at > 0 && characters[at - 1] === " ") at -= 1;
  while (at > 0 && characters[at - 1] !== " ") at -= 1;
  return at;
}

function back(editor: Editor): Editor {
  const line = editor.sent[editor.at - 1];
  if (line === undefined) return editor;
  const draft = editor.at === editor.sent.length ? lineOf(editor) : editor.draft;
  return { ...withLine(editor, line), at: editor.at - 1, draft };
}

function forward(editor: Editor): Editor {
  if (editor.at >= editor.sent.length) return editor;
  const at = editor.at + 1;
  const line = at === editor.sent.length ? editor.draft : (editor.sent[at] ?? "");
  return { ...withLine(editor, line), at };
}
