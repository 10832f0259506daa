/** Made-up traces of a thermometer or a gauge in a canner, with what truly happened beside them. */
import type { ProbeReading } from "../../../src/kitchen/probe/probe-line.ts";
import { boilingPointF } from "../../../src/reckon/boiling.ts";
import { type Dice, dice } from "../../simulation/dice.ts";

export type Trace = {
  kind: ProbeReading["kind"];
  decimals: number;
  readings: { t: number; value: number }[];
  /** When the condition truly began and was truly lost, ms; undefined where it never was. */
  trulyFrom?: number;
  trulyLost?: number;
};

export const ALTITUDE_FT = 6200;
export const TARGET_PSI = 13;

const SECOND_MS = 1000;
/** Twice a second, which is what cheap sensors do. */
const EVERY_MS = 500;

function gauss(chance: Dice): number {
  return Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
}

type Sensor = { offset: number; noise: number; step: number; decimals: number };

function sensor(chance: Dice, kind: Trace["kind"]): Sensor {
  const [decimals, step] = chance.pick([
    [1, 0.1],
    [1, 0.5],
    [0, 1],
  ] as const);
  const fine = kind === "pressure" ? 0.25 : 1;
  const offset = (chance.next() * 2 - 1) * fine;
  return { offset, noise: chance.pick([0.1, 0.3]) * fine, step: step * fine, decimals };
}

/** What the sensor shows for a true value each half second: noise, steps, spikes and holes. */
function read(
  chance: Dice,
  kind: Trace["kind"],
  seconds: number,
  truth: (second: number) => number,
): Pick<Trace, "kind" | "decimals" | "readings"> {
  const { offset, noise, step, decimals } = sensor(chance, kind);
  const readings: Trace["readings"] = [];
  let holeUntil = 0;
  for (let t = 0; t < seconds * SECOND_MS; t += EVERY_MS) {
    if (chance.chance(0.002)) holeUntil = t + chance.whole(1, 8) * SECOND_MS;
    if (t < holeUntil) continue;
    let value = truth(t / SECOND_MS) + offset + noise * gauss(chance);
    if (chance.chance(0.01)) value += (chance.chance(0.5) ? 1 : -1) * chance.whole(8, 60);
    readings.push({ t, value: Math.round(value / step) * step });
  }
  return { kind, decimals, readings };
}

const MINUTES = 12;
const UP_S = 180;

/** Weather moves the boil by about half a degree either way. */
const boils = (chance: Dice): number => boilingPointF(ALTITUDE_FT) + 0.4 * gauss(chance);

/** From 170 F at three degrees a minute to the boil, then as `at` says, seconds after it. */
function toBoil(chance: Dice, at: (boil: number, since: number) => number) {
  const boil = boils(chance);
  const rate = (2 + 2 * chance.next()) / 60;
  const reach = (boil - 190) / rate;
  const truth = (second: number) =>
    second < reach ? 190 + rate * second : at(boil, second - reach);
  return { reach, truth, seconds: reach + MINUTES * 60 };
}

type Scene = (chance: Dice) => Trace;

const boilScene =
  (at: (boil: number, since: number) => number, lostAt?: number): Scene =>
  (chance) => {
    const { reach, truth, seconds } = toBoil(chance, at);
    return {
      ...read(chance, "temperature", seconds, truth),
      trulyFrom: reach * SECOND_MS,
      ...(lostAt === undefined ? {} : { trulyLost: (reach + lostAt) * SECOND_MS }),
    };
  };

const pressureScene =
  (psi: (second: number) => number, lostAt?: number): Scene =>
  (chance) => {
    const truth = (second: number) =>
      second < UP_S ? (psi(0) * second) / UP_S : psi(second - UP_S);
    return {
      ...read(chance, "pressure", UP_S + MINUTES * 60, truth),
      trulyFrom: UP_S * SECOND_MS,
      ...(lostAt === undefined ? {} : { trulyLost: (UP_S + lostAt) * SECOND_MS }),
    };
  };

const LATER = 300;

/** Scenes by name; those with `trulyLost` have a loss that must be noticed. */
export const SCENES: Record<string, Scene> = {
  "a steady boil": boilScene((boil) => boil),
  "the lid lifted for half a minute": boilScene((boil, since) =>
    since > LATER && since < LATER + 30 ? boil - 0.7 : boil,
  ),
  "a burner that cycles": boilScene((boil, since) => boil - 0.4 * (since % 50 > 25 ? 1 : 0)),
  "cold water added": boilScene(
    (boil, since) => (since < LATER ? boil : Math.min(boil, boil - 8 + (since - LATER) * 0.06)),
    LATER,
  ),
  "the flame out": boilScene(
    (boil, since) => (since < LATER ? boil : boil - (since - LATER) * 0.025),
    LATER,
  ),
  "only a simmer": (chance) => {
    const { truth, seconds } = toBoil(chance, (boil) => boil);
    const least = boilingPointF(ALTITUDE_FT) - 4;
    return read(chance, "temperature", seconds, (second) => Math.min(truth(second), least));
  },
  "steady pressure": pressureScene(() => TARGET_PSI + 1),
  "pressure with a cycling burner": pressureScene(
    (second) => TARGET_PSI + 1.2 + 0.5 * Math.sin(second / 12),
  ),
  "pressure that sinks": pressureScene(
    (second) => TARGET_PSI + 1 - Math.max(0, second - LATER) * 0.02,
    // The pound above the mark is gone after 50 seconds.
    LATER + 50,
  ),
  "pressure that dips for ten seconds": pressureScene(
    (second) => TARGET_PSI + 1 - (second > LATER && second < LATER + 12 ? 2 : 0),
    LATER,
  ),
};

export function trace(scene: string, seed: number): Trace {
  const make = SCENES[scene];
  if (!make) throw new Error(`no scene ${scene}`);
  return make(dice(seed * 7919 + scene.length));
}
