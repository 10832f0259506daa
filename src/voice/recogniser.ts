import { join } from "node:path";
import type { EarsGrammar } from "../ports/ears.ts";
import { grammarWords, wholeGrammar } from "./listening-grammar.ts";
import { soundAlikes } from "./sound-alikes.ts";
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
  /** What it was taken for when heard a second time. */
  again?: string;
  /** What else it may have been, where a number in it has a sound-alike. */
  rival?: { text: string; leadOver: number };
};

const NOTHING: Recognised = { text: "", wakeFit: -99, fit: -99, frames: 0 };

/** The library's scores: logarithms to the base 1.0001, in steps of 1,024. */
const NATURAL = Math.log(1.0001) * 1024;

/** Sound that a word needs at least, in frames of 10 ms. */
const SHORTEST_WORD = 10;

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

function joined(pieces: readonly Int16Array[]): Int16Array {
  const all = new Int16Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/**
 * Decoders over the same sound: one for the grammar of the moment behind the wake words, one for
 * any phones in any order, which tells how well the grammar's words fit, and one that hears the
 * utterance a second time for what sounds alike.
 */
export class Recogniser {
  private readonly commands: SphinxDecoder;
  private readonly phones: SphinxDecoder;
  private readonly second: SphinxDecoder;
  private readonly wakeWords: readonly string[];
  private sound: Int16Array[] = [];

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
    this.phones.loopPhones();
    this.second = new SphinxDecoder(library, model);
  }

  /** @throws Error when the grammar does not parse */
  expect(grammar: EarsGrammar): void {
    const words = [...grammarWords(grammar.rules), ...this.wakeWords];
    const whole = wholeGrammar(grammar, this.wakeWords);
    this.commands.takeGrammar("kitchen", whole, words);
    this.second.takeGrammar("kitchen", whole, words);
  }

  begin(): void {
    this.sound = [];
    this.commands.begin();
    this.phones.begin();
  }

  feed(samples: Int16Array): void {
    this.sound.push(samples);
    this.commands.feed(samples);
    this.phones.feed(samples);
  }

  /**
   * True while the command is not yet said, `silentMs` after the last sound that was noticed:
   * there are only wake words, or the last word is one the decoder sees in the silence itself,
   * since it has to fill the command up, or since a soft voice goes on below the noise.
   */
  isUnfinished(silentMs: number): boolean {
    const segments = this.commands.soFar();
    const words = segments.filter(isWord);
    const last = words.at(-1);
    const now = segments.at(-1)?.to ?? 0;
    if (!last || words.length <= this.wakeWords.length) return true;
    return last.from > now - silentMs / 10 - SHORTEST_WORD;
  }

  end(): Recognised {
    return this.judge(this.commands.end(), this.phones.end());
  }

  /**
   * Listens to the utterance once more, as a whole: what it is then taken for,
   * and how far that leads over its sound-alikes. Two hearings that agree are seldom wrong.
   */
  secondOpinion(recognised: Recognised): Recognised {
    const sound = joined(this.sound);
    this.second.select("kitchen");
    const again = this.commandOf(this.second.decodeWhole(sound));
    const rivals = again === recognised.text ? soundAlikes(again) : [];
    if (rivals.length === 0) return { ...recognised, again };
    const own = this.hearAs([again], sound);
    const best = this.hearAs(rivals, sound);
    if (best.text === "") return { ...recognised, again };
    const leadOver = (own.score - best.score) * NATURAL;
    return { ...recognised, again, rival: { text: this.commandOf(best), leadOver } };
  }

  private hearAs(texts: readonly string[], sound: Int16Array): Decoded {
    const grammar = { command: "command", rules: `<command> = ${texts.join(" | ")};` };
    const words = grammarWords(grammar.rules);
    this.second.takeGrammar("sound-alikes", wholeGrammar(grammar, this.wakeWords), words);
    return this.second.decodeWhole(sound);
  }

  private commandOf({ text }: Decoded): string {
    return text.split(" ").slice(this.wakeWords.length).join(" ");
  }

  close(): void {
    this.commands.close();
    this.phones.close();
    this.second.close();
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
      text: this.commandOf(commands),
      wakeFit: wake > 0 ? fitOver(words[wake - 1] ?? last) : fit,
      fit,
      frames: last.to - first.from + 1,
    };
  }
}
