/**
 * A cook of the world: what they know of their kitchen, how they answer, by thought or by reflex,
 * and in which words they tell what went wrong.
 */
import type { Dice } from "../dice.ts";
import { type Assumed, STRENGTH_MIX } from "./assumptions.ts";
import { kindOfQuestion, type QuestionKind, SPEAKS_OF, shapeOf } from "./questions-read.ts";
import { HEDGED, NO, OWN, type Strength, type Topic, USUAL, YES } from "./wordings.ts";
import type { WorldKitchen } from "./world-kitchen.ts";

export type Answer = {
  kind: QuestionKind;
  text: string;
  /** Whether it is what is so, and if not, whether by reflex or in good faith. */
  is: "true" | "open" | "false by reflex" | "false in good faith";
  topics: readonly Topic[];
};

const NUMBERS = ["zero", "one", "two", "three", "four", "five"];

export class HomeCook {
  private readonly dice: Dice;
  private readonly assumed: Assumed;
  private readonly world: WorldKitchen;
  /** Questions of this load so far. */
  asked = 0;
  /** What went wrong on the stove that the cook saw, and that no fresh start has mended. */
  sawLoss = false;
  /** What the cook takes for right until it is looked at again. */
  readonly mistaken = new Set<Topic>();
  muted = false;
  /** The pot that was spoken of last. */
  lastPot = "";
  private wrongInterruptions = 0;
  /** What this cook told, and what it was about. */
  private readonly told = new Map<string, Topic>();

  /** `careful`: on whose right days every question is answered. */
  constructor(
    dice: Dice,
    assumed: Assumed,
    world: WorldKitchen,
    private readonly careful: boolean,
  ) {
    this.dice = dice;
    this.assumed = assumed;
    this.world = world;
  }

  /** Whether things are as a question hopes, in truth. */
  private truth(kind: QuestionKind): boolean {
    const { world } = this;
    const { wrongs } = world;
    switch (kind) {
      case "cover":
        return world.canner.overLidsIn >= 0;
      case "still":
        return world.kept;
      case "gap":
        return !world.brokeUnwatched;
      case "end":
      case "stood":
      case "variety":
      case "hot":
      case "vinegar":
      case "acid":
      case "headspace":
      case "lids":
      case "sterile":
        return !SPEAKS_OF[kind].some((topic) => wrongs.includes(topic));
      case "gauge-tested":
        return world.gaugeTested;
      case "gauge-off":
        return world.gaugeReadsHighPsi === 0;
      case "altitude":
        return world.toldAltitudeFt === world.altitudeFt;
      default:
        return true;
    }
  }

  /** The same, as this cook would see it on looking. */
  private believed(kind: QuestionKind): boolean {
    if (SPEAKS_OF[kind].some((topic) => this.mistaken.has(topic))) return true;
    if (kind === "end" || kind === "gap") {
      const { world } = this;
      return !this.sawLoss && !world.offEarly && !world.forcedCooling;
    }
    if (kind === "altitude") return true;
    return this.truth(kind);
  }

  /** What the cook answers; undefined where the question is left lying. */
  answer(text: string): Answer | undefined {
    const { dice, assumed } = this;
    const kind = kindOfQuestion(text);
    const shape = shapeOf(text);
    const considered =
      (1 - assumed.reflexAtFirst) * (1 - assumed.fallPerQuestion) ** Math.max(0, this.asked);
    this.asked += 1;
    if (this.muted || (!this.careful && dice.chance(assumed.leavesQuestion))) return undefined;
    const looked = shape === "value" && dice.chance(assumed.valueLookedUp);
    const thinks = dice.chance(considered) || looked;
    const topics = kind === "heard" ? this.quotedIn(text) : SPEAKS_OF[kind];
    const truth = kind === "heard" ? !this.areWrong(topics) : this.truth(kind);
    const believed = kind === "heard" ? truth : this.believed(kind);
    const good = thinks ? believed : true;
    if (thinks && !good && dice.chance(0.1)) {
      return { kind, text: dice.pick(HEDGED), is: "open", topics };
    }
    const words = this.words(kind, text, good);
    if (!good || truth) return { kind, text: words, is: "true", topics };
    return { kind, text: words, is: thinks ? "false in good faith" : "false by reflex", topics };
  }

  private areWrong(topics: readonly Topic[]): boolean {
    return topics.some((topic) => this.world.wrongs.includes(topic));
  }

  /** What the words are about that a question quotes. */
  private quotedIn(text: string): Topic[] {
    const found = [...this.told].flatMap(([words, topic]) => (text.includes(words) ? topic : []));
    return [...new Set(found)];
  }

  /** What a program that asks nothing would take for answered. */
  asHoped(text: string): string {
    return this.words(kindOfQuestion(text), text, true);
  }

  private words(kind: QuestionKind, text: string, good: boolean): string {
    const { dice, world } = this;
    const shape = shapeOf(text);
    if (kind === "seals") return "all sealed";
    if (kind === "disposition") return "put them in the refrigerator";
    if (kind === "which") return `the ${this.lastPot}`;
    if (kind === "gauge-kind") return "a dial";
    if (kind === "gauge-off") return good ? "zero" : (NUMBERS[world.gaugeReadsHighPsi] ?? "three");
    if (kind === "altitude" && shape === "yes-no") {
      // Of another place than was thought, once that has come out.
      return text.includes(world.altitudeFt.toLocaleString("en-US")) ? "yes" : "no";
    }
    if (kind === "altitude") return `${world.toldAltitudeFt} feet`;
    if (shape === "yes-no") {
      const [plain = "", ...others] = good ? YES : NO;
      return dice.chance(0.7) ? plain : dice.pick(others);
    }
    switch (kind) {
      case "vinegar":
        return good ? "five percent" : `${world.vinegarPercent} percent`;
      case "lids":
        return good ? "they're new" : "they're used";
      case "headspace":
        return good ? world.card.headspace : "an eighth of an inch";
      case "still":
        return good ? "it's still boiling" : "it stopped";
      case "hot":
        return good ? "hot off the boil" : "cooled";
      case "acid":
        return good ? "in every jar" : "only in some";
      case "heard":
        return good ? "all was well" : "it was so";
      case "sterile":
        return good ? "sterilized" : "only washed";
      default:
        return good ? "yes" : "no";
    }
  }

  /** An interruption was right or not: too many needless ones, and the program is muted. */
  interrupted(right: boolean): void {
    if (right) return;
    this.wrongInterruptions += 1;
    if (this.wrongInterruptions > 1 && this.dice.chance(this.assumed.mutes)) this.muted = true;
  }

  /** In which words a thing is told, and how strong they are; undefined where it is kept quiet. */
  tell(topic: Topic): { text: string; strength: Strength; own: boolean } | undefined {
    const { dice, assumed, world } = this;
    if (this.muted || !dice.chance(assumed.tells)) return undefined;
    const roll = dice.next();
    const { loss, suspicion } = STRENGTH_MIX;
    const wanted: Strength = roll < loss ? "loss" : roll < loss + suspicion ? "suspicion" : "trace";
    const own = wanted !== "loss" || dice.chance(assumed.ownWords);
    const list = own ? OWN[topic][wanted] : USUAL[topic];
    const text = dice
      .pick(list ?? OWN[topic].loss ?? [])
      .replace("{food}", world.stranger ?? "something else")
      .replace("{produce}", world.card.produce)
      .replace("{high}", NUMBERS[world.gaugeReadsHighPsi] ?? "three")
      .replace("{psi}", String(Math.floor(world.shownPsi)))
      .replace("{feet}", String(world.altitudeFt));
    this.told.set(text, topic);
    return { text, strength: list ? wanted : "loss", own };
  }
}
