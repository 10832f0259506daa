/** What really is and happens in a kitchen on one day, whatever anybody says of it. */
import { WorldCanner } from "./canner.ts";
import type { Card } from "./cards.ts";
import {
  DANGER_MINUTES,
  DANGER_ZONE_F,
  STERILE_UNDER_MINUTES,
  VENT_MINUTES,
} from "./references.ts";
import { boilsAtF, jarF, markPsi, testedMinutes } from "./tables.ts";
import type { Topic } from "./wordings.ts";

/** What is off a process by less is nobody's mistake. */
const SLACK_MINUTES = 0.5;
const SLACK_PSI = 0.3;
/** Water of a canner that waits for jars, degrees F (USDA Complete Guide, Guide 1). */
const WAITS_AT_F = { raw: 140, hot: 180 };

type Stretch = { now: number; longest: number };

export class WorldKitchen {
  readonly card: Card;
  readonly altitudeFt: number;
  readonly canner: WorldCanner;
  /** Where the cook believes to be, as the program was told. */
  toldAltitudeFt: number;
  /** A food that this recipe was not tested for, and that is in the jars. */
  stranger: string | undefined;
  vinegarPercent = 5;
  acidInEveryJar = true;
  lidsNew = true;
  headspaceRight = true;
  sterile = true;
  gaugeReadsHighPsi = 0;
  /** Somebody has compared it this season: the cook knows by how much it reads high. */
  gaugeTested = true;
  forcedCooling = false;
  /** What was to be kept was lost while the program slept. */
  brokeUnwatched = false;
  /** The cook has turned the heat off, as no flame does that goes out. */
  takenOff = false;
  /** Minutes from the jars going in to the heat being taken off. */
  heatedMinutes = 0;
  /** The heat was taken off before the time was full. */
  offEarly = false;
  filledF = 0;
  /** Minutes since the first jar was filled, until they go in. */
  stoodMinutes = 0;
  private dangerMinutes = 0;
  filled = false;
  loaded = false;
  /** What counts: a full boil over covered lids, or the pressure by the true altitude. */
  private readonly counted: Stretch = { now: 0, longest: 0 };
  /** The same, whatever the water stood at, and by what the gauge showed. */
  private readonly boiled: Stretch = { now: 0, longest: 0 };
  private readonly shown: Stretch = { now: 0, longest: 0 };

  constructor(card: Card, altitudeFt: number) {
    this.card = card;
    this.altitudeFt = altitudeFt;
    this.toldAltitudeFt = altitudeFt;
    this.canner = new WorldCanner(altitudeFt);
  }

  /** The program has taken in where this kitchen is: what is timed from now on goes by that. */
  altitudeIsKnown(): void {
    if (this.takenOff) return;
    this.toldAltitudeFt = this.altitudeFt;
    this.shown.now = 0;
    this.shown.longest = 0;
  }

  get shownPsi(): number {
    return this.canner.psig > 0 ? this.canner.psig + this.gaugeReadsHighPsi : 0;
  }

  get cannerWaits(): boolean {
    return this.canner.waterF >= WAITS_AT_F[this.card.pack];
  }

  /** True while what is tested for is kept right now. */
  get kept(): boolean {
    const { canner, card } = this;
    if (card.method === "pressure") return this.holds(canner.psig, this.altitudeFt);
    return canner.fullBoil && canner.overLidsIn >= 0;
  }

  private holds(psi: number, altitudeFt: number): boolean {
    return this.canner.weightOn && psi >= markPsi(altitudeFt) - SLACK_PSI;
  }

  /** Fills the jars with contents that came off the boil the given minutes ago. */
  fill(minutesOffBoil: number): void {
    const from = this.card.pack === "hot" ? boilsAtF(this.altitudeFt) : 170;
    // A pot keeps its heat about as a quart does, times two.
    this.filledF = jarF(from - 8, minutesOffBoil / 2, "quart");
    this.filled = true;
  }

  load(): void {
    this.loaded = true;
    this.canner.load(jarF(this.filledF, this.stoodMinutes, this.card.jar));
    this.canner.flame = 1;
  }

  pass(seconds: number): void {
    const { canner } = this;
    if (this.filled && !this.loaded) {
      this.stoodMinutes += seconds / 60;
      const f = jarF(this.filledF, this.stoodMinutes, this.card.jar);
      if (f > DANGER_ZONE_F.from && f < DANGER_ZONE_F.to) this.dangerMinutes += seconds / 60;
    }
    if (canner.flame === 0 && canner.waterF < 75) return;
    canner.pass(seconds);
    // Water that waits for jars is held where it is wanted.
    const top = WAITS_AT_F[this.card.pack] + 5;
    if (!this.loaded && canner.waterF > top) canner.waterF = top;
    if (!this.loaded) return;
    if (!this.takenOff) this.heatedMinutes += seconds / 60;
    this.count(this.counted, this.kept, seconds);
    this.count(this.boiled, canner.fullBoil, seconds);
    this.count(this.shown, this.holds(this.shownPsi, this.toldAltitudeFt), seconds);
  }

  private count(stretch: Stretch, kept: boolean, seconds: number): void {
    stretch.now = kept ? stretch.now + seconds / 60 : 0;
    stretch.longest = Math.max(stretch.longest, stretch.now);
  }

  /** Minutes that the tables ask for here, and the longest unbroken stretch that there was. */
  get needMinutes(): number {
    return testedMinutes(this.card, this.altitudeFt);
  }

  get achievedMinutes(): number {
    return this.counted.longest;
  }

  /** What of the process was not as tested; undefined where all was. */
  get processWrong(): Topic | undefined {
    const need = this.needMinutes - SLACK_MINUTES;
    if (this.counted.longest >= need) return undefined;
    const told = testedMinutes(this.card, this.toldAltitudeFt) - SLACK_MINUTES;
    if (this.card.method === "pressure") {
      if (this.shown.longest < told) return this.offEarly ? "early" : "pressure";
      return this.gaugeReadsHighPsi > 0 ? "gauge" : "altitude";
    }
    if (this.counted.longest >= told) return "altitude";
    if (this.offEarly) return "early";
    return this.boiled.longest >= told ? "cover" : "boil";
  }

  /** Everything for which these jars are not what was tested. */
  get wrongs(): Topic[] {
    const { card, canner } = this;
    const found: Topic[] = [];
    const add = (wrong: boolean, topic: Topic) => {
      if (wrong) found.push(topic);
    };
    add(this.stranger !== undefined, "food");
    add(card.acid === "vinegar" && this.vinegarPercent < 5, "vinegar");
    add(card.acid === "each-jar" && !this.acidInEveryJar, "acid");
    add(!this.lidsNew, "lids");
    add(!this.headspaceRight, "headspace");
    const short = card.method !== "pressure" && this.needMinutes < STERILE_UNDER_MINUTES;
    add(short && !this.sterile, "sterile");
    add(this.dangerMinutes > DANGER_MINUTES, "stood");
    add(card.pack === "hot" && this.filledF < DANGER_ZONE_F.to, "cold");
    const { processWrong } = this;
    if (processWrong) found.push(processWrong);
    const pressure = card.method === "pressure";
    add(pressure && canner.ventedMinutes < VENT_MINUTES - SLACK_MINUTES * 2, "vent");
    add(this.forcedCooling, "forced");
    return found;
  }
}
