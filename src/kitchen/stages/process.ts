/** The tested heat treatment: the whole time, unbroken and watched, from the reported sign. */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { LOW_TEMPERATURE_F, LOW_TEMPERATURE_READ_MINUTES } from "../../reckon/trade-numbers.ts";
import type { DeviationCode } from "../deviation-codes.ts";
import {
  NOTHING_SHOWN,
  NOTHING_USUAL,
  type StageRules,
  USUALLY_PLANNED,
  USUALLY_SAID,
} from "./rules.ts";

type Method = ProcessTerms["method"];

const LOSS: Record<Method, DeviationCode> = {
  "boiling-water": "boil-lost",
  steam: "boil-lost",
  pressure: "pressure-lost",
  "low-temperature": "temperature-lost",
};

const { min, max } = LOW_TEMPERATURE_F;

const HELD: Record<Method, string> = {
  "boiling-water": "the canner hold a full boil with the lids covered",
  steam: "a full column of steam come out",
  pressure: "the pressure stay at or above the mark",
  "low-temperature": `the water stay at ${min} to ${max} degrees`,
};

export const process: StageRules = {
  kind: "process",
  role: "treatment",
  ofCanner: "inside",
  onceForCanner: true,
  thermometer: "canner",
  length: "tested-table",
  restsAsTested: false,
  usual: { ...NOTHING_USUAL, title: "process", say: "Into the canner.", minutes: 0 },
  shelf: "heat",
  food: "jars",
  clock: "at-sign",
  ends: "kept-time",
  watched: true,
  waits: false,
  learned: false,
  guarded: true,
  window: null,
  date: null,
  condition: {
    loss: (method) => (method ? LOSS[method] : "boil-lost"),
    held: (method) => HELD[method],
    minutes: (terms) => terms.minutes,
    readEvery: ({ method }) =>
      method === "low-temperature" ? LOW_TEMPERATURE_READ_MINUTES : undefined,
  },
  plan: { ...USUALLY_PLANNED, present: true },
  says: { ...USUALLY_SAID, lost: "process", ends: "time-is-full" },
  shows: NOTHING_SHOWN,
};
