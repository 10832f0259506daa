/**
 * Plays a session against a simulated clock: an ideal cook, a script, or both in turn. The same
 * arguments give the same lines, byte for byte.
 */

import { commandOf, type SlotsOf } from "../../kitchen/command.ts";
import type { DatedFact } from "../../kitchen/events.ts";
import { activeOwners, isLoad, runOfStep } from "../../kitchen/owners.ts";
import { KINDS, rulesOf } from "../../kitchen/stages/kinds.ts";
import type { State } from "../../kitchen/state.ts";
import { MINUTE_MS } from "../../kitchen/time.ts";
import type { Disk } from "../../ports/disk.ts";
import type { Line } from "../../ports/view.ts";
import type { SpokenSentence } from "../../ports/voice.ts";
import type { LoadStep } from "../../recipe/choices.ts";
import type { Library } from "../../recipe/library.ts";
import type { StageKind } from "../../recipe/recipe.ts";
import { Speaker } from "../../voice/speaking/speaker.ts";
import type { Reply } from "../session.ts";
import { nextAction } from "./ideal-cook.ts";
import { MadeUpKitchen } from "./made-up-kitchen.ts";
import { MadeUpVoice, overheard } from "./made-up-voice.ts";
import { breakDisk, ProgramDied } from "./rehearsal-faults.ts";
import type { Direction, ScriptLine } from "./rehearsal-script.ts";

export type RehearsalParts = {
  library: Library;
  recipes: string[];
  begin: Omit<SlotsOf["begin"], "recipe">;
  startMs: number;
  zone: string;
  setUp: DatedFact[];
  /** Without one, the ideal cook plays the whole. */
  script?: ScriptLine[];
  demoAltitudeFt: number;
  version: string;
  disk?: Disk;
  folder?: string;
  onLines?: (lines: Line[]) => void;
  /** Called with every sentence given to the voice, and the program that gave it. */
  onSaid?: (utterance: SpokenSentence, program: number) => void;
  /** Awaited before time moves on by this many ms, to play at a watchable speed. */
  pace?: (ms: number) => Promise<void>;
};

export type Played = { kitchen: MadeUpKitchen; trouble?: string };

const PROBE_EVERY_MS = 2000;
const MADE_UP_FOLDER = "made-up";

/** An ideal cook who does this many things at once is stuck. */
const MOST_ACTIONS = 20_000;

/** Lots of one recipe that were given no name. */
const LOT_NAMES = ["first lot", "second lot", "third lot"];

export class Rehearsal {
  readonly kitchen: MadeUpKitchen;
  private readonly parts: RehearsalParts;
  private readonly engine = new MadeUpVoice();
  private passedMs = 0;
  /** How often the program died in the middle of something. */
  deaths = 0;

  constructor(parts: RehearsalParts) {
    this.parts = parts;
    const { library, startMs, zone, setUp, version, disk, folder, onLines } = parts;
    this.kitchen = new MadeUpKitchen({
      library,
      startMs,
      zone,
      setUp,
      version,
      voice: (clock, notice, onSpeaking) => {
        const speaker = new Speaker({
          engine: this.engine,
          bell: { ring: () => {} },
          clock,
          advice: "Typing and the bell go on.",
          onProblem: notice,
          onRecovered: () => notice("The voice is back."),
          onSpeaking,
        });
        const { onSaid } = parts;
        if (!onSaid) return speaker;
        // The first program speaks while the kitchen around it is still being made.
        const program = (this.kitchen as MadeUpKitchen | undefined)?.program ?? 1;
        return overheard(speaker, (utterance) => onSaid(utterance, program));
      },
      ...(disk ? { disk } : {}),
      ...(folder === undefined ? {} : { folder }),
      ...(onLines ? { onLines } : {}),
    });
  }

  /** Plays everything; `trouble` says where a script asked for something impossible. */
  async play(): Promise<Played> {
    await this.begin();
    const { script } = this.parts;
    if (!script) {
      const trouble = await this.cookUntil("done");
      return this.end(trouble);
    }
    for (const line of script) {
      const trouble = await this.playLine(line);
      if (trouble) return this.end(`script line ${line.line}: ${trouble}`);
    }
    return this.end(undefined);
  }

  private end(trouble: string | undefined): Played {
    return trouble ? { kitchen: this.kitchen, trouble } : { kitchen: this.kitchen };
  }

  /** Begins every recipe that was asked for. */
  async begin(): Promise<void> {
    const { recipes } = this.parts;
    recipes.forEach((recipe, index) => {
      const before = recipes.slice(0, index).filter((one) => one === recipe).length;
      const several = recipes.filter((one) => one === recipe).length > 1;
      this.beginOne(recipe, several ? { variety: LOT_NAMES[before] ?? `lot ${before + 1}` } : {});
    });
    await settled();
  }

  private beginOne(recipe: string, lot: { variety?: string }): void {
    const slots = { ...this.parts.begin, recipe, ...lot };
    const title = this.parts.library.recipes.get(recipe)?.title.toLowerCase() ?? recipe;
    const command = commandOf("begin", slots);
    this.kitchen.session.carry({ wish: { command }, words: `start the ${title}` });
  }

  /** Plays one line of a script; the answer says why it cannot. */
  async playLine({ ms, relative, direction }: ScriptLine): Promise<string | undefined> {
    const wait = relative ? ms : ms - this.passedMs;
    if (wait < 0) return "its time lies before what has already passed; begin it with +";
    await this.advance(wait);
    if (direction.kind === "cook-until") return this.cookUntil(direction.until);
    if (direction.kind === "probe") return this.probe(direction.line, direction.ms);
    let trouble: string | undefined;
    this.surviving(() => {
      trouble = this.follow(direction);
    });
    await settled();
    return trouble;
  }

  /** A probe's line, and again every two seconds while it lasts. */
  private async probe(line: string, ms: number): Promise<undefined> {
    for (let passed = 0; passed <= ms; passed += PROBE_EVERY_MS) {
      if (passed > 0) await this.advance(PROBE_EVERY_MS);
      this.surviving(() => this.kitchen.probe.hear(line));
    }
    return undefined;
  }

  private follow(
    direction: Exclude<Direction, { kind: "cook-until" | "probe" }>,
  ): string | undefined {
    const { kitchen } = this;
    switch (direction.kind) {
      case "say":
        kitchen.session.hear(direction.text);
        return undefined;
      case "crash":
        kitchen.crash();
        return undefined;
      case "another-program":
        if (direction.stays) kitchen.handOver();
        else kitchen.visit();
        return undefined;
      case "clock-set":
        kitchen.setWall(direction.byMs);
        return undefined;
      case "hears":
        kitchen.ears.hears(direction, kitchen.clock.read().wallMs);
        return undefined;
      case "microphone":
        kitchen.unplugMicrophone(direction.gone);
        return undefined;
      case "voice":
        this.engine.mood = direction.mood;
        return undefined;
      case "closed":
      case "asleep":
      case "stands-still":
      case "power-cut":
        this.passedMs += direction.ms;
        this.away(direction.kind, direction.ms);
        return undefined;
      default:
        return breakDisk(kitchen, this.parts.folder ?? MADE_UP_FOLDER, direction);
    }
  }

  private away(how: "closed" | "asleep" | "stands-still" | "power-cut", ms: number): void {
    const { kitchen } = this;
    if (how === "closed") kitchen.crash(ms);
    else if (how === "asleep") kitchen.sleep(ms);
    else if (how === "stands-still") kitchen.standStill(ms);
    else kitchen.powerCut(ms);
  }

  /** Opens the program again each time it dies in the middle of something. */
  private surviving(act: () => void): void {
    for (let again: (() => void) | undefined = act; again; ) {
      const tried = again;
      again = undefined;
      try {
        tried();
      } catch (error) {
        if (!(error instanceof ProgramDied)) throw error;
        this.deaths += 1;
        again = () => this.kitchen.crash();
      }
    }
  }

  /** Lets time pass from wake-up to wake-up, so that the voice can answer in between. */
  private async advance(ms: number): Promise<void> {
    await this.parts.pace?.(ms);
    const { clock } = this.kitchen;
    const end = clock.read().monoMs + ms;
    // The program may die on the way; the rest of the time passes all the same.
    for (let left = ms; left > 0; left = end - clock.read().monoMs) {
      const step = Math.min(left, Math.max(1, clock.untilNextTimer() ?? left));
      this.surviving(() => clock.advance(step));
      await settled();
    }
    this.passedMs += ms;
    await settled();
  }

  /** The ideal cook goes on alone until a stage of a kind is the current one, or to the end. */
  private async cookUntil(until: StageKind | "done"): Promise<string | undefined> {
    const { kitchen } = this;
    for (let actions = 0; actions < MOST_ACTIONS; actions++) {
      const { state } = kitchen.session;
      if (until !== "done" && isCurrent(state, until)) return undefined;
      const now = kitchen.session.now();
      const action = nextAction(state, now, this.parts.demoAltitudeFt);
      const next = action ?? this.waitForClock(state, now);
      if (!next) {
        return until === "done"
          ? undefined
          : `the cook came to the end without a stage of kind ${until}`;
      }
      // Stop on the way where the kind's turn comes by a clock.
      const step = Math.min(Math.max(0, next.at - now), 15 * MINUTE_MS);
      const due = kitchen.clock.untilNextTimer();
      await this.advance(due !== undefined && due < step && due > 0 ? due : step);
      if (until !== "done" && isCurrent(kitchen.session.state, until)) return undefined;
      if (action && kitchen.session.now() >= action.at - 1) {
        let reply: Reply | undefined;
        this.surviving(() => {
          reply = kitchen.session.carry(action);
        });
        if (reply?.refused) return `the cook was refused: ${reply.lines.join(" ")}`;
        await settled();
      }
    }
    return "the cook is stuck";
  }

  /** Nothing to do by hand: a clock runs, or nothing does. */
  private waitForClock(state: State, now: number): { at: number } | undefined {
    const running = activeOwners(state).some((owner) => {
      return isLoad(owner) || (owner.state !== "complete" && owner.state !== "abandoned");
    });
    return running ? { at: now + 15 * MINUTE_MS } : undefined;
  }
}

/** A stage of the kind runs, or waits only for the report that begins it. */
function isCurrent(state: State, kind: StageKind): boolean {
  // What only waits for a date on the shelf is no longer active.
  const onShelf = Object.values(state.batches).some((batch) => {
    return batch.stages.some((run) => {
      return run.spec.kind === kind && run.state === "running" && rulesOf(run.spec).ends === "date";
    });
  });
  if (onShelf) return true;
  return activeOwners(state).some((owner) => {
    const current = owner.stages.some((run) => {
      return run.spec.kind === kind && run.state === "running" && run.spec.step !== "canner";
    });
    if (current || !isLoad(owner)) return current;
    const waits = (step: LoadStep) => runOfStep(owner, step)?.state === "running";
    const { role } = KINDS[kind];
    if (role === "venting") return owner.terms?.method === "pressure" && waits("come-up");
    if (role !== "treatment") return false;
    return owner.terms?.method === "pressure" ? waits("pressurize") : waits("come-up");
  });
}

/** Lets pending promises settle: the voice answers in its own turn. */
async function settled(): Promise<void> {
  for (let turn = 0; turn < 8; turn++) await Promise.resolve();
}
