/** What a report says besides what it is understood as. */
import { type Command, commandOf } from "../../kitchen/command.ts";
import { isHeated } from "../evidence/untaken.ts";
import { MOST_GUESSED } from "../weighing.ts";
import type { Utterance } from "../words.ts";
import type { Hearing } from "./clause-facts.ts";

/** Commands that are acted on, with those that they imply. */
export function withImplied(
  commands: readonly Command[],
  hearing: Hearing,
  said: Utterance,
): readonly Command[] {
  const more = readingBeside(commands, hearing, said) ?? plugThatBlew(commands, hearing);
  return more ? [...commands, more] : commands;
}

/** "It's down to eight": a fall, and what the gauge reads. */
function readingBeside(commands: readonly Command[], hearing: Hearing, { text, ...of }: Utterance) {
  const fell = commands.some(({ intent }) => intent === "pressure-lost");
  const read = commands.some(({ intent }) => intent === "pressure");
  if (!fell || read || FALLEN_BY.test(` ${text.toLowerCase()} `)) return undefined;
  return hearing.command("pressure", MOST_GUESSED, { text, ...of });
}

/** Here the number is no reading. */
const FALLEN_BY = new RegExp(
  "\\b(" +
    "below|under|beneath|less than|by|for|from|at least|minutes?|hours?|o'?clock|ago|" +
    "past|since|quarter|half|gas|fuel|tank" +
    ")\\b",
);

/** An overpressure plug that blew has let the pressure go, whatever else is to be done first. */
function plugThatBlew(commands: readonly Command[], { context }: Hearing): Command | undefined {
  const blew = commands.some(({ intent, slots }) => {
    return intent === "emergency" && "what" in slots && slots.what === "plug";
  });
  return blew && isHeated(context) ? commandOf("pressure-lost", {}) : undefined;
}
