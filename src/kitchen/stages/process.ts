/** The tested heat treatment: the whole time, unbroken and watched, from the reported sign. */
import type { StageRules } from "./rules.ts";

export const process: StageRules = {
  kind: "process",
  shelf: "heat",
  clock: "at-sign",
  ends: "kept-time",
  watched: true,
  learned: false,
};
