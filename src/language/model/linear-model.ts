/**
 * A linear model over hashed features: how likely each class is, from the weights of the features
 * present.
 */
import { FEATURES } from "./features.ts";

export type LinearModel = {
  classes: readonly string[];
  /** One for each class, for a sentence without any known feature. */
  bias: Float64Array;
  /** The features that have weights, ascending. */
  features: Int32Array;
  /** Where the features of each bucket begin, so that few have to be looked at. */
  drawers: Int32Array;
  /** How telling each of them is, 1 to 15; rare ones are more telling. */
  rarity: Uint8Array;
  /** Where each feature's pairs begin; one more than there are features. */
  starts: Int32Array;
  pairClass: Uint8Array;
  /** -7 to 7. */
  pairWeight: Int8Array;
  /** What a weight of 1 is worth. */
  unit: number;
};

/** A class and how likely it is, 0 to 1. */
/** `slots` are filled by the class itself. */
export type Likely = { name: string; probability: number; slots?: object };

export const MOST_RARE = 15;
export const LARGEST_WEIGHT = 7;

/**
 * e to the power of x, for x from -700 to 0, by the series of a small remainder, so that every
 * machine gives the same result to the last bit.
 */
function exponential(x: number): number {
  if (x < -700) return 0;
  const rest = x / 2 ** HALVINGS;
  let power = 1;
  for (let term = TERMS; term > 0; term--) power = 1 + (rest * power) / term;
  for (let times = 0; times < HALVINGS; times++) power *= power;
  return power;
}

const HALVINGS = 10;
const TERMS = 9;

/** Turns sums into probabilities, in place. */
export function soften(sums: Float64Array): void {
  let most = Number.NEGATIVE_INFINITY;
  for (const sum of sums) most = Math.max(most, sum);
  let all = 0;
  for (let to = 0; to < sums.length; to++) {
    sums[to] = exponential((sums[to] ?? 0) - most);
    all += sums[to] ?? 0;
  }
  for (let to = 0; to < sums.length; to++) sums[to] = (sums[to] ?? 0) / all;
}

/** Features that differ only in these last bits share a bucket. */
const DRAWER_BITS = 5;

/** Where the features of each bucket begin, one more than there are buckets. */
export function drawersOf(features: Int32Array): Int32Array {
  const drawers = new Int32Array((FEATURES >>> DRAWER_BITS) + 1);
  for (const feature of features) drawers[(feature >>> DRAWER_BITS) + 1]! += 1;
  for (let drawer = 1; drawer < drawers.length; drawer++) {
    drawers[drawer]! += drawers[drawer - 1] ?? 0;
  }
  return drawers;
}

/** The place of a feature among a model's; -1 where it has no weights. */
function placeIn({ features, drawers }: LinearModel, feature: number): number {
  const drawer = feature >>> DRAWER_BITS;
  const end = drawers[drawer + 1] ?? 0;
  for (let place = drawers[drawer] ?? 0; place < end; place++) {
    if (features[place] === feature) return place;
  }
  return -1;
}

/**
 * The two models that are shipped, what is meant and how, and how the one goes with the other: for
 * each class of meaning, how much oftener than any sentence it is meant in each of the frames.
 */
export type Models = {
  intents: LinearModel;
  frames: LinearModel;
  manners: readonly (readonly number[])[];
};

/** How likely each class is, in the order of the classes. */
export function likelihoods(model: LinearModel, said: Int32Array): Float64Array {
  const { bias, rarity, starts, pairClass, pairWeight } = model;
  const sums = new Float64Array(model.classes.length);
  let length = 0;
  for (const feature of said) {
    const place = placeIn(model, feature);
    const rare = place < 0 ? MOST_RARE : (rarity[place] ?? 0);
    length += rare * rare;
    if (place < 0) continue;
    const end = starts[place + 1] ?? 0;
    for (let at = starts[place] ?? 0; at < end; at++) {
      sums[pairClass[at] ?? 0]! += rare * (pairWeight[at] ?? 0);
    }
  }
  const scale = length === 0 ? 0 : model.unit / Math.sqrt(length);
  for (let to = 0; to < sums.length; to++) sums[to] = (bias[to] ?? 0) + (sums[to] ?? 0) * scale;
  soften(sums);
  return sums;
}

/** All classes, the likeliest first. */
export function ranked(classes: readonly string[], probabilities: Float64Array): Likely[] {
  return classes
    .map((name, index) => ({ name, probability: probabilities[index] ?? 0 }))
    .sort((a, b) => b.probability - a.probability);
}

/*
 * As bytes, for each feature in order: how far behind the last one it stands (seven bits a byte), a
 * byte of its rarity and how many pairs it has (15: a byte more with the rest), the classes, and
 * the weights, two to a byte.
 */

/** The weights of a model as bytes; `unpackModel` reads them back. */
export function packModel(model: LinearModel): Uint8Array {
  const bytes: number[] = [];
  let last = -1;
  model.features.forEach((feature, place) => {
    let gap = feature - last - 1;
    last = feature;
    for (; gap >= 128; gap >>>= 7) bytes.push((gap & 127) | 128);
    bytes.push(gap);
    const from = model.starts[place] ?? 0;
    const count = (model.starts[place + 1] ?? 0) - from;
    bytes.push(((model.rarity[place] ?? 0) << 4) | Math.min(count, 15));
    if (count >= 15) bytes.push(count - 15);
    bytes.push(...model.pairClass.subarray(from, from + count));
    for (let at = from; at < from + count; at += 2) {
      const second = at + 1 < from + count ? (model.pairWeight[at + 1] ?? 0) : 0;
      bytes.push((((model.pairWeight[at] ?? 0) & 15) << 4) | (second & 15));
    }
  });
  return Uint8Array.from(bytes);
}

function signed(nibble: number): number {
  return nibble > 7 ? nibble - 16 : nibble;
}

/**
 * A model from its bytes.
 * @throws RangeError where they are not a model's
 */
export function unpackModel(
  { classes, bias, unit }: { classes: readonly string[]; bias: readonly number[]; unit: number },
  bytes: Uint8Array,
): LinearModel {
  let at = 0;
  const byte = () => {
    const value = bytes[at++];
    if (value === undefined)
      throw new RangeError("the model ends early; make it again with npm run train");
    return value;
  };
  const features: number[] = [];
  const rarity: number[] = [];
  const starts = [0];
  const pairClass: number[] = [];
  const pairWeight: number[] = [];
  let feature = -1;
  while (at < bytes.length) {
    let gap = 0;
    for (let shift = 0, more = true; more; shift += 7) {
      const next = byte();
      gap |= (next & 127) << shift;
      more = next >= 128;
    }
    feature += gap + 1;
    if (feature >= FEATURES)
      throw new RangeError(
        "the model belongs to another version; make it again with npm run train",
      );
    features.push(feature);
    const head = byte();
    rarity.push(head >>> 4);
    const count = (head & 15) === 15 ? 15 + byte() : head & 15;
    for (let step = 0; step < count; step++) pairClass.push(byte());
    for (let step = 0; step < count; step += 2) {
      const two = byte();
      pairWeight.push(signed(two >>> 4));
      if (step + 1 < count) pairWeight.push(signed(two & 15));
    }
    starts.push(pairClass.length);
  }
  const all = Int32Array.from(features);
  return {
    classes,
    unit,
    bias: Float64Array.from(bias),
    features: all,
    drawers: drawersOf(all),
    rarity: Uint8Array.from(rarity),
    starts: Int32Array.from(starts),
    pairClass: Uint8Array.from(pairClass),
    pairWeight: Int8Array.from(pairWeight),
  };
}
