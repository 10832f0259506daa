import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { theLibrary } from "./play.ts";

/** Saturday 2027-08-14 at eight in the morning in the mountain kitchen. */
export const EIGHT = Date.parse("2027-08-14T08:00:00-06:00");

/** The mountain kitchen at 6,200 feet, empty and silent, opened at eight on a Saturday. */
export function saturdayKitchen(): MadeUpKitchen {
  return new MadeUpKitchen({
    library: theLibrary(),
    startMs: EIGHT,
    zone: "America/Denver",
    setUp: [{ type: "kitchen-set", altitudeFt: 6200, t: EIGHT }],
    version: "0.0.0",
    voice: () => SILENT,
  });
}
