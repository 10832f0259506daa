/** What a newcomer sees in an empty kitchen: how to begin, and what this program is not. */
import { wrap } from "./printable.ts";
import { BOLD, type Row, rowOf } from "./row.ts";
import type { Section } from "./sections.ts";

/** Three ways to begin that work as they stand. */
export const EXAMPLES = [
  "start the dilly beans",
  "start the Dragon Tongue dilly beans, 4 pounds",
  "start the pickled beets",
];

const CAUTION =
  "Follow a current tested recipe and your local extension service. " +
  "This program keeps the record; it cannot see the jar.";

export function welcomeSection(turn: number): Section {
  return {
    steps: [
      { to: 4, turn },
      { to: 12, turn: turn + 1 },
    ],
    draw: drawWelcome,
  };
}

function drawWelcome(width: number, height: number): Row[] {
  const narrow = Math.min(width, 76);
  const head = wrap("Nothing is on. Type what you want to make, then Enter:", narrow, 2);
  const examples = EXAMPLES.map((text) => rowOf(`   ${text}`, BOLD));
  const help = wrap("help says what you can tell me. recipes: brinebell recipes.", narrow, 2);
  const caution = wrap(CAUTION, narrow, 4);
  const least: Row[] = [...head.map((line) => rowOf(line)), ...examples];
  const rest: Row[] = [...help.map((line) => rowOf(line)), ...caution.map((line) => rowOf(line))];
  const all = [...least, ...rest];
  if (all.length + 2 <= height) return [...least, [], rest[0] ?? [], [], ...rest.slice(1)];
  return all.slice(0, height);
}
