/** Bring to a boil or a temperature, and hold it there where the recipe says so. */
import type { StageRules } from "./rules.ts";

export const heat: StageRules = {
  kind: "heat",
  shelf: "heat",
  clock: "at-sign",
  ends: "sign",
  watched: false,
  learned: true,
};
