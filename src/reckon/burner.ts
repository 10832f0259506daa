import { studentTQuantile } from "./statistics/student-t.ts";

export const BURNERS = ["gas", "electric", "induction"] as const;
export type Burner = (typeof BURNERS)[number];

/**
 * Share of a burner's power that reaches the water: 0.40-0.44 gas, 0.74-0.80 electric,
 * 0.84-0.90 induction (published burner efficiency tests).
 */
export const BURNER_EFFICIENCY: Record<Burner, number> = {
  gas: 0.42,
  electric: 0.77,
  induction: 0.87,
};

/** Normal-inverse-gamma belief about ln efficiency. */
export type EfficiencyBelief = { mu: number; k: number; a: number; b: number };

/** The belief about a burner never timed: that of its class, give or take a fifth or so. */
export function priorEfficiency(efficiency: number): EfficiencyBelief {
  return { mu: Math.log(efficiency), k: 1, a: 2, b: 2 * 0.12 ** 2 };
}

/** The belief after the efficiencies seen (each above 0), in any order. */
export function learnEfficiency(
  prior: EfficiencyBelief,
  seen: readonly number[],
): EfficiencyBelief {
  const n = seen.length;
  if (n === 0) return prior;
  const logs = seen.map(Math.log);
  const mean = logs.reduce((sum, value) => sum + value, 0) / n;
  const squares = logs.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const k = prior.k + n;
  return {
    mu: (prior.k * prior.mu + n * mean) / k,
    k,
    a: prior.a + n / 2,
    b: prior.b + squares / 2 + (prior.k * n * (mean - prior.mu) ** 2) / (2 * k),
  };
}

/** Middle and 90 % range of the efficiency the next pot will show. */
export function expectedEfficiency(belief: EfficiencyBelief): {
  middle: number;
  low: number;
  high: number;
} {
  const scale = Math.sqrt((belief.b * (belief.k + 1)) / (belief.a * belief.k));
  const reach = scale * studentTQuantile(0.95, 2 * belief.a);
  return {
    middle: Math.exp(belief.mu),
    low: Math.exp(belief.mu - reach),
    high: Math.exp(belief.mu + reach),
  };
}
