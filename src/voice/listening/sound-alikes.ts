/**
 * Words a recognizer confuses: "teen" and "ty", and short words that share a vowel or an ending.
 * Found as errors in the voice loop.
 */
const GROUPS: string[][] = [
  ["thirteen", "thirty"],
  ["fourteen", "forty", "four"],
  ["fifteen", "fifty", "five"],
  ["sixteen", "sixty", "six"],
  ["seventeen", "seventy", "seven"],
  ["eighteen", "eighty", "eight"],
  ["nineteen", "ninety", "nine"],
  ["ninety", "twenty"],
  ["nine", "five", "one", "twenty"],
  ["ten", "two", "eight", "three"],
  ["seven", "two", "eleven"],
  ["six", "eight"],
  ["pints", "pounds"],
];

/** The most alternatives that are tried. */
const MOST = 12;

/** The commands that differ from this one in one word that sounds like it. */
export function soundAlikes(text: string, isCommand: (text: string) => boolean): string[] {
  const words = text.split(" ");
  const found = new Set<string>();
  words.forEach((word, at) => {
    for (const group of GROUPS) {
      if (!group.includes(word)) continue;
      for (const other of group) {
        if (other !== word)
          found.add([...words.slice(0, at), other, ...words.slice(at + 1)].join(" "));
      }
    }
  });
  return [...found].filter(isCommand).slice(0, MOST);
}
