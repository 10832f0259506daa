/**
 * The built program attacked from outside. Each attack prints what it tried and what held; a case
 * that did not hold is named.
 *
 *     node tests/attack/run.mjs [--short] [--only stalled-terminal,journal-cuts]
 */
import { parseArgs } from "node:util";
import { ATTACKS } from "./attacks.mjs";
import { Tally } from "./tally.mjs";

const { values } = parseArgs({
  options: {
    short: { type: "boolean", default: false },
    only: { type: "string" },
    minutes: { type: "string" },
  },
});
const only = values.only?.split(",");
let tried = 0;
let held = 0;
for (const [name, attack] of Object.entries(ATTACKS)) {
  if (only && !only.includes(name)) continue;
  const tally = new Tally(values.short, values.minutes && Number(values.minutes));
  const begun = performance.now();
  await attack(tally);
  const seconds = ((performance.now() - begun) / 1000).toFixed(1);
  console.log(`${name}: ${tally.tried} tried, ${tally.held} held (${seconds} s)`);
  for (const note of tally.notes) console.log(`  ${note}`);
  for (const failure of tally.failures) console.log(`  NOT HELD ${failure}`);
  tried += tally.tried;
  held += tally.held;
}
console.log(`${tried} tried, ${held} held`);
process.exit(tried > 0 && held === tried ? 0 : 1);
