/** One worker of `npm run world`: plays its days and hands them to its parent. */
import { loadLibrary } from "../../../src/session/reading/load-library.ts";
import { type Assumed, scaled } from "./assumptions.ts";
import { type Policy, playDay } from "./day.ts";

const [
  first = "1",
  count = "1",
  step = "1",
  factor = "1",
  policy = "program",
  only = "",
  most = "",
] = process.argv.slice(2);

const library = await loadLibrary([process.env.WORLD_RECIPES ?? "recipes"], {});
const assumed = scaled(Number(factor), only === "" ? undefined : (only as keyof Assumed));
const end = Number(first) + Number(count) * Number(step);
const until = most === "" ? Number.POSITIVE_INFINITY : Number(most) * 60_000;
for (let seed = Number(first); seed < end && performance.now() < until; seed += Number(step)) {
  process.send?.(playDay({ seed, library, assumed, policy: policy as Policy }));
}
// Whoever waits for the end is told last, when all days are through.
process.send?.("end", () => process.disconnect?.());
