/** Hands that do what each stage asks, by the world's clock, and report it in ordinary words. */
import { WorldCanner } from "./canner.ts";
import type { DayFlow } from "./day-flow.ts";
import type { Stage } from "./program.ts";
import type { StoveTrouble } from "./stove-trouble.ts";
import type { Tellings } from "./tellings.ts";
import { REPORTS } from "./wordings.ts";

type Report = keyof typeof REPORTS;

/** After how many minutes a report that changed nothing is repeated, and how often. */
const SAY_AGAIN_MINUTES = 2;
const MOST_TIMES = 5;
const POT_MINUTES = 12;
const RESTS: ReadonlySet<string> = new Set(["rest", "cool", "cure", "store"]);
const COOL_MINUTES = 13 * 60;
const LOAD_MINUTES = 4;
const FILL_MINUTES = 14;
/** A cook holds the needle so far above the mark. */
const ABOVE_MARK_PSI = 0.8;

type Said = { times: number; atMinute: number };

export class StageHands {
  gaveUp = false;
  private readonly flow: DayFlow;
  private readonly stove: StoveTrouble;
  private readonly tellings: Tellings;
  private readonly since = new Map<string, number>();
  private readonly said = new Map<string, Said>();
  private readonly paceOf = new Map<string, number>();
  private offBoilAt = 0;
  private boilSeenAt: number | undefined;
  private markPsi = 0;
  private readonly stands: number;
  private readonly cold: number;
  private named = false;
  /** The minute at which the clock of the process started, the last time. */
  private startedAt: number | undefined;

  constructor(flow: DayFlow, stove: StoveTrouble, tellings: Tellings) {
    this.flow = flow;
    this.stove = stove;
    this.tellings = tellings;
    const { dice, mishaps } = flow.parts;
    this.stands = mishaps.includes("jars-stood") ? dice.whole(200, 700) : dice.whole(0, 6);
    this.cold = mishaps.includes("filled-cold") ? dice.whole(240, 420) : dice.whole(0, 5);
  }

  /** The first word of the day. */
  begin(): void {
    const { dice, world, book } = this.flow.parts;
    const { card, stranger } = world;
    this.named = stranger !== undefined && dice.chance(0.4);
    if (this.named) {
      this.flow.say(card.named.replace("{food}", stranger ?? ""));
      if (this.flow.parts.program.log) return;
      // Sent away, some go on under the name of a recipe that there is.
      if (dice.chance(0.5)) {
        this.gaveUp = true;
        return;
      }
    }
    this.say("begin", { name: card.name });
    if (stranger !== undefined) book.falsely(["food"], "false report");
    if (!this.flow.parts.program.log) this.flow.say(`start the ${card.id.replaceAll("-", " ")}`);
    if (!this.flow.parts.program.log) this.gaveUp = true;
  }

  /** True while nothing wants hands: rest, cooling, storage. */
  get idles(): boolean {
    const running = this.flow.parts.program.stages.filter((one) => one.state === "running");
    return running.every((one) => RESTS.has(one.kind) && one.id !== "settle");
  }

  private say(report: Report, slots: Record<string, string | number> = {}, again = 0): void {
    const { dice } = this.flow.parts;
    const [usual = "", ...others] = REPORTS[report];
    const form = again > 1 || others.length === 0 ? usual : dice.pick([usual, ...others]);
    this.flow.say(form.replace(/\{(\w+)\}/g, (_, name: string) => String(slots[name] ?? "")));
  }

  /** Does what is due of every stage that runs. */
  act(): void {
    const { program } = this.flow.parts;
    const { stages } = program;
    for (const stage of stages) {
      if (stage.id === "process" && stage.state === "complete") this.timeIsFull();
      if (stage.state === "waiting") this.startByWord(stage, stages);
      if (stage.state !== "running") continue;
      if (!this.since.has(stage.id)) this.since.set(stage.id, this.flow.minutes);
      this.work(stage);
    }
    this.holdPressure();
  }

  /** How long the clock ran since it was last told to. */
  private timeIsFull(): void {
    const { book } = this.flow.parts;
    if (this.startedAt === undefined) return;
    book.ranMinutes ??= this.flow.minutes - this.startedAt;
    this.startedAt = undefined;
  }

  private lasted(stage: Stage): number {
    return this.flow.minutes - (this.since.get(stage.id) ?? this.flow.minutes);
  }

  /** Reports a stage, and again while that moves nothing; gives up in the end. */
  private report(key: string, report: Report, slots: Record<string, string | number> = {}): void {
    const { minutes } = this.flow;
    const said = this.said.get(key) ?? { times: 0, atMinute: -1000 };
    if (minutes - said.atMinute < SAY_AGAIN_MINUTES) return;
    if (said.times >= MOST_TIMES) {
      this.gaveUp = true;
      return;
    }
    this.said.set(key, { times: said.times + 1, atMinute: minutes });
    this.timed(() => this.say(report, slots, said.times));
  }

  /** Says something, and notes whether the clock of the process starts by it. */
  private timed(say: () => void): void {
    const before = this.flow.stage("process")?.boils === true;
    say();
    if (before || this.flow.stage("process")?.boils !== true) return;
    this.startedAt = this.flow.minutes;
  }

  private startByWord(stage: Stage, stages: Stage[]): void {
    const { startsByWord = {} } = this.flow.parts.world.card;
    if (!(stage.id in startsByWord)) return;
    const before = stages.find((one) => one.id === startsByWord[stage.id]);
    if (before && before.state !== "complete") return;
    const rest = stages.find((one) => one.kind === "rest" && one.id !== "settle");
    if (rest && (rest.state !== "running" || this.restLeft(rest) > 25)) return;
    this.report(stage.id, "startPot", { pot: this.flow.parts.world.card.pots[stage.id] ?? "" });
  }

  private restLeft(stage: Stage): number {
    const since = this.since.get(stage.id) ?? this.flow.minutes;
    return since + stage.minMinutes + 3 - this.flow.minutes;
  }

  private readonly works: Record<string, (stage: Stage) => void> = {
    fill: (stage) => this.fill(stage),
    canner: (stage) => this.cannerWarms(stage),
    load: (stage) => this.load(stage),
    "come-up": (stage) => this.comeUp(stage),
    vent: (stage) => this.vent(stage),
    pressurize: (stage) => this.pressurize(stage),
    process: (stage) => this.process(stage),
    "heat-off": (stage) => this.heatOff(stage),
    depressurize: (stage) => this.toZero(stage),
    settle: () => {},
    unload: (stage) => this.out(stage),
    cool: (stage) => this.inTime(stage, COOL_MINUTES, "cooled"),
    "seal-check": (stage) => this.inTime(stage, 3, "sealed"),
  };

  private work(stage: Stage): void {
    const work = this.works[stage.id];
    if (work) work(stage);
    else this.prepare(stage);
  }

  private inTime(stage: Stage, minutes: number, report: Report): void {
    if (this.lasted(stage) > minutes) this.report(stage.id, report);
  }

  private prepare(stage: Stage): void {
    const { world, dice } = this.flow.parts;
    if (!this.paceOf.has(stage.id)) this.paceOf.set(stage.id, 0.8 + 0.5 * dice.next());
    const pace = this.paceOf.get(stage.id) ?? 1;
    const pot = world.card.pots[stage.id];
    if (stage.kind === "heat" && pot) {
      this.tellings.at("prep");
      if (this.lasted(stage) > POT_MINUTES * pace && !stage.boils) {
        this.flow.parts.cook.lastPot = pot;
        this.report(stage.id, "pot", { pot });
      }
    } else if (stage.kind === "rest") {
      if (this.restLeft(stage) <= 0) this.report(stage.id, "done", { title: stage.title });
    } else if (stage.kind === "hands-on") {
      if (this.lasted(stage) > stage.minMinutes * pace) {
        this.report(stage.id, "done", { title: stage.title });
      }
    }
    this.offBoilAt = this.flow.minutes;
  }

  private cannerWarms(stage: Stage): void {
    const { world } = this.flow.parts;
    world.canner.flame = 1;
    if (world.cannerWaits) this.report(stage.id, "canner");
  }

  private fill(stage: Stage): void {
    const { world } = this.flow.parts;
    if (this.flow.stage("canner")?.state === "running") {
      this.since.delete(stage.id);
      return;
    }
    if (this.lasted(stage) < FILL_MINUTES + this.cold) return;
    if (!world.filled) {
      world.fill(this.flow.minutes - this.offBoilAt - FILL_MINUTES / 2);
      this.tellings.at("fill");
    }
    const { card } = world;
    this.report(stage.id, "filled", { n: card.jars, jar: card.jar });
  }

  private load(stage: Stage): void {
    const { world } = this.flow.parts;
    if (!world.filled || this.lasted(stage) < LOAD_MINUTES + this.stands) return;
    if (!world.loaded) {
      world.load();
      this.tellings.at("load");
    }
    this.report(stage.id, "loaded");
  }

  private comeUp(stage: Stage): void {
    const { world, mishaps, book } = this.flow.parts;
    const { canner, card } = world;
    if (!world.loaded) return;
    if (card.method === "pressure") {
      if (canner.steaming) this.report(stage.id, "venting");
      return;
    }
    const hasty = mishaps.includes("early-start") && canner.anyBubble;
    if (!hasty && !canner.fullBoil) return;
    this.boilSeenAt ??= this.flow.minutes;
    if (this.flow.minutes - this.boilSeenAt < 0.5) return;
    if (!canner.fullBoil) book.falsely(["boil", "cover"], "false report");
    this.report(stage.id, "boils");
    this.stove.begins();
  }

  private vent(stage: Stage): void {
    const { mishaps, world } = this.flow.parts;
    if (!mishaps.includes("unvented") || this.lasted(stage) < 3) return;
    world.canner.weightOn = true;
    this.watchNeedle(stage);
  }

  private pressurize(stage: Stage): void {
    this.flow.parts.world.canner.weightOn = true;
    this.watchNeedle(stage);
  }

  /** The pressure the program asked for, as this dial shows it. */
  get target(): number {
    return this.markPsi || (this.flow.parts.program.log?.process?.pressurePsi ?? 15);
  }

  private watchNeedle(stage: Stage): void {
    const { world } = this.flow.parts;
    const psi = Math.floor(world.shownPsi);
    if (psi < this.target) return;
    this.report(stage.id, "pressure", { psi });
    this.stove.begins();
  }

  /** Heard "when the dial shows 14 pounds". */
  heardMark(text: string): void {
    const psi = /(?:shows?|Bring it to) (\d+) pounds/.exec(text)?.[1];
    if (psi) this.markPsi = Number(psi);
  }

  private holdPressure(): void {
    const { world } = this.flow.parts;
    const { canner } = world;
    if (!canner.weightOn || canner.flame === 0 || this.stove.troubled) return;
    const wanted = this.target + ABOVE_MARK_PSI;
    const near = world.shownPsi > wanted - 0.4;
    canner.flame = near ? WorldCanner.flameFor(wanted - world.gaugeReadsHighPsi) : 0.9;
  }

  private process(stage: Stage): void {
    const { world, mishaps } = this.flow.parts;
    this.tellings.at("process");
    if (!mishaps.includes("early-off")) return;
    const planned = stage.minMinutes;
    if (this.lasted(stage) < planned * 0.75) return;
    if (!world.offEarly) {
      world.offEarly = true;
      world.takenOff = true;
      world.canner.flame = 0;
      if (this.flow.parts.dice.chance(0.5)) this.say("heatOff");
    }
    if (
      world.card.method === "pressure"
        ? world.canner.psig > 0
        : this.lasted(stage) < planned * 0.75 + 5
    )
      return;
    this.report(stage.id, "out");
  }

  private heatOff(stage: Stage): void {
    const { world } = this.flow.parts;
    if (!world.takenOff) this.stove.looksAtTheEnd();
    world.takenOff = true;
    world.canner.flame = 0;
    this.report(stage.id, "heatOff");
  }

  private toZero(stage: Stage): void {
    const { world, mishaps } = this.flow.parts;
    world.canner.flame = 0;
    if (mishaps.includes("forced-cooling") && this.lasted(stage) > 5) {
      world.forcedCooling = true;
      world.canner.psig = 0;
    }
    if (world.canner.psig === 0 && !stage.boils) this.report(stage.id, "zero");
  }

  private out(stage: Stage): void {
    if (stage.id === "unload" && this.lasted(stage) < 3) return;
    this.report(stage.id, "out");
    if (this.flow.stage("unload")?.state !== "running") this.tellings.at("out");
  }

  /** The boil or the pressure is there, or there again. */
  reportKept(report: "again" | "boils"): void {
    const { world } = this.flow.parts;
    const psi = Math.floor(world.shownPsi);
    this.timed(() => {
      if (world.card.method === "pressure") this.say("pressure", { psi });
      else this.say(report);
    });
  }
}
