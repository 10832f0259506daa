import { textOf } from "../words.ts";
import type { MeaningOf } from "./meaning.ts";

/** "No, I was here": nobody was away. */
const WAS_THERE = /\b(here|in the kitchen|right by it|watching)\b/;
const WAS_NOT = /\b(not|nobody|no one|never|until|till)\b/;

/** Nobody was in the kitchen for a while, up to now. */
export const wasAway: MeaningOf<"was-away"> = {
  cost: "raising",
  tellsOf: { about: "boil" },
  report: true,
  when: ["working"],
  slots: { minutes: "number" },
  example: "I was on the phone for twenty minutes",
  finish: ({ minutes }, _context, _plain, { words }) => {
    const all = textOf(words);
    return WAS_THERE.test(all) && !WAS_NOT.test(all) ? undefined : { slots: { minutes } };
  },
  wordings: [
    "<we> (was|were|have been) <elsewhere> [for] [about|a good|nearly|almost] {minutes:duration}",
    "<we> (was|were|have been) <elsewhere> [for (a while|a bit|some time|too long)]",
    "<we> (stepped|went|popped|ran|slipped|had to go) (out|away|outside) for {minutes:duration}",
    `(nobody|no one) (was|has been) (here|watching|in the kitchen|at the stove) for
    {minutes:duration}`,
    "<we> (fell asleep|dozed off|nodded off) [for {minutes:duration}]",
    `<we> (did not watch|was not watching|were not watching) [it|the canner|the pot] for
    {minutes:duration}`,
  ],
  lists: {
    elsewhere: `
      on the (phone|telephone)|away|gone|out|outside|out of the (kitchen|house|room)|in the (garden|
      yard|cellar|barn|other room|bath|bathroom)|at the door|upstairs|downstairs|asleep|next door|
      not (here|in the kitchen|watching)
    `,
  },
};
