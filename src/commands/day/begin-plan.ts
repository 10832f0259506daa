/** `brinebell plan … --begin`: the open kitchen, or the next one opened, keeps to it. */
import { commandOf } from "../../kitchen/command.ts";
import type { LotToPlan } from "../../kitchen/day/wanted.ts";
import { localIso } from "../../kitchen/time.ts";
import { type Wanted, wantedLabel } from "../../plan/wanted-batch.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { type ReviewIo, withNotices } from "../record/review-io.ts";
import { recordOrTell } from "./record-or-tell.ts";

export type BeginWish = {
  wanted: readonly Wanted[];
  /** Epoch milliseconds. */
  startMs?: number;
  finishByMs?: number;
  /** `22:00-06:00`. */
  quiet?: string;
  zone: string;
};

/** Writes the plan down, or passes it to the kitchen that is open. */
export async function beginPlan(
  wish: BeginWish,
  io: ReviewIo,
  json: boolean,
): Promise<CommandResult> {
  const { wanted, startMs, finishByMs, quiet, zone } = wish;
  const items = wanted.map(({ recipe, variety, weightLb }): LotToPlan => {
    return { recipe: recipe.id, weightLb, ...(variety ? { variety } : {}) };
  });
  const slots = {
    items,
    go: true as const,
    ...(startMs === undefined ? {} : { startAt: localIso(startMs, zone) }),
    ...(finishByMs === undefined ? {} : { finishBy: localIso(finishByMs, zone) }),
    ...(quiet === undefined ? {} : { quiet }),
  };
  const lots = wanted.map(({ recipe, variety, weightLb }) => {
    return `${weightLb} pounds of ${wantedLabel(recipe, variety)}`;
  });
  const words = `plan and begin ${lots.join(", ")}`;
  const done = await recordOrTell("plan", io, commandOf("plan", slots), words);
  if (!done.ok) return done.result;
  const { lines, found } = done;
  const text = json ? JSON.stringify({ begun: true, lines }, null, 2) : lines.join("\n");
  return withNotices({ code: 0, stdout: `${text}\n`, stderr: "" }, "plan", found);
}

/** Refuses options that a plan to be begun cannot have: it has to take the kitchen as it is. */
export function oddWithBegin(asked: readonly string[]): CommandResult | undefined {
  const [odd] = asked;
  if (odd === undefined) return undefined;
  return failed(
    2,
    `plan: --begin plans for the kitchen as it is, without --${odd}; set it with brinebell kitchen`,
  );
}
