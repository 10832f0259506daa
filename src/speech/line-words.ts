/** The words of one line: what is said in one breath, and of whom. */
import type { LinePart, SpokenLine, Task } from "../desk/want.ts";
import { upper } from "../kitchen/spoken-names.ts";
import { numberWords } from "../reckon/number-words.ts";

/** "The Provider: the time is full; the beets: lift the jars now." */
export function lineWords({ rank, parts }: Pick<SpokenLine, "rank" | "parts">): string {
  const names = new Set(parts.map(({ name }) => name));
  const [first] = parts;
  if (!first || parts.length === 1) return first ? partWords(first) : "";
  const brief = parts.every(({ text }) => isOneSentence(text));
  if (rank === "alarm" && brief && names.size > 1) {
    const said = parts.map((part) => partWords(part).replace(/\.$/, ""));
    return `${said.join("; ")}.`;
  }
  const tasks = new Set(parts.map(({ task }) => task?.todo));
  if (tasks.size === 1 && first.task) return taskWords(first.task, parts);
  const lead = names.size > 1 && !brief ? `${upper(numberWords(names.size))} things. ` : "";
  const words = parts.map((part, index) => {
    const same = index > 0 && parts[index - 1]?.name === part.name;
    return same ? upper(part.text) : partWords(part);
  });
  return `${lead}${words.join(" ")}`;
}

/** "Check the seals: Provider by ten past ten; Blue Lake by noon." */
function taskWords({ todo }: Task, parts: readonly LinePart[]): string {
  const each = parts.map(({ name = "", task }) => `${name} ${task?.each}`.trim());
  return `${upper(todo)}: ${each.join("; ")}.`;
}

function partWords({ name, text }: LinePart): string {
  return name === undefined ? upper(text) : `${upper(name)}: ${text}`;
}

function isOneSentence(text: string): boolean {
  return !/[.!?;] /.test(text);
}
