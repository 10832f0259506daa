import { randomBytes } from "node:crypto";
import * as fs from "node:fs";
import { createServer, type Server, type Socket } from "node:net";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import { type Answerer, Callers, type OpenGlass } from "./tell-callers.ts";
import { readText } from "./tell-client.ts";
import { addressFile, PROTOCOL, protocolFile, tellFolder, usualAddress } from "./tell-protocol.ts";

export type TellServer = {
  /** Where it listens: a socket's path, or a pipe's name. */
  address: string;
  /** Stops listening, ends what is open and removes the socket. */
  close(): Promise<void>;
};

type TellServerAnswer = { ok: true; server: TellServer } | { ok: false; message: string };

/** Socket paths may have 107 bytes on Linux, 103 elsewhere. */
const LONGEST_PATH_BYTES = 103;
/** Callers and glasses together; each is a file held open. */
const MOST_AT_ONCE = 200;

/**
 * Lets other programs of the same owner pass words to this kitchen. Only the holder of the lock
 * may call it: a socket left by a dead program is replaced. Never rejects.
 */
export async function openTellServer(
  folder: string,
  owns: () => boolean,
  answer: Answerer,
  openGlass?: OpenGlass,
): Promise<TellServerAnswer> {
  if (!owns()) return { ok: false, message: "another program has this kitchen open" };
  try {
    const address = prepareAddress(folder);
    const open = new Set<Socket>();
    const callers = new Callers(answer, openGlass);
    const server = createServer({ allowHalfOpen: true }, (socket) => {
      open.add(socket);
      socket.on("close", () => open.delete(socket));
      callers.serve(socket);
    });
    server.maxConnections = MOST_AT_ONCE;
    await listen(server, address);
    server.on("error", () => {});
    if (process.platform !== "win32") fs.chmodSync(address, 0o600);
    fs.writeFileSync(protocolFile(folder), PROTOCOL, { mode: 0o600 });
    return { ok: true, server: { address, close: () => close(server, open, address, folder) } };
  } catch (error) {
    const words = (error as Error).message.split("\n")[0];
    return { ok: false, message: `other programs cannot talk to this kitchen: ${words}` };
  }
}

/** Makes the private folder and removes a dead program's socket. */
function prepareAddress(folder: string): string {
  makePrivate(tellFolder(folder));
  clearBorrowed(folder);
  for (const left of [addressFile(folder), protocolFile(folder)]) fs.rmSync(left, { force: true });
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

/** A socket of a dead program in the system's folder goes with the folder made for it. */
function clearBorrowed(folder: string): void {
  const left = dirname(readText(addressFile(folder)) ?? "");
  const ours = dirname(left) === tmpdir() && /^brinebell-\w+$/.test(basename(left));
  if (ours) fs.rmSync(left, { recursive: true, force: true });
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
  for (const left of [addressFile(folder), protocolFile(folder)]) fs.rmSync(left, { force: true });
  for (const socket of open) socket.destroy();
  await new Promise((resolve) => server.close(resolve));
  const borrowed = process.platform !== "win32" && address !== usualAddress(folder);
  if (borrowed) fs.rmSync(dirname(address), { recursive: true, force: true });
}
