/**
 * The stages every load goes through in a canner, by method. They are the same for every recipe,
 * so recipes do not repeat them; what differs (time, pressure, cover, water) is in the terms.
 */

import { CAUTIONS } from "../../recipe/cautions.ts";
import type { ProcessTerms, Recipe, Stage } from "../../recipe/recipe.ts";
import { countWords, inchesWords } from "../../reckon/number-words.ts";
import {
  CANNER_WARM_UP_MINUTES,
  COME_UP_MINUTES,
  COOLING_APART_IN,
  COVER_IN,
  HOT_CANNER_MINUTES,
  LID_WAIT_MINUTES,
  LOAD_MINUTES,
  LOW_TEMPERATURE_F,
  PRESSURE_WATER_IN,
  SETTLE_MINUTES,
  TO_PRESSURE_MINUTES,
  TO_ZERO_MINUTES,
  UNLOAD_MINUTES,
  VENT_MINUTES,
} from "../../reckon/trade-numbers.ts";
import type { GaugeRecord } from "../facts/fields.ts";
import { depressurize } from "../stages/depressurize.ts";
import { handsOn } from "../stages/hands-on.ts";
import { heat } from "../stages/heat.ts";
import { rulesOf } from "../stages/kinds.ts";
import { process } from "../stages/process.ts";
import { rest } from "../stages/rest.ts";
import type { StageRules } from "../stages/rules.ts";
import { vent } from "../stages/vent.ts";

function cautions(...ids: string[]): string[] {
  return ids.flatMap((id) => CAUTIONS[id] ?? []);
}

const APART = inchesWords(COOLING_APART_IN);

type Given = Pick<Stage, "say" | "typicalMinutes"> & Partial<Stage>;

/** A stage with what is usual for its kind, and what is given here. */
function stage({ kind, usual }: StageRules, given: Given): Stage {
  return {
    id: given.step ?? kind,
    kind,
    title: usual.title ?? kind,
    after: [],
    start: "auto",
    asks: [],
    cautions: [],
    uses: [],
    attended: usual.attended,
    ...given,
  };
}

function warmUp(terms: ProcessTerms, hot: boolean): Stage {
  const kettle = "Heat a kettle and the jars too.";
  const deep = `${PRESSURE_WATER_IN.min} to ${PRESSURE_WATER_IN.max}`;
  const cold = {
    "boiling-water": "Fill the canner half and light it.",
    "low-temperature": "Fill the canner half full of warm water and light it.",
    steam: "Fill the base of the steam canner to its line and light it.",
    pressure: `Put ${deep} inches of water in the canner and light it.`,
  }[terms.method];
  const water = hot ? "Top up and light the canner." : cold;
  const wanted =
    terms.method === "steam"
      ? "Say canner's ready then."
      : `Tell me at ${terms.waterStartF} degrees.`;
  return stage(heat, {
    step: "canner",
    title: "canner warming",
    say: `${water} ${kettle} ${wanted}`,
    short: hot ? water : `${water} ${wanted}`,
    typicalMinutes: hot ? HOT_CANNER_MINUTES : CANNER_WARM_UP_MINUTES,
    heat: { until: { temperatureF: terms.waterStartF }, holdMinutes: 0 },
    pot: "canner",
    uses: ["burner"],
  });
}

function loading(terms: ProcessTerms): Stage {
  const inches = inchesWords(terms.coverIn);
  const over = {
    "boiling-water": `Hot water at least ${inches} over the lids, lid on, heat high.`,
    "low-temperature": `Hot water at least ${COVER_IN.least} inch over the lids.`,
    steam: "Set the dome on and turn the heat up.",
    pressure: "Lock the lid, leave the vent open, heat high.",
  }[terms.method];
  return stage(handsOn, {
    step: "load",
    title: "load the canner",
    say: `Lower the jars in. ${over} Say the jars are in.`,
    short: terms.coverIn ? `Jars in, ${inches} under water.` : "Jars in, lid on.",
    typicalMinutes: LOAD_MINUTES,
    cautions: cautions("lifter"),
  });
}

function comeUp(terms: ProcessTerms): Stage {
  const warm = LOW_TEMPERATURE_F.min;
  const say = {
    "boiling-water": "Say when it is at a full boil with the lids covered.",
    "low-temperature": `Bring the water to ${warm} degrees, and tell me the temperature.`,
    steam:
      "Heat until a full column of steam comes out, then tell me, and tell me its temperature.",
    pressure: "Heat until steam pours out of the open vent, then tell me it is venting.",
  }[terms.method];
  return stage(heat, {
    step: "come-up",
    title: "come-up",
    say,
    short:
      terms.method === "boiling-water"
        ? "Full boil next, lids covered."
        : "Bring it up, and tell me.",
    typicalMinutes: COME_UP_MINUTES,
    heat: { until: "boil", holdMinutes: 0 },
    pot: "canner",
    uses: ["burner"],
  });
}

/**
 * What a gauge must show for a tested pressure, psi: an error of the dial that reads high is added.
 */
export function gaugeTarget(pressurePsi: number, gauge: GaugeRecord | null): number {
  const high = gauge?.kind === "dial" ? (gauge.readsHighPsi ?? 0) : 0;
  return pressurePsi + Math.max(0, high);
}

function pressureStages(terms: ProcessTerms, gauge: GaugeRecord | null): Stage[] {
  const target = `${gaugeTarget(terms.pressurePsi ?? 0, gauge)} pounds`;
  const sign =
    terms.gauge === "weighted"
      ? `Put the ${terms.pressurePsi} pound weight on. Tell me when it rocks as its maker says.`
      : `Close the vent. Tell me the pressure when the dial shows ${target}.`;
  return [
    stage(vent, {
      say: `Venting. Steam must pour out steadily for ${VENT_MINUTES} minutes.`,
      short: `Venting: ${VENT_MINUTES} minutes of steady steam.`,
      typicalMinutes: VENT_MINUTES,
      uses: ["burner"],
    }),
    stage(heat, {
      step: "pressurize",
      title: "coming to pressure",
      say: sign,
      short: sign,
      typicalMinutes: TO_PRESSURE_MINUTES,
      heat: { until: "boil", holdMinutes: 0 },
      pot: "canner",
      uses: ["burner"],
    }),
  ];
}

function processing(terms: ProcessTerms): Stage {
  return stage(process, {
    say: "",
    typicalMinutes: terms.minutes,
    uses: ["burner"],
  });
}

function afterwards(terms: ProcessTerms): Stage[] {
  const lift = stage(handsOn, {
    step: "unload",
    title: "lift the jars out",
    say: `Straight up, ${APART} apart, out of drafts. Say the jars are out.`,
    short: "",
    typicalMinutes: UNLOAD_MINUTES,
    cautions: cautions("hot-lids"),
  });
  if (terms.method === "pressure") {
    return [
      stage(handsOn, {
        step: "heat-off",
        title: "heat off",
        say: "Turn the heat off and leave the canner alone. Say heat's off.",
        short: "Heat off, and leave it alone.",
        typicalMinutes: 0,
      }),
      stage(depressurize, {
        say: "Let it come to zero by itself; never cool it with water. Say pressure is zero.",
        short: "To zero by itself. Say pressure is zero.",
        typicalMinutes: TO_ZERO_MINUTES,
        window: { minMinutes: LID_WAIT_MINUTES, maxMinutes: LID_WAIT_MINUTES },
        cautions: cautions("forcing"),
      }),
      lift,
    ];
  }
  const off =
    terms.method === "steam"
      ? "Turn the heat off and leave the dome on. Say heat's off."
      : "Heat off, and the lid off, away from you. Say heat's off.";
  return [
    stage(handsOn, {
      step: "heat-off",
      title: "heat off",
      say: off,
      short: terms.method === "steam" ? "Heat off, the dome stays on." : "Heat off, lid off.",
      typicalMinutes: 0,
    }),
    stage(rest, {
      step: "settle",
      title: `${countWords(SETTLE_MINUTES, "minute")}' wait`,
      say: `Wait ${SETTLE_MINUTES} minutes.`,
      short: `Wait ${SETTLE_MINUTES} minutes.`,
      typicalMinutes: SETTLE_MINUTES,
      window: { minMinutes: SETTLE_MINUTES, maxMinutes: SETTLE_MINUTES },
    }),
    lift,
  ];
}

/**
 * The stages of one load from lighting the canner to the seal check, in order.
 * @param hot true where the canner has just been unloaded.
 */
export function cannerStages(
  terms: ProcessTerms,
  recipe: Recipe,
  gauge: GaugeRecord | null,
  hot: boolean,
): Stage[] {
  const withJarsOut = recipe.stages.filter((one) => rulesOf(one).ofCanner === "after");
  return [
    warmUp(terms, hot),
    loading(terms),
    comeUp(terms),
    ...(terms.method === "pressure" ? pressureStages(terms, gauge) : []),
    processing(terms),
    ...afterwards(terms),
    ...withJarsOut,
  ];
}
