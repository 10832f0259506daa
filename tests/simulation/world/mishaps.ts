/** What goes wrong in a kitchen by itself, and when. */
import type { Dice } from "../dice.ts";
import { DAY_MIX } from "./assumptions.ts";
import type { Card } from "./cards.ts";
import { STERILE_UNDER_MINUTES } from "./references.ts";
import { testedMinutes } from "./tables.ts";
import type { Topic } from "./wordings.ts";
import type { WorldKitchen } from "./world-kitchen.ts";

export const MISHAPS = [
  "flame-out",
  "turned-down",
  "water-low",
  "asleep",
  "early-start",
  "early-off",
  "weak-vinegar",
  "no-acid",
  "wrong-food",
  "jars-stood",
  "filled-cold",
  "used-lids",
  "overfull",
  "unsterile",
  "gauge-high",
  "unvented",
  "forced-cooling",
  "altitude-off",
  "taken-back",
] as const;
export type Mishap = (typeof MISHAPS)[number];

/** What a cook would speak of, once it is seen. */
export const SPOKEN_OF: Record<Mishap, Topic> = {
  "flame-out": "boil",
  "turned-down": "boil",
  "water-low": "cover",
  asleep: "boil",
  "early-start": "boil",
  "early-off": "early",
  "weak-vinegar": "vinegar",
  "no-acid": "acid",
  "wrong-food": "food",
  "jars-stood": "stood",
  "filled-cold": "cold",
  "used-lids": "lids",
  overfull: "headspace",
  unsterile: "sterile",
  "gauge-high": "gauge",
  unvented: "vent",
  "forced-cooling": "forced",
  "altitude-off": "altitude",
  "taken-back": "lids",
};

function canHappen(mishap: Mishap, card: Card, altitudeFt: number): boolean {
  const pressure = card.method === "pressure";
  switch (mishap) {
    case "weak-vinegar":
      return card.acid === "vinegar";
    case "no-acid":
      return card.acid === "each-jar";
    case "filled-cold":
      return card.pack === "hot";
    case "water-low":
    case "early-start":
      return !pressure;
    case "gauge-high":
    case "unvented":
    case "forced-cooling":
      return pressure;
    case "unsterile":
      return !pressure && testedMinutes(card, altitudeFt) < STERILE_UNDER_MINUTES;
    case "altitude-off":
      return (
        testedMinutes(card, altitudeFt) > testedMinutes(card, 0) || (pressure && altitudeFt > 2000)
      );
    default:
      return true;
  }
}

/** None on a right day, else one or two that can befall this recipe. */
export function drawMishaps(dice: Dice, card: Card, altitudeFt: number): Mishap[] {
  if (dice.chance(DAY_MIX.right)) return [];
  const able = MISHAPS.filter((one) => canHappen(one, card, altitudeFt));
  const first = dice.pick(able);
  const second = dice.pick(able);
  return dice.chance(DAY_MIX.two) && second !== first ? [first, second] : [first];
}

/** What is so from the start; the rest comes about while the day goes on. */
export function befall(mishap: Mishap, world: WorldKitchen, dice: Dice): void {
  switch (mishap) {
    case "weak-vinegar":
      world.vinegarPercent = dice.pick([3, 4, 4, 4.5]);
      return;
    case "no-acid":
      world.acidInEveryJar = false;
      return;
    case "wrong-food":
      world.stranger = dice.pick(world.card.strangers);
      return;
    case "used-lids":
    case "taken-back":
      world.lidsNew = false;
      return;
    case "overfull":
      world.headspaceRight = false;
      return;
    case "unsterile":
      world.sterile = false;
      return;
    case "gauge-high":
      world.gaugeReadsHighPsi = dice.whole(2, 4);
      world.gaugeTested = dice.chance(0.5);
      return;
    case "altitude-off":
      world.toldAltitudeFt = dice.whole(100, 900);
      return;
    case "water-low":
      world.canner.overLidsIn = world.needMinutes * 0.0118 * (0.1 + 0.6 * dice.next());
      return;
    default:
  }
}
