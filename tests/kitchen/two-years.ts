/** A kitchen with beans of two years and beets on the shelf; marks of the first year come again. */
import { replay } from "../../src/kitchen/evolve.ts";
import type { State } from "../../src/kitchen/state.ts";
import { moved, opening, playedEvents } from "../review/demo-season.ts";
import { theLibrary } from "../scenarios/play.ts";

/** Days from the first lot to each of the later ones, which begin on 14 August 2027. */
const YEAR_DAYS = -361;

/** P in 2026 and in 2027 for Provider, D for Dragon Tongue, B for the beets. */
export async function twoYears(): Promise<State> {
  const beans = { recipe: "dilled-green-beans", weightLb: 4, jar: "pint" } as const;
  const [provider = [], dragon = [], beets = []] = await Promise.all([
    playedEvents(theLibrary(), { ...beans, variety: "Provider" }),
    playedEvents(theLibrary(), { ...beans, variety: "Dragon Tongue" }),
    playedEvents(theLibrary(), { recipe: "pickled-beets", variety: "Bull's Blood", jar: "pint" }),
  ]);
  const before = moved(provider, YEAR_DAYS, 1);
  const all = [...before, ...moved(provider, 0, 2), ...moved(dragon, 1, 3), ...moved(beets, 2, 4)];
  const first = Math.min(...all.map(({ t }) => t));
  return replay([...opening(first), ...all]);
}
