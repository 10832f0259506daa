/**
 * What tastings can and cannot tell. Preferences are counted in pairs, one vote per person, with
 * the exact binomial test; scores are listed as given, never averaged, and compared only where the
 * same people scored the same lots.
 */

import { type State, wallOf } from "../../kitchen/state.ts";
import { isoWithOffset } from "../../kitchen/time.ts";
import { friedman } from "../../reckon/statistics/friedman.ts";
import {
  fewestForPreference,
  pairedPreferenceP,
  wilsonInterval,
} from "../../reckon/statistics/preference.ts";

/** A tasting as it is shown; `words` is how it tasted where that was told without a score. */
export type Tasting = {
  at: string;
  taster: string | null;
  scores: Record<string, number>;
  words: string | null;
};

export function tastingOf(state: State, told: State["tastings"][number]): Tasting {
  const { taster, scores, words = null } = told;
  const at = isoWithOffset(Math.round(wallOf(state, told.at)), state.zone);
  return { at, taster, scores, words };
}

/** The probability below which a split is called hard to put down to chance. */
const ALPHA = 0.05;

export type Vote = { at: number; thing: string; over: string | null; taster: string | null };
type Score = {
  at: number;
  thing: string;
  taster: string | null;
  scores: Record<string, number>;
};

export type PairResult = {
  first: string;
  second: string;
  /** People whose latest vote was for the first, and all who voted. */
  forFirst: number;
  tasters: number;
  /** How many of them gave no name, so that one person may be counted twice. */
  unnamed: number;
  /** Two-sided p if each of them is a different person. */
  p: number;
  /** The same if all who gave no name are one person, whose latest vote counts. */
  pOneUnnamed: number;
  /** 95 % interval of the share that prefers the first. */
  share: [number, number];
  sentence: string;
};

/** Pairs of things with every person's latest vote; the one liked by more comes first. */
export function pairResults(things: readonly string[], votes: readonly Vote[]): PairResult[] {
  const results: PairResult[] = [];
  for (let i = 0; i < things.length; i++) {
    for (let j = i + 1; j < things.length; j++) {
      const pair: [string, string] = [things[i] ?? "", things[j] ?? ""];
      const result = pairResult(pair, votes, things.length === 2);
      if (result) results.push(result);
    }
  }
  return results;
}

function pairResult(
  [a, b]: [string, string],
  votes: readonly Vote[],
  only: boolean,
): PairResult | undefined {
  const named = new Map<string, string>();
  const unnamed: string[] = [];
  for (const vote of [...votes].sort((x, y) => x.at - y.at)) {
    const over = vote.over ?? (only ? (vote.thing === a ? b : a) : null);
    const fits = (vote.thing === a && over === b) || (vote.thing === b && over === a);
    if (!fits) continue;
    if (vote.taster === null) unnamed.push(vote.thing);
    else named.set(vote.taster.toLowerCase(), vote.thing);
  }
  const all = [...named.values(), ...unnamed];
  if (all.length === 0) return undefined;
  const forA = all.filter((thing) => thing === a).length;
  const [first, second] = forA * 2 >= all.length ? [a, b] : [b, a];
  const forFirst = Math.max(forA, all.length - forA);
  const p = pairedPreferenceP(forFirst, all.length);
  const share = wilsonInterval(forFirst, all.length);
  const voices = [...named.values(), ...unnamed.slice(-1)];
  const forOne = voices.filter((thing) => thing === first).length;
  const stillFirst = forOne * 2 >= voices.length;
  const pOneUnnamed = stillFirst ? pairedPreferenceP(forOne, voices.length) : 1;
  const counts = { forFirst, tasters: all.length, unnamed: unnamed.length };
  const result = { first, second, ...counts, p, pOneUnnamed, share };
  return { ...result, sentence: pairSentence(result) };
}

function pairSentence(result: Omit<PairResult, "sentence">): string {
  const { first, second, forFirst, tasters, unnamed, p, pOneUnnamed, share } = result;
  const liked = `${forFirst} of ${tasters} liked ${first} better than ${second}`;
  const percent = share.map((one) => Math.round(one * 100));
  const shown = p < 0.001 ? "under 0.001" : p.toFixed(p < 0.1 ? 3 : 2);
  const range = `preferred by ${percent[0]} to ${percent[1]} % of people like these`;
  const parts: string[] = [];
  const hard = "hard to put down to chance";
  const which = p > ALPHA ? "could easily be chance" : hard;
  const claim =
    p <= ALPHA && pOneUnnamed > ALPHA ? `${hard} if each was a different person` : which;
  parts.push(`${liked}: ${claim} (two-sided p = ${shown})`);
  parts.push(range);
  if (fewestForPreference(tasters, ALPHA) === null) {
    parts.push(`this few tasters cannot show a preference; it takes six of six`);
  }
  if (unnamed > 0) parts.push(`${unnamed} gave no name, and may be one person more than once`);
  return `${parts.join("; ")}.`;
}

/** Preferences that do not say over what, where there are more than two things. */
export function looseVotes(things: readonly string[], votes: readonly Vote[]): Vote[] {
  return things.length <= 2 ? [] : votes.filter((vote) => vote.over === null);
}

export type ScoreTable = {
  name: string;
  rows: { thing: string; scores: number[] }[];
  /** People who scored every thing, and what their scores can show. */
  tasters: number;
  p: number | null;
  sentence: string;
};

/** Scores by name: each person's latest for a thing, and every score without a name. */
export function scoreTables(things: readonly string[], given: readonly Score[]): ScoreTable[] {
  const names = [...new Set(given.flatMap(({ scores }) => Object.keys(scores)))].sort();
  return names.map((name) => scoreTable(name, things, given));
}

function scoreTable(name: string, things: readonly string[], given: readonly Score[]): ScoreTable {
  const byTaster = new Map<string, Map<string, number>>();
  const unnamed: { thing: string; score: number }[] = [];
  for (const { thing, taster, scores } of [...given].sort((a, b) => a.at - b.at)) {
    const score = scores[name];
    if (score === undefined || !things.includes(thing)) continue;
    if (taster === null) {
      unnamed.push({ thing, score });
      continue;
    }
    const key = taster.toLowerCase();
    const row = byTaster.get(key) ?? new Map<string, number>();
    byTaster.set(key, row.set(thing, score));
  }
  const rows = things.map((thing) => {
    const named = [...byTaster.values()].flatMap((row) => row.get(thing) ?? []);
    const others = unnamed.filter((one) => one.thing === thing).map((one) => one.score);
    return { thing, scores: [...named, ...others].sort((a, b) => a - b) };
  });
  const scored = rows.filter(({ scores }) => scores.length > 0);
  const shared = scored.map(({ thing }) => thing);
  const whole = [...byTaster.values()].filter((row) => shared.every((thing) => row.has(thing)));
  const table = { name, rows: scored, tasters: whole.length };
  if (shared.length < 2) return { ...table, p: null, sentence: "Only one of them was scored." };
  const test = friedman(whole.map((row) => shared.map((thing) => row.get(thing) ?? 0)));
  if (!test.ok) {
    const why =
      whole.length < 2
        ? "Fewer than two named people scored all of them, so the scores cannot be compared."
        : "There are too many of them to be compared exactly.";
    return { ...table, p: null, sentence: why };
  }
  const { p } = test.value;
  const shown = p < 0.001 ? "under 0.001" : p.toFixed(p < 0.1 ? 3 : 2);
  const people = `${whole.length} people scored all of them`;
  const sentence =
    p <= ALPHA
      ? `${people}: they tell them apart, hard to put down to chance (exact p = ${shown}).`
      : `${people}: the differences could easily be chance (exact p = ${shown}).`;
  return { ...table, p, sentence };
}
