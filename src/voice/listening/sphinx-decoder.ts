import { ALSO_SAID } from "./also-said.ts";
import { pronounce } from "./pronounce.ts";
import type { Native, SphinxLibrary } from "./sphinx-library.ts";

/** One word, phone or silence of a decoded utterance; in frames of 10 ms, `to` included. */
export type Segment = { word: string; from: number; to: number; score: number };

/** What a decoder heard in an utterance. */
export type Decoded = { text: string; score: number; segments: Segment[] };

/** Beams wider than the library's own gain about a point of accuracy at little cost. */
const BEAMS = { beam: "1e-80", pbeam: "1e-80", wbeam: "1e-60" };

/** One decoder of the library. Calls must not overlap. */
export class SphinxDecoder {
  private readonly library: SphinxLibrary;
  private handle: Native | undefined;

  /** @throws Error when the library refuses the model */
  constructor(library: SphinxLibrary, options: Record<string, string>) {
    this.library = library;
    const config = library.config({ ...BEAMS, ...options });
    if (!config) throw new Error("the recognizer refused its settings");
    this.handle = library.init(config) ?? undefined;
    library.freeConfig(config);
    if (!this.handle) throw new Error("the recognizer could not load its model");
  }

  /** The phones of a word, or undefined when the dictionary lacks it. */
  phones(word: string): string | undefined {
    return this.library.pronunciation(this.handle, word) ?? undefined;
  }

  /**
   * Words the dictionary lacks are given a guessed pronunciation first.
   * @throws Error when the grammar does not parse or a word cannot be pronounced
   */
  takeGrammar(name: string, jsgf: string, words: Iterable<string>): void {
    for (const word of words) this.know(word);
    const refused = this.library.setGrammar(this.handle, name, jsgf) < 0;
    if (refused || !this.select(name)) throw new Error("the recognizer refused the grammar");
  }

  private know(word: string): void {
    if (this.phones(word) === undefined) {
      const phones = pronounce(word, (each) => this.phones(each));
      this.library.addWord(this.handle, word, phones, 0);
    }
    ALSO_SAID[word]?.forEach((phones, at) => {
      const other = `${word}(${at + 2})`;
      if (this.phones(other) !== undefined) return;
      this.library.addWord(this.handle, other, phones, 0);
    });
  }

  /** Goes back to a grammar taken before, by its name; false when there is none. */
  select(name: string): boolean {
    return this.library.select(this.handle, name) >= 0;
  }

  /** Any phones in any order: the score of the sound if it need not be a command at all. */
  loopPhones(): void {
    const refused = this.library.setPhoneLoop(this.handle, "phones", null) < 0;
    if (refused || this.library.select(this.handle, "phones") < 0) {
      throw new Error("the recognizer refused the phone loop");
    }
  }

  begin(): void {
    this.library.startUtterance(this.handle);
  }

  /** 16 kHz mono. */
  feed(samples: Int16Array): void {
    if (samples.length > 0) this.library.process(this.handle, samples, samples.length, 0, 0);
  }

  /** Frames of this utterance so far, without long silences, which the library leaves out. */
  framesSoFar(): number {
    return this.library.frames(this.handle);
  }

  /** The words and silences so far. Frame numbers continue from one utterance to the next. */
  soFar(): Segment[] {
    return this.segments();
  }

  /**
   * Decodes a complete utterance, forgetting what was heard before: a decoder that hears the same
   * sound again as if it were new adapts to it and gets worse.
   */
  decodeWhole(samples: Int16Array): Decoded {
    this.library.startStream(this.handle);
    this.begin();
    this.library.process(this.handle, samples, samples.length, 0, 1);
    return this.end();
  }

  end(): Decoded {
    this.library.endUtterance(this.handle);
    const score = [0];
    const text: string = this.library.hypothesis(this.handle, score) ?? "";
    return { text, score: score[0] ?? 0, segments: this.segments() };
  }

  close(): void {
    if (this.handle) this.library.free(this.handle);
    this.handle = undefined;
  }

  private segments(): Segment[] {
    const { library } = this;
    const found: Segment[] = [];
    let at = library.segments(this.handle, [0]);
    while (at) {
      const from = [0];
      const to = [0];
      const acoustic = [0];
      library.segmentFrames(at, from, to);
      library.segmentScores(at, acoustic, [0], [0]);
      const word: string = library.segmentWord(at);
      found.push({ word, from: from[0] ?? 0, to: to[0] ?? 0, score: acoustic[0] ?? 0 });
      at = library.nextSegment(at);
    }
    return found;
  }
}
