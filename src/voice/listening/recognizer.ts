import { join } from "node:path";
import type { EarsGrammar } from "../../ports/ears.ts";
import { commandTest, grammarWords, wholeGrammar } from "./listening-grammar.ts";
import { soundAlikes } from "./sound-alikes.ts";
import { type Decoded, type Segment, SphinxDecoder } from "./sphinx-decoder.ts";
import type { SphinxLibrary } from "./sphinx-library.ts";

/**
 * What was decoded and how well it fits: logarithms of the likelihood per 10 ms frame, the
 * grammar's words compared with any phones at all (0: as good as any sounds; lower: worse).
 */
export type Recognized = {
  /** The command, without the wake words; empty when there is none. */
  text: string;
  /** Over the wake words alone; over the sentence when there are no wake words. */
  wakeFit: number;
  /** Over the whole sentence. */
  fit: number;
  /** Over the command alone. */
  commandFit: number;
  /** The longest silence between two words of the command, in frames of 10 ms. */
  longestGap: number;
  /** Length of the sentence, in frames of 10 ms. */
  frames: number;
  /** What the second hearing, with the noise left in, took it for. */
  again?: string;
  /** What else it may have been, where a number in it has a sound-alike. */
  rival?: { text: string; leadOver: number };
};

const NOTHING: Recognized = {
  text: "",
  wakeFit: -99,
  fit: -99,
  commandFit: -99,
  longestGap: 0,
  frames: 0,
};

/** How complete a command is; see {@link Recognizer.progress}. */
export type Progress = "only-wake-words" | "perhaps-more" | "whole";

type Opinion = Pick<Recognized, "again" | "rival">;

/** The library's scores: logarithms to the base 1.0001, in steps of 1,024. */
const NATURAL = Math.log(1.0001) * 1024;

/** The shortest sound of a word, in frames of 10 ms. */
const SHORTEST_WORD = 10;

/** Silence after the last word that shows it is over, and how long a word rings on, in frames. */
const AFTER_WORD = 10;
const RINGS_ON = 20;

/** A word of the grammar, not a silence or a null transition. */
function isWord({ word }: Segment): boolean {
  return !/^[<[(+]/.test(word);
}

/** The score of the frames from `from` to `to`; a segment cut by either end counts in part. */
function scoreOver(segments: readonly Segment[], from: number, to: number): number {
  let sum = 0;
  for (const segment of segments) {
    const shared = Math.min(to, segment.to) - Math.max(from, segment.from) + 1;
    if (shared > 0) sum += (segment.score * shared) / (segment.to - segment.from + 1);
  }
  return sum;
}

function longestGap(words: readonly Segment[]): number {
  return words.reduce((longest, { from }, at) => {
    const before = words[at - 1];
    return before ? Math.max(longest, from - before.to - 1) : longest;
  }, 0);
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
 * Decoders over the same sound: one for the wake words and the grammar of the moment, one for any
 * phones in any order, which shows how well the grammar's words fit, and one that hears the
 * utterance a second time to check for sound-alikes.
 */
export class Recognizer {
  private readonly commands: SphinxDecoder;
  private readonly phones: SphinxDecoder;
  private readonly second: SphinxDecoder;
  private readonly wakeWords: readonly string[];
  private sound: Int16Array[] = [];
  private withNoise: Int16Array[] = [];
  private soundFrames = 0;
  private isFirst = true;
  private isCommand: (text: string) => boolean = () => true;
  /** A second hearing before the end, and what had been said up to then. */
  private ahead: { text: string; soundFrames: number; opinion: Opinion } | undefined;

  /** @throws Error when the library refuses the model */
  constructor(library: SphinxLibrary, modelFolder: string, wakeWords: readonly string[]) {
    const model = {
      hmm: join(modelFolder, "en-us"),
      dict: join(modelFolder, "cmudict-en-us.dict"),
      // Version 5 has it off unless told.
      remove_noise: "yes",
    };
    this.wakeWords = wakeWords;
    this.commands = new SphinxDecoder(library, model);
    // With triphones the loop is a hundred times slower and no better.
    this.phones = new SphinxDecoder(library, { ...model, allphone_ci: "yes" });
    this.phones.loopPhones();
    this.second = new SphinxDecoder(library, model);
  }

  /** @throws Error when the grammar does not parse */
  expect(grammar: EarsGrammar): void {
    const words = [...grammarWords(grammar.rules), ...this.wakeWords];
    const whole = wholeGrammar(grammar, this.wakeWords);
    this.commands.takeGrammar("kitchen", whole, words);
    this.second.takeGrammar("kitchen", whole, words);
    this.isCommand = commandTest(grammar);
  }

  begin(): void {
    this.sound = [];
    this.withNoise = [];
    this.ahead = undefined;
    this.commands.begin();
    this.phones.begin();
  }

  /** The same piece of sound twice: with its noise reduced, and with its noise left in. */
  feed(samples: Int16Array, withNoise = samples): void {
    this.sound.push(samples);
    this.withNoise.push(withNoise);
    this.commands.feed(samples);
    this.phones.feed(samples);
  }

  /** Called where what was fed last was louder than the noise. */
  noteSound(): void {
    this.soundFrames = this.commands.framesSoFar();
  }

  /**
   * How complete the command is, asked during a silence. There may be more where the decoder hears
   * the last word in the silence itself: it has to fill up the command, or a soft voice continues
   * below the noise.
   */
  progress(): Progress {
    const segments = this.commands.soFar();
    const words = segments.filter(isWord);
    const last = words.at(-1);
    if (!last || words.length <= this.wakeWords.length) return "only-wake-words";
    const first = segments[0]?.from ?? 0;
    const now = segments.at(-1)?.to ?? 0;
    if (now - last.to >= AFTER_WORD) return "whole";
    const begins = last.from - first > this.soundFrames - SHORTEST_WORD;
    const goesOn = last.to - first > this.soundFrames + RINGS_ON;
    return begins || goesOn ? "perhaps-more" : "whole";
  }

  end(): Recognized {
    const streamed = this.judge(this.commands.end(), this.phones.end());
    if (!this.isFirst || streamed.text === "") return streamed;
    // The decoders learn voice and room from one utterance for the next: the first is heard to its
    // end.
    this.isFirst = false;
    const sound = joined(this.sound);
    return this.judge(this.commands.decodeWhole(sound), this.phones.decodeWhole(sound));
  }

  /**
   * Listens to the utterance once more, as a whole and with its noise: what it is then taken for,
   * and how far that leads over its sound-alikes. What the noise reduction spoiled is heard
   * differently then; two hearings that agree are seldom wrong.
   */
  secondOpinion(recognized: Recognized): Recognized {
    const { ahead, soundFrames } = this;
    const known = ahead?.text === recognized.text && ahead.soundFrames === soundFrames;
    const opinion = known ? ahead.opinion : this.hearAgain(recognized.text);
    return { ...recognized, ...opinion };
  }

  /**
   * Called in a silence that may end the utterance, so that the second opinion is ready by then.
   */
  hearAhead(): void {
    if (this.progress() === "only-wake-words") return;
    const words = this.commands
      .soFar()
      .filter(isWord)
      .map(({ word }) => word.replace(/\(\d+\)$/, ""));
    const text = words.slice(this.wakeWords.length).join(" ");
    this.ahead = { text, soundFrames: this.soundFrames, opinion: this.hearAgain(text) };
  }

  private hearAgain(text: string): Opinion {
    this.second.select("kitchen");
    const again = this.commandOf(this.second.decodeWhole(joined(this.withNoise)));
    const rivals = again === text ? soundAlikes(text, this.isCommand) : [];
    if (rivals.length === 0) return { again };
    const sound = joined(this.sound);
    const own = this.hearAs([again], sound);
    const best = this.hearAs(rivals, sound);
    if (best.text === "") return { again };
    const leadOver = (own.score - best.score) * NATURAL;
    return { again, rival: { text: this.commandOf(best), leadOver } };
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

  private judge(commands: Decoded, phones: Decoded): Recognized {
    const words = commands.segments.filter(isWord);
    const wake = this.wakeWords.length;
    const first = words[0];
    const last = words.at(-1);
    if (!first || !last || words.length <= wake || commands.text === "") return NOTHING;
    const fitOver = (from: Segment, to: Segment) => {
      const span = [from.from, to.to] as const;
      const ratio = scoreOver(commands.segments, ...span) - scoreOver(phones.segments, ...span);
      return (ratio * NATURAL) / (to.to - from.from + 1);
    };
    const own = words.slice(wake);
    const fit = fitOver(first, last);
    return {
      text: this.commandOf(commands),
      wakeFit: wake > 0 ? fitOver(first, words[wake - 1] ?? last) : fit,
      fit,
      commandFit: fitOver(own[0] ?? last, last),
      longestGap: longestGap(own),
      frames: last.to - first.from + 1,
    };
  }
}
