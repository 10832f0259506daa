/** The recipes, and commands called on a kitchen's folder, for tests. */
import { readFileSync } from "node:fs";
import type { LabelsIo } from "../../src/commands/record/print-labels.ts";
import { parseIso } from "../../src/kitchen/time.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { ZONE } from "./demo-season.ts";

export const LIBRARY = wholeLibrary();

/** As the build has laid it beside the program. */
export const FONT = {
  regular: readFileSync("dist/fonts/regular.ttf"),
  bold: readFileSync("dist/fonts/bold.ttf"),
};

export function ioFor(folder: string, now = "2027-09-20T12:00:00"): LabelsIo {
  const nowMs = parseIso(now, ZONE);
  return {
    folder,
    version: "0.0.0",
    ...(nowMs === undefined ? {} : { nowMs }),
    library: () => LIBRARY,
    readFile: (path) => readFileSync(path, "utf8"),
    labelFont: () => FONT,
  };
}
