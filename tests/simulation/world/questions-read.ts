/** What a question of the program is about, by its words: all that a cook has of it. */
import type { Topic } from "./wordings.ts";

export type QuestionKind =
  | "seals"
  | "which"
  | "disposition"
  | "gap"
  | "end"
  | "still"
  | "cover"
  | "vinegar"
  | "acid"
  | "hot"
  | "headspace"
  | "lids"
  | "sterile"
  | "stood"
  | "gauge-tested"
  | "gauge-off"
  | "gauge-kind"
  | "altitude"
  | "heard"
  | "variety"
  | "other";

const WORDS: readonly (readonly [QuestionKind, RegExp])[] = [
  ["heard", /all (right|well) with that/i],
  ["variety", /^[^?]+: an? [a-z ]+\?$/i],
  ["seals", /did not seal|all sealed/i],
  ["which", /^which (is|one|pot)\b/i],
  ["disposition", /what becomes of|refrigerate/i],
  ["hot", /hot off the boil|hot or cooled/i],
  ["gap", /unwatched|went by/i],
  ["end", /throughout/i],
  [
    "still",
    /still boiling|did (it|the boil|the pressure) (stop|drop|fall)|boil(ing)?, or|dropped, or/i,
  ],
  ["cover", /covered/i],
  ["vinegar", /percent|vinegar/i],
  ["acid", /acid|lemon|citric/i],
  ["stood", /how long|stand|waited/i],
  ["headspace", /headspace/i],
  ["gauge-tested", /tested this season/i],
  ["gauge-off", /reads? high|off by/i],
  ["gauge-kind", /dial gauge or/i],
  ["lids", /\blids?\b/i],
  ["sterile", /steril|jars boiled/i],
  ["altitude", /altitude|how high|feet/i],
];

export function kindOfQuestion(text: string): QuestionKind {
  return WORDS.find(([, words]) => words.test(text))?.[0] ?? "other";
}

/** How it wants to be answered. */
export function shapeOf(text: string): "yes-no" | "choice" | "value" {
  const asks =
    text
      .split(/(?<=[.!?:])\s+/)
      .filter((one) => one.includes("?"))
      .at(-1) ?? text;
  if (/^(what|how|which|by how|when)\b/i.test(asks.trim())) return "value";
  return /\bor\b/i.test(asks) && !/^(is|was|did|are) .*\bor\b.*(over|more)/i.test(asks)
    ? "choice"
    : "yes-no";
}

/** What an ideal run asks once for each batch; everything else is an extra question. */
export const ROUTINE: ReadonlySet<QuestionKind> = new Set([
  ...(["vinegar", "acid", "hot", "headspace", "lids", "sterile", "end", "seals"] as const),
  ...(["gauge-tested", "gauge-off", "gauge-kind", "altitude"] as const),
]);

/** What is false where an answer to it is. */
export const SPEAKS_OF: Record<QuestionKind, readonly Topic[]> = {
  seals: [],
  disposition: [],
  which: [],
  gap: ["boil", "cover", "pressure"],
  end: ["boil", "cover", "early", "pressure", "vent", "forced"],
  still: ["boil", "pressure"],
  cover: ["cover"],
  vinegar: ["vinegar"],
  acid: ["acid"],
  hot: ["cold"],
  stood: ["stood"],
  headspace: ["headspace"],
  lids: ["lids"],
  sterile: ["sterile"],
  "gauge-tested": ["gauge"],
  "gauge-off": ["gauge"],
  "gauge-kind": [],
  altitude: ["altitude"],
  heard: [],
  variety: ["food"],
  other: ["food"],
};
