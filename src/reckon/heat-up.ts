import { checkedAltitudeFt } from "./atmosphere.ts";
import { boilingPointF } from "./boiling.ts";
import type { Burner, EfficiencyBelief } from "./burner.ts";
import { BURNER_EFFICIENCY, expectedEfficiency, priorEfficiency } from "./burner.ts";
import type { Reckoned } from "./reckoned.ts";
import type { Result } from "./result.ts";
import { fail, ok, refuse } from "./result.ts";
import { celsiusOf, fahrenheitOf } from "./units.ts";

// Specific heats, J/(g K).
const WATER_J = 4.186;
const STEEL_J = 0.46;
const GLASS_J = 0.84;
const FOOD_J = 3.9;

/** Heat lost by a lidded pot of 10 L, watts per kelvin above the room. */
const LOSS_W_PER_K = 6;
const LOSS_AT_G = 10_000;
const ROOM_C = 21;
/** Steel in a pot, grams per gram of water it holds. */
const POT_SHARE = 0.2;

/** A pot by what must be warmed in it, grams. */
type Pot = { waterG: number; potG?: number; glassG?: number; foodG?: number };

/** Joules that warm the pot and all in it by one kelvin. */
export function heatCapacityJPerK(pot: Pot): number {
  return (
    pot.waterG * WATER_J +
    (pot.potG ?? 0) * STEEL_J +
    (pot.glassG ?? 0) * GLASS_J +
    (pot.foodG ?? 0) * FOOD_J
  );
}

/** Where and how fast a pot is heated. */
export type Heating = {
  capacityJPerK: number;
  fromC: number;
  toC: number;
  powerW: number;
  /** Share of the power that reaches the pot, 0 to 1. */
  efficiency: number;
  lossWPerK: number;
  roomC: number;
};

/**
 * Minutes to heat a well-stirred pot that loses heat to the room; Infinity where the losses
 * match the heat before it gets there (see `stallsAtC`).
 */
export function heatUpMinutes(heating: Heating): number {
  const { capacityJPerK, fromC, toC, powerW, efficiency, lossWPerK, roomC } = heating;
  if (toC <= fromC) return 0;
  const gainW = efficiency * powerW;
  if (lossWPerK === 0) return (capacityJPerK * (toC - fromC)) / gainW / 60;
  const spareAtStart = gainW - lossWPerK * (fromC - roomC);
  const spareAtEnd = gainW - lossWPerK * (toC - roomC);
  if (spareAtEnd <= 0) return Number.POSITIVE_INFINITY;
  return ((capacityJPerK / lossWPerK) * Math.log(spareAtStart / spareAtEnd)) / 60;
}

/** The temperature, °C, at which a pot stops getting hotter. */
export function stallsAtC(heating: Omit<Heating, "toC">): number {
  return heating.roomC + (heating.efficiency * heating.powerW) / heating.lossWPerK;
}

type HeatUpQuestion = {
  pot: Pot;
  fromC: number;
  powerW: number;
  altitudeFt: number;
  /** The temperature to reach; a boil where absent. */
  toC?: number;
  burner?: Burner;
  /** What earlier boils on this burner showed; losses are then included. */
  learned?: EfficiencyBelief;
};

/** Efficiency where the kind of burner is not given: between gas and induction. */
const ANY_BURNER = { middle: 0.6, low: 0.33, high: 0.9 } as const;
/** Reported instead of infinity, where the weak end of the range never boils. */
const LONGEST_MIN = 1440;

function efficiencyFor(question: HeatUpQuestion): { middle: number; low: number; high: number } {
  if (question.learned) return expectedEfficiency(question.learned);
  if (!question.burner) return ANY_BURNER;
  const expected = expectedEfficiency(priorEfficiency(BURNER_EFFICIENCY[question.burner]));
  return { ...expected, high: Math.min(expected.high, 0.95) };
}

function checked(question: HeatUpQuestion): Result<number> {
  const altitude = checkedAltitudeFt(question.altitudeFt);
  if (!altitude.ok) return altitude;
  if (!(question.pot.waterG > 0 && question.pot.waterG <= 200_000)) {
    return fail("--water: up to 200 L fit in a pot; give how much, such as 8L");
  }
  if (!(question.powerW >= 100 && question.powerW <= 30_000)) {
    return fail("--power: a burner has 100 to 30,000 W; check the number, such as 2500W");
  }
  const boilC = celsiusOf(boilingPointF(question.altitudeFt));
  if (!(question.fromC >= 0 && question.fromC <= boilC)) {
    return fail("--from: water is between freezing and boiling; check the number, such as 60F");
  }
  const toC = question.toC ?? boilC;
  if (toC > boilC + 0.05 || toC < question.fromC) {
    const boil = fahrenheitOf(boilC).toFixed(0);
    return fail(`--to: between the start and the boil, which is ${boil} F there; or say boil`);
  }
  return ok(toC);
}

/**
 * Minutes for a pot to come to a boil or a temperature: an estimate to plan by, with its 90 %
 * range. A process is timed only from a boil that somebody saw. Refused where the burner is too
 * weak.
 */
export function heatUp(question: HeatUpQuestion): Result<Reckoned> {
  const target = checked(question);
  if (!target.ok) return target;
  const { waterG } = question.pot;
  const pot = { ...question.pot, potG: question.pot.potG ?? waterG * POT_SHARE };
  const efficiency = efficiencyFor(question);
  const lossWPerK = question.learned ? 0 : LOSS_W_PER_K * (waterG / LOSS_AT_G) ** (2 / 3);
  const heating: Heating = {
    capacityJPerK: heatCapacityJPerK(pot),
    fromC: question.fromC,
    toC: target.value,
    powerW: question.powerW,
    efficiency: efficiency.middle,
    lossWPerK,
    roomC: Math.min(ROOM_C, question.fromC),
  };
  const value = heatUpMinutes(heating);
  if (!Number.isFinite(value)) {
    const stall = fahrenheitOf(stallsAtC(heating)).toFixed(0);
    return refuse(
      `it never gets there: it stalls at about ${stall} F; less water, or a stronger burner`,
    );
  }
  const fastest = heatUpMinutes({ ...heating, efficiency: efficiency.high });
  const slowest = heatUpMinutes({ ...heating, efficiency: efficiency.low });
  const notes = [
    "for planning; a process is timed only from a full boil that somebody saw",
    "lidded pot, its steel a fifth of the water's weight, full power throughout",
  ];
  if (!question.learned && !question.burner) {
    notes.push("for any burner; add --burner gas, electric or induction to narrow the range");
  }
  if (slowest > LONGEST_MIN) notes.push("at the weak end of the range it may never boil");
  return ok({
    value,
    unit: "min",
    range: [fastest, Math.min(slowest, LONGEST_MIN)],
    estimate: true,
    source: "heat balance of a stirred pot; published burner efficiencies",
    notes,
  });
}
