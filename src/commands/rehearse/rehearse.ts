/** `brinebell rehearse`: plays a session against a made-up clock. */

import type { DeskDecision } from "../../desk/want.ts";
import type { Canner, DatedFact } from "../../kitchen/events.ts";
import { type State, wallOf } from "../../kitchen/state.ts";
import { isoWithOffset, isRecordable, parseIso } from "../../kitchen/time.ts";
import type { Line, LineKind } from "../../ports/view.ts";
import type { Library } from "../../recipe/library.ts";
import type { JarSize } from "../../recipe/recipe.ts";
import { USUAL_CANNER_JARS } from "../../reckon/trade-numbers.ts";
import { review } from "../../review/batch-log.ts";
import { readScript, type ScriptLine } from "../../session/rehearsal/rehearsal-script.ts";
import { Rehearsal, type RehearsalParts } from "../../session/rehearsal/rehearse.ts";
import { CALLS } from "../call/calls.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import { type KitchenWish, readKitchenOptions } from "../call/kitchen-options.ts";
import { isOn, type Options, optionValue, parseOptions } from "../call/options.ts";
import { recipeToBegin } from "../recipes/recipe-to-begin.ts";
import { reviewText } from "../record/review-text.ts";

/** The kitchen rehearsed by default: the mountain kitchen of the README. */
const DEMO = {
  zone: "America/Denver",
  from: "2027-08-14T08:00:00",
  altitudeFt: 6200,
  holds: USUAL_CANNER_JARS as Canner["holds"],
};

export type RehearseIo = {
  library(): Promise<Library> | Library;
  readFile(path: string): Promise<string> | string;
  version: string;
  /** Opens the kept folder for `--home`; refuses one that holds real batches. */
  home?(
    folder: string,
  ):
    | { ok: true; disk: RehearsalParts["disk"]; done(): void }
    | { ok: false; code: 1 | 3; message: string };
};

export type RehearseWish = {
  parts: Omit<RehearsalParts, "onLines" | "pace">;
  json: boolean;
  plain: boolean;
  /** How many times real speed; 0 where none was given. */
  speed: number;
  /** `--speed max`: takes no real time. */
  atMaxSpeed: boolean;
  home?: string;
};

/** What the call asks to play, or one line saying what is wrong. */
export async function readRehearseCall(
  args: string[],
  io: RehearseIo,
): Promise<{ ok: true; wish: RehearseWish } | { ok: false; code: 1 | 2 | 3; message: string }> {
  const off = (message: string, code: 1 | 2 | 3 = 2) => ({ ok: false as const, code, message });
  const parsed = parseOptions(args, CALLS.rehearse.options);
  if (!parsed.ok) return off(parsed.error);
  const options = parsed.value;
  const kitchen = readKitchenOptions(options);
  if (!kitchen.ok) return off(kitchen.error);
  const begins = optionValue(options, "script") !== undefined;
  if (options.words.length === 0 && !begins)
    return off("name a recipe, such as dilled-green-beans, or give a script that begins one");
  const library = await io.library();
  const recipes: string[] = [];
  for (const word of options.words) {
    const found = recipeToBegin(library, word);
    if (!found.ok) return off(found.error, found.code);
    recipes.push(found.recipe.id);
  }
  const startMs = parseIso(optionValue(options, "from") ?? DEMO.from, DEMO.zone);
  if (startMs === undefined || !isRecordable(startMs))
    return off(`--from: write a time like ${DEMO.from}`);
  const script = await scriptOf(options, io);
  if (!script.ok) return script;
  const speed = speedOf(optionValue(options, "speed"));
  if (speed === undefined) return off("--speed: write a number such as 60, or max");
  const home = optionValue(options, "home");
  const { jar, pack, method, atPsi, forLb } = kitchen.value;
  return {
    ok: true,
    wish: {
      json: isOn(options, "json"),
      plain: isOn(options, "plain"),
      speed,
      atMaxSpeed: optionValue(options, "speed") === "max",
      ...(home === undefined ? {} : { home }),
      parts: {
        library,
        recipes,
        begin: {
          ...(jar ? { jar } : {}),
          ...(pack ? { pack } : {}),
          ...(method ? { method } : {}),
          ...(atPsi === undefined ? {} : { atPsi }),
          ...(forLb === undefined ? {} : { weightLb: forLb }),
        },
        startMs,
        zone: DEMO.zone,
        setUp: setUpOf(kitchen.value),
        demoAltitudeFt: DEMO.altitudeFt,
        version: io.version,
        ...(script.lines ? { script: script.lines } : {}),
      },
    },
  };
}

async function scriptOf(
  options: Options,
  io: RehearseIo,
): Promise<{ ok: true; lines?: ScriptLine[] } | { ok: false; code: 2 | 3; message: string }> {
  const name = optionValue(options, "script");
  if (name === undefined) return { ok: true };
  let text: string;
  try {
    text = await io.readFile(name);
  } catch (error) {
    return {
      ok: false,
      code: 3,
      message: `--script: ${name} cannot be read: ${(error as Error).message}`,
    };
  }
  const read = readScript(text);
  return read.ok ? read : { ok: false, code: 2, message: read.message };
}

function speedOf(text: string | undefined): number | undefined {
  if (text === undefined || text === "max") return 0;
  const speed = Number(text);
  return speed > 0 ? speed : undefined;
}

/** The made-up kitchen's altitude and canner. */
function setUpOf(kitchen: KitchenWish): DatedFact[] {
  const holds: Partial<Record<JarSize, number>> = { ...DEMO.holds };
  const given = kitchen.cannerHolds;
  if (given) {
    const { any, ...sizes } = given;
    if (any !== undefined) {
      holds.pint = any;
      holds.quart = any;
    }
    Object.assign(holds, sizes);
  }
  const season = 2027;
  const gauge =
    (kitchen.gauge ?? "dial") === "dial"
      ? ({ kind: "dial" } as const)
      : ({ kind: "weighted", testedSeason: season } as const);
  const canner: Canner = { id: "canner", name: "canner", holds, gauge };
  const altitudeFt = Math.round(kitchen.altitudeFt ?? DEMO.altitudeFt);
  return [{ type: "kitchen-set", altitudeFt, canners: [canner], burners: 4, t: 0 }];
}

/** Plays a rehearsal without a screen and prints what was said, or all of it as JSON. */
export async function rehearseCommand(args: string[], io: RehearseIo): Promise<CommandResult> {
  const call = await readRehearseCall(args, io);
  if (!call.ok) return failed(call.code, `rehearse: ${call.message}`);
  const { wish } = call;
  let home: { disk: RehearsalParts["disk"]; done(): void } | undefined;
  if (wish.home !== undefined && io.home) {
    const opened = io.home(wish.home);
    if (!opened.ok) return failed(opened.code, `rehearse: ${opened.message}`);
    home = opened;
  }
  const disk = home?.disk;
  const rehearsal = new Rehearsal({
    ...wish.parts,
    ...(disk && wish.home !== undefined ? { disk, folder: wish.home } : {}),
  });
  const { kitchen, trouble } = await rehearsal.play();
  kitchen.session.close();
  home?.done();
  const { state } = kitchen.session;
  const log = review(state, kitchen.session.now());
  const stderr = trouble ? `brinebell rehearse: ${trouble}\n` : "";
  const code = trouble ? 1 : 0;
  if (!wish.json) {
    const text = kitchen.lines.map((line) => `${transcriptLine(line, DEMO.zone)}\n`).join("");
    const { units } = state.kitchen;
    return { code, stdout: `${text}\n${reviewText(log)}`, stderr, units };
  }
  const report = {
    review: log,
    ...conversation(kitchen.lines, DEMO.zone),
    desk: kitchen.decisions.map((one) => deskJson(state, one)),
    journal: state.history.map(({ t, w, ...event }) => ({
      at: isoWithOffset(t, DEMO.zone),
      written: isoWithOffset(w, DEMO.zone),
      t,
      w,
      ...event,
    })),
    ...(trouble ? { trouble } : {}),
  };
  const stdout = `${JSON.stringify(report, null, 2)}\n`;
  return { code, stdout, stderr, forPrograms: true };
}

/** What the desk decided, with its instants as the JSON gives them. */
function deskJson(state: State, { at, deferredTill, ...rest }: DeskDecision) {
  const iso = (t: number) => isoWithOffset(Math.round(wallOf(state, t)), DEMO.zone);
  return { at: iso(at), ...rest, deferredTill: deferredTill === null ? null : iso(deferredTill) };
}

const SAID_AS: Record<Exclude<LineKind, "heard">, "alarm" | "prompt" | "answer"> = {
  alarm: "alarm",
  answer: "answer",
  refused: "answer",
  asked: "prompt",
  prompt: "prompt",
  notice: "prompt",
};

/** What was said, refused and asked, as the JSON gives it; a hush is only shown. */
function conversation(lines: Line[], zone: string) {
  const said: { at: string; rank: string; text: string }[] = [];
  const refused: { at: string; text: string; reason: string }[] = [];
  const asked: { at: string; text: string }[] = [];
  let heard = "";
  for (const { kind, text, unspoken, answers, wallMs } of lines) {
    const at = isoWithOffset(wallMs, zone);
    if (kind === "heard") heard = text;
    else if (!unspoken) said.push({ at, rank: answers ? "answer" : SAID_AS[kind], text });
    if (kind === "refused") refused.push({ at, text: heard, reason: text });
    if (kind === "asked") asked.push({ at, text });
  }
  return { said, refused, asked };
}

const MARKS: Record<Line["kind"], string> = {
  heard: ">",
  answer: " ",
  prompt: "*",
  alarm: "!",
  asked: "?",
  refused: "x",
  notice: "-",
};

/** `14:03 ? Are the lids covered …`: one line of the conversation, for a pipe. */
function transcriptLine(line: Line, zone: string): string {
  const time = isoWithOffset(line.wallMs, zone).slice(11, 16);
  return `${time} ${MARKS[line.kind]} ${line.text}`;
}
