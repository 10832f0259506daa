/** The record of one jar as plain text. */
import { tastingWords } from "../../review/report-words.ts";
import type { JarReport } from "../../review/shelf/jar-records.ts";

const moment = (iso: string) => `${iso.slice(0, 10)} ${iso.slice(11, 16)}`;

/** What is known of a jar, a line each. */
export function jarText(jar: JarReport): string {
  const { mark, short, id, title, variety, batch, putUp, load, verdict, reasons } = jar;
  const times = [
    ["filled", jar.filledAt],
    ["in the canner", jar.loadedAt],
    ["out of it", jar.unloadedAt],
  ].flatMap(([what, at]) => (at ? [`${what} ${moment(at)}`] : []));
  const fate = [jar.fate, jar.fateAt && moment(jar.fateAt), jar.place && `in the ${jar.place}`];
  const lines = [
    [mark, short, id].filter(Boolean).join("  "),
    `  ${title}${variety ? ` (${variety})` : ""}  ${batch}  put up ${putUp}`,
    `  ${[load && `load ${load}`, ...times].filter(Boolean).join(", ")}`,
    `  verdict: ${verdict}`,
    ...reasons.map((reason) => `    ${reason}`),
    `  ${fate.filter(Boolean).join(", ")}`,
    ...jar.tastings.map((one) => `  tasted ${moment(one.at)}: ${tastingWords(one)}`),
  ];
  return `${lines.join("\n")}\n`;
}
