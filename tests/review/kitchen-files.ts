/** The recipes, and commands called on a kitchen's folder, for tests. */
import { readFileSync } from "node:fs";
import type { LabelsIo } from "../../src/commands/record/print-labels.ts";
import { parseIso } from "../../src/kitchen/time.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { ZONE } from "./demo-season.ts";

export const LIBRARY = wholeLibrary();

/** As the build has laid them beside the program. */
export function fontFiles() {
  const font = (name: string) => readFileSync(`dist/fonts/${name}.ttf`);
  return { regular: font("regular"), bold: font("bold") };
}

export function ioFor(folder: string, now = "2027-09-20T12:00:00"): LabelsIo {
  const nowMs = parseIso(now, ZONE);
  return {
    folder,
    version: "0.0.0",
    ...(nowMs === undefined ? {} : { nowMs }),
    library: () => LIBRARY,
    readFile: (path) => readFileSync(path, "utf8"),
    labelFont: fontFiles,
  };
}
