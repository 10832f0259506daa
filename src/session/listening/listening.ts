/**
 * Listening in an open kitchen: the grammar is made for the moment, what is heard goes in like
 * typed words with its confidence, and nothing is heard while Brinebell speaks.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { spokenGrammar } from "../../language/grammar/spoken-grammar.ts";
import { understand } from "../../language/understand.ts";
import type { EarsEvents, EarsGrammar, EarsPort, HeardWords } from "../../ports/ears.ts";
import type { CaptureSource } from "../../voice/listening/capture.ts";
import { ChildEars } from "../../voice/listening/child-ears.ts";
import type { LiveKitchen } from "../live-kitchen.ts";
import type { Session } from "../session.ts";
import { realClock } from "../time/real-clock.ts";
import { momentOf } from "./listening-moment.ts";

const WAKE_WORDS = ["brine", "bell"];

type ListeningWish = {
  /** The wake words; none in a quiet kitchen. */
  wakeWords: string[];
  /** Where the sound comes from. */
  source: CaptureSource;
  searchPath: string;
};

/** `brine bell` as said, or `none` to switch the wake words off. */
export function wakeWordsOf(text: string | undefined): string[] {
  if (text === undefined) return WAKE_WORDS;
  if (text.trim().toLowerCase() === "none") return [];
  return text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => /^[a-z']+$/.test(word));
}

/** The program that listens, built beside this one. */
function listeningProgram(): string {
  const here = fileURLToPath(new URL(".", import.meta.url));
  const beside = join(here, "listening-program.js");
  return existsSync(beside) ? beside : join(here, "..", "listening-program.js");
}

export function openEars(wish: ListeningWish, events: EarsEvents): EarsPort {
  return new ChildEars({
    programPath: listeningProgram(),
    setup: { source: wish.source, wakeWords: wish.wakeWords },
    events,
    clock: realClock(),
    searchPath: wish.searchPath,
  });
}

/** What may be said to the session at this moment. */
export function grammarNow(session: Session): EarsGrammar {
  const { state, waitingFor } = session;
  return spokenGrammar(session.context(), momentOf(state, waitingFor));
}

/** Two hearings with the same meaning are as good as a certain one: "fill" and "filled". */
const MEANS_THE_SAME = 0.75;

/** How certain it is of what was heard, considering whether the other hearing means the same. */
export function surenessOf(session: Session, { text, confidence, orElse }: HeardWords): number {
  if (orElse === undefined || confidence >= MEANS_THE_SAME) return confidence;
  const context = session.context();
  const [one, other] = [text, orElse].map((words) => {
    const { intent, slots } = understand(words, context);
    return JSON.stringify([intent, slots]);
  });
  return one === other ? MEANS_THE_SAME : confidence;
}

/** What listening needs from a kitchen. */
type ListeningKitchen = Pick<LiveKitchen, "session" | "onChange" | "setListening" | "onSpeaking">;

/**
 * Listens until the function given back is called; `open` gives the ears, those of the machine
 * where nothing is said.
 */
export function startListening(
  kitchen: ListeningKitchen,
  wish: ListeningWish,
  open: (events: EarsEvents) => EarsPort = (events) => openEars(wish, events),
): () => Promise<void> {
  const { session } = kitchen;
  const wake =
    wish.wakeWords.length > 0 ? `say "${wish.wakeWords.join(" ")}" first` : "no wake words";
  const listening = `listening: ${wake}`;
  const ears = open({
    onHeard: (heard) => {
      session.hear(heard.text, surenessOf(session, heard));
    },
    onProblem: (message) => {
      kitchen.setListening(message);
      session.notice(message);
    },
    onRecovered: () => kitchen.setListening(listening),
  });
  let expected = grammarNow(session);
  let seen = { events: -1, asked: session.waitingFor };
  // What can be said depends on what happened and what is asked, not on the time.
  const refresh = () => {
    const { state, waitingFor: asked } = session;
    const events = state.history.length;
    if (events === seen.events && asked === seen.asked) return;
    seen = { events, asked };
    const next = grammarNow(session);
    if (next.rules === expected.rules) return;
    expected = next;
    ears.expect(next);
  };
  ears.start(expected);
  kitchen.setListening(listening);
  kitchen.onSpeaking((speaking) => ears.deafen(speaking));
  const off = kitchen.onChange(refresh);
  return async () => {
    off();
    await ears.stop();
  };
}
