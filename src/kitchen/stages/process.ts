/** The tested heat treatment: the whole time, unbroken and watched, from the reported sign. */
import type { ProcessTerms } from "../../recipe/recipe.ts";
import { LOW_TEMPERATURE_F, LOW_TEMPERATURE_READ_MINUTES } from "../../reckon/trade-numbers.ts";
import type { DeviationCode } from "../deviation-codes.ts";
import type { StageRules } from "./rules.ts";

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
  usual: {
    title: "process",
    say: "Into the canner.",
    sayUnprocessed: null,
    minutes: 0,
    window: null,
    attended: false,
    uses: [],
  },
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
  plan: {
    hands: "none",
    work: "if-attended",
    burner: false,
    byJars: false,
    foreseeable: true,
    present: true,
    lookMinutes: null,
  },
  says: {
    turn: "recipe",
    lost: "process",
    opens: "may-go-on",
    closes: "go-on",
    ends: "time-is-full",
  },
  shows: { done: null, needed: null },
};
