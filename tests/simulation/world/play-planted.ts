/** Plays the days that ought to show a planted bug, and tells the first that does. */
import { loadLibrary } from "../../../src/session/reading/load-library.ts";
import { ASSUMED } from "./assumptions.ts";
import { CARDS } from "./cards.ts";
import { type DayWish, playDay } from "./day.ts";
import { PLANTED } from "./planted.ts";
import type { Planted } from "./planting.ts";
import { broken, KNOWN_BROKEN } from "./properties.ts";

/** A cook who misses little, tells it in usual words, and talks of much else. */
const OPEN_EYED = { ...ASSUMED, neverSeen: 0.05, tells: 0.95, ownWords: 0.1, chatters: 0.9 };

type Wish = Omit<DayWish, "library">;

/** So many days for each planted bug, by turns over its mishaps and cards. */
const DAYS = 16;

function daysFor({ mishaps = [[]], cards, chatter, quiet }: Planted): Wish[] {
  const named = cards ?? CARDS.map((one) => one.id);
  return Array.from({ length: DAYS }, (_, at) => {
    const [mishap, card] = [mishaps[at % mishaps.length], named[at % named.length]];
    const assumed = quiet ? { ...OPEN_EYED, tells: 0 } : OPEN_EYED;
    const talk = chatter ? { chatter } : {};
    return { seed: 7000 + at, mishaps: mishap ?? [], assumed, ...talk, ...(card ? { card } : {}) };
  });
}

const [name = ""] = process.argv.slice(2);
const plant = PLANTED.find((one) => one.name === name);
const library = await loadLibrary(["recipes"], {});

/** The first day that breaks what the program keeps without the bug. */
function caught(wishes: Wish[]): { wish: Wish; fault: string } | undefined {
  for (const wish of wishes) {
    const faults = broken(playDay({ ...wish, library }));
    const fault = faults.find((one) => !(one.property in KNOWN_BROKEN));
    if (fault) return { wish, fault: `${fault.property}: ${fault.found}` };
  }
  return undefined;
}

process.send?.(caught(plant ? daysFor(plant) : []) ?? "missed", () => process.disconnect?.());
