import { describe, expect, it } from "vitest";
import { chooseProcess, processOptions } from "../../src/recipe/choose-process.ts";
import type { GaugeKind, Recipe } from "../../src/recipe/recipe.ts";
import { onlyBatch, type PlayOptions, play, theLibrary } from "./play.ts";

const ALTITUDES_FT = [0, 1000, 1001, 3001, 6001, 8000];

type Job = { options: PlayOptions; minutes: number; psi: number | null } | { options: PlayOptions };

/** Every way a recipe may be put up; altitudes that give the same process are played once. */
function jobsOf(recipe: Recipe): Job[] {
  const { tables } = theLibrary();
  const known = new Set<string>();
  const jobs: Job[] = [];
  for (const { method, pack } of processOptions(recipe)) {
    const gauges: GaugeKind[] = method === "pressure" ? ["dial", "weighted"] : ["dial"];
    for (const jar of recipe.jars) {
      for (const gauge of gauges) {
        for (const altitudeFt of ALTITUDES_FT) {
          const wish = { altitudeFt, method, pack, jar, gauge };
          const choice = chooseProcess(recipe, tables, wish);
          const { minutes, pressurePsi: psi } = choice.ok
            ? choice.terms
            : { minutes: -1, pressurePsi: null };
          const key = [method, pack, jar, gauge, minutes, psi].join();
          if (known.has(key)) continue;
          known.add(key);
          const options = { method, pack, jar, gauge, altitude: `${altitudeFt}ft` };
          jobs.push(choice.ok ? { options, minutes, psi } : { options });
        }
      }
    }
  }
  return jobs;
}

/** What is wrong with one play; empty where nothing is. */
async function faultsOf(recipe: Recipe, job: Job): Promise<string[]> {
  const played = await play(recipe.id, undefined, job.options);
  const name = `${recipe.id} ${Object.values(job.options).join(" ")}`;
  if (!("minutes" in job)) {
    const refused = played.review.batches.length === 0 && played.refused.length === 1;
    return refused ? [] : [`${name}: not refused`];
  }
  const batch = onlyBatch(played);
  const faults: string[] = [];
  const check = (right: boolean, what: string) => {
    if (!right) faults.push(`${name}: ${what}`);
  };
  check(!played.trouble, String(played.trouble));
  check(batch.verdict === "as-tested", `${batch.verdict} ${batch.reasons.join()}`);
  check(batch.state === "complete", batch.state);
  check(batch.deviations.length === 0, batch.deviations.map((one) => one.code).join());
  check(played.refused.length === 0, played.refused.map((one) => one.reason).join());
  check(batch.process?.testedMinutes === job.minutes, `${batch.process?.testedMinutes} min`);
  check(batch.process?.pressurePsi === job.psi, `${batch.process?.pressurePsi} psi`);
  check((batch.process?.achievedMinutes ?? 0) >= job.minutes, "achieved less than tested");
  const due = played.journal.filter((one) => one.type === "due").map((one) => one.key);
  check(new Set(due).size === due.length, "something was recorded as due twice");
  const asked = played.journal.filter((one) => one.type === "asked").map((one) => one.key);
  check(new Set(asked).size === asked.length, "something was asked twice");
  return faults;
}

describe("every recipe of the library, played by the ideal cook", () => {
  const recipes = [...theLibrary().recipes.values()];

  it.each(
    recipes.filter((one) => processOptions(one).length > 0).map((one) => [one.id, one] as const),
  )(
    "%s is as tested in every jar, pack, method, gauge and band, or refused with the reason",
    async (_id, recipe) => {
      const jobs = jobsOf(recipe);
      expect(jobs.length).toBeGreaterThan(0);
      const faults: string[] = [];
      for (const job of jobs) faults.push(...(await faultsOf(recipe, job)));
      expect(faults).toEqual([]);
    },
    60_000,
  );

  it("without a canner process ends as seed, or for the refrigerator", async () => {
    const others = recipes.filter((one) => processOptions(one).length === 0);
    expect(others.length).toBeGreaterThan(1);
    for (const recipe of others) {
      const batch = onlyBatch(await play(recipe.id));
      const dry = recipe.keptAs === "seed" || recipe.keptAs === "dry";
      expect(batch.verdict).toBe(dry ? "no-process" : "not-shelf-stable");
      expect(batch).toMatchObject({ state: "complete", process: null, jars: null });
    }
  });

  it("that is kept cold instead is said not to be shelf-stable", async () => {
    const batch = onlyBatch(
      await play("dilled-green-beans", undefined, { method: "refrigerator" }),
    );
    expect(batch).toMatchObject({ verdict: "not-shelf-stable", process: null, jars: null });
  });
});
