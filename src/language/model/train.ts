/**
 * Learning a linear model: multinomial logistic regression by follow-the-regularized-leader
 * (McMahan and others, "Ad click prediction", 2013), which leaves most weights at zero. Only sums,
 * products and roots are used, in a fixed order, so the same examples give the same bytes on every
 * machine. Compared with a perceptron and naive Bayes, it did best on sentences by a writer it had
 * not been trained on.
 */
import { drawersOf, LARGEST_WEIGHT, type LinearModel, MOST_RARE, soften } from "./linear-model.ts";

/** What was said, as features, and all the classes that are right for it. */
export type Example = {
  features: Int32Array;
  right: readonly number[];
  /** How much is learned from it; 1 where missing. */
  weight?: number;
};

type Training = {
  classes: readonly string[];
  passes: number;
  /** How strongly a weight is drawn to zero. */
  absolute: number;
  /** About how many bytes are kept: those weights that tell the most for each byte. */
  bytes: number;
};

const RATE = 1.5;
const SQUARED = 0.001;
/** How strongly weights that were chosen before are drawn to zero. */
const ABSOLUTE_OF_CHOSEN = 0.4;
const DAMPING = 0.1;
const BIAS_RATE = 0.02;
/** Classes less likely than this do not learn from a sentence of another class. */
const NEGLIGIBLE = 0.0005;

/** The features of all examples by place, ascending, and how rare each is. */
type Vocabulary = { features: Int32Array; rarity: Uint8Array; placed: Int32Array[] };

/** Natural logarithm of a number of at least 1, from its halvings and a series. */
function logarithm(value: number): number {
  let rest = value;
  let halvings = 0;
  for (; rest >= 2; rest /= 2) halvings += 1;
  const ratio = (rest - 1) / (rest + 1);
  let sum = 0;
  let power = ratio;
  for (let term = 1; term < 30; term += 2) {
    sum += power / term;
    power *= ratio * ratio;
  }
  return 2 * sum + halvings * Math.LN2;
}

function vocabularyOf(examples: readonly Example[]): Vocabulary {
  const counts = new Map<number, number>();
  for (const { features } of examples) {
    for (const feature of features) counts.set(feature, (counts.get(feature) ?? 0) + 1);
  }
  const features = Int32Array.from(counts.keys()).sort();
  const place = new Map<number, number>();
  features.forEach((feature, at) => {
    place.set(feature, at);
  });
  const rarest = logarithm(1 + examples.length);
  const rarity = Uint8Array.from(features, (feature) => {
    const told = logarithm(1 + examples.length / (counts.get(feature) ?? 1));
    return Math.max(1, Math.round((told * MOST_RARE) / rarest));
  });
  const placed = examples.map((one) => one.features.map((feature) => place.get(feature) ?? 0));
  return { features, rarity, placed };
}

/** The order of a pass: every example once, shuffled by a fixed rule. */
function order(count: number, pass: number): number[] {
  const list = Array.from({ length: count }, (_, index) => index);
  let seed = ((pass + 1) * 2654435761) >>> 0;
  for (let at = count - 1; at > 0; at--) {
    seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
    const other = seed % (at + 1);
    [list[at], list[other]] = [list[other] ?? 0, list[at] ?? 0];
  }
  return list;
}

class Learner {
  readonly weights: Float32Array;
  readonly bias: Float64Array;
  private readonly pull: Float32Array;
  private readonly moved: Float32Array;
  private readonly sums: Float64Array;

  constructor(
    features: number,
    private readonly width: number,
    private readonly absolute: number,
    /** The weights that may be learned: 1 for each; all where missing. */
    private readonly pairs?: Uint8Array,
  ) {
    this.weights = new Float32Array(features * width);
    this.pull = new Float32Array(features * width);
    this.moved = new Float32Array(features * width);
    this.bias = new Float64Array(width);
    this.sums = new Float64Array(width);
  }

  learn(values: Float64Array, features: Int32Array, { right, weight = 1 }: Example): void {
    const { sums, width, weights } = this;
    sums.set(this.bias);
    features.forEach((feature, index) => {
      const value = values[index] ?? 0;
      const base = feature * width;
      for (let to = 0; to < width; to++) {
        sums[to] = (sums[to] ?? 0) + (weights[base + to] ?? 0) * value;
      }
    });
    soften(sums);
    for (let to = 0; to < width; to++) {
      const wanted = right.includes(to) ? 1 / right.length : 0;
      const off = ((sums[to] ?? 0) - wanted) * weight;
      if (wanted === 0 && off < NEGLIGIBLE) continue;
      this.bias[to] = (this.bias[to] ?? 0) - BIAS_RATE * off;
      features.forEach((feature, index) => {
        this.step(feature * width + to, off * (values[index] ?? 0));
      });
    }
  }

  private step(at: number, slope: number): void {
    if (this.pairs && this.pairs[at] === 0) return;
    const before = this.moved[at] ?? 0;
    const after = before + slope * slope;
    const change = (Math.sqrt(after) - Math.sqrt(before)) / RATE;
    const pull = (this.pull[at] ?? 0) + slope - change * (this.weights[at] ?? 0);
    this.pull[at] = pull;
    this.moved[at] = after;
    const beyond = Math.abs(pull) - this.absolute;
    const steepness = (DAMPING + Math.sqrt(after)) / RATE + SQUARED;
    this.weights[at] = beyond <= 0 ? 0 : (-Math.sign(pull) * beyond) / steepness;
  }
}

/** Features weighed by how rare they are; those without weights count as rare as can be. */
function weighed(vocabulary: Vocabulary, known: (place: number) => boolean): Float64Array[] {
  return vocabulary.placed.map((features) => {
    const told = Float64Array.from(features, (place) => {
      return known(place) ? (vocabulary.rarity[place] ?? 0) : MOST_RARE;
    });
    const length = Math.sqrt(told.reduce((sum, one) => sum + one * one, 0));
    return told.map((one) => one / length);
  });
}

function passesOver(
  learner: Learner,
  examples: readonly Example[],
  { placed }: Vocabulary,
  values: readonly Float64Array[],
  passes: number,
): void {
  for (let pass = 0; pass < passes; pass++) {
    for (const index of order(examples.length, pass)) {
      const features = placed[index];
      const own = values[index];
      const example = examples[index];
      if (features && own && example) learner.learn(own, features, example);
    }
  }
}

/**
 * Learns a model from examples: first with all features, then once more with those weights alone
 * that are worth their bytes.
 */
export function train(examples: readonly Example[], training: Training): LinearModel {
  const width = training.classes.length;
  const { absolute, passes } = training;
  const vocabulary = vocabularyOf(examples);
  const first = new Learner(vocabulary.features.length, width, absolute);
  passesOver(
    first,
    examples,
    vocabulary,
    weighed(vocabulary, () => true),
    passes,
  );
  const chosen = chosenOf(first, vocabulary, training);
  const second = new Learner(vocabulary.features.length, width, ABSOLUTE_OF_CHOSEN, chosen.pairs);
  const values = weighed(vocabulary, (place) => chosen.places.has(place));
  passesOver(second, examples, vocabulary, values, passes);
  return kept(second, vocabulary, training.classes);
}

/** How many bytes a feature and a weight take; see `packModel`. */
const FEATURE_BYTES = 2.3;
const WEIGHT_BYTES = 1.5;

/** How much the weights of a feature tell, the strongest first. */
function toldBy(row: Float32Array, rarity: number): number[] {
  return [...row.filter((weight) => weight !== 0)]
    .map((weight) => Math.abs(weight) * rarity)
    .sort((a, b) => b - a);
}

/** How many of a feature's weights are worth their bytes at a given price for a byte. */
function worthKeeping(told: readonly number[], each: number): number {
  const count = told.filter((one) => one >= each * WEIGHT_BYTES).length;
  const all = told.slice(0, count).reduce((sum, one) => sum + one, 0);
  return all >= each * (FEATURE_BYTES + WEIGHT_BYTES * count) ? count : 0;
}

/** The price for a byte at which what is kept comes to this many bytes. */
function priceOf(all: readonly (readonly number[])[], bytes: number): number {
  let low = 0;
  let high = all.reduce((most, [first = 0]) => Math.max(most, first), 1);
  for (let step = 0; step < 30; step++) {
    const middle = (low + high) / 2;
    const size = all.reduce((sum, told) => {
      const count = worthKeeping(told, middle);
      return count === 0 ? sum : sum + FEATURE_BYTES + WEIGHT_BYTES * count;
    }, 0);
    if (size > bytes) low = middle;
    else high = middle;
  }
  return high;
}

type Chosen = {
  /** 1 for each weight that is worth its bytes. */
  pairs: Uint8Array;
  /** The features that have such weights. */
  places: ReadonlySet<number>;
};

function chosenOf({ weights }: Learner, { rarity }: Vocabulary, training: Training): Chosen {
  const width = training.classes.length;
  const rowOf = (place: number) => weights.subarray(place * width, (place + 1) * width);
  const all = Array.from(rarity, (rare, place) => toldBy(rowOf(place), rare));
  const price = priceOf(all, training.bytes);
  const pairs = new Uint8Array(weights.length);
  const places = new Set<number>();
  all.forEach((told, place) => {
    const least = told[worthKeeping(told, price) - 1];
    if (least === undefined) return;
    places.add(place);
    rowOf(place).forEach((weight, to) => {
      if (weight !== 0 && Math.abs(weight) * (rarity[place] ?? 0) >= least)
        pairs[place * width + to] = 1;
    });
  });
  return { pairs, places };
}

/** The learned weights in half a byte each. */
function kept({ weights, bias }: Learner, vocabulary: Vocabulary, classes: readonly string[]) {
  const width = classes.length;
  const strong = Float64Array.from(weights.filter((weight) => weight !== 0).map(Math.abs)).sort();
  const largest = strong[Math.floor(strong.length * 0.999)] ?? 1;
  type Columns = Record<"features" | "rarity" | "classes" | "weights", number[]>;
  const model: Columns = { features: [], rarity: [], classes: [], weights: [] };
  const starts = [0];
  vocabulary.features.forEach((feature, place) => {
    for (let to = 0; to < width; to++) {
      const weight = weights[place * width + to] ?? 0;
      const level = Math.round((weight * LARGEST_WEIGHT) / largest);
      if (level === 0) continue;
      model.classes.push(to);
      model.weights.push(Math.max(-LARGEST_WEIGHT, Math.min(LARGEST_WEIGHT, level)));
    }
    if (model.classes.length === starts.at(-1)) return;
    model.features.push(feature);
    model.rarity.push(vocabulary.rarity[place] ?? 0);
    starts.push(model.classes.length);
  });
  const features = Int32Array.from(model.features);
  return {
    classes,
    bias: Float64Array.from(bias, (one) => Math.round(one * 1000) / 1000),
    features,
    drawers: drawersOf(features),
    rarity: Uint8Array.from(model.rarity),
    starts: Int32Array.from(starts),
    pairClass: Uint8Array.from(model.classes),
    pairWeight: Int8Array.from(model.weights),
    unit: largest / LARGEST_WEIGHT,
  };
}
