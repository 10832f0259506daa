/**
 * Listening in an open kitchen: the grammar is made for the moment, what is heard goes in like
 * typed words with its confidence, and nothing is heard while Brinebell speaks.
 */
import { existsSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Intent } from "../kitchen/command.ts";
import { activeOwners, isLoad, runOfKind } from "../kitchen/owners.ts";
import { questions } from "../kitchen/questions.ts";
import type { State } from "../kitchen/state.ts";
import { spokenGrammar } from "../language/spoken-grammar.ts";
import type { EarsEvents, EarsGrammar, EarsPort } from "../ports/ears.ts";
import type { CaptureSource } from "../voice/capture.ts";
import { ChildEars } from "../voice/child-ears.ts";
import { contextOf, type Pending } from "./dialogue.ts";
import type { LiveKitchen } from "./live-kitchen.ts";
import { realClock } from "./real-clock.ts";

export const WAKE_WORDS = ["brine", "bell"];

/** Said at any moment. */
const ALWAYS: Intent[] = [
  "done",
  "repeat",
  "what-now",
  "what-next",
  "overview",
  "time-left",
  "finish-time",
  "undo",
  "acknowledge",
  "hush",
  "unhush",
  "help",
  "timer-set",
  "timer-add",
  "timer-cancel",
];

/** What makes sense to say just now; a smaller grammar is heard much better. */
export function intentsNow(state: State, pending: Pending | undefined): Intent[] {
  const intents = new Set<Intent>(ALWAYS);
  const add = (...more: Intent[]) => {
    for (const one of more) intents.add(one);
  };
  if (pending || questions(state).length > 0) add("yes", "no", "answer", "altitude", "disposition");
  const owners = activeOwners(state);
  if (owners.length === 0) add("begin");
  for (const owner of owners) {
    if (!isLoad(owner)) {
      add("hold", "resume", "abandon", "focus", "boiling", "boil-lost", "temperature", "begin");
      if (runOfKind(owner, "fill")?.state === "running")
        add("jars-filled", "set-aside", "jar-broken");
      continue;
    }
    if (owner.loadedAt === undefined) add("loaded", "jars-filled");
    else if (owner.unloadedAt === undefined) {
      add("boiling", "boil-lost", "temperature", "water-low", "jar-broken");
      if (owner.terms?.method === "pressure" || owner.terms?.method === "steam") {
        add("pressure", "pressure-lost", "weight-rocking", "venting");
      }
    } else add("sealed", "seal-failed", "jar-broken");
  }
  return [...intents];
}

export type ListeningWish = {
  /** Words that come first; none in a quiet kitchen. */
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
export function listeningProgram(): string {
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

/** Listens until the function given back is called. */
export function startListening(kitchen: LiveKitchen, wish: ListeningWish): () => Promise<void> {
  const { session } = kitchen;
  const wake =
    wish.wakeWords.length > 0 ? `say "${wish.wakeWords.join(" ")}" first` : "no wake words";
  const listening = `listening: ${wake}`;
  const ears = openEars(wish, {
    onHeard: ({ text, confidence }) => {
      session.hear(text, confidence);
    },
    onProblem: (message) => {
      kitchen.setListening(message);
      session.notice(message);
    },
    onRecovered: () => kitchen.setListening(listening),
  });
  let shown = "";
  const grammar = (): EarsGrammar => {
    const { state, waitingFor } = session;
    const context = contextOf(state, session.now(), session.names, waitingFor);
    return spokenGrammar(context, { intents: intentsNow(state, waitingFor) });
  };
  const refresh = () => {
    const { state, waitingFor } = session;
    const owners = activeOwners(state).map((owner) => owner.id);
    const key = [
      ...intentsNow(state, waitingFor),
      ...owners,
      Object.keys(state.timers).length,
    ].join();
    if (key === shown) return;
    shown = key;
    ears.expect(grammar());
  };
  ears.start(grammar());
  kitchen.setListening(listening);
  kitchen.onSpeaking((speaking) => ears.deafen(speaking));
  const off = kitchen.onChange(refresh);
  return async () => {
    off();
    await ears.stop();
  };
}
