import { join } from "node:path";
import type { EarsGrammar } from "../ports/ears.ts";
import { grammarWords, wholeGrammar } from "./listening-grammar.ts";
import { type Decoded, type Segment, SphinxDecoder } from "./sphinx-decoder.ts";
import type { SphinxLibrary } from "./sphinx-library.ts";

/**
 * What was decoded and how well it fits: logarithms of the likelihood per 10 ms frame, of the
 * grammar's words against any phones at all (0: as well as any sounds; lower: worse).
 */
export type Recognised = {
  /** The command, without the wake words; empty when there is none. */
  text: string;
  /** Over the wake words alone; that of the sentence when there are no wake words. */
  wakeFit: number;
  /** Over the whole sentence. */
  fit: number;
  /** Length of the sentence, in frames of 10 ms. */
  frames: number;
};

const NOTHING: Recognised = { text: "", wakeFit: -99, fit: -99, frames: 0 };

/** The library's scores: logarithms to the base 1.0001, in steps of 1,024. */
const NATURAL = Math.log(1.0001) * 1024;

/** A word of the grammar, not a silence or a null transition. */
function isWord({ word }: Segment): boolean {
  return !/^[<[(+]/.test(word);
}

/** The score of the frames from `from` to `to`, a segment cut by an end counting in part. */
function scoreOver(segments: readonly Segment[], from: number, to: number): number {
  let sum = 0;
  for (const segment of segments) {
    const shared = Math.min(to, segment.to) - Math.max(from, segment.from) + 1;
    if (shared > 0) sum += (segment.score * shared) / (segment.to - segment.from + 1);
  }
  return sum;
}

/**
 * Two decoders over the same sound: one for the grammar of the moment behind the wake words, one
 * for any phones in any order, which tells how well the grammar's words fit.
 */
export class Recogniser {
  private readonly commands: SphinxDecoder;
  private readonly phones: SphinxDecoder;
  private readonly wakeWords: readonly string[];

  /** @throws Error when the library refuses the model */
  constructor(library: SphinxLibrary, modelFolder: string, wakeWords: readonly string[]) {
    const model = {
      "-hmm": join(modelFolder, "en-us"),
      "-dict": join(modelFolder, "cmudict-en-us.dict"),
    };
    this.wakeWords = wakeWords;
    this.commands = new SphinxDecoder(library, model);
    // With triphones the loop is a hundred times slower and no better a judge.
    this.phones = new SphinxDecoder(library, { ...model, "-allphone_ci": "yes" });
    this.phones.usePhoneLoop();
  }

  /** @throws Error when the grammar does not parse */
  expect(grammar: EarsGrammar): void {
    const words = [...grammarWords(grammar.rules), ...this.wakeWords];
    this.commands.useGrammar(wholeGrammar(grammar, this.wakeWords), words);
  }

  begin(): void {
    this.commands.begin();
    this.phones.begin();
  }

  feed(samples: Int16Array): void {
    this.commands.feed(samples);
    this.phones.feed(samples);
  }

  /** True while nothing but wake words (or part of them) has been recognised. */
  onlyWakeWords(): boolean {
    return this.commands.partial().split(" ").length <= this.wakeWords.length;
  }

  end(): Recognised {
    return this.judge(this.commands.end(), this.phones.end());
  }

  close(): void {
    this.commands.close();
    this.phones.close();
  }

  private judge(commands: Decoded, phones: Decoded): Recognised {
    const words = commands.segments.filter(isWord);
    const wake = this.wakeWords.length;
    const first = words[0];
    const last = words.at(-1);
    if (!first || !last || words.length <= wake || commands.text === "") return NOTHING;
    const fitOver = (to: Segment) => {
      const span = [first.from, to.to] as const;
      const ratio = scoreOver(commands.segments, ...span) - scoreOver(phones.segments, ...span);
      return (ratio * NATURAL) / (to.to - first.from + 1);
    };
    const fit = fitOver(last);
    return {
      text: commands.text.split(" ").slice(wake).join(" "),
      wakeFit: wake > 0 ? fitOver(words[wake - 1] ?? last) : fit,
      fit,
      frames: last.to - first.from + 1,
    };
  }
}
