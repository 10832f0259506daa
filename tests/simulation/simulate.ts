/** One worker of `npm run simulate`: plays kitchens of its seeds, hands the sums to its parent. */
import { loadLibrary } from "../../src/session/reading/load-library.ts";
import { FAULTS } from "./faults-played.ts";
import { runSeed, shortest } from "./simulation.ts";

const [first = 1, count = 1, step = 1] = process.argv.slice(2).map(Number);

/** Failures that are also shrunk, in one worker. */
const MOST_SHRUNK = 3;

const library = await loadLibrary(["recipes"], {});
const sums = { kitchens: 0, lines: 0, livedMs: 0, failed: 0 };
const verdicts: Record<string, number> = {};
const faults: Record<string, number> = Object.fromEntries(FAULTS.map((fault) => [fault, 0]));
for (let seed = first; seed < first + count * step; seed += step) {
  const run = await runSeed(seed, library);
  sums.kitchens += 1;
  sums.livedMs += run.livedMs;
  sums.lines += run.script.length;
  for (const one of run.verdicts) verdicts[one] = (verdicts[one] ?? 0) + 1;
  for (const [fault, times] of Object.entries(run.faults))
    faults[fault] = (faults[fault] ?? 0) + times;
  if (!run.broken) continue;
  sums.failed += 1;
  console.log(`\nseed ${seed}: ${run.broken}`);
  if (sums.failed > MOST_SHRUNK) continue;
  const script = await shortest(run, library);
  console.log(`brinebell rehearse ${run.args.join(" ")} --script - <<'END'`);
  console.log(`${script.join("\n")}\nEND`);
}
process.send?.({ sums, verdicts, faults });
process.disconnect?.();
