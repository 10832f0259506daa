import type { EarsGrammar, HeardWords, SoundLevel, Unheard } from "../../ports/ears.ts";
import type { CaptureSource } from "./capture.ts";

/** How the listening program is set up: its one argument, as JSON. */
export type ListeningSetup = {
  source: CaptureSource;
  /** Empty: listening without wake words, by stricter rules. */
  wakeWords: string[];
  modelFolder?: string | undefined;
};

/** What the kitchen tells the listening program, one JSON object per line. */
export type ListeningOrder =
  | { do: "expect"; grammar: EarsGrammar }
  | { do: "deafen"; speaking: boolean }
  | { do: "stop" };

/** What the listening program tells the kitchen, one JSON object per line. */
export type ListeningReport =
  | { is: "heard"; heard: HeardWords }
  | { is: "unheard"; unheard: Unheard }
  | { is: "level"; level: SoundLevel }
  | { is: "problem"; what: "ears" | "microphone" | "grammar"; message: string }
  | { is: "recovered" }
  /** The source, a file, has ended. */
  | { is: "over" };

/** Longest line that is read; a longer one is dropped. */
const LINE_MAX = 4_000_000;

/** Cuts a stream of text into lines of JSON; what is not JSON is ignored. */
export function jsonLines<Line>(onLine: (line: Line) => void): (chunk: string) => void {
  let rest = "";
  return (chunk) => {
    const lines = (rest + chunk).split("\n");
    rest = lines.pop() ?? "";
    if (rest.length > LINE_MAX) rest = "";
    for (const line of lines) {
      let parsed: Line;
      try {
        parsed = JSON.parse(line) as Line;
      } catch {
        continue;
      }
      onLine(parsed);
    }
  };
}
