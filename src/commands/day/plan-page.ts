/** A plan as one page for the wall, with a box to tick for each row. */
import type { KitchenPlan, PlanRequest } from "../../plan/plan-request.ts";
import { wallRows } from "../../plan/wall-rows.ts";
import { html, table } from "../../review/pages/html.ts";
import { page } from "../../review/pages/page.ts";
import { clock, jarsOf, span } from "./plan-text.ts";

const HEADS = ["Done", "Time", "What", "Where", "Hands", "Takes"];

export function planPage(request: PlanRequest, plan: KitchenPlan, notes: string[]): string {
  const { startMs, zone } = request;
  const day = new Intl.DateTimeFormat("en-US", { dateStyle: "full", timeZone: zone });
  const title = `The plan for ${day.format(startMs)}`;
  const at = (ms: number) => clock(ms, startMs, zone).trim();
  const rows = wallRows(request, plan).map((row) => {
    const batch = request.batches.find(({ id }) => id === row.batch);
    const load = row.load === undefined ? "" : `, load ${row.load}`;
    const look = row.lookMinutes === null ? "" : `; look every ${row.lookMinutes} min`;
    const jars = row.minutes === null ? "" : jarsOf(batch, row.task);
    return [
      "\u2610",
      at(row.ms),
      `${row.label}: ${row.what}${load}${jars}`,
      row.where.join(", "),
      row.handsMinutes > 0 ? `${row.handsMinutes} min` : "",
      row.minutes === null ? "" : `${span(row.minutes)}${look}`,
    ];
  });
  const said = [...plan.why, ...notes].map((why) => html`<li>${why}</li>\n`);
  const body = html`<h1>${title}</h1>
<p>From ${at(startMs)} to ${at(plan.finishMs)}: ${span(plan.minutes)}.</p>
${table("What to do, by time", HEADS, rows)}
<ul>
${said}</ul>
`;
  return page(title, body);
}
