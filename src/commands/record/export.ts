/** `brinebell export FILE`: everything in one file, to move to another machine. */

import { exportKitchen } from "../../session/archive/move-house.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { isOn, parseOptions } from "../call/options.ts";
import { printedJson, type ReviewIo, withNotices, writtenOutput } from "./review-io.ts";

export async function exportCommand(args: string[], io: ReviewIo): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.export.options);
  if (!parsed.ok) return failed(2, `export: ${parsed.error}`);
  const [file, ...more] = parsed.value.words;
  if (file === undefined || more.length > 0) {
    return failed(2, "export: name one file to write: brinebell export kitchen.brinebell");
  }
  const kitchen = exportKitchen(io.folder);
  const { text, events, recipes, unreadable } = kitchen;
  if (unreadable !== undefined) return failed(3, `export: ${unreadable}`);
  const result = writtenOutput("export", io, parsed.value, {
    path: file,
    content: text,
    kind: "archive",
  });
  if (result.code !== 0) return result;
  if (file === "-") return withNotices(result, "export", kitchen);
  const counted = isOn(parsed.value, "json")
    ? printedJson({ file, events, recipes })
    : { ...result, stdout: `${result.stdout}${events} events and ${recipes} own recipes.\n` };
  return withNotices(counted, "export", kitchen);
}
