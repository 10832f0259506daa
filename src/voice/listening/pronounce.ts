/**
 * Pronunciations for words the dictionary lacks, in its phones (ARPAbet without stress): first from
 * a known word plus an ending, then from two known words, then letter by letter.
 */

/** The phones of a word, or undefined when the dictionary lacks it. */
type Lookup = (word: string) => string | undefined;

const UNVOICED = /(?:P|T|K|F|TH)$/;
const SIBILANT = /(?:S|Z|SH|ZH|CH|JH)$/;

function plural(phones: string): string {
  if (SIBILANT.test(phones)) return `${phones} IH Z`;
  return UNVOICED.test(phones) ? `${phones} S` : `${phones} Z`;
}

function past(phones: string): string {
  if (/(?:T|D)$/.test(phones)) return `${phones} IH D`;
  return UNVOICED.test(phones) || /(?:S|SH|CH)$/.test(phones) ? `${phones} T` : `${phones} D`;
}

const ENDINGS: [RegExp, (phones: string) => string][] = [
  [/'s$/, plural],
  [/s'$/, plural],
  [/es$/, plural],
  [/s$/, plural],
  [/ed$/, past],
  [/ing$/, (phones) => `${phones} IH NG`],
  [/er$/, (phones) => `${phones} ER`],
  [/ers$/, (phones) => `${phones} ER Z`],
  [/ly$/, (phones) => `${phones} L IY`],
  [/y$/, (phones) => `${phones} IY`],
];

function withEnding(word: string, lookup: Lookup): string | undefined {
  for (const [ending, add] of ENDINGS) {
    if (!ending.test(word)) continue;
    const stem = word.replace(ending, "");
    if (stem.length < 2) continue;
    const undoubled = stem.replace(/([bdfgklmnprstz])\1$/, "$1");
    for (const candidate of [stem, `${stem}e`, undoubled]) {
      const phones = lookup(candidate);
      if (phones) return add(phones);
    }
  }
  return undefined;
}

function asTwoWords(word: string, lookup: Lookup): string | undefined {
  for (let at = word.length - 3; at >= 3; at--) {
    const first = lookup(word.slice(0, at));
    const second = first && lookup(word.slice(at));
    if (second) return `${first} ${second}`;
  }
  return undefined;
}

/** Letters to phones, longest spelling first; the context a letter needs is in its pattern. */
const SPELLINGS: [RegExp, string][] = [
  [/^tch/, "CH"],
  [/^sch/, "SH"],
  [/^tion/, "SH AH N"],
  [/^igh/, "AY"],
  [/^eigh/, "EY"],
  [/^ough/, "AO"],
  [/^augh/, "AO"],
  [/^ch/, "CH"],
  [/^ck/, "K"],
  [/^sh/, "SH"],
  [/^th/, "TH"],
  [/^ph/, "F"],
  [/^gh/, "G"],
  [/^kn/, "N"],
  [/^wr/, "R"],
  [/^wh/, "W"],
  [/^qu/, "K W"],
  [/^ng(?![aeiouy])/, "NG"],
  [/^nk/, "NG K"],
  [/^dge/, "JH"],
  [/^oo/, "UW"],
  [/^ee/, "IY"],
  [/^ea/, "IY"],
  [/^ai/, "EY"],
  [/^ay/, "EY"],
  [/^oa/, "OW"],
  [/^oi/, "OY"],
  [/^oy/, "OY"],
  [/^ou/, "AW"],
  [/^ow/, "AW"],
  [/^au/, "AO"],
  [/^aw/, "AO"],
  [/^ie/, "IY"],
  [/^ei/, "EY"],
  [/^ue$/, "UW"],
  [/^ew/, "UW"],
  [/^ar/, "AA R"],
  [/^or/, "AO R"],
  [/^(?:er|ir|ur)/, "ER"],
  [/^a(?=[bcdfghjklmnpqrstvwxz]e$)/, "EY"],
  [/^e(?=[bcdfghjklmnpqrstvwxz]e$)/, "IY"],
  [/^i(?=[bcdfghjklmnpqrstvwxz]e$)/, "AY"],
  [/^o(?=[bcdfghjklmnpqrstvwxz]e$)/, "OW"],
  [/^u(?=[bcdfghjklmnpqrstvwxz]e$)/, "UW"],
  [/^e$/, ""],
  [/^a$/, "AH"],
  [/^o$/, "OW"],
  [/^i$/, "IY"],
  [/^y$/, "IY"],
  [/^y(?=[aeiou])/, "Y"],
  [/^c(?=[eiy])/, "S"],
  [/^g(?=[eiy])/, "JH"],
  [/^x/, "K S"],
  [/^([bcdfgklmnprstvz])\1/, ""],
];

const LETTERS: Record<string, string> = {
  a: "AE",
  b: "B",
  c: "K",
  d: "D",
  e: "EH",
  f: "F",
  g: "G",
  h: "HH",
  i: "IH",
  j: "JH",
  k: "K",
  l: "L",
  m: "M",
  n: "N",
  o: "AA",
  p: "P",
  q: "K",
  r: "R",
  s: "S",
  t: "T",
  u: "AH",
  v: "V",
  w: "W",
  x: "K S",
  y: "IH",
  z: "Z",
};

function byLetters(word: string): string {
  const phones: string[] = [];
  let rest = word.replace(/[^a-z]/g, "");
  while (rest !== "") {
    const spelling = SPELLINGS.find(([pattern]) => pattern.test(rest));
    const written = spelling?.[0].exec(rest)?.[0] ?? rest.charAt(0);
    const doubled = written.length === 2 && written[0] === written[1] && spelling?.[1] === "";
    const sound = doubled || !spelling ? LETTERS[written.charAt(0)] : spelling[1];
    if (sound) phones.push(sound);
    rest = rest.slice(written.length);
  }
  return phones.join(" ");
}

/**
 * How a word sounds: from the dictionary, otherwise guessed. Empty where the word has no letters.
 */
export function pronounce(word: string, lookup: Lookup): string {
  const plain = word
    .toLowerCase()
    .normalize("NFKD")
    .replace(/[^a-z']/g, "");
  return (
    lookup(plain) ?? withEnding(plain, lookup) ?? asTwoWords(plain, lookup) ?? byLetters(plain)
  );
}
