/** `brinebell kitchen`: shows and sets altitude, canners, gauge, burners and units. */

import type { Canner, DatedFact } from "../../kitchen/events.ts";
import type { State } from "../../kitchen/state.ts";
import { localFields } from "../../kitchen/time.ts";
import { wordsIn } from "../../reckon/metric-words.ts";
import { parseQuantity } from "../../reckon/quantity.ts";
import { nightOf, nightText } from "../../reckon/quiet-hours.ts";
import { KPA_PER_PSI } from "../../reckon/units.ts";
import { readKitchen } from "../../session/reading/read-kitchen.ts";
import { inShortSession } from "../../session/short-session.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { parseCannerHolds, readKitchenOptions } from "../call/kitchen-options.ts";
import { isOn, type Options, optionValue, optionValues, parseOptions } from "../call/options.ts";
import type { Machine } from "../machine.ts";
import { needsKitchen } from "../needs-kitchen.ts";
import { withNotices } from "../record/review-io.ts";

const MOST_BURNERS = 12;

export async function kitchenCommand(args: string[], machine: Machine): Promise<CommandResult> {
  const parsed = parseOptions(args, CALLS.kitchen.options);
  if (!parsed.ok) return failed(2, `kitchen: ${parsed.error}`);
  const options = parsed.value;
  const shared = readKitchenOptions(options);
  if (!shared.ok) return failed(2, `kitchen: ${shared.error}`);
  const asked = Object.keys(CALLS.kitchen.options).filter(
    (name) => name !== "json" && isOn(options, name),
  );
  if (asked.length === 0) return needsKitchen("kitchen", machine) ?? show(options, machine);
  const library = await machine.library();
  const done = inShortSession(machine.folder, library, machine.version, (session, { told }) => {
    const facts = changes(options, session.state, shared.value.altitudeFt);
    if (typeof facts === "string") return { message: facts, told };
    if (facts.length > 0) session.setDown(facts);
    return { kitchen: session.state.kitchen, told };
  });
  if (!done.ok) {
    const mend = done.why === "held" ? "; close that kitchen, or tell it the altitude" : "";
    return failed(done.why === "held" ? 1 : 3, `kitchen: ${done.message}${mend}`);
  }
  const { kitchen, message, told } = done.value;
  const due = told.map((one) => `brinebell kitchen: ${one.text}\n`).join("");
  const result = kitchen ? shown(options, kitchen) : failed(2, `kitchen: ${message}`);
  return withNotices({ ...result, stderr: `${due}${result.stderr}` }, "kitchen", done);
}

/** Showing it writes nothing. */
function show(options: Options, { folder, build }: Machine): CommandResult {
  const kitchen = readKitchen(folder, { build });
  if (kitchen.unreadable !== undefined) return failed(3, `kitchen: ${kitchen.unreadable}`);
  return withNotices(shown(options, kitchen.state.kitchen), "kitchen", kitchen);
}

function shown(options: Options, kitchen: State["kitchen"]): CommandResult {
  const stdout = isOn(options, "json") ? `${JSON.stringify(kitchen, null, 2)}\n` : text(kitchen);
  return { code: 0, stdout, stderr: "" };
}

/** What the options ask to change, or one line saying which of them is wrong. */
function changes(
  options: Options,
  state: State,
  altitudeFt: number | undefined,
): DatedFact[] | string {
  const set: Extract<DatedFact, { type: "kitchen-set" }> = { type: "kitchen-set", t: 0 };
  if (altitudeFt !== undefined) set.altitudeFt = Math.round(altitudeFt);
  const burners = optionValue(options, "burners");
  if (burners !== undefined) {
    const count = Number(burners);
    if (!Number.isInteger(count) || count < 1 || count > MOST_BURNERS) {
      return `--burners: ${JSON.stringify(burners)} is not a count; write 1 to ${MOST_BURNERS}`;
    }
    set.burners = count;
  }
  const units = optionValue(options, "units");
  if (units !== undefined) {
    if (units !== "us" && units !== "metric") return "--units: write us or metric";
    set.units = units;
  }
  const night = optionValue(options, "quiet");
  if (night !== undefined) {
    const quiet = nightOf(night);
    if (quiet === undefined) return "--quiet: write hours such as 22:00-06:00, or none";
    set.quiet = quiet;
  }
  const talk = optionValue(options, "talk");
  if (talk !== undefined) {
    if (talk !== "whole" && talk !== "short") return "--talk: write whole or short";
    set.talk = talk;
  }
  const canners = cannersOf(options, state);
  if (typeof canners === "string") return canners;
  if (canners) set.canners = canners;
  return Object.keys(set).length > 2 ? [set] : [];
}

/** The canners, with what they hold and their gauges, where any option is about them. */
function cannersOf(options: Options, state: State): Canner[] | string | undefined {
  const named = optionValues(options, "canner");
  const holds = optionValue(options, "canner-holds");
  const gauge = optionValue(options, "gauge");
  const high = optionValue(options, "reads-high");
  const untested = isOn(options, "untested");
  if (named.length === 0 && !holds && !gauge && !high && !untested) return undefined;
  const canners = structuredClone(state.kitchen.canners);
  if (named.length > 0) canners.splice(0, canners.length);
  for (const entry of named) {
    const [name = "", held = ""] = entry.split("=");
    const read = holdsFrom(held);
    if (typeof read === "string" || name.trim() === "") {
      return `--canner: write a name and what it holds, such as big=9pint,7quart`;
    }
    canners.push({ id: name.trim(), name: name.trim(), holds: read });
  }
  const [first] = canners;
  if (!first) return "--canner: name at least one canner";
  if (holds) {
    const read = holdsFrom(holds);
    if (typeof read === "string") return read;
    first.holds = read;
  }
  if (gauge === "weighted") first.gauge = { kind: "weighted" };
  if (gauge === "dial") first.gauge = { kind: "dial" };
  const season = localFields(state.lastW, state.zone).year;
  if (untested) first.gauge = { kind: "dial", untestedSeason: season };
  if (high) {
    const read = parseQuantity(high, ["pressure"], "--reads-high");
    if (!read.ok) return read.error;
    const readsHighPsi = Math.round((read.value.value / KPA_PER_PSI) * 100) / 100;
    first.gauge = { kind: "dial", testedSeason: season, readsHighPsi };
  }
  return canners;
}

function holdsFrom(text: string): Canner["holds"] | string {
  const read = parseCannerHolds(text);
  if (!read.ok) return read.error;
  const { any, ...sizes } = read.value;
  return any === undefined ? sizes : { pint: any, quart: any, ...sizes };
}

function text(kitchen: State["kitchen"]): string {
  const { altitudeFt, altitudeUncertaintyFt: off } = kitchen;
  const known = `${altitudeFt} ft${off > 0 ? `, give or take ${off}` : ""}`;
  const lines = [
    `altitude  ${altitudeFt === null ? "not known yet: --altitude 6200ft" : known}`,
    `burners   ${kitchen.burners}`,
    `units     ${kitchen.units}`,
    `quiet     ${nightText(kitchen.quiet)}`,
    `talk      ${kitchen.talk}`,
  ];
  for (const canner of kitchen.canners) {
    const holds = Object.entries(canner.holds).map(([size, count]) => `${count} ${size}s`);
    lines.push(`canner    ${canner.name}: ${holds.join(" or ")}${gaugeText(canner)}`);
  }
  return lines.map((line) => `${wordsIn(kitchen.units, line)}\n`).join("");
}

function gaugeText({ gauge }: Canner): string {
  if (!gauge) return "; gauge not known yet: --gauge dial or weighted";
  if (gauge.kind === "weighted") return "; weighted gauge";
  if (gauge.untestedSeason !== undefined)
    return `; dial gauge, not tested in ${gauge.untestedSeason}`;
  if (gauge.readsHighPsi === undefined) return "; dial gauge, test not known";
  const off = gauge.readsHighPsi === 0 ? "true" : `${gauge.readsHighPsi} psi high`;
  return `; dial gauge, reads ${off} (tested ${gauge.testedSeason})`;
}
