import { beforeEach, describe, expect, it } from "vitest";
import type { LabeledKey } from "../../src/ports/view.ts";
import { InputControl } from "../../src/screen/input-control.ts";
import { type Key, KeyReader } from "../../src/screen/key-reader.ts";
import { edit, insert, lineOf, newEditor, sent } from "../../src/screen/line-editor.ts";

const lost: LabeledKey = {
  key: "-",
  words: "the canner lost its boil",
  label: "boil lost",
  owner: "L1",
  stage: "process",
};

describe("keys from a terminal", () => {
  const names = (keys: Key[]) => keys.map((key) => (key.kind === "key" ? key.name : key.text));

  it("are told apart", () => {
    const reader = new KeyReader();
    expect(names(reader.push("ok\r"))).toEqual(["ok", "enter"]);
    expect(names(reader.push("\u001b[D\u001bOC\u001b[3~\u007f\u0001"))).toEqual([
      "left",
      "right",
      "delete",
      "backspace",
      "home",
    ]);
  });

  it("survive being cut in two", () => {
    const reader = new KeyReader();
    expect(reader.push("a\u001b")).toHaveLength(1);
    expect(names(reader.push("[D"))).toEqual(["left"]);
    reader.push("\u001b");
    expect(names(reader.settle())).toEqual(["escape"]);
  });

  it("without a use here are left out, with everything that belongs to them", () => {
    const reader = new KeyReader();
    expect(reader.push("\u001b[<0;3;4M\u001b[I\u001bx\u001b[15~\u0000")).toEqual([]);
  });

  it("arrive together when pasted, however they are cut", () => {
    const reader = new KeyReader();
    expect(reader.push("\u001b[200~done\n")).toEqual([]);
    expect(reader.push("all sealed\u001b[201")).toEqual([]);
    expect(reader.push("~x")).toEqual([
      { kind: "paste", text: "done\nall sealed" },
      { kind: "text", text: "x" },
    ]);
  });
});

describe("the line", () => {
  it("is edited at the cursor", () => {
    let line = insert(newEditor(), "its boling");
    for (let step = 0; step < 4; step++) line = edit(line, "left");
    line = insert(line, "i");
    expect(lineOf(line)).toBe("its boiling");
    expect(lineOf(edit(line, "cut-word"))).toBe("its ling");
    expect(lineOf(edit(line, "cut-rest"))).toBe("its boi");
    expect(lineOf(edit(line, "cut-line"))).toBe("ling");
    expect(lineOf(edit(edit(line, "home"), "delete"))).toBe("ts boiling");
    expect(lineOf(edit(edit(line, "end"), "backspace"))).toBe("its boilin");
  });

  it("never has its cursor inside a character", () => {
    const line = insert(newEditor(), "a🌶");
    expect(lineOf(edit(line, "backspace"))).toBe("a");
  });

  it("comes back as it was sent, and as it was left", () => {
    let line = sent(insert(newEditor(), "one"));
    line = sent(insert(line, "two"));
    line = insert(line, "thr");
    line = edit(edit(line, "up"), "up");
    expect(lineOf(line)).toBe("one");
    line = edit(edit(edit(line, "down"), "down"), "down");
    expect(lineOf(line)).toBe("thr");
  });
});

describe("what keys do", () => {
  let said: string[];
  let presses: number;
  let now: number;
  let labels: LabeledKey[];
  let control: InputControl;
  const reader = new KeyReader();
  const type = (text: string) => control.take(reader.push(text));

  beforeEach(() => {
    said = [];
    presses = 0;
    now = 0;
    labels = [];
    control = new InputControl({
      say: (words) => said.push(words),
      press: () => {
        presses += 1;
      },
      labeled: () => labels,
      interrupt: () => said.push("^C"),
      suspend: () => said.push("^Z"),
      repaint: () => said.push("^L"),
      talk: (key) => said.push(key) > 0,
      nowMs: () => now,
    });
  });

  it("Enter sends the line", () => {
    type("it's ");
    type("boiling");
    type("\r");
    expect(said).toEqual(["it's boiling"]);
    expect(presses).toBe(0);
  });

  it("Space or Enter on an empty line is the one key", () => {
    type(" ");
    now = 5000;
    type("\r");
    expect(presses).toBe(2);
    type("a b");
    type(" ");
    expect(presses).toBe(2);
    expect(lineOf(control.editor)).toBe("a b ");
  });

  it("a held key in one chunk is one press", () => {
    type("     ");
    expect(presses).toBe(1);
  });

  it("an Enter that bounces after a line is not a press", () => {
    type("done\r\r");
    now = 100;
    type("\r");
    expect(presses).toBe(0);
    now = 3000;
    type("\r");
    expect(presses).toBe(1);
  });

  it("a paste with line ends is several lines, and its blanks do nothing", () => {
    type("\u001b[200~done\n\n  all sealed\r\nnote: dill\u001b[201~");
    expect(said).toEqual(["done", "all sealed"]);
    expect(lineOf(control.editor)).toBe("note: dill");
    control.take([{ kind: "key", name: "cut-line" }]);
    type("\u001b[200~ \n \u001b[201~");
    expect(presses).toBe(0);
  });

  it("a labeled key says its words once, while it is offered and nothing is typed", () => {
    labels = [lost];
    type("-");
    labels = [];
    type("---");
    now = 500;
    type("-");
    expect(said).toEqual(["the canner lost its boil"]);
    expect(lineOf(control.editor)).toBe("");
    now = 5000;
    type("-");
    expect(lineOf(control.editor)).toBe("-");
    labels = [lost];
    type("-");
    expect(lineOf(control.editor)).toBe("--");
  });

  it("the terminal's own keys do what they should", () => {
    type("\u0003\u001a\u000c\u0004");
    expect(said).toEqual(["^C", "^Z", "^L", "^C"]);
  });
});
