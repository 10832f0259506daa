/** A jar that was opened and described as spoiled was not eaten. */
import { type Command, type CommandOf, commandOf } from "../../kitchen/command.ts";
import type { SpoilSign } from "../../kitchen/facts/fields.ts";

/** What the words show, the plainest first. */
const SIGNS: readonly [SpoilSign, RegExp][] = [
  ["moldy", /\b(mou?ld|mou?ldy|fuzz|fuzzy)\b/],
  ["bulged", /\b(bulged|bulging|swollen|swelled)\b/],
  ["leaked", /\b(leaked|leaking|leaky|seeping)\b/],
  ["spurted", /\b(spurt(ed|ing)|spat|sprayed|squirted|fizz(ed|ing|y)|foam(ed|ing)|hissed)\b/],
  [
    "off",
    new RegExp(
      "\\b(stinks?|stank|stinking|reeks?|reeked|rotten|slimy|spoil(ed|t)|foul|rancid|putrid|" +
        "(gone|went|goes|is|was|are|were) (all )?(off|bad)|" +
        "(smell|smells|smelled|smelt|smelling) (a bit |so |really |right |pretty |kind of )?" +
        "(bad|off|funny|wrong|awful|terrible|rank|strange|odd|horrible|nasty|weird|like death))\\b",
    ),
  ],
];
/** "No mold", "it isn't fizzy", "was it moldy": nothing of the kind is told. */
const DENIED =
  /\b(no|not|never|without|nothing|isn't|wasn't|aren't|weren't|doesn't|didn't|if|would|might)\b/;

/** The sign of spoilage that a text tells of; undefined where it tells of none, or denies it. */
export function signIn(text: string): SpoilSign | undefined {
  const clauses = text.toLowerCase().split(/[,;.!]|\b(?:and|but)\b/);
  for (const clause of clauses) {
    if (DENIED.test(clause) || clause.includes("?")) continue;
    const found = SIGNS.find(([, pattern]) => pattern.test(clause));
    if (found) return found[0];
  }
  return undefined;
}

function isOpened(command: Command): command is CommandOf<"opened"> {
  return command.intent === "opened";
}

type Meant = { commands: readonly Command[]; candidates: readonly Command[] };

/** What a sentence means, each opening in it a spoiled jar where its words tell of one. */
export function orSpoiled<M extends Meant>(meant: M, text: string): M {
  const { commands, candidates } = meant;
  const sign = [...commands, ...candidates].some(isOpened) ? signIn(text) : undefined;
  if (sign === undefined) return meant;
  const instead = (command: Command): Command => {
    if (!isOpened(command)) return command;
    const { slots, intent: _, ...rest } = command;
    return commandOf("spoiled", { ...slots, sign }, rest);
  };
  return { ...meant, commands: commands.map(instead), candidates: candidates.map(instead) };
}
