/** The recipes, and commands called on a kitchen's folder, for tests. */
import { readFileSync } from "node:fs";
import type { ReviewIo } from "../../src/commands/record/review-io.ts";
import { parseIso } from "../../src/kitchen/time.ts";
import { wholeLibrary } from "../recipe/library-files.ts";
import { ZONE } from "./demo-season.ts";

export const LIBRARY = wholeLibrary();

export function ioFor(folder: string, now = "2027-09-20T12:00:00"): ReviewIo {
  const nowMs = parseIso(now, ZONE);
  return {
    folder,
    version: "0.0.0",
    ...(nowMs === undefined ? {} : { nowMs }),
    library: () => LIBRARY,
    readFile: (path) => readFileSync(path, "utf8"),
  };
}
