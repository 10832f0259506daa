import { randomBytes } from "node:crypto";
import * as fs from "node:fs";
import { createServer, type Server, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import type { Carried } from "../carried.ts";
import { COMMAND_MARK, handedWish, LONGEST_COMMAND } from "../day/handed-wish.ts";
import {
  addressFile,
  answerText,
  LONGEST_WORDS,
  oneLine,
  type TellAnswer,
  tellFolder,
  usualAddress,
} from "./tell-protocol.ts";

/** What the kitchen says to words, or to a command, handed in. */
export type Answerer = (said: string | Carried) => TellAnswer | Promise<TellAnswer>;

export type TellServer = {
  /** Where it listens: a socket's path, or a pipe's name. */
  address: string;
  /** Stops listening, ends what is open and removes the socket. */
  close(): Promise<void>;
};

export type TellServerAnswer = { ok: true; server: TellServer } | { ok: false; message: string };

/** Socket paths may have 107 bytes on Linux, 103 elsewhere. */
const LONGEST_PATH_BYTES = 103;
const MOST_AT_ONCE = 16;

/** A caller has so long to say its words, and the kitchen to answer. */
const LINE_DEADLINE_MS = 5000;
const ANSWER_DEADLINE_MS = 10_000;

/**
 * Lets other programs of the same owner hand words to this kitchen. Only the holder of the lock
 * may call it: a socket left by a dead program is replaced. Never rejects.
 */
export async function openTellServer(
  folder: string,
  owns: () => boolean,
  answer: Answerer,
): Promise<TellServerAnswer> {
  if (!owns()) return { ok: false, message: "another program has this kitchen open" };
  try {
    const address = prepareAddress(folder);
    const open = new Set<Socket>();
    const server = createServer({ allowHalfOpen: true }, (socket) => {
      open.add(socket);
      socket.on("close", () => open.delete(socket));
      serve(socket, answer);
    });
    server.maxConnections = MOST_AT_ONCE;
    await listen(server, address);
    server.on("error", () => {});
    if (process.platform !== "win32") fs.chmodSync(address, 0o600);
    return { ok: true, server: { address, close: () => close(server, open, address, folder) } };
  } catch (error) {
    const words = (error as Error).message.split("\n")[0];
    return { ok: false, message: `other programs cannot talk to this kitchen: ${words}` };
  }
}

/** Makes the private folder and clears away a dead program's socket. */
function prepareAddress(folder: string): string {
  makePrivate(tellFolder(folder));
  fs.rmSync(addressFile(folder), { force: true });
  const usual = usualAddress(folder);
  if (process.platform === "win32") {
    return announce(folder, `\\\\.\\pipe\\brinebell-${randomBytes(16).toString("hex")}`);
  }
  if (Buffer.byteLength(usual) > LONGEST_PATH_BYTES) {
    return announce(folder, join(fs.mkdtempSync(join(tmpdir(), "brinebell-")), "socket"));
  }
  const found = fs.lstatSync(usual, { throwIfNoEntry: false });
  if (found && !found.isSocket()) throw new Error(`${usual} is in the way; remove it`);
  fs.rmSync(usual, { force: true });
  return usual;
}

/** The file is where only the owner can read it, so its name cannot be guessed. */
function announce(folder: string, address: string): string {
  fs.writeFileSync(addressFile(folder), address, { mode: 0o600 });
  return address;
}

function makePrivate(folder: string): void {
  fs.mkdirSync(folder, { recursive: true, mode: 0o700 });
  const found = fs.lstatSync(folder);
  if (!found.isDirectory()) throw new Error(`${folder} is no folder; remove it`);
  if (process.platform !== "win32") fs.chmodSync(folder, 0o700);
}

function listen(server: Server, address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(address, () => {
      server.removeListener("error", reject);
      resolve();
    });
  });
}

async function close(
  server: Server,
  open: Set<Socket>,
  address: string,
  folder: string,
): Promise<void> {
  fs.rmSync(addressFile(folder), { force: true });
  for (const socket of open) socket.destroy();
  await new Promise((resolve) => server.close(resolve));
  const borrowed = process.platform !== "win32" && address !== usualAddress(folder);
  if (borrowed) fs.rmSync(dirname(address), { recursive: true, force: true });
}

/** One caller: reads its line, hands it over once, answers and hangs up. */
function serve(socket: Socket, answer: Answerer): void {
  let heard = "";
  let handed = false;
  const reply = (text: TellAnswer): void => {
    clearTimeout(deadline);
    if (!socket.destroyed) socket.end(answerText(text), () => socket.destroy());
  };
  const expire = (why: string) => () => reply({ refused: true, lines: [why] });
  let deadline = setTimeout(expire("no words came"), LINE_DEADLINE_MS);
  const handOver = (): void => {
    if (handed) return;
    handed = true;
    clearTimeout(deadline);
    deadline = setTimeout(expire("the kitchen did not answer in time"), ANSWER_DEADLINE_MS);
    replyTo(heard.split("\n")[0] ?? "", answer).then(reply);
  };
  socket.setEncoding("utf8");
  // A caller that does not take its answer is not waited for.
  socket.setTimeout(LINE_DEADLINE_MS + ANSWER_DEADLINE_MS, () => socket.destroy());
  socket.on("error", () => socket.destroy());
  socket.on("close", () => clearTimeout(deadline));
  socket.on("end", handOver);
  socket.on("data", (chunk: string) => {
    if (handed) return;
    heard += chunk;
    if (heard.includes("\n") || heard.length > longestOf(heard)) handOver();
  });
}

function longestOf(line: string): number {
  return line.startsWith(COMMAND_MARK) ? LONGEST_COMMAND : LONGEST_WORDS;
}

async function replyTo(line: string, answer: Answerer): Promise<TellAnswer> {
  const longest = longestOf(line);
  if (line.length > longest) {
    return { refused: true, lines: [`at most ${longest} characters at a time`] };
  }
  const said = line.startsWith(COMMAND_MARK) ? handedWish(line) : oneLine(line);
  if (said === undefined) return { refused: true, lines: ["this kitchen takes no such command"] };
  if (said === "") return { refused: true, lines: ["no words came"] };
  try {
    return await answer(said);
  } catch (error) {
    return { refused: true, lines: [`the kitchen could not answer: ${(error as Error).message}`] };
  }
}
