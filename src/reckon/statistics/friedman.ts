import type { Result } from "../result.ts";
import { fail, ok } from "../result.ts";

type FriedmanResult = {
  /** Friedman's chi-square (corrected for ties). */
  statistic: number;
  /** Chance of ranks at least as far apart when the things ranked do not differ. */
  p: number;
};

/** Beyond these many tasters, by number of things, the enumeration takes too long. */
const MOST_TASTERS: Record<number, number> = { 2: 200, 3: 60, 4: 25, 5: 12 };

/** Twice the rank of each score (ties share the middle rank), the lowest score first. */
function doubledRanks(scores: readonly number[]): number[] {
  return scores.map((score) => {
    const below = scores.filter((other) => other < score).length;
    const same = scores.filter((other) => other === score).length;
    return 2 * below + same + 1;
  });
}

/** Every different order of some numbers, each with how often it comes up among all. */
function orders(numbers: readonly number[]): { order: number[]; times: number }[] {
  const found = new Map<string, { order: number[]; times: number }>();
  const walk = (taken: number[], left: readonly number[]): void => {
    if (left.length === 0) {
      const key = taken.join();
      const known = found.get(key);
      if (known) known.times += 1;
      else found.set(key, { order: taken, times: 1 });
      return;
    }
    left.forEach((one, index) => {
      walk([...taken, one], [...left.slice(0, index), ...left.slice(index + 1)]);
    });
  };
  walk([], numbers);
  return [...found.values()];
}

function squares(sums: readonly number[]): number {
  return sums.reduce((total, sum) => total + sum * sum, 0);
}

/**
 * Probabilities of the rank sums after all tasters. Things are alike under the null hypothesis,
 * so sums that differ only in which thing has which are kept as one, sorted.
 */
function rankSums(rankings: readonly number[][]): Map<string, number> {
  const things = rankings[0]?.length ?? 0;
  let now = new Map<string, number>([[Array(things).fill(0).join(), 1]]);
  for (const ranking of rankings) {
    const ways = orders(ranking);
    const all = ways.reduce((sum, { times }) => sum + times, 0);
    const next = new Map<string, number>();
    for (const [key, probability] of now) {
      const sums = key.split(",").map(Number);
      for (const { order, times } of ways) {
        const after = sums.map((sum, index) => sum + (order[index] ?? 0));
        const afterKey = after.sort((a, b) => a - b).join();
        next.set(afterKey, (next.get(afterKey) ?? 0) + (probability * times) / all);
      }
    }
    now = next;
  }
  return now;
}

/**
 * Friedman's test with its exact p: do people who each scored the same things rank them alike?
 * `scores[taster][thing]`, any numbers; ties get the middle rank and are permuted as they are.
 * Two to five things; up to 60, 25 or 12 tasters for three, four or five.
 */
export function friedman(scores: readonly (readonly number[])[]): Result<FriedmanResult> {
  const things = scores[0]?.length ?? 0;
  const tasters = scores.length;
  const most = MOST_TASTERS[things];
  if (most === undefined || tasters < 2 || tasters > most) {
    return fail(
      `tasting: ${tasters} tasters of ${things} things cannot be compared exactly; ` +
        "two to five things, two tasters or more",
    );
  }
  if (scores.some((row) => row.length !== things)) {
    return fail("tasting: every taster must score every thing; leave out those who did not");
  }
  const ranks = scores.map(doubledRanks);
  const sums = Array.from({ length: things }, (_, thing) =>
    ranks.reduce((sum, row) => sum + (row[thing] ?? 0), 0),
  );
  const seen = squares(sums);
  let p = 0;
  for (const [key, probability] of rankSums(ranks)) {
    if (squares(key.split(",").map(Number)) >= seen) p += probability;
  }
  const level = (tasters * (things + 1)) ** 2 * things;
  const within = ranks.reduce((sum, row) => sum + squares(row), 0) / tasters;
  const spread = within - things * (things + 1) ** 2;
  const statistic = spread === 0 ? 0 : ((things - 1) * (seen - level)) / (tasters * spread);
  return ok({ statistic, p: Math.min(1, p) });
}
