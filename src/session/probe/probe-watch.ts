/**
 * Watches a probe's lines: sorts them, judges them by the rules, and passes them to the session as
 * reports and readings. What it sees takes the same path as words; where it and a person disagree,
 * the safer one holds and a question is asked.
 */
import { type Command, commandOf, withSlots } from "../../kitchen/command.ts";
import type { DatedFact } from "../../kitchen/events.ts";
import type { ProbeIs } from "../../kitchen/facts/probe-facts.ts";
import { isLoad, type Owner } from "../../kitchen/owners.ts";
import { filterReading, newFilter, type Sample } from "../../kitchen/probe/probe-filter.ts";
import { judgeFitness, newFitness } from "../../kitchen/probe/probe-fitness.ts";
import { type ProbeReading, readProbeLine } from "../../kitchen/probe/probe-line.ts";
import {
  BLIND_MS,
  covers,
  judgeReading,
  newWatching,
  type ProbeEvent,
  type ProbeRule,
  thinnedSamples,
} from "../../kitchen/probe/probe-rules.ts";
import { kitchenTimeOf, wallOf } from "../../kitchen/state.ts";
import { localIso, MINUTE_MS, SECOND_MS } from "../../kitchen/time.ts";
import { current, unanswered } from "../../kitchen/unbroken-time.ts";
import type { Clock } from "../../ports/clock.ts";
import { BOIL_DOUBT_F, boilingPointF } from "../../reckon/boiling.ts";
import { PROBE_SILENT_SECONDS } from "../../reckon/trade-numbers.ts";
import {
  backSentence,
  fellSentence,
  heldSentence,
  probeValue,
  silentSentence,
  stuckSentence,
  tooHighSentence,
  unfitSentence,
} from "../../speech/probe-sentences.ts";
import type { Session } from "../session.ts";
import { type Channel, leastValue, middleValue } from "./probe-channel.ts";
import { doubtOf, ownerAltitude } from "./probe-doubts.ts";
import { awaitsSign, type ProbeSubject, ruleFor, subjectOf } from "./probe-subject.ts";
import type { SecondWitness } from "./second-witness.ts";

/** How often readings go to the log, thinned. */
const LOG_EVERY_MS = 10 * MINUTE_MS;
/** A low-temperature process is read at least every five minutes; this is early enough. */
const READ_EVERY_MS = 4 * MINUTE_MS;
const SILENT_MS = PROBE_SILENT_SECONDS * SECOND_MS;
/** How many readings are kept in memory to vouch for a gap, one per second: half a day. */
const MOST_KEPT = 43_200;
/** How far ahead of the kitchen's clock a timestamp may be. */
const AHEAD_MS = MINUTE_MS;

export class ProbeWatch implements SecondWitness {
  private readonly session: Session;
  private readonly clock: Clock;
  private readonly channels = new Map<string, Channel>();
  private stopTimer: (() => void) | undefined;

  constructor(session: Session, clock: Clock) {
    this.session = session;
    this.clock = clock;
    session.second = this;
  }

  /**
   * Takes one line from the probe; ignores invalid lines, and `old` ones without a time of their
   * own, which say nothing about now.
   */
  hear(line: string, old = false): void {
    const { state } = this.session;
    const reading = readProbeLine(line, state.zone);
    if (!reading || (old && reading.wallMs === undefined)) return;
    const now = this.session.now();
    const t = reading.wallMs === undefined ? now : kitchenTimeOf(state, reading.wallMs);
    if (t > now + AHEAD_MS) return;
    const channel = this.channelOf(reading, t);
    if (t < channel.lastAt) return;
    channel.lastAt = t;
    this.watchSilence();
    const unfit = judgeFitness(channel.fitness, { t, step: reading.step }, reading.kind);
    const filtered = filterReading(channel.filter, { t, value: reading.value }, reading);
    if (filtered.kind === "spike") return;
    if (filtered.kind === "stuck") {
      this.trouble(channel, "stuck", reading.value);
      return;
    }
    if (unfit && channel.subject) this.trouble(channel, unfit, reading.value);
    else if (channel.trouble && !unfit) this.mended(channel);
    this.take(channel, reading, { t, value: reading.value }, now);
  }

  /** Writes what was read and is not in the log yet. */
  flush(): void {
    for (const channel of this.channels.values()) this.log(channel);
  }

  stop(): void {
    this.stopTimer?.();
    this.flush();
  }

  private channelOf({ where, kind }: ProbeReading, t: number): Channel {
    const name = where ?? "probe";
    const key = `${kind} ${name}`;
    let channel = this.channels.get(key);
    if (!channel) {
      const lists = { kept: [], unlogged: [] };
      const times = { loggedAt: t, lastAt: t, lastRead: Number.NEGATIVE_INFINITY };
      const fresh = { filter: newFilter(t), fitness: newFitness(), watching: newWatching() };
      channel = { name, kind, ...fresh, ...lists, ...times };
      this.channels.set(key, channel);
    }
    return channel;
  }

  private take(channel: Channel, reading: ProbeReading, sample: Sample, now: number): void {
    if (sample.t - (channel.kept.at(-1)?.t ?? Number.NEGATIVE_INFINITY) >= SECOND_MS) {
      channel.kept.push(sample);
      if (channel.kept.length > MOST_KEPT) channel.kept.splice(0, MOST_KEPT / 10);
    }
    const subject = subjectOf(this.session.state, reading, sample.t);
    const id = subject && `${subject.owner.id}/${subject.run.id}`;
    if (id !== channel.subject) this.newSubject(channel, id);
    if (!subject) return;
    channel.unlogged.push(sample);
    const rule = ruleFor(this.session.state, subject, channel.stoodAtF);
    if (!rule) return;
    const verdict = judgeReading(channel.watching, rule, sample);
    if (verdict?.kind === "lost" || sample.value < rule.never) {
      this.lose(channel, subject, verdict?.kind === "lost" ? verdict : { ...sample, at: sample.t });
    }
    // An older reading from a logger: it answers for gaps, and begins nothing.
    if (now - sample.t <= BLIND_MS) this.act(channel, subject, verdict);
    this.answerGaps(channel, subject, rule);
    if (!channel.trouble) this.learn(channel, subject);
    if (sample.t - channel.loggedAt >= LOG_EVERY_MS) this.log(channel);
  }

  private newSubject(channel: Channel, id: string | undefined): void {
    this.log(channel);
    channel.watching = newWatching();
    delete channel.stoodAtF;
    delete channel.tried;
    if (id === undefined) delete channel.subject;
    else {
      channel.subject = id;
      this.noteState(channel, "watching");
    }
  }

  /** What was to be kept was lost, unless that is known, or lies where nobody watched. */
  private lose(
    channel: Channel,
    subject: ProbeSubject,
    { at, value }: { at: number; value: number },
  ) {
    const { kept } = subject.run;
    const last = kept?.stretches.at(-1);
    const counts = last && last.from <= at && (last.to === undefined || last.to > at);
    const waits = kept?.unconfirmedAt !== undefined && kept.unconfirmedAt <= at;
    if (!kept || !(counts || waits)) return;
    if (unanswered(kept).some((gap) => gap.from <= at && gap.to >= at)) return;
    delete channel.tried;
    const { owner } = subject;
    // Of jars that are already out, only the record can tell.
    const out = isLoad(owner) && owner.unloadedAt !== undefined;
    const words = `the probe: ${probeValue(channel.kind, value)}`;
    if (!out) this.report(subject, lossOf(subject, value), at, words);
    this.log(channel);
  }

  /** Reports what the probe sees: a sign that is waited for, a reading, too much heat. */
  private act(channel: Channel, subject: ProbeSubject, verdict: ProbeEvent | undefined): void {
    const { run } = subject;
    if (verdict?.kind === "lost") return;
    const shown = verdict && probeValue(channel.kind, verdict.value);
    if (verdict?.kind === "too-high" && shown) this.tooHigh(channel, subject, verdict, shown);
    if (channel.watching.level === "at" && !channel.trouble) this.begin(channel, subject);
    const { kept } = run;
    const due = channel.lastAt - channel.lastRead >= READ_EVERY_MS;
    if (subject.sign === "low-temperature" && kept && current(kept) && due) {
      this.session.witness([this.temperature(channel, subject.owner)]);
    }
  }

  /** The sign is there and is waited for: reported once for each time it is. */
  private begin(channel: Channel, subject: ProbeSubject): void {
    if (!awaitsSign(subject)) return;
    const turn = `${channel.subject}/${subject.run.kept?.stretches.length}`;
    if (channel.tried === turn) return;
    channel.tried = turn;
    const value = middleValue(channel.watching.recent) ?? 0;
    const shown = probeValue(channel.kind, value);
    channel.lastRead = channel.lastAt;
    this.report(subject, signOf(subject, value), undefined, `the probe: ${shown}`);
    this.noteState(channel, "began");
  }

  /** What becomes of a probe is a fact of what it watches. */
  private noteState({ subject, name: what }: Channel, is: ProbeIs, words?: string): void {
    const owner = subject?.split("/")[0];
    const t = this.session.now();
    const facts: DatedFact[] =
      owner === undefined ? [] : [{ type: "probe-is", owner, what, is, t }];
    this.session.witness(facts, words);
  }

  private report(
    subject: ProbeSubject,
    said: Command,
    at: number | undefined,
    words: string,
  ): void {
    const { state } = this.session;
    const when = at === undefined ? {} : { at: localIso(wallOf(state, at), state.zone) };
    const command = withSlots(said, when);
    const chosen = [{ owner: subject.owner.id, stage: subject.run.id }];
    this.session.carry({ wish: { command, chosen }, words });
  }

  private temperature(channel: Channel, owner: Owner): DatedFact {
    const value = middleValue(channel.watching.recent.slice(-5)) ?? 0;
    channel.lastRead = channel.lastAt;
    const temperatureF = Math.round(value * 10) / 10;
    return {
      type: "temperature",
      owner: owner.id,
      what: "canner",
      temperatureF,
      t: channel.lastAt,
    };
  }

  private tooHigh(
    channel: Channel,
    subject: ProbeSubject,
    verdict: ProbeEvent,
    shown: string,
  ): void {
    const facts: DatedFact[] =
      subject.sign === "low-temperature" ? [this.temperature(channel, subject.owner)] : [];
    this.session.witness(facts, tooHighSentence(this.nameOf(channel), shown));
    channel.unlogged.push({ t: verdict.at, value: verdict.value });
  }

  /**
   * A full boil by the person's word, with the probe level and near: that is what it reads at a
   * boil here.
   */
  private learn(channel: Channel, subject: ProbeSubject): void {
    const { kept } = subject.run;
    const stretch = kept && current(kept);
    if (subject.sign !== "boil" || !stretch || channel.stoodAtF !== undefined) return;
    if (channel.lastAt - stretch.from < MINUTE_MS) return;
    const values = channel.watching.recent.map((one) => one.value);
    const middle = middleValue(channel.watching.recent);
    if (middle === undefined || values.length < 5) return;
    const spread = Math.max(...values) - Math.min(...values);
    const boils = boilingPointF(ownerAltitude(this.session.state, subject.owner));
    if (spread > 1.5 || Math.abs(middle - boils) > BOIL_DOUBT_F) return;
    channel.stoodAtF = middle;
    channel.watching.level = "at";
  }

  /** Vouches for time that nobody watched, where the readings cover it. */
  private answerGaps(channel: Channel, subject: ProbeSubject, rule: ProbeRule): void {
    const { owner, run } = subject;
    if (!isLoad(owner) || !run.kept) return;
    const [first, ...rest] = unanswered(run.kept).filter((gap) => !gap.boiled);
    if (!first) return;
    const last = rest.at(-1) ?? first;
    if (channel.lastAt < last.to - BLIND_MS) return;
    const seen = covers(channel.kept, rule, first.from, last.to);
    if (seen === "not-covered") return;
    const held = seen === "held";
    if (held && channel.trouble) return;
    const load = owner.id;
    const least = leastValue(channel.kept, first.from, last.to);
    const minutes = Math.max(1, Math.round((last.to - first.from) / MINUTE_MS));
    const words = held ? heldSentence(minutes) : fellSentence(probeValue(channel.kind, least));
    const t = this.session.now();
    this.session.witness([{ type: "vouched", load, gap: 0, held, by: "probe", t }], words);
    if (!held) channel.watching.level = "unknown";
    delete channel.tried;
  }

  doubts(facts: readonly DatedFact[], now: number): string | undefined {
    return doubtOf(this.session.state, [...this.channels.values()], facts, now);
  }

  private nameOf(channel: Channel): string {
    return channel.name === "probe" ? "in the canner" : `called ${channel.name}`;
  }

  private trouble(channel: Channel, what: NonNullable<Channel["trouble"]>, value: number): void {
    if (channel.trouble === what) return;
    channel.trouble = what;
    // What it showed before still counts: one that comes back low has fallen.
    channel.watching.recent = [];
    this.log(channel);
    const name = this.nameOf(channel);
    const words = {
      stuck: () => stuckSentence(name, probeValue(channel.kind, value)),
      silent: () => silentSentence(name),
      slow: () => unfitSentence(name, "slow"),
      coarse: () => unfitSentence(name, "coarse"),
    }[what]();
    this.noteState(channel, what, words);
  }

  private mended(channel: Channel): void {
    delete channel.trouble;
    this.noteState(channel, "back", backSentence(this.nameOf(channel)));
  }

  /** A probe that falls silent while its canner is being timed is announced. */
  private watchSilence(): void {
    if (this.stopTimer) return;
    this.stopTimer = this.clock.after(SILENT_MS, () => {
      this.stopTimer = undefined;
      const now = this.session.now();
      let waiting = false;
      for (const channel of this.channels.values()) {
        const quiet = now - channel.lastAt >= SILENT_MS;
        if (quiet && channel.subject && !channel.trouble) this.trouble(channel, "silent", 0);
        waiting ||= !quiet;
      }
      if (waiting) this.watchSilence();
    });
  }

  /** The readings since the last time, thinned, under the canner or pot they are of. */
  private log(channel: Channel): void {
    channel.loggedAt = channel.lastAt;
    const samples = thinnedSamples(channel.unlogged);
    channel.unlogged = [];
    const owner = channel.subject?.split("/")[0];
    if (samples.length === 0 || owner === undefined) return;
    const { name: what, kind } = channel;
    this.session.witness([
      {
        type: "probe",
        owner,
        what,
        unit: kind === "temperature" ? "F" : "psi",
        samples: samples.map(({ t, value }) => [Math.round(t), Math.round(value * 10) / 10]),
        t: channel.lastAt,
      },
    ]);
  }
}

/** The report that a sign amounts to. */
function signOf({ sign }: ProbeSubject, value: number): Command {
  const rounded = Math.round(value * 10) / 10;
  if (sign === "pressure") return commandOf("pressure", { value: rounded, unit: "psi" });
  if (sign === "boil") return commandOf("boiling", {});
  return commandOf("temperature", { value: rounded, unit: "F" });
}

function lossOf(subject: ProbeSubject, value: number): Command {
  if (subject.sign === "boil") return commandOf("boil-lost", {});
  if (subject.sign === "pressure") return commandOf("pressure-lost", {});
  return signOf(subject, value);
}
