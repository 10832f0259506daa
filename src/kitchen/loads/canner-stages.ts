/**
 * The stages every load goes through in a canner, by method. They are the same for every recipe,
 * so recipes do not repeat them; what differs (time, pressure, cover, water) is in the terms.
 *
 * Sources: USDA Complete Guide to Home Canning, Guide 1 (water depth and temperature, venting,
 * full boil, five minutes' wait, cooling); the ten minutes before a pressure canner's lid is
 * opened is from memory of current national-center wording (the 1994 guide says two; the longer
 * is kept).
 */
import type { ProcessTerms, Recipe, Stage, StageKind } from "../../recipe/recipe.ts";
import type { GaugeRecord } from "../events.ts";

export const VENT_MINUTES = 10;
export const LID_WAIT_MINUTES = 10;
export const SETTLE_MINUTES = 5;
export const CANNER_WARM_UP_MINUTES = 60;
/** A canner that was unloaded this short a time ago is still hot, and how long it takes then. */
export const STILL_HOT_MINUTES = 60;
export const HOT_CANNER_MINUTES = 10;
/** Low-temperature pasteurization, degrees Fahrenheit, and how often it is read (our choice). */
export const LOW_TEMPERATURE_F = { min: 180, max: 185 };
export const LOW_TEMPERATURE_READ_MINUTES = 5;

type Given = Pick<Stage, "id" | "title" | "say" | "typicalMinutes"> & Partial<Stage>;

function stage(kind: StageKind, given: Given): Stage {
  return {
    kind,
    after: [],
    start: "auto",
    asks: [],
    cautions: [],
    uses: [],
    attended: kind === "hands-on" || kind === "seal-check",
    ...given,
  };
}

function warmUp(terms: ProcessTerms, hot: boolean): Stage {
  const kettle = "Put a kettle on beside it and keep the jars hot.";
  const cold = {
    "boiling-water": "Fill the canner about half with water and light it.",
    "low-temperature": "Fill the canner half full of warm water and light it.",
    steam: "Fill the base of the steam canner to its line and light it.",
    pressure: "Put 2 to 3 inches of water in the canner and light it.",
  }[terms.method];
  const water = hot ? "The canner is still hot: top it up and light it again." : cold;
  const wanted =
    terms.method === "steam"
      ? ""
      : ` It should be at ${terms.waterStartF} degrees for ${terms.pack} packs.`;
  return stage("heat", {
    id: "canner",
    title: "canner warming",
    say: `${water} ${kettle}${wanted} Say canner's ready when it is.`,
    typicalMinutes: hot ? HOT_CANNER_MINUTES : CANNER_WARM_UP_MINUTES,
    heat: { until: { temperatureF: terms.waterStartF }, holdMinutes: 0 },
    pot: "canner",
    uses: ["burner"],
  });
}

function loading(terms: ProcessTerms): Stage {
  const inches = `${terms.coverIn} ${terms.coverIn > 1 ? "inches" : "inch"}`;
  const over = {
    "boiling-water": `Hot water at least ${inches} over the lids, lid on, heat high.`,
    "low-temperature": "Hot water at least 1 inch over the lids.",
    steam: "Set the dome on and turn the heat up.",
    pressure: "Lock the lid, leave the vent open, heat high.",
  }[terms.method];
  return stage("hands-on", {
    id: "load",
    title: "load the canner",
    say: `Bands fingertip tight. Lower the jars in. ${over} Say the jars are in.`,
    typicalMinutes: 5,
    cautions: ["Hot jars and hot liquid: use the lifter, and keep your face clear of the steam."],
  });
}

function comeUp(terms: ProcessTerms): Stage {
  const say = {
    "boiling-water":
      "Bring it to a full boil. Tell me when it boils, and that the lids are covered.",
    "low-temperature": "Bring the water to 180 degrees, and tell me the temperature.",
    steam:
      "Heat until a full column of steam comes out, then tell me, and tell me its temperature.",
    pressure: "Heat until steam pours out of the open vent, then tell me it is venting.",
  }[terms.method];
  return stage("heat", {
    id: "come-up",
    title: "come-up",
    say,
    typicalMinutes: 20,
    heat: { until: "boil", holdMinutes: 0 },
    pot: "canner",
    uses: ["burner"],
  });
}

/** What a gauge must show for a tested pressure: what a dial reads too high comes on top, psi. */
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
    stage("vent", {
      id: "vent",
      title: "vent",
      say: `Venting. Steam must pour out steadily for ${VENT_MINUTES} minutes.`,
      typicalMinutes: VENT_MINUTES,
      uses: ["burner"],
    }),
    stage("heat", {
      id: "pressurize",
      title: "coming to pressure",
      say: sign,
      typicalMinutes: 5,
      heat: { until: "boil", holdMinutes: 0 },
      pot: "canner",
      uses: ["burner"],
    }),
  ];
}

function processing(terms: ProcessTerms): Stage {
  return stage("process", {
    id: "process",
    title: "process",
    say: "",
    typicalMinutes: terms.minutes,
    uses: ["burner"],
  });
}

function afterwards(terms: ProcessTerms): Stage[] {
  const lift = stage("hands-on", {
    id: "unload",
    title: "lift the jars out",
    say:
      "Lift the jars straight up and stand them an inch apart, out of drafts. " +
      "Leave the bands alone. Say the jars are out.",
    typicalMinutes: 5,
    cautions: ["Do not press the lids and do not retighten the bands while they are hot."],
  });
  if (terms.method === "pressure") {
    return [
      stage("hands-on", {
        id: "heat-off",
        title: "heat off",
        say: "Turn the heat off and leave the canner alone. Say heat's off.",
        typicalMinutes: 0,
      }),
      stage("depressurize", {
        id: "depressurize",
        title: "to zero",
        say: "Let it come to zero by itself; never cool it with water. Say pressure is zero.",
        typicalMinutes: 45,
        window: { minMinutes: LID_WAIT_MINUTES, maxMinutes: LID_WAIT_MINUTES },
        cautions: ["Never force a canner open or cool it to hurry it. Lift the lid away from you."],
      }),
      lift,
    ];
  }
  const off =
    terms.method === "steam"
      ? "Turn the heat off and leave the dome on. Say heat's off."
      : "Turn the heat off and take the lid off, away from you. Say heat's off.";
  return [
    stage("hands-on", { id: "heat-off", title: "heat off", say: off, typicalMinutes: 0 }),
    stage("rest", {
      id: "settle",
      title: "five minutes' wait",
      say: `Wait ${SETTLE_MINUTES} minutes before you lift the jars.`,
      typicalMinutes: SETTLE_MINUTES,
      window: { minMinutes: SETTLE_MINUTES, maxMinutes: SETTLE_MINUTES },
    }),
    lift,
  ];
}

const COOL: Stage = stage("cool", {
  id: "cool",
  title: "cool",
  say: "Leave the jars undisturbed for 12 to 24 hours.",
  typicalMinutes: 14 * 60,
  window: { minMinutes: 12 * 60, maxMinutes: 24 * 60 },
});

const SEAL_CHECK: Stage = stage("seal-check", {
  id: "seal-check",
  title: "seal check",
  say: "Take the bands off and press each lid in the middle. Which jars did not seal?",
  typicalMinutes: 10,
});

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
  const own = (kind: StageKind, standard: Stage): Stage =>
    recipe.stages.find((one) => one.kind === kind) ?? standard;
  return [
    warmUp(terms, hot),
    loading(terms),
    comeUp(terms),
    ...(terms.method === "pressure" ? pressureStages(terms, gauge) : []),
    processing(terms),
    ...afterwards(terms),
    own("cool", COOL),
    own("seal-check", SEAL_CHECK),
  ];
}

/** Kinds a recipe may list but the canner's load performs. */
export const LOAD_KINDS: ReadonlySet<StageKind> = new Set([
  "vent",
  "process",
  "depressurize",
  "cool",
  "seal-check",
]);
