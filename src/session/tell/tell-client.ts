import { randomUUID } from "node:crypto";
import { connect } from "node:net";
import { readRegular } from "../../journal/regular-file.ts";
import type { Carried } from "../carried.ts";
import { handedLine, LONGEST_COMMAND } from "../day/handed-wish.ts";
import {
  addressFile,
  answerFrom,
  LONGEST_ANSWER,
  LONGEST_WORDS,
  messageLine,
  oneLine,
  PROTOCOL,
  protocolFile,
  type TellAnswer,
  usualAddress,
} from "./tell-protocol.ts";

/** The open kitchen's answer, or why there is none. */
export type TellReply =
  | ({ ok: true } & TellAnswer)
  | { ok: false; why: "bad-words" | "no-kitchen" | "no-answer"; message: string };

const DEADLINE_MS = 12_000;

/**
 * Passes words to the kitchen that is open on this data folder. Words may have 2,000 characters;
 * line ends and control characters in them become spaces. Settles within the deadline
 * (milliseconds); never rejects.
 */
export function tell(folder: string, words: string, deadlineMs = DEADLINE_MS): Promise<TellReply> {
  const line = oneLine(words);
  if (line !== "") return handOver(folder, line, LONGEST_WORDS, deadlineMs);
  const message = "there are no words to hand on";
  return Promise.resolve({ ok: false, why: "bad-words", message });
}

/** Passes it a command unchanged; its intent is a `HandedIntent`. Settles like `tell`. */
export function hand(
  folder: string,
  carried: Carried,
  deadlineMs = DEADLINE_MS,
): Promise<TellReply> {
  return handOver(folder, handedLine(carried), LONGEST_COMMAND, deadlineMs);
}

function handOver(
  folder: string,
  line: string,
  longest: number,
  deadlineMs: number,
): Promise<TellReply> {
  if (line.length > longest) {
    const message = `at most ${longest} characters at a time; these are ${line.length}`;
    return Promise.resolve({ ok: false, why: "bad-words", message });
  }
  return settle(folder, line, performance.now() + deadlineMs);
}

/** Sends it, and where the line broke before an answer came asks once more for that answer. */
async function settle(folder: string, said: string, until: number): Promise<TellReply> {
  const id = randomUUID();
  const knowsIds = readText(protocolFile(folder)) === PROTOCOL;
  for (let again = false; ; again = true) {
    const line = knowsIds ? messageLine({ id, again, said }) : said;
    const outcome = await exchange(addressOf(folder), `${line}\n`, until - performance.now());
    const answer = answerFrom(outcome.heard);
    const broken = outcome.connected && !answer && performance.now() < until;
    if (broken && knowsIds && !again) continue;
    // What became of a message that arrived is not known, even once the kitchen is closed.
    return replyOf({ ...outcome, connected: outcome.connected || again }, answer, folder);
  }
}

/** Where the open kitchen listens. */
export function addressOf(folder: string): string {
  return readText(addressFile(folder)) ?? usualAddress(folder);
}

/** A small file that may not be there. */
export function readText(path: string): string | undefined {
  try {
    return readRegular(path).toString("utf8");
  } catch {
    return undefined;
  }
}

type Outcome = { connected: boolean; heard: string };

function exchange(address: string, line: string, deadlineMs: number): Promise<Outcome> {
  return new Promise((resolve) => {
    let connected = false;
    let heard = "";
    const socket = connect(address);
    const finish = (): void => {
      clearTimeout(deadline);
      socket.destroy();
      resolve({ connected, heard });
    };
    const deadline = setTimeout(finish, deadlineMs);
    socket.setEncoding("utf8");
    socket.on("connect", () => {
      connected = true;
      socket.write(line);
    });
    socket.on("data", (chunk: string) => {
      heard += chunk;
      if (heard.length > LONGEST_ANSWER) finish();
    });
    socket.on("end", finish);
    socket.on("error", finish);
  });
}

function replyOf(
  { connected }: Outcome,
  answer: TellAnswer | undefined,
  folder: string,
): TellReply {
  if (answer) return { ok: true, ...answer };
  if (!connected) {
    const message = `no kitchen is open on ${folder}; open one with: brinebell`;
    return { ok: false, why: "no-kitchen", message };
  }
  const message = "the kitchen did not answer; look at its screen before you say it again";
  return { ok: false, why: "no-answer", message };
}
