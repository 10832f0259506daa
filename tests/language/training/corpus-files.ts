/** The files of the corpus, and the wordings of the tests, as sentences to learn from. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Sentence, sentencesIn } from "../../../src/language/model/corpus.ts";
import { NOWHERE } from "../../../src/language/model/features.ts";

const CORPUS = "src/language/corpus";
const WORDINGS = "tests/language/wordings";

function linesOf(folder: string): { file: string; text: string }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".tsv"))
    .sort()
    .map((file) => ({ file, text: readFileSync(join(folder, file), "utf8") }));
}

/** The lines of each file of the corpus, as they are written. */
export function corpusLines(): { path: string; lines: string[] }[] {
  return linesOf(CORPUS).map(({ file, text }) => {
    return { path: join(CORPUS, file), lines: text.split("\n") };
  });
}

/** Every sentence of the corpus, by its file. */
export function corpus(): Map<string, Sentence[]> {
  return new Map(linesOf(CORPUS).map(({ file, text }) => [file, sentencesIn(file, text)]));
}

/** Short wordings without a frame, leaving out those that mean nothing. */
export function wordings(): Sentence[] {
  return linesOf(WORDINGS).flatMap(({ text }) =>
    text.split("\n").flatMap((line): Sentence[] => {
      const [said = "", intent = ""] = line.split("\t");
      if (line.startsWith("#") || intent === "" || intent === "unknown") return [];
      return [
        { text: said, intents: [intent], frame: undefined, speaker: "short", situation: NOWHERE },
      ];
    }),
  );
}

export function allSentences(): Sentence[] {
  return [...[...corpus().values()].flat(), ...wordings()];
}
