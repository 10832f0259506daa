/** What a newcomer sees in an empty kitchen: how to begin, and what this program is not. */
import { wrap } from "./printable.ts";
import { BOLD, type Row, rowOf } from "./row.ts";
import type { Section } from "./sections.ts";

/** Three ways to begin that work exactly as written. */
export const EXAMPLES = [
  "start the dilly beans",
  "start the Dragon Tongue dilly beans",
  "start the pickled beets",
];

const HELP = [
  "help says what you can tell me.",
  "brinebell recipes (in a shell) lists the recipes.",
];

const CAUTION =
  "Follow a current tested recipe and your local extension service. " +
  "This program keeps the record; it cannot see the jar.";

export function welcomeSection([least, whole]: readonly [number, number]): Section {
  return {
    steps: [
      { to: 4, turn: least },
      { to: 12, turn: whole },
    ],
    draw: drawWelcome,
  };
}

function drawWelcome(width: number, height: number): Row[] {
  const narrow = Math.min(width, 76);
  const head = wrap("Nothing is on. Type what to make, then Enter:", narrow, 2);
  const examples = EXAMPLES.map((text) => rowOf(`   ${text}`, BOLD));
  const help = HELP.flatMap((text) => wrap(text, narrow, 2));
  const caution = wrap(CAUTION, narrow, 4);
  const rows = (lines: string[]): Row[] => lines.map((line) => rowOf(line));
  const begin = [...rows(head), ...examples];
  for (const parts of [
    [begin, rows(help), rows(caution)],
    [begin, rows(caution)],
  ]) {
    const spread = parts.flatMap((part, index) => (index > 0 ? [[], ...part] : part));
    if (spread.length <= height) return spread;
    if (parts.flat().length <= height) return parts.flat();
  }
  return begin.slice(0, height);
}
