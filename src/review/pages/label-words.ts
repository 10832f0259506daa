/** The words of a label, by their weight: what is large, what is loud, what is small. */
import { METHOD_NAMES } from "../../recipe/choose-process.ts";
import { type Units, wordsIn } from "../../reckon/metric-words.ts";
import { withCommas } from "../../reckon/reckoned.ts";
import { dateWords } from "../dates.ts";
import type { Label, LabelProcess } from "../shelf/labels.ts";

export type LabelWords = {
  mark: string | null;
  /** The largest: the variety, else the title. */
  name: string;
  title: string | null;
  /** What a jar that is not for the shelf says first, and until when. */
  band: { loud: string; until: string } | null;
  /**
   * The rest, in lines, from all that is known to the least that a label has to say, with what is
   * then left out. Of several forms, the one with most room for the large words is taken.
   */
  small: { forms: string[][]; left: string | null }[];
};

const SHORT_UNITS: readonly [RegExp, string][] = [
  [/ meters\b/g, " m"],
  [/ kilopascals\b/g, " kPa"],
  [/ pounds\b/g, " psi"],
];

/** Keeps words on one line. */
function unbroken(text: string): string {
  return text.replaceAll(" ", "\u00a0");
}

/** Keeps numbers on one line with their units. */
function withUnits(text: string): string {
  return text.replace(/(\d) (?=(?:min|ft|m|psi|kPa)\b|\()/g, "$1\u00a0");
}

/** `boiling water 25 min, 6,200 ft`, in the units of the kitchen. */
function processWords(process: LabelProcess, units: Units): string {
  const { method, minutes, pressurePsi, altitudeFt } = process;
  const name = METHOD_NAMES[method as keyof typeof METHOD_NAMES] ?? method;
  const at = pressurePsi === null ? "" : ` at ${pressurePsi} psi`;
  const words = `${name} ${minutes} min${at}, ${withCommas(altitudeFt)} ft`;
  const said = wordsIn(units, words);
  return withUnits(SHORT_UNITS.reduce((text, [long, short]) => text.replace(long, short), said));
}

/** Text as it can be printed: one line, without what cannot be seen. */
function printable(text: string): string {
  return text
    .normalize("NFC")
    .replace(/[\s\p{C}]+/gu, " ")
    .trim();
}

/** What a label says, in the units of its kitchen. */
export function labelWords(label: Label, units: Units): LabelWords {
  const { mark, keep, putUp, by, verdict, process } = label;
  const title = printable(label.title);
  const variety = printable(label.variety ?? "");
  const notes = label.notes.map((note) => withUnits(wordsIn(units, printable(note))));
  const day = unbroken(dateWords(putUp));
  const date = `${keep === "seed" ? "saved" : "put up"} ${day}`;
  const until = by === null ? "" : unbroken(dateWords(by));
  const best = keep === "shelf" && until !== "" ? [unbroken(`best by ${until}`)] : [];
  const how = [verdict, process && processWords(process, units)].filter((part) => part !== null);
  const id = unbroken(idWords(label));
  const all = [[date, ...best].join(", "), how.join(", "), ...notes, id].filter(Boolean);
  const band = bandOf(keep, until);
  const joined = [all.join("; ")];
  // A band is to be heavy, and many notes are to be read, before the rest is to be tidy.
  const whole = band || notes.length > 0 ? [[all, joined]] : [[all], [joined]];
  const left = [
    ...(best.length > 0 ? ["best by"] : []),
    ...(process ? ["the process"] : []),
    ...(notes.length > 0 ? ["the notes"] : []),
  ].join(", ");
  return {
    mark,
    name: variety || title,
    title: variety === "" ? null : title,
    band,
    small: [
      ...whole.map((forms) => ({ forms, left: null })),
      { forms: [[[day, verdict, id].filter(Boolean).join("; ")]], left },
    ],
  };
}

function bandOf(keep: Label["keep"], until: string): LabelWords["band"] {
  if (keep === "refrigerate") return { loud: "REFRIGERATE", until: unbroken(`use by ${until}`) };
  return keep === "freeze" ? { loud: "FREEZE", until: unbroken(`best by ${until}`) } : null;
}

function idWords({ keep, batch, id, jar }: Label): string {
  if (keep === "seed") return `seed lot ${batch}`;
  if (id !== null) return `${id}, batch ${batch}`;
  return jar === null ? `batch ${batch}` : `batch ${batch}, jar ${jar}`;
}

/** The same as lines of text, the first the largest. */
export function labelLines({ mark, name, title, band, small }: LabelWords): string[] {
  const [whole] = small;
  return [
    [mark && `[${mark}]`, name].filter(Boolean).join(" "),
    ...(title === null ? [] : [title]),
    ...(band ? [`${band.loud}, ${band.until}`] : []),
    ...(whole?.forms[0] ?? []),
  ].map((line) => line.replaceAll("\u00a0", " "));
}
