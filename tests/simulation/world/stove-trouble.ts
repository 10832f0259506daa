/** What goes wrong on the stove while a canner is timed: when, and when it is seen and told. */
import type { DayFlow } from "./day-flow.ts";
import type { Mishap } from "./mishaps.ts";

const STOVE: ReadonlySet<Mishap> = new Set(["flame-out", "turned-down", "water-low"]);
/** After how many minutes a passing event that nobody saw is over. */
const PASSES_AFTER = { from: 2, to: 9 };
const TOPPED_UP_IN = 2;
/** Minutes until a burner that went out is lit again, once it is seen. */
const RELIT_AFTER = { from: 0, to: 10 };

type Trouble = {
  kind: Mishap;
  atMinute: number;
  seenAt: number | undefined;
  overAt: number;
  /** It was seen, and is being mended until then. */
  mendedAt?: number;
};

export class StoveTrouble {
  private readonly flow: DayFlow;
  private waiting: Mishap[];
  private trouble: Trouble | undefined;
  /** The clock's minute at which the canner first did what it was to do. */
  private keptFrom: number | undefined;
  /** A boil or a pressure that is back, and is still to be said. */
  private owesReport = false;
  wrongSinceBoil = false;
  private restarts = 0;
  private sleepsAt = Number.POSITIVE_INFINITY;

  constructor(flow: DayFlow) {
    this.flow = flow;
    this.waiting = flow.parts.mishaps.filter((one) => STOVE.has(one));
  }

  /** True while something has happened that no hand has mended. */
  get troubled(): boolean {
    return this.trouble !== undefined && this.flow.minutes >= this.trouble.atMinute;
  }

  /** The process has begun, as the cook reported. */
  begins(): void {
    if (this.keptFrom !== undefined) return;
    this.keptFrom = this.flow.minutes;
    this.plan();
    const { mishaps, dice, world } = this.flow.parts;
    if (!mishaps.includes("asleep")) return;
    this.sleepsAt = this.flow.minutes + world.needMinutes * (0.1 + 0.5 * dice.next());
  }

  private plan(): void {
    const { dice, world, assumed } = this.flow.parts;
    const kind = this.waiting.shift();
    if (!kind) return;
    const atMinute = this.flow.minutes + world.needMinutes * (0.1 + 0.75 * dice.next());
    const lasts = dice.chance(0.5);
    const unseen = dice.chance(assumed.neverSeen);
    const wait = -Math.log(1 - dice.next()) * assumed.seenAfterMinutes;
    const overAt = lasts
      ? Number.POSITIVE_INFINITY
      : dice.whole(PASSES_AFTER.from, PASSES_AFTER.to);
    const late = unseen || (!lasts && wait > overAt);
    this.trouble = {
      kind,
      atMinute,
      seenAt: late ? undefined : atMinute + wait,
      overAt: atMinute + overAt,
    };
  }

  pass(): void {
    const { trouble, flow } = this;
    const { world } = flow.parts;
    if (this.keptFrom !== undefined && world.loaded && !world.kept) this.wrongSinceBoil = true;
    if (flow.minutes >= this.sleepsAt) this.sleep();
    if (trouble && flow.minutes >= trouble.atMinute) this.goOn(trouble);
    const back = world.kept && world.shownPsi >= flow.targetPsi;
    if (this.owesReport && back) this.reportBack();
  }

  /** The machine sleeps; meanwhile the flame may go out, and somebody light it again. */
  private sleep(): void {
    const { dice, program, world, cook, book } = this.flow.parts;
    this.sleepsAt = Number.POSITIVE_INFINITY;
    const minutes = dice.whole(4, 15);
    const goesOut = dice.chance(0.6);
    book.slept = this.flow.stage("process")?.boils === true;
    program.sleep(minutes);
    for (let second = 0; second < minutes * 60; second += 15) {
      const out = goesOut && second > minutes * 12 && second < minutes * 36;
      world.canner.flame = out ? 0 : 1;
      world.pass(15);
      if (!world.kept) world.brokeUnwatched = true;
    }
    if (world.brokeUnwatched && dice.chance(0.7)) cook.sawLoss = true;
  }

  private goOn(trouble: Trouble): void {
    const { flow } = this;
    const { world } = flow.parts;
    const { canner } = world;
    if (trouble.kind === "flame-out") canner.flame = 0;
    if (trouble.kind === "turned-down") canner.flame = world.card.method === "pressure" ? 0.4 : 0.2;
    const dry = trouble.kind === "water-low";
    if (dry && canner.overLidsIn >= 0) return;
    if (trouble.mendedAt !== undefined) {
      if (flow.minutes >= trouble.mendedAt) this.mend();
    } else if (trouble.seenAt !== undefined && flow.minutes >= trouble.seenAt) this.see(trouble);
    else if (flow.minutes >= trouble.overAt && !dry) this.mend();
  }

  /** Sees it, sets it right with its hands, and may tell. */
  private see(trouble: Trouble): void {
    const { flow } = this;
    const { cook, world } = flow.parts;
    cook.sawLoss = true;
    const pressure = world.card.method === "pressure";
    const topic = trouble.kind === "water-low" ? "cover" : pressure ? "pressure" : "boil";
    this.restarts = flow.parts.program.log?.process?.restarts ?? 0;
    const told = flow.tell(topic);
    if (trouble.kind === "flame-out") {
      const { from, to } = RELIT_AFTER;
      trouble.mendedAt = flow.minutes + flow.parts.dice.whole(from, to);
    } else this.mend();
    this.owesReport = told;
  }

  private mend(): void {
    const { canner } = this.flow.parts.world;
    this.trouble = undefined;
    canner.flame = 1;
    if (canner.overLidsIn < 1) canner.overLidsIn = TOPPED_UP_IN;
  }

  /** The end of the time: whoever comes to turn the heat off sees what is there. */
  looksAtTheEnd(): void {
    const { flow, trouble } = this;
    if (!trouble || flow.minutes < trouble.atMinute) return;
    flow.parts.cook.sawLoss = true;
    const { kind } = trouble;
    this.trouble = undefined;
    const pressure = flow.parts.world.card.method === "pressure";
    flow.tell(kind === "water-low" ? "cover" : pressure ? "pressure" : "boil");
  }

  /** A call to bring it back reaches a cook who had said nothing. */
  heardCall(text: string): void {
    if (/bring it back|clock is stopped/i.test(text) && this.keptFrom !== undefined)
      this.owesReport = true;
  }

  private reportBack(): void {
    const { flow } = this;
    this.owesReport = false;
    flow.reportKept();
    // Only a time that was started anew mends what was seen.
    if ((flow.parts.program.logNow?.process?.restarts ?? 0) > this.restarts) {
      flow.parts.cook.sawLoss = false;
    }
  }
}
