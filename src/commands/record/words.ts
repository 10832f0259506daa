/** `brinebell words`: a person's own words that were learned, and forgetting them. */
import { commandOf } from "../../kitchen/command.ts";
import type { OwnWords } from "../../kitchen/own-words.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { localIso } from "../../kitchen/time.ts";
import { exampleOf } from "../../session/answering.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import {
  kitchenFor,
  printed,
  printedJson,
  printedLines,
  type ReviewIo,
  withNotices,
} from "./review-io.ts";

export async function wordsCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.words.options);
  if (!parsed.ok) return failed(2, `words: ${parsed.error}`);
  const [unwanted] = parsed.value.words;
  if (unwanted !== undefined) {
    return failed(
      2,
      `words: ${JSON.stringify(unwanted)}: it takes options alone; say words --help`,
    );
  }
  const forget = optionValue(parsed.value, "forget");
  if (forget !== undefined) return forgotten(parsed.value, forget, io);
  const read = kitchenFor("words", io);
  if (!read.ok) return read.result;
  const { state } = read.kitchen;
  const list = state.ownWords.map((one, at) => lineOf(state, one, at + 1));
  const result = isOn(parsed.value, "json") ? printedJson({ words: list }) : printed(textOf(list));
  return withNotices(result, "words", read.kitchen);
}

type WordsLine = Omit<OwnWords, "at"> & { number: number; learned: string };

function lineOf(state: State, { at, ...own }: OwnWords, number: number): WordsLine {
  return { number, ...own, learned: localIso(wallOf(state, at), state.zone) };
}

function textOf(list: readonly WordsLine[]): string {
  const lines = list.map(({ number, words, intent, stages, question, learned }) => {
    const moment = [...stages, ...(question === null ? [] : [`asked about ${question}`])];
    const when = moment.length > 0 ? moment.join(", ") : "nothing running";
    const means = exampleOf(intent) ?? intent;
    return `${number}  "${words}", as in "${means}"; ${when}; learned ${learned.slice(0, 10)}\n`;
  });
  return lines.join("") || "No words were learned yet.\n";
}

async function forgotten(options: Options, which: string, io: ReviewIo): Promise<CommandResult> {
  const number = Number(which);
  if (which !== "all" && !(Number.isInteger(number) && number > 0)) {
    return failed(2, `words: --forget: ${JSON.stringify(which)} is not a number; write 2, or all`);
  }
  const slots = which === "all" ? ({ all: true } as const) : { number };
  const said = which === "all" ? "forget my words" : `forget number ${number} of my words`;
  const { recordOrTell } = await import("../day/record-or-tell.ts");
  const done = await recordOrTell("words", io, commandOf("forget-words", slots), said);
  return done.ok ? printedLines("words", done, options) : done.result;
}
