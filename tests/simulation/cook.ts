/**
 * A cook as they are: does mostly what is due, and forgets, mishears, corrects, goes away and
 * talks to others. What this one says next, as a line of a rehearsal script.
 */
import { agenda } from "../../src/kitchen/agenda.ts";
import { grammarNow } from "../../src/session/listening/listening.ts";
import { nextAction } from "../../src/session/rehearsal/ideal-cook.ts";
import type { Session } from "../../src/session/session.ts";
import { GrammarSentences } from "../language/grammar-sentences.ts";
import type { Dice } from "./dice.ts";
import { CHATTER, MISHEARD, OUT_OF_PLACE } from "./nonsense.ts";

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const ALTITUDE_FT = 6200;

export type Habits = {
  /** How likely each line is to be none of what is due. */
  chatter: number;
  mistakes: number;
  mishears: number;
  fault: number;
  wanders: number;
  /** How likely something goes wrong with a canner that is being timed. */
  losses: number;
  /** How likely a question is to get the answer that it hopes for. */
  agrees: number;
  /** How much is said to the microphone rather than typed, and how often that hears ghosts. */
  speaks: number;
  ghosts: number;
};

export function habits(dice: Dice): Habits {
  const some = (most: number) => (dice.chance(0.4) ? 0 : dice.next() * most);
  const speaks = dice.chance(0.3) ? dice.next() : 0;
  return {
    chatter: some(0.2),
    mistakes: some(0.2),
    mishears: some(0.15),
    fault: some(0.25),
    wanders: some(0.1),
    losses: some(0.4),
    agrees: dice.chance(0.6) ? 0.98 : 0.75,
    speaks,
    ghosts: speaks > 0 ? some(0.15) : 0,
  };
}

/** `+H:MM:SS`, with days in front where it is long. */
export function waitText(ms: number): string {
  const seconds = Math.max(0, Math.ceil(ms / 1000));
  const days = Math.floor(seconds / 86_400);
  const [h, m, s] = [Math.floor((seconds % 86_400) / 3600), Math.floor(seconds / 60) % 60, seconds];
  const two = (value: number) => String(value % 60).padStart(2, "0");
  return `+${days > 0 ? `${days}d ` : ""}${h}:${two(m)}:${two(s)}`;
}

const span = (ms: number): string => waitText(ms).slice(1);

/** What goes wrong, or is corrected, while a canner of a method is timed. */
const AT_ANY = ["take the jars out", "that was ten minutes ago", "undo", "the water is low"];
const LOSSES: Record<string, string[]> = {
  "boiling-water": [
    "it stopped boiling",
    "it lost its boil",
    "it lost its boil five minutes ago",
    "the lids are not covered",
    "it's boiling again",
    ...AT_ANY,
  ],
  pressure: ["the pressure dropped", "4 pounds", "8 pounds", "the steam stopped", ...AT_ANY],
  steam: ["the steam stopped", "the canner is at 190", ...AT_ANY],
  "low-temperature": ["the canner is at 176", "the canner is at 189", ...AT_ANY],
};

export class Cook {
  private readonly dice: Dice;
  private readonly habits: Habits;
  private lastText = "";
  private lastLength = -1;
  private stuck = 0;
  private full = false;
  private ill = false;
  private deaf = false;
  /** Opened while the disk was full: it may have no lock. */
  private lockedOut = false;

  constructor(dice: Dice) {
    this.dice = dice;
    this.habits = habits(dice);
  }

  /** The next line; undefined once nothing is left to do, or the cook has given up. */
  next(session: Session): string | undefined {
    const line = this.nextLine(session);
    return line !== undefined && this.dice.chance(this.habits.speaks) ? this.spoken(line) : line;
  }

  private nextLine(session: Session): string | undefined {
    const { dice, habits } = this;
    const progress = session.state.history.length;
    this.stuck = progress === this.lastLength ? this.stuck + 1 : 0;
    this.lastLength = progress;
    if (this.stuck > 12) return undefined;
    if (this.lockedOut && dice.chance(0.2)) {
      return this.set("+0:00:02 [another program looks in]", "lockedOut", false);
    }
    if (dice.chance(habits.fault)) return this.fault();
    if (dice.chance(habits.ghosts)) return this.ghost(session);
    if (session.waitingFor && dice.chance(0.85)) return this.reply(session);
    if (dice.chance(habits.chatter)) return this.soon(dice.pick(CHATTER));
    if (dice.chance(habits.mistakes)) return this.soon(dice.pick(OUT_OF_PLACE));
    if (dice.chance(habits.wanders)) return this.away(session);
    const timed = session.state.active.flatMap((id) => session.state.loads[id] ?? []);
    const process = timed.find((load) => {
      return load.stages.some((run) => run.spec.kind === "process" && run.state === "running");
    });
    if (process?.terms && dice.chance(habits.losses)) return this.loss(process.terms.method);
    return this.due(session);
  }

  /** The same words into the microphone, heard more or less surely. */
  private spoken(line: string): string {
    const { dice } = this;
    const [, when, words] = /^(\S+(?: \d+:\S+)?) ([a-z0-9' .,-]+)$/i.exec(line) ?? [];
    if (when === undefined || words === undefined) return line;
    const sure = dice.whole(45, 100);
    const other = dice.chance(0.2) ? ` or else ${dice.pick(OUT_OF_PLACE)}` : "";
    return `${when} [hears ${sure}% ${words}${other}]`;
  }

  /** A clatter, a radio, another voice, taken for something that could be said just now. */
  private ghost(session: Session): string {
    const { dice } = this;
    const { rules, command } = grammarNow(session);
    const words = new GrammarSentences(rules).draw(command, () => dice.next());
    return `${waitText(dice.whole(1, 200) * 1000)} [hears ${dice.whole(20, 95)}% ${words}]`;
  }

  private soon(text: string): string {
    return `${waitText(this.dice.whole(1, 300) * 1000)} ${text}`;
  }

  /** Far away while the clocks run; what rings meanwhile is not answered. */
  private away(session: Session): string | undefined {
    const { dice } = this;
    if (session.state.active.length === 0) return undefined;
    const ms = dice.pick([20 * MINUTE_MS, HOUR_MS, 3 * HOUR_MS, 26 * HOUR_MS]);
    return `${waitText(ms * (0.5 + dice.next()))} what now`;
  }

  private loss(method: string): string {
    const { dice } = this;
    const signs = LOSSES[method] ?? [];
    const minutes = dice.chance(0.3) ? 0 : dice.whole(0, 25);
    return `${waitText(minutes * MINUTE_MS + dice.whole(1, 50) * 1000)} ${dice.pick(signs)}`;
  }

  private reply(session: Session): string {
    const { dice } = this;
    const pending = session.waitingFor;
    switch (pending?.expects) {
      case "yes":
      case "heard":
        return this.soon(dice.chance(0.7) ? "yes" : "no");
      case "which":
        return this.soon(dice.pick(pending.choices).label);
      case "number":
        return this.soon(String(dice.whole(1, 9)));
      default:
        return this.soon("tomorrow at nine");
    }
  }

  private due(session: Session): string | undefined {
    const { dice, habits } = this;
    const { state } = session;
    const now = session.now();
    const action = nextAction(state, now, ALTITUDE_FT);
    if (!action) {
      if (state.active.length === 0) return undefined;
      const due = agenda(state, now).find((item) => item.at > now)?.at ?? now + HOUR_MS;
      return `${waitText(Math.min(due - now, 72 * HOUR_MS) + dice.whole(1, 300) * 1000)} what now`;
    }
    let text = action.words;
    // A recipe's own name for a stage is not what people say of it.
    if (action.wish.command.intent === "done" && text.endsWith(" done")) text = "done";
    if (text === "yes" && !dice.chance(habits.agrees)) text = "no";
    if (text === "put them in the refrigerator" && dice.chance(0.5)) {
      text = dice.pick(["reprocess", "freeze them", "discard them"]);
    }
    // What was not taken before is said otherwise, or put off.
    if (text === this.lastText && this.stuck > 1) {
      text = dice.pick(["done", "yes", "all sealed", "the jars are in", "the jars are out", text]);
    } else this.lastText = text;
    if (dice.chance(habits.mishears)) {
      for (const [word, heard] of MISHEARD) text = text.replace(word, heard);
    }
    const wait = Math.min(Math.max(0, action.at - now), 72 * HOUR_MS);
    const late = dice.chance(0.2) ? dice.whole(0, 25) * MINUTE_MS : dice.whole(0, 60) * 1000;
    const early = wait > 0 && dice.chance(0.07) ? wait * dice.next() : wait + late;
    return `${waitText(early)} ${text}`;
  }

  private fault(): string {
    const { dice } = this;
    if (this.full && dice.chance(0.5)) return this.set("+0:01 [disk ok]", "full", false);
    if (this.full && dice.chance(0.3)) return this.set("+0:00:02 [crash]", "lockedOut", true);
    if (this.ill && dice.chance(0.5)) return this.set("+0:01 [voice ok]", "ill", false);
    if (this.deaf && dice.chance(0.5)) return this.set("+0:01 [microphone ok]", "deaf", false);
    const long = dice.pick([5_000, 20_000, 90_000, 12 * MINUTE_MS, 4 * HOUR_MS, 50 * HOUR_MS]);
    const ms = long * (0.5 + dice.next());
    const sign = dice.pick(["+", "-"]);
    const line = dice.pick([
      "[crash]",
      "[crash]",
      `[closed for ${span(ms)}]`,
      `[asleep for ${span(ms)}]`,
      `[stands still for ${span(ms)}]`,
      `[power cut for ${span(ms)}]`,
      `[clock set ${sign}${dice.pick(["0:00:30", "0:05", "1:00", "13:00", "3d 0:00"])}]`,
      `[dies at write ${dice.whole(1, 12)}]`,
      `[dies at write ${dice.whole(1, 12)}]`,
      `[dies at half of write ${dice.whole(1, 12)}]`,
      "[write fails]",
      "[sync fails]",
      "[torn line]",
      "[repeated line]",
      "[another program]",
      "[another program looks in]",
      "[disk full]",
      `[disk slow by 0:00:0${dice.whole(1, 9)}]`,
      "[voice gone]",
      "[voice hangs]",
      "[voice late]",
      ...(this.habits.speaks > 0 ? ["[microphone gone]", "[microphone gone]"] : []),
      this.probeLine(),
      this.probeLine(),
    ]);
    const when = waitText(dice.chance(0.3) ? 0 : dice.whole(1, 900) * 1000);
    if (line.startsWith("[disk")) this.full = true;
    if (line === "[microphone gone]") this.deaf = true;
    if (line.startsWith("[voice")) this.ill = true;
    return `${when} ${line}`;
  }

  /** A probe in the canner, which may show anything for a minute. */
  private probeLine(): string {
    const { dice } = this;
    const tenths = (low: number, high: number) => (low + dice.next() * (high - low)).toFixed(1);
    const value = dice.chance(0.7) ? `${tenths(176, 213)}F` : `${tenths(4, 16)}psi`;
    return `[probe canner ${value} for 0:01]`;
  }

  private set(line: string, what: "full" | "ill" | "deaf" | "lockedOut", value: boolean): string {
    this[what] = value;
    return line;
  }
}
