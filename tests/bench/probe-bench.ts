/** What a probe's rules miss and their false alarms, on made-up traces with a known truth. */
import { judge, tally } from "../kitchen/probe/probe-judge.ts";
import { SCENES, trace } from "../kitchen/probe/probe-traces.ts";

const TRACES = 400;
const s = (value: number) => (Number.isNaN(value) ? "-" : `${value.toFixed(0)} s`);
const both = ([middle, most]: [number, number]) => `${s(middle)} / ${s(most)}`;

console.log(`${TRACES} traces a scene; notice: median / longest`);
console.log(
  "scene | noticed | after | too soon (by) | losses missed | after | false losses, signs",
);
for (const scene of Object.keys(SCENES)) {
  const one = tally(scene, TRACES);
  console.log(
    [
      scene,
      `${one.noticed}`,
      both(one.noticedAfter),
      `${one.tooSoon} (${s(one.soonest)})`,
      one.losses > 0 ? `${one.missed} of ${one.losses}` : "-",
      both(one.lostAfter),
      `${one.falseLosses}, ${one.falseSigns}`,
    ].join(" | "),
  );
}
const sample = trace("a steady boil", 1);
const began = performance.now();
let readings = 0;
for (let round = 0; round < 40; round++) {
  judge(sample);
  readings += sample.readings.length;
}
const each = ((performance.now() - began) * 1000) / readings;
console.log(`one reading filtered and judged: ${each.toFixed(1)} microseconds`);
