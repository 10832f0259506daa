/** `brinebell import FILE`: adds what another machine exported, without duplicates. */
import { type Imported, importKitchen } from "../../session/archive/move-house.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, parseOptions } from "../call/options.ts";
import { printed, printedJson, type ReviewIo, withNotices } from "./review-io.ts";

export async function importCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.import.options);
  if (!parsed.ok) return failed(2, `import: ${parsed.error}`);
  const [file, ...more] = parsed.value.words;
  if (file === undefined || more.length > 0) {
    return failed(2, "import: name the one file that brinebell export wrote");
  }
  let text: string;
  try {
    text = await io.readFile(file);
  } catch (error) {
    return failed(3, `import: ${file} cannot be read: ${(error as Error).message}`);
  }
  const answer = await importKitchen(io.folder, text);
  if (!answer.ok) {
    const code = answer.why === "bad" || answer.why === "disk" ? 3 : 1;
    const mend = answer.why === "held" ? "; close that kitchen first" : "";
    return failed(code, `import: ${file}: ${answer.message}${mend}`);
  }
  const { done } = answer;
  const result = isOn(parsed.value, "json") ? printedJson(done) : printed(importText(done));
  return withNotices(result, "import", answer);
}

function importText(done: Imported): string {
  const { added, known, sharedIds, recipes } = done;
  const lines = [`${added} events added, ${known} were here already.`];
  for (const { id, names } of sharedIds) {
    lines.push(`${id} was given twice: in both kitchens they are ${names.join(" and ")} now.`);
  }
  if (recipes.added.length > 0) lines.push(`Recipes added: ${recipes.added.join(", ")}.`);
  for (const name of recipes.beside) {
    lines.push(`Another recipe has that file's name here; the imported one is ${name}.`);
  }
  return `${lines.join("\n")}\n`;
}
