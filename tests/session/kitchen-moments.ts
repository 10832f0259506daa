/** Kitchens played up to the moments in which somebody speaks to them. */
import { readScript } from "../../src/session/rehearsal/rehearsal-script.ts";
import { Rehearsal } from "../../src/session/rehearsal/rehearse.ts";
import type { Session } from "../../src/session/session.ts";
import { theLibrary } from "../scenarios/play.ts";

/** The scripts that lead to each moment; the recipes are begun by the rehearsal. */
const MOMENTS = {
  "empty kitchen": { recipes: [], script: "0:00 what now\n" },
  "brine and trimming": {
    recipes: ["dilled-green-beans"],
    script: "0:02 start the brine\n+0:01 set an eggs timer for ten minutes\n",
  },
  filling: { recipes: ["dilled-green-beans"], script: "0:00 [cook until fill]\n+0:01 what now\n" },
  "boiling-water process": {
    recipes: ["dilled-green-beans"],
    script: "0:00 [cook until process]\n+0:00 it's boiling and the lids are covered\n",
  },
  "pressure process": {
    recipes: ["snap-beans"],
    script: "0:00 [cook until process]\n+0:00 what now\n",
  },
  "seal check": {
    recipes: ["dilled-green-beans"],
    script: "0:00 [cook until seal-check]\n+0:00 what now\n",
  },
} as const;

export type MomentName = keyof typeof MOMENTS;
export const MOMENT_NAMES = Object.keys(MOMENTS) as MomentName[];

/** A kitchen, at 6,200 ft by default, on a Saturday in August, at this moment. */
export async function kitchenAt(name: MomentName, altitudeFt = 6200): Promise<Session> {
  const { recipes, script } = MOMENTS[name];
  const read = readScript(script);
  if (!read.ok) throw new Error(read.message);
  const startMs = Date.parse("2027-08-14T08:00:00-06:00");
  const rehearsal = new Rehearsal({
    library: theLibrary(),
    recipes: [...recipes],
    begin: {},
    startMs,
    zone: "America/Denver",
    setUp: [{ type: "kitchen-set", altitudeFt, t: startMs }],
    script: read.lines,
    demoAltitudeFt: 6200,
    version: "0.0.0",
  });
  const { kitchen, trouble } = await rehearsal.play();
  if (trouble) throw new Error(`${name}: ${trouble}`);
  return kitchen.session;
}
