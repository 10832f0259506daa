import type { Solute } from "./charge-balance.ts";
import {
  ACETIC,
  CARBOXYL,
  CITRIC,
  MALIC,
  PHOSPHORIC,
  solvePh,
  strongIonsAt,
} from "./charge-balance.ts";
import type { ProduceBuffer } from "./produce-buffers.ts";
import { findProduceBuffer, PRODUCE_BUFFERS } from "./produce-buffers.ts";
import type { Reckoned } from "./reckoned.ts";
import { FOR_THE_RECORD } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok } from "./result.ts";
import { VINEGAR_PERCENT } from "./trade-numbers.ts";

const ACETIC_G_PER_MOL = 60.052;
const SALT_G_PER_MOL = 58.443;

/** Vinegars on a shelf; the label's percent is grams of acetic acid in 100 mL. */
export const VINEGAR_STRENGTH = { least: 1, most: 10 } as const;

/** Density of vinegar at 20 °C, g/mL, from printed densities of 1 to 10 % acetic acid. */
export function vinegarDensityGPerMl(strengthPercent: number): number {
  return 0.9982 + 0.0014 * strengthPercent;
}

/** What goes into the jars. Produce not in the table of buffers still counts by weight. */
export type PickleMix = {
  vinegarMl: number;
  strengthPercent: number;
  waterG: number;
  produce: readonly { name: string; grams: number }[];
  sugarG?: number;
  saltG?: number;
};

type AcidReckoned = Reckoned & {
  /** Estimated pH at equilibrium, to one decimal; null where some produce is not known. */
  ph: number | null;
  phRange: [number, number] | null;
  /** Percent by weight of the water phase alone. */
  waterPhasePercent: number | null;
  /** Grams of acetic acid for each kilogram of produce; null without produce. */
  acidGramsPerKg: number | null;
};

/** Assumptions a pH rests on, varied one at a time to find how far it may be off. */
type Assumed = { loss: number; naturalPh: "low" | "middle" | "high"; buffer: number };
const MIDDLE: Assumed = { loss: 0, naturalPh: "middle", buffer: 1 };
/** Salting and draining takes up to a fifth; buffer contents are known to about 40 %. */
const VARIED: readonly Assumed[] = [
  { ...MIDDLE, loss: 0.2 },
  { ...MIDDLE, naturalPh: "low" },
  { ...MIDDLE, naturalPh: "high" },
  { ...MIDDLE, buffer: 0.6 },
  { ...MIDDLE, buffer: 1.4 },
];
/** Ninety percent of a model error whose standard deviation is 0.1 pH. */
const MODEL_ERROR_PH = 0.1645;

/** Acids a kilogram of produce brings, mol, and the strong ions that give its natural pH. */
function bufferOf(one: ProduceBuffer, assumed: Assumed) {
  const acids = [
    { acid: MALIC, mol: one.malateMmol },
    { acid: CITRIC, mol: one.citrateMmol },
    { acid: PHOSPHORIC, mol: one.phosphateMmol },
    { acid: CARBOXYL, mol: one.carboxylMmol },
  ].map(({ acid, mol }) => ({ acid, mol: (mol * assumed.buffer) / 1000 }));
  const solutes = acids.map(({ acid, mol }) => ({ acid, molal: mol / one.water }));
  const [low, high] = one.ph;
  const ph = { low, middle: (low + high) / 2, high }[assumed.naturalPh];
  return { acids, strong: strongIonsAt(ph, solutes) * one.water };
}

/** pH of the mix at equilibrium. */
function phOf(
  mix: PickleMix,
  produce: readonly { buffer: ProduceBuffer; grams: number }[],
  assumed: Assumed,
): number {
  const aceticG = (mix.vinegarMl * mix.strengthPercent) / 100;
  let waterKg = vinegarWaterKg(mix) + mix.waterG / 1000;
  const mols: { acid: Solute["acid"]; mol: number }[] = [
    { acid: ACETIC, mol: aceticG / ACETIC_G_PER_MOL },
  ];
  let strong = 0;
  for (const { buffer, grams } of produce) {
    const kg = (grams / 1000) * (1 - assumed.loss);
    const own = bufferOf(buffer, assumed);
    for (const { acid, mol } of own.acids) mols.push({ acid, mol: mol * kg });
    strong += own.strong * kg;
    waterKg += buffer.water * kg;
  }
  const solutes = mols.map(({ acid, mol }) => ({ acid, molal: mol / waterKg }));
  const saltMolal = (mix.saltG ?? 0) / SALT_G_PER_MOL / waterKg;
  return solvePh(solutes, strong / waterKg, saltMolal).ph;
}

function vinegarWaterKg(mix: PickleMix): number {
  const aceticG = (mix.vinegarMl * mix.strengthPercent) / 100;
  return (mix.vinegarMl * vinegarDensityGPerMl(mix.strengthPercent) - aceticG) / 1000;
}

/** The middle pH and its range of about 90 %, to one decimal, the range rounded outward. */
function phEstimate(mix: PickleMix, produce: { buffer: ProduceBuffer; grams: number }[]) {
  const middle = phOf(mix, produce, MIDDLE);
  let below = MODEL_ERROR_PH ** 2;
  let above = MODEL_ERROR_PH ** 2;
  for (const assumed of produce.length > 0 ? VARIED : []) {
    const moved = phOf(mix, produce, assumed) - middle;
    if (moved < 0) below += moved ** 2;
    else above += moved ** 2;
  }
  const range: [number, number] = [
    Math.floor((middle - Math.sqrt(below)) * 10) / 10,
    Math.ceil((middle + Math.sqrt(above)) * 10) / 10,
  ];
  return { ph: Math.round(middle * 10) / 10, range };
}

function notesFor(mix: PickleMix, unknown: readonly string[]): string[] {
  const notes = ["percent of everything in the jar together, once it has evened out (after days)"];
  if (mix.strengthPercent < VINEGAR_PERCENT) {
    notes.push(`tested pickle recipes ask for ${VINEGAR_PERCENT} % vinegar; this is weaker`);
  }
  if (mix.waterG > mix.vinegarMl) {
    notes.push("more water than vinegar: only a tested recipe may be diluted so far");
  }
  if (unknown.length > 0) {
    const known = PRODUCE_BUFFERS.map(({ names }) => names[0]).join(", ");
    notes.push(`no pH: nothing is known here about ${unknown.join(", ")} (known: ${known})`);
  } else {
    notes.push(`pH: ${FOR_THE_RECORD}; a badly diluted brine still reckons under 4.6`);
  }
  return notes;
}

/**
 * Acetic acid at equilibrium by mass balance, percent by weight of the whole (exact), with the pH
 * estimated from the charge balance (to one decimal, with its range). Produce counts at its full
 * weight: nothing is taken off for salting and draining, which would only raise the percent.
 */
export function acidAtEquilibrium(mix: PickleMix): Result<AcidReckoned> {
  const { least, most } = VINEGAR_STRENGTH;
  if (!(mix.strengthPercent >= least && mix.strengthPercent <= most)) {
    return fail(
      `--strength: vinegar of ${mix.strengthPercent} % is not sold for food (${least} to ` +
        `${most} %); read the label, 50 grain is 5 %`,
    );
  }
  if (!(mix.vinegarMl > 0))
    return fail("--vinegar: without vinegar there is no acid; give how much, such as 2L");
  const aceticG = (mix.vinegarMl * mix.strengthPercent) / 100;
  const vinegarG = mix.vinegarMl * vinegarDensityGPerMl(mix.strengthPercent);
  const produceG = mix.produce.reduce((sum, { grams }) => sum + grams, 0);
  const totalG = vinegarG + mix.waterG + produceG + (mix.sugarG ?? 0) + (mix.saltG ?? 0);
  const known: { buffer: ProduceBuffer; grams: number }[] = [];
  const unknown: string[] = [];
  for (const { name, grams } of mix.produce) {
    const buffer = findProduceBuffer(name);
    if (buffer) known.push({ buffer, grams });
    else unknown.push(name);
  }
  const estimate = unknown.length === 0 ? phEstimate(mix, known) : null;
  const produceWaterG = known.reduce((sum, { buffer, grams }) => sum + buffer.water * grams, 0);
  const waterPhaseG = vinegarWaterKg(mix) * 1000 + mix.waterG + produceWaterG + aceticG;
  return ok({
    value: (100 * aceticG) / totalG,
    unit: "%",
    range: null,
    estimate: false,
    source:
      "mass balance; pH by charge balance with Davies activities (after Price and others, " +
      "J. Food Sci. 85:918, 2020); FDA approximate pH of foods",
    notes: notesFor(mix, unknown),
    ph: estimate?.ph ?? null,
    phRange: estimate?.range ?? null,
    waterPhasePercent: unknown.length === 0 ? (100 * aceticG) / waterPhaseG : null,
    acidGramsPerKg: produceG > 0 ? aceticG / (produceG / 1000) : null,
  });
}

/** Vinegar and the produce it is for. */
type AcidShare = { vinegarMl: number; strengthPercent: number; produceG: number };

/**
 * Acetic acid for each kilogram of produce as a percent of the tested recipe's: exact
 * arithmetic, no model. Under 100 the jar is not the tested recipe; 100 or more says only that
 * this one thing was not cut.
 */
export function acidAgainstTested(mine: AcidShare, tested: AcidShare): Result<Reckoned> {
  const perKg = (share: AcidShare) =>
    (share.vinegarMl * share.strengthPercent) / 100 / (share.produceG / 1000);
  if (!(mine.produceG > 0 && tested.produceG > 0 && perKg(tested) > 0)) {
    return fail("acid: both recipes need vinegar and produce by weight to be compared");
  }
  const value = (100 * perKg(mine)) / perKg(tested);
  const short = value < 100 - 1e-6;
  return ok({
    value,
    unit: "%",
    range: null,
    estimate: false,
    source: "arithmetic: vinegar x strength / produce, against the tested recipe's",
    notes: [
      short
        ? "less acid for the produce than tested: not that recipe, and not shelf-stable by it"
        : "no less acid for the produce than tested; everything else must be as tested too",
    ],
  });
}
