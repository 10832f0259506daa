/** Codes of the record as a page says them: in sentences, as they keep their codes in the JSON. */
import { DEVIATION_CODES, type DeviationCode } from "../../kitchen/deviation-codes.ts";
import type { BatchLog } from "../batch-log.ts";
import { counted } from "../report-words.ts";

/** What a deviation is, where nothing more is known of it than its code. */
const WHAT: Readonly<Record<DeviationCode, string>> = {
  "rest-short": "A rest was shorter than planned",
  "rest-long": "A rest was longer than planned",
  "boil-lost": "The boil was lost",
  "pressure-lost": "The pressure was lost",
  "temperature-lost": "The temperature was lost",
  "temperature-high": "The temperature was too high",
  "process-restarted": "The time was begun again",
  "process-short": "The process was too short",
  "process-long": "The process was longer than tested",
  unwatched: "Nobody watched",
  "written-late": "Something was written down late",
  skipped: "A step was left out",
  headspace: "The headspace was not right",
  "jar-count": "The counts of jars do not agree",
  "cool-short": "The jars cooled too short a time before the seal check",
  "seal-check-late": "The seals were checked late",
  "seal-failed": "Jars did not seal",
  "critical-unrecorded": "A critical factor was not confirmed",
  "water-low": "The water was low",
  "gauge-untested": "The dial gauge was in doubt",
  "ingredient-changed": "An ingredient was changed",
  "altitude-doubt": "The altitude was in doubt",
  "clock-changed": "The wall clock was set",
  "log-not-written": "The log could not be written in time",
  waited: "Filled jars waited too long",
  "altitude-raised": "The altitude was found to be higher",
  unheard: "Words were not understood",
  contradicted: "A confirmation was taken back",
};

type Telling = [codes: string, detail: RegExp, sentence: string];

/** Details that make a sentence of their own; any other stands behind what the code means. */
const TELLINGS: readonly Telling[] = [
  ["-lost", /^lost after ([\d.]+) of ([\d.]+) min$/, "% after $1 min of the $2"],
  ["-lost", /^lids (uncovered after .*)$/, "The lids were $1"],
  ["-lost", /^heat (off after .*)$/, "The heat was $1"],
  ["-lost", /^(not .*)$/, "It was $1"],
  ["-lost", /^(read [\d.]+ pounds, .*)$/, "The gauge $1"],
  ["-lost", /^(read .*)$/, "The thermometer $1"],
  ["process-restarted", /^(the whole .*) again$/, "%: $1"],
  ["process-short", /^(the .*)$/, "%: $1"],
  ["process-long", /^(.*) over the tested time$/, "The process was $1 over the tested time"],
  ["unwatched", /^(\d.*) unwatched(.*)$/, "% for $1$2"],
  ["written-late", /^(.*): written (.*) after$/, "Written down $2 late: $1"],
  ["skipped", /^(.*) left out$/, "Left out: $1"],
  ["skipped", /^(.*): (\S+ of .*)$/, "Cut short: $1, $2"],
  ["headspace", /^headspace: (answered no)$/, "%: $1"],
  ["critical-unrecorded", /^([\w-]+): nobody confirmed it$/, "Nobody confirmed: @1"],
  ["critical-unrecorded", /^([\w-]+): (answered no)$/, "Not confirmed: @1, $2"],
  ["contradicted", /^([\w-]+): confirmed, (then .*)$/, "Confirmed, $2: @1"],
  ["water-low", /^water low$/, "%"],
  ["log-not-written", /^(\d+) events written late: (.*)$/, "$1 events were written late: $2"],
  ["seal-failed", /^(\d+) did not seal( \(.*\))?$/, "#1 did not seal$2"],
  ["unheard", /^(".*"): (\D*)$/, "%: $1; $2"],
  ["waited", /^(.*): (.*)$/, "%: $1, $2"],
  ["temperature-high", /^(.*): (.*)$/, "%: $1, $2"],
  ["", /^(?:nobody|the) .*$/, "$0"],
  ["", /^at (.* ft) (.*), not (.*)$/, "At $1 it takes $2, not $3"],
];

function isCode(text: string): text is DeviationCode {
  return DEVIATION_CODES.some((code) => code === text);
}

/** An id of the record in words: `hot-pack-hot` is "hot pack hot". */
export function idWords(id: string): string {
  return id.replaceAll("-", " ");
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** "The boil was lost after 4 min of the 45"; without a detail, what the code means. */
export function deviationWords(code: string, detail = ""): string {
  if (!isCode(code)) return [idWords(code), detail].filter(Boolean).join(": ");
  const what = WHAT[code];
  if (detail === "") return what;
  for (const [codes, pattern, sentence] of TELLINGS) {
    const found = code.endsWith(codes) ? pattern.exec(detail) : null;
    if (found)
      return capital(
        sentence.replace(/%|([$@#])(\d)/g, (sign, how, at) => {
          const part = found[Number(at)] ?? "";
          if (sign === "%") return what;
          return how === "@" ? idWords(part) : how === "#" ? counted(Number(part), "jar") : part;
        }),
      );
  }
  return `${what}: ${detail}`;
}

/** A reason of a verdict, whose code is said as a sentence. */
export function reasonWords(reason: string): string {
  const [, code = "", detail = ""] = /^([a-z-]+): (.*)$/s.exec(reason) ?? [];
  return isCode(code) ? deviationWords(code, detail) : reason;
}

const DONE: Readonly<Record<string, string>> = {
  "carried-on": "went on",
  restarted: "begun again",
  reprocess: "processed again",
  refrigerate: "refrigerated",
  freeze: "frozen",
  discard: "thrown out",
  undecided: "not decided",
};

/** What was done about a deviation. */
export function dispositionWords(code: string): string {
  return DONE[code] ?? idWords(code);
}

const VERDICTS: Readonly<Record<string, string>> = {
  "as-tested": "Done as tested",
  "not-as-tested": "Not as tested",
  unfinished: "Not finished",
  "not-shelf-stable": "Not for the shelf",
  "no-process": "Nothing to process",
};

export function verdictWords(verdict: BatchLog["verdict"]): string {
  return VERDICTS[verdict] ?? idWords(verdict);
}
