/** One day in the world: a kitchen, its cook and the real program, from first word to last. */
import type { Line } from "../../../src/ports/view.ts";
import type { Library } from "../../../src/recipe/library.ts";
import { type Dice, dice } from "../dice.ts";
import { ASSUMED, type Assumed } from "./assumptions.ts";
import { CARDS } from "./cards.ts";
import { DayFlow } from "./day-flow.ts";
import { type Answer, HomeCook } from "./home-cook.ts";
import { befall, drawMishaps, type Mishap } from "./mishaps.ts";
import { type Kept, type Log, Program } from "./program.ts";
import { kindOfQuestion, type QuestionKind, ROUTINE } from "./questions-read.ts";
import { markPsi, testedMinutes } from "./tables.ts";
import { CHATTER, type Strength, type Topic } from "./wordings.ts";
import { WorldKitchen } from "./world-kitchen.ts";

/** Who asks: the program as it is, or one that takes every hoped-for answer as given. */
export type Policy = "program" | "asks-nothing";

export type Told = { topic: Topic; strength: Strength; own: boolean; text: string; kept: Kept } & {
  /** Told while a process was timed. */
  inProcess: boolean;
};

/** How a thing that was wrong came to be called as tested. */
export type Excuse = "none" | "hedged" | "taken back" | "reflex" | "good faith" | "false report";

export type DayResult = {
  seed: number;
  card: string;
  mishaps: Mishap[];
  verdict: string;
  reasons: string[];
  state: string;
  wrongs: { topic: Topic; excuse: Excuse; told: boolean }[];
  told: Told[];
  interruptions: { text: string; right: boolean }[];
  /** Questions that no ideal run asks. */
  extraQuestions: number;
  questions: number;
  muted: boolean;
  refused: string[];
  unknownQuestions: string[];
  record: RecordSeen;
  answers: { kind: QuestionKind; is: Answer["is"] | "left"; text: string }[];
  chatter: { text: string; kept: Kept }[];
  /** What the world knows that the record must not contradict. */
  world: { heatedMinutes: number; needMinutes: number; needToldMinutes: number; markPsi: number };
  /** Minutes from the report that last started the clock to the full time; undefined of none. */
  ranMinutes: number | undefined;
  /** The machine slept while the clock of a process ran. */
  slept: boolean;
  /** The time was called full after a told loss, with no boil or pressure reported since. */
  fullWhileLost: boolean;
  /** The pressure that the program asked the dial to show. */
  askedPsi: number;
  /** The whole conversation, for a look at one seed. */
  lines: string[];
};

/** What of the record the properties look at. */
export type RecordSeen = {
  tested: number;
  achieved: number;
  psi: number | null;
  restarts: number;
  filled: number;
  processed: number;
  sealed: number;
  confirmed: string[];
  codes: string[];
};

export type DayWish = {
  seed: number;
  library: Library;
  assumed?: Assumed;
  policy?: Policy;
  /** Instead of what the seed would draw. */
  mishaps?: Mishap[];
  card?: string;
  /** What is said beside the work, instead of the usual talk. */
  chatter?: readonly string[];
  keepsLines?: boolean;
};

const ALTITUDES_FT = [6200, 6200, 6200, 6200, 400, 2600, 5200, 7400];

/** What was said and what came of it, kept while a day goes on. */
export class DayBook {
  readonly told: Told[] = [];
  readonly interruptions: { text: string; right: boolean }[] = [];
  readonly refused: string[] = [];
  readonly unknownQuestions: string[] = [];
  readonly lines: string[] = [];
  readonly answers: DayResult["answers"] = [];
  readonly chatter: DayResult["chatter"] = [];
  ranMinutes: number | undefined;
  slept = false;
  /** The clock of the process was stopped by a told loss, and has not started since. */
  lost = false;
  fullWhileLost = false;
  questions = 0;
  extraQuestions = 0;
  private readonly askedKinds = new Set<string>();
  /** The last false thing that was said of each topic, until the truth is told. */
  private readonly falseOf = new Map<Topic, Exclude<Excuse, "none">>();

  /** Something that is not so was said of these. */
  falsely(topics: readonly Topic[], excuse: Exclude<Excuse, "none">): void {
    for (const topic of topics) this.falseOf.set(topic, excuse);
  }

  truthTold(topic: Topic): void {
    if (this.falseOf.has(topic)) this.falseOf.set(topic, "taken back");
  }

  excuse(topic: Topic): Excuse {
    return this.falseOf.get(topic) ?? "none";
  }

  ask(text: string): void {
    const kind = kindOfQuestion(text);
    this.questions += 1;
    if (!ROUTINE.has(kind) || this.askedKinds.has(kind)) this.extraQuestions += 1;
    if (kind === "other") this.unknownQuestions.push(text);
    this.askedKinds.add(kind);
  }

  note(line: Line): void {
    if (line.kind === "refused") this.refused.push(line.text);
  }
}

function recordOf(log: Log | undefined): RecordSeen {
  return {
    tested: log?.process?.testedMinutes ?? 0,
    achieved: log?.process?.achievedMinutes ?? 0,
    psi: log?.process?.pressurePsi ?? null,
    restarts: log?.process?.restarts ?? 0,
    filled: log?.jars?.filled ?? 0,
    processed: log?.jars?.processed ?? 0,
    sealed: log?.jars?.sealed ?? 0,
    confirmed: (log?.confirmed ?? []).map((one) => one.factor),
    codes: (log?.deviations ?? []).map((one) => one.code),
  };
}

/** Plays the day of a seed; the same seed and assumptions give the same day, always. */
export function playDay(wish: DayWish): DayResult {
  const chance: Dice = dice(wish.seed);
  const card = CARDS.find((one) => one.id === wish.card) ?? chance.pick(CARDS);
  const altitudeFt = chance.pick(ALTITUDES_FT);
  const world = new WorldKitchen(card, altitudeFt);
  const drawn = drawMishaps(chance, card, altitudeFt);
  const mishaps = wish.mishaps ?? drawn;
  for (const mishap of mishaps) befall(mishap, world, chance);
  const cook = new HomeCook(chance, wish.assumed ?? ASSUMED, world, mishaps.length === 0);
  const program = new Program(wish.library, world.toldAltitudeFt);
  const book = new DayBook();
  if (world.toldAltitudeFt !== altitudeFt) book.falsely(["altitude"], "good faith");
  const parts = { program, world, cook, dice: chance, book, mishaps };
  const flow = new DayFlow({
    ...parts,
    assumed: wish.assumed ?? ASSUMED,
    policy: wish.policy ?? "program",
    chatter: wish.chatter ?? CHATTER,
    keepsLines: wish.keepsLines ?? false,
  });
  flow.play();
  const log = program.logNow;
  program.close();
  const told = new Set(book.told.map((one) => one.topic));
  return {
    seed: wish.seed,
    card: card.id,
    mishaps,
    verdict: log?.verdict ?? "not begun",
    reasons: log?.reasons ?? [],
    state: log?.state ?? "not begun",
    wrongs: world.wrongs.map((topic) => {
      return { topic, excuse: book.excuse(topic), told: told.has(topic) };
    }),
    told: book.told,
    interruptions: book.interruptions,
    extraQuestions: book.extraQuestions,
    questions: book.questions,
    muted: cook.muted,
    refused: book.refused,
    unknownQuestions: book.unknownQuestions,
    record: recordOf(log),
    answers: book.answers,
    chatter: book.chatter,
    world: {
      heatedMinutes: world.heatedMinutes,
      needMinutes: world.needMinutes,
      needToldMinutes: testedMinutes(card, world.toldAltitudeFt),
      markPsi: card.method === "pressure" ? markPsi(world.toldAltitudeFt) : 0,
    },
    ranMinutes: book.ranMinutes,
    slept: book.slept,
    fullWhileLost: book.fullWhileLost,
    askedPsi: card.method === "pressure" ? flow.targetPsi : 0,
    lines: book.lines,
  };
}
