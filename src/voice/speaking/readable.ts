/**
 * Reduces any text to what can be read aloud, and to nothing else: ASCII letters, digits, spaces
 * and `, . ? !`, with `'`, `-` and `:` only between letters or digits. Speech programs read
 * markup, Scheme, PowerShell and option dashes; none of those can be written in this alphabet.
 */

import { fractionWords, spokenUnits } from "./spoken-units.ts";

/** The longest text passed to a voice, in characters; about forty seconds of speech. */
export const READABLE_MAX = 600;

/** The most raw text that is looked at, so that any input takes bounded time. */
const RAW_MAX = 4000;

/** Terminal sequences: CSI, OSC and the like up to their end, and two-character escapes. */
const CONTROL_SEQUENCE = /(?:\x1b\[|\x9b)[0-?]*[ -/]*[@-~]?/;
const CONTROL_STRING = /(?:\x1b[\]PX^_]|[\x90\x98\x9d-\x9f])[^\x07\x1b\x9c]*(?:\x07|\x1b\\|\x9c)?/;
const ESCAPES = new RegExp(`${CONTROL_SEQUENCE.source}|${CONTROL_STRING.source}|\\x1b[ -~]?`, "g");

const VULGAR: Record<string, string> = {
  "½": "1/2",
  "⅓": "1/3",
  "⅔": "2/3",
  "¼": "1/4",
  "¾": "3/4",
  "⅛": "1/8",
  "⅜": "3/8",
  "⅝": "5/8",
  "⅞": "7/8",
};

/** Signs with a spoken name, in the order they are replaced. */
const SPOKEN_SIGNS: [RegExp, string][] = [
  [/[‘’ʼ′`]/g, "'"],
  [/(\d)\s*[-–—−‑]\s*(?=\d)/g, "$1 to "],
  [/≥/g, " at least "],
  [/≤/g, " at most "],
  [/[~≈]|\bapprox\./g, " about "],
  [/@/g, " at "],
  [/\bw\//g, "with "],
  [/(^|[\s(])[-−](?=\d)/g, "$1minus "],
  [/[‐‑]/g, "-"],
  [/\s*[–—]\s*/g, ", "],
  [/[º˚]/g, "°"],
  [/°\s*F\b/g, " degrees"],
  [/°\s*C\b/g, " degrees Celsius"],
  [/°/g, " degrees"],
  [/%/g, " percent"],
  [/&/g, " and "],
  [/(\d)\s*[×]\s*(?=\d)/g, "$1 by "],
  [/\+(?=\d)/g, " plus "],
  [/;/g, ","],
  [/…/g, "."],
];

/** `1-1/2` is one and a half, `1/4-1/2` goes from one to the other. */
function spokenFractions(text: string): string {
  return text
    .replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign] ?? ""}`)
    .replace(/(\d\/\d+)\s*[-–—−‑]\s*(?=\d)/g, "$1 to ")
    .replace(/(?<![\d/.-])(\d+)[-–‑](?=\d\/\d)/g, "$1 ")
    .replace(/(\d+)?(\s+)?\b(\d)\s*\/\s*(\d{1,2})\b(?![\d/])/g, (all, whole, gap, top, bottom) => {
      const words = fractionWords(Number(top), Number(bottom));
      if (words === undefined && bottom.length > 1) return all;
      const said = words ?? `${top} over ${bottom}`;
      if (whole !== undefined) return `${whole} and ${said}`;
      return `${gap ?? ""}${said === "a half" ? "one half" : said}`;
    });
}

function spokenSigns(text: string): string {
  return SPOKEN_SIGNS.reduce((so, [sign, words]) => so.replace(sign, words), text);
}

function onlyReadable(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}+/gu, "")
    .replace(/[^A-Za-z0-9 ,.?!':-]+/g, " ")
    .replace(/(?<![A-Za-z])'|'(?![A-Za-z])/g, " ")
    .replace(/(?<![A-Za-z0-9])-+|-+(?![A-Za-z0-9])|-{2,}/g, " ")
    .replace(/(?<!\d):|:(?!\d)/g, ",");
}

function tidy(text: string): string {
  return text
    .replace(/\s+/g, " ")
    .replace(/ (?=[,.?!])/g, "")
    .replace(/([,.?!])[,.?!]+/g, "$1")
    .replace(/^[ ,.?!]+/, "")
    .trim();
}

function shortened(text: string): string {
  if (text.length <= READABLE_MAX) return text;
  const cut = text.slice(0, READABLE_MAX);
  const sentence = Math.max(cut.lastIndexOf(". "), cut.lastIndexOf("? "), cut.lastIndexOf("! "));
  if (sentence > READABLE_MAX / 2) return cut.slice(0, sentence + 1);
  const word = cut.lastIndexOf(" ");
  return (word > 0 ? cut.slice(0, word) : cut).replace(/[,:'-]+$/, "");
}

/**
 * The text as a voice may read it: at most {@link READABLE_MAX} characters of the alphabet above,
 * beginning with a letter or digit; empty where nothing can be read. Reading it twice changes
 * nothing.
 */
export function readable(text: string): string {
  const plain = text.slice(0, RAW_MAX).replace(ESCAPES, " ").replace(/\s+/g, " ");
  const words = tidy(onlyReadable(spokenSigns(spokenFractions(plain))));
  return shortened(tidy(spokenUnits(words)));
}
