import { readFileSync } from "node:fs";
import { it } from "vitest";
import { grammarNow } from "../../src/session/listening.ts";
import { Listener } from "../../src/voice/listener.ts";
import { kitchenAt } from "../session/kitchen-moments.ts";
import { makeRecogniser } from "./loop-bench.ts";

it("x", async () => {
  const rec = makeRecogniser();
  const s = await kitchenAt("empty kitchen");
  const orig = rec.end.bind(rec);
  rec.end = () => {
    const r = orig();
    console.log("first", r);
    return r;
  };
  const so = rec.secondOpinion.bind(rec);
  rec.secondOpinion = (f) => {
    const r = so(f);
    console.log("second", r);
    return r;
  };
  const l = new Listener({
    recogniser: rec,
    withWakeWords: true,
    wallMs: Date.now,
    monoMs: () => performance.now(),
    events: { onHeard: console.log, onUnheard: console.log },
  });
  l.expect(grammarNow(s));
  const b = readFileSync(process.env.RAW!);
  const all = new Int16Array(b.buffer, b.byteOffset, b.length / 2);
  for (let i = 0; i < all.length; i += 1600) l.hear(all.subarray(i, i + 1600));
});
it("two or twelve", async () => {
  const rec = makeRecogniser() as any;
  const b = readFileSync(process.env.RAW!);
  const all = new Int16Array(b.buffer, b.byteOffset, b.length / 2);
  const cut = all.subarray(16000 * 7, 16000 * 12);
  for (const t of [
    "timer for two minutes",
    "timer for twelve minutes",
    "timer for ten minutes",
    "timer for twenty minutes",
  ])
    console.log(t, rec.hearAs([t], cut));
  const s = await kitchenAt("empty kitchen");
  rec.expect(grammarNow(s));
  rec.second.select("kitchen");
  console.log(rec.second.decodeWhole(cut));
});
