/**
 * A canner on a burner: water that warms, boils off and cools, and steam under a weight. The heat
 * is a sum of what goes in and what is lost; temperatures of boiling and of steam are the tables'.
 */
import { ROOM_F } from "./references.ts";
import { airPsia, boilsAtF, steamF } from "./tables.ts";

/** A household burner of 10,000 BTU/h, W (from memory). */
const BURNER_W = 3000;
/** What twenty kilograms of water, the pot and its jars take up, J for each degree F. */
const HEAT_J_PER_F = 51_000;
/** What a pot gives off with and without its lid, W for each degree F above the room. */
const LOSS_W_PER_F = { covered: 4.5, open: 12 };
/** Water driven off, J a kilogram (latent heat of steam, 970 BTU/lb). */
const STEAM_J_PER_KG = 2.257e6;
/** Share of the steam that a lid gives back as drops. */
const LID_GIVES_BACK = 0.6;
/** Height of a kilogram of water in a pot of 33 cm, inches. */
const INCHES_PER_KG = 0.46;
/** Under this share of the burner's heat left over for steam, bubbles are no full boil. */
const FULL_BOIL = 0.1;
/** Minutes in which pressure comes two thirds of the way to where the flame would hold it. */
const PRESSURE_MINUTES = 12;
/** The flame that just keeps a closed canner at zero, and how far more of it raises the needle. */
const FLAME_AT_ZERO = 0.25;
const FLAME_PER_PSI = 0.015;
/** How many degrees F, at most, a canner with air in its steam is cooler than its gauge says. */
const AIR_COOLS_F = 12;

const SECONDS_A_MINUTE = 60;

export class WorldCanner {
  readonly altitudeFt: number;
  /** Share of the burner's heat, 0 to 1. */
  flame = 0;
  waterF: number;
  /** Water over the lids, inches; below zero they stand out of it. */
  overLidsIn = 2;
  lidOn = true;
  psig = 0;
  weightOn = false;
  /** Minutes of steady steam before the weight went on. */
  ventedMinutes = 0;
  private steamLeft = 0;

  constructor(altitudeFt: number) {
    this.altitudeFt = altitudeFt;
    this.waterF = ROOM_F;
  }

  /** Water's boiling point here, degrees F. */
  get boilsF(): number {
    return boilsAtF(this.altitudeFt);
  }

  /** Bubbles all over, that stirring does not stop. */
  get fullBoil(): boolean {
    return this.waterF >= this.boilsF - 0.3 && this.steamLeft >= FULL_BOIL;
  }

  get anyBubble(): boolean {
    return this.waterF >= this.boilsF - 6;
  }

  get steaming(): boolean {
    return !this.weightOn && this.fullBoil;
  }

  /** Steam around the jars, degrees F: less than the gauge says where air was left in. */
  get steamF(): number {
    const air = Math.max(0, 1 - this.ventedMinutes / 10) * AIR_COOLS_F;
    return steamF(airPsia(this.altitudeFt) + this.psig) - (this.weightOn ? air : 0);
  }

  /** Jars and their cooler food go in. */
  load(jarF: number): void {
    this.waterF -= Math.max(0, this.waterF - jarF) * 0.35;
  }

  /** Lets the given number of seconds pass. */
  pass(seconds: number): void {
    if (this.weightOn) this.passUnderPressure(seconds);
    else this.passOpen(seconds);
  }

  private passOpen(seconds: number): void {
    const lost = LOSS_W_PER_F[this.lidOn ? "covered" : "open"] * (this.waterF - ROOM_F);
    const over = this.flame * BURNER_W - lost;
    this.waterF = Math.min(this.boilsF, this.waterF + (over * seconds) / HEAT_J_PER_F);
    const boils = this.waterF >= this.boilsF - 0.01 && over > 0;
    this.steamLeft = boils ? over / BURNER_W : 0;
    if (!boils) return;
    const keeps = this.lidOn ? 1 - LID_GIVES_BACK : 1;
    this.overLidsIn -= ((over * seconds) / STEAM_J_PER_KG) * keeps * INCHES_PER_KG;
    if (this.steaming) this.ventedMinutes += seconds / SECONDS_A_MINUTE;
  }

  private passUnderPressure(seconds: number): void {
    const holds = Math.max(0, (this.flame - FLAME_AT_ZERO) / FLAME_PER_PSI);
    const share = 1 - Math.exp(-seconds / SECONDS_A_MINUTE / PRESSURE_MINUTES);
    this.psig += (holds - this.psig) * share;
    if (this.psig < 0.15) this.psig = 0;
    this.waterF = this.steamF;
  }

  /** The flame that would hold so much pressure. */
  static flameFor(psig: number): number {
    return FLAME_AT_ZERO + FLAME_PER_PSI * psig;
  }
}
