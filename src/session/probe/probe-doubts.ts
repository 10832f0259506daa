/** The question asked where a person reports what a probe clearly does not show. */
import type { DatedFact } from "../../kitchen/events.ts";
import { gaugeTargetPsi } from "../../kitchen/loads/gauge-target.ts";
import { isLoad, type Owner, ownerOf, runOfRole } from "../../kitchen/owners.ts";
import type { Load, State } from "../../kitchen/state.ts";
import { unanswered } from "../../kitchen/unbroken-time.ts";
import { boilingPointF, leastBoilF } from "../../reckon/boiling.ts";
import {
  boilDoubtSentence,
  gapDoubt,
  pressureDoubtSentence,
  probeValue,
} from "../../speech/probe-sentences.ts";
import { type Channel, freshValue, leastValue } from "./probe-channel.ts";
import { ruleFor } from "./probe-subject.ts";

/** The altitude an owner was begun with, or the kitchen's, feet. */
export function ownerAltitude(state: State, owner: Owner): number {
  const own = isLoad(owner) ? owner.terms?.altitudeFt : undefined;
  return own ?? state.kitchen.altitudeFt ?? 0;
}

type Seen = { state: State; channels: readonly Channel[]; now: number };

function channelOf({ channels }: Seen, owner: string, kind: Channel["kind"]): Channel | undefined {
  return channels.find((one) => one.kind === kind && one.subject?.startsWith(`${owner}/`));
}

/** What speaks against facts that a person reports, as a question; undefined where nothing does. */
export function doubtOf(
  state: State,
  channels: readonly Channel[],
  facts: readonly DatedFact[],
  now: number,
): string | undefined {
  const seen = { state, channels, now };
  for (const fact of facts) {
    const doubt = doubtOfOne(seen, fact);
    if (doubt !== undefined) return doubt;
  }
  return undefined;
}

function doubtOfOne(seen: Seen, fact: DatedFact): string | undefined {
  switch (fact.type) {
    case "boil":
      return ofBoil(seen, fact.owner);
    case "rocking":
      return ofPressure(seen, fact.load, Number.POSITIVE_INFINITY);
    case "pressure":
      return ofPressure(seen, fact.load, fact.psi);
    case "vouched": {
      const load = seen.state.loads[fact.load];
      return fact.held && fact.by === undefined && load ? ofGap(seen, load) : undefined;
    }
    default:
      return undefined;
  }
}

function ofBoil(seen: Seen, id: string): string | undefined {
  const owner = ownerOf(seen.state, id);
  const value = freshValue(channelOf(seen, id, "temperature"), seen.now);
  if (value === undefined || !owner) return undefined;
  const altitudeFt = ownerAltitude(seen.state, owner);
  if (value >= leastBoilF(altitudeFt)) return undefined;
  const boils = boilingPointF(altitudeFt);
  return boilDoubtSentence(probeValue("temperature", value), probeValue("temperature", boils));
}

function ofPressure(seen: Seen, id: string, saidPsi: number): string | undefined {
  const load = seen.state.loads[id];
  const wanted = load && gaugeTargetPsi(load);
  const value = freshValue(channelOf(seen, id, "pressure"), seen.now);
  if (wanted === undefined || value === undefined || saidPsi < wanted) return undefined;
  if (value >= wanted) return undefined;
  return pressureDoubtSentence(probeValue("pressure", value), probeValue("pressure", wanted));
}

function ofGap(seen: Seen, load: Load): string | undefined {
  const run = runOfRole(load, "treatment");
  const gaps = run?.kept ? unanswered(run.kept) : [];
  const [first] = gaps;
  const last = gaps.at(-1);
  const kind = load.terms?.method === "pressure" ? "pressure" : "temperature";
  const channel = channelOf(seen, load.id, kind);
  if (!run || !first || !last || !channel) return undefined;
  const sign = kind === "pressure" ? "pressure" : "boil";
  const rule = ruleFor(seen.state, { owner: load, run, sign }, channel.stoodAtF);
  const least = leastValue(channel.kept, first.from, last.to);
  if (!rule || least >= rule.fallBelow) return undefined;
  return gapDoubt(probeValue(kind, least));
}
