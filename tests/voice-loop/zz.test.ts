import { it } from "vitest";
import { grammarNow } from "../../src/session/listening.ts";
import { kitchenAt, MOMENT_NAMES } from "../session/kitchen-moments.ts";
import { makeRecogniser } from "./loop-bench.ts";
import { actedOn, hearMoment, meaningIn, sentencesSaid } from "./moment-bench.ts";
import { OTHER_WORDINGS, SENTENCES } from "./moment-sentences.ts";
import { syntheticVoices } from "./synthetic-voices.ts";

const step = Number(process.env.STEP ?? 5);
it("x", async () => {
  const rec = makeRecogniser();
  const voices = syntheticVoices();
  for (const n of MOMENT_NAMES) {
    if (process.env.ONLY && !n.includes(process.env.ONLY)) continue;
    const s = await kitchenAt(n);
    const m = meaningIn(s);
    for (const t of [...SENTENCES[n], ...(process.env.OTHER ? OTHER_WORDINGS[n] : [])])
      if (m(t).startsWith("unknown")) console.log("unknown", t);
    const t0 = performance.now();
    rec.expect(grammarNow(s));
    console.log("load", n, (performance.now() - t0).toFixed(0), grammarNow(s).rules.length);
    for (const [i, c] of (process.env.COND ?? "pink 20,fan 10,pink 10,boiling 10")
      .split(",")
      .entries()) {
      const [kind, snr] = c.split(" ");
      const list = process.env.OTHER ? OTHER_WORDINGS[n] : SENTENCES[n];
      const said = sentencesSaid(list, voices, step, i);
      const r = hearMoment(s, rec, said, { kind: kind as never, snrDb: Number(snr) }, 7 + i);
      const acted = actedOn(s, r);
      const bad = acted.filter((a) => !a.right);
      console.log(
        n,
        c,
        "n",
        r.commands,
        "right",
        ((r.right / r.commands) * 100).toFixed(1),
        "missed",
        r.missed.length,
        "wrong",
        r.wrong.length,
        "acted wrong",
        bad.length,
        "readback right",
        r.sure.filter((a) => a.right).length - acted.filter((a) => a.right).length,
        JSON.stringify(r.unheard),
        "cpu",
        ((r.computeMs / r.audioMs) * 100).toFixed(1),
      );
      if (process.env.SHOW)
        console.log(
          [
            ...r.wrong.map((w) => "  W " + w),
            ...r.missed.map((w) => "  - " + w),
            ...bad.map((b) => "  ! " + b.said + " -> " + b.heard + " " + b.confidence.toFixed(2)),
          ].join("\n"),
        );
    }
  }
});
