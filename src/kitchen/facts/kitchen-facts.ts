/** Facts about the kitchen as a place: its altitude, its canners and their gauges, its day. */

import * as z from "zod/mini";
import { processTerms } from "../../recipe/recipe-shape.ts";
import { agreeTo } from "../day/course.ts";
import type { SetUpTopic } from "../questions/set-up-topic.ts";
import type { State } from "../state.ts";
import { fact } from "./fact.ts";
import {
  altitudeDoubt,
  canner,
  count,
  feet,
  flag,
  gauge,
  guideAnswer,
  instant,
  loadId,
  ownerId,
  plannedItem,
  plannedStep,
  quietHours,
  setUpTopic,
  text,
  uncertaintyFt,
  word,
} from "./fields.ts";

/** It need not be asked any more. */
function settle(state: State, topic: SetUpTopic): void {
  state.setUp = state.setUp.filter((one) => one.topic !== topic);
}

export const KITCHEN_FACTS = {
  "kitchen-set": fact({
    fields: {
      altitudeFt: z.optional(feet),
      /** How far the altitude may be off, feet; where this is missing, it is taken as exact. */
      altitudeUncertaintyFt: z.optional(uncertaintyFt),
      canners: z.optional(z.array(canner)),
      burners: z.optional(count),
      units: z.optional(z.enum(["us", "metric"])),
      quiet: z.optional(z.nullable(quietHours)),
      /** Until then it is not night, whatever the quiet hours say. */
      awakeUntil: z.optional(instant),
      /** Prompts are whole the first time of a day, or always short. */
      talk: z.optional(z.enum(["whole", "short"])),
    },
    follows: "nothing",
    undone: (_, { altitudeFt, talk, quiet, awakeUntil }) => {
      if (altitudeFt !== undefined) return "the altitude";
      if (talk !== undefined) return "the setting for how much I say";
      const night = quiet !== undefined || awakeUntil !== undefined;
      return night ? "the quiet hours" : "the kitchen's setting";
    },
    evolve(state, event): boolean {
      if (event.altitudeFt !== undefined) {
        state.kitchen.altitudeFt = event.altitudeFt;
        state.kitchen.altitudeUncertaintyFt = event.altitudeUncertaintyFt ?? 0;
        for (const doubt of state.doubts) doubt.settledFt ??= event.altitudeFt;
      }
      if (event.canners) state.kitchen.canners = structuredClone(event.canners);
      if (event.burners !== undefined) state.kitchen.burners = event.burners;
      if (event.units) state.kitchen.units = event.units;
      if (event.quiet !== undefined) state.kitchen.quiet = event.quiet;
      if (event.awakeUntil !== undefined) state.kitchen.awakeUntil = event.awakeUntil;
      if (event.talk !== undefined) state.kitchen.talk = event.talk;
      if (event.altitudeFt !== undefined) settle(state, "altitude");
      if (event.canners) settle(state, "canner");
      if (event.canners?.some(({ gauge }) => gauge)) settle(state, "gauge");
      if (event.units) settle(state, "units");
      return true;
    },
  }),
  /** Whether a name that is also another food's is a variety of this one: "Yellow Pear". */
  "name-settled": fact({
    fields: { food: text, name: text, isVariety: flag },
    follows: "nothing",
    passing: true,
    undone: (_, { name }) => `what ${name} is`,
    evolve(state, event): boolean {
      const { food, name, isVariety } = event;
      state.nameAnswers.push({ food, name, isVariety });
      return true;
    },
  }),
  /** A time from memory was compared with the person's own guide; `assumed` in a rehearsal. */
  "guide-compared": fact({
    fields: { row: guideAnswer, assumed: z.optional(flag) },
    follows: "nothing",
    passing: true,
    undone: () => "what your guide says",
    evolve(state, event): boolean {
      state.guides.push({ ...event.row });
      return true;
    },
  }),
  "gauge-set": fact({
    fields: { canner: word, gauge },
    follows: "stages",
    evolve(state, event): boolean {
      const canner = state.kitchen.canners.find((one) => one.id === event.canner);
      if (!canner) return false;
      canner.gauge = { ...event.gauge };
      settle(state, "gauge");
      return true;
    },
  }),
  /** A first opening asks about it, or it was answered, or left for later. */
  "set-up": fact({
    fields: {
      topic: setUpTopic,
      became: z.enum(["open", "left", "answered"]),
      yes: z.optional(flag),
    },
    follows: "nothing",
    undone: (_, { topic }) => `what was said of the ${topic}`,
    evolve(state, { topic, became }): boolean {
      settle(state, topic);
      if (became !== "answered") state.setUp.push({ topic, left: became === "left" });
      return true;
    },
  }),
  "altitude-doubt": fact({
    fields: {
      owner: z.nullable(ownerId),
      detail: text,
      why: z.optional(altitudeDoubt),
      /**
       * The terms that a load finished long ago would have needed, had the kitchen been that high
       * then.
       */
      terms: z.optional(processTerms),
    },
    follows: "stages",
    evolve(state, event): boolean {
      const { owner, detail, why, terms } = event;
      const atFt = state.kitchen.altitudeFt;
      const doubt = { at: event.t, detail, owner, atFt };
      state.doubts.push({ ...doubt, ...(why ? { why } : {}), ...(terms ? { terms } : {}) });
      return true;
    },
  }),
  "altitude-then": fact({
    fields: { load: loadId, held: flag },
    follows: "nothing",
    evolve(state, event): boolean {
      const open = state.doubts.filter(
        (one) => one.owner === event.load && one.why === "then" && one.settledFt === undefined,
      );
      for (const doubt of open) doubt.settledFt = doubt.atFt ?? 0;
      return open.length > 0;
    },
  }),
  "day-planned": fact({
    fields: {
      items: z.array(plannedItem),
      agreedAt: instant,
      finishAt: instant,
      finishBy: z.nullable(instant),
      quiet: z.nullable(quietHours),
      /** Where a person agreed to it: every step. What is only planned again has none. */
      steps: z.optional(z.array(plannedStep)),
    },
    follows: "nothing",
    evolve(state, event): boolean {
      const { agreedAt, finishAt, finishBy, quiet } = event;
      const items = event.items.map((item) => ({ ...item }));
      const steps = event.steps ?? state.dayPlan?.steps ?? [];
      state.dayPlan = { items, agreedAt, finishAt, finishBy, quiet, steps };
      if (event.steps) state.course = event.steps;
      for (const { batch } of event.steps ?? []) agreeTo(state, batch, batch);
      return true;
    },
  }),
  "day-plan-dropped": fact({
    fields: {},
    follows: "nothing",
    evolve(state): boolean {
      if (!state.dayPlan) return false;
      state.dayPlan = null;
      return true;
    },
  }),
};
