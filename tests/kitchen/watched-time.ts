import type { KitchenEvent } from "../../src/kitchen/events.ts";

/**
 * Worked out from the journal alone, in a different way from the program's: whether a load's
 * process had its whole time unbroken, watched or vouched for.
 */
export function hadItsTime(history: readonly KitchenEvent[], load: string, minutes: number) {
  const withdrawn = new Set(
    history.flatMap((event) => (event.type === "withdrawn" ? [event.target] : [])),
  );
  const moved = new Map<string, number>();
  for (const event of history) {
    if (event.type === "amended" && !withdrawn.has(event.cmd)) moved.set(event.target, event.t);
  }
  const lived = history
    .filter((event) => !withdrawn.has(event.cmd))
    .map((event) => ({ ...event, t: moved.get(event.cmd) ?? event.t }) as KitchenEvent);
  const signs = lived.filter((event) => isSign(event, load)).map((event) => event.t);
  const losses = lived.filter((event) => isLoss(event, load)).map((event) => event.t);
  const gaps = lived.flatMap((event) => {
    if (event.type !== "gap") return [];
    const yes = lived.some((one) => {
      return one.type === "vouched" && one.load === load && one.held && one.w >= event.w;
    });
    return yes ? [] : [{ from: event.from, to: event.to }];
  });
  return signs.some((from) => {
    const to = from + minutes * 60_000;
    if (losses.some((at) => at > from && at < to)) return false;
    const inside = gaps.map((gap) => Math.min(gap.to, to) - Math.max(gap.from, from));
    return inside.filter((ms) => ms > 0).reduce((sum, ms) => sum + ms, 0) <= 30_000;
  });
}

function isSign(event: KitchenEvent, load: string): boolean {
  if (event.type === "boil") return event.owner === load && event.stage === "process";
  if (event.type === "pressure") return event.load === load && event.psi > 0;
  if (event.type === "temperature") return event.owner === load && event.temperatureF >= 180;
  return event.type === "rocking" && event.load === load;
}

function isLoss(event: KitchenEvent, load: string): boolean {
  if (event.type === "boil-lost") return event.owner === load && event.stage === "process";
  if (event.type === "cover") return event.load === load && !event.covered;
  return event.type === "pressure-lost" && event.load === load;
}
