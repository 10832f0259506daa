/** `rehearse` on a real machine: on the screen in a terminal, otherwise as text or JSON. */

import { existsSync } from "node:fs";
import { takeLock } from "../../journal/lock.ts";
import { realDisk } from "../../journal/real-disk.ts";
import { historyOf } from "../../kitchen/events.ts";
import { outletOf } from "../../screen/outlet.ts";
import { readKitchen } from "../../session/reading/read-kitchen.ts";
import { realClock } from "../../session/time/real-clock.ts";
import type { CommandResult } from "../call/command-result.ts";
import { failed } from "../call/command-result.ts";
import type { Machine } from "../machine.ts";
import {
  type RehearseIo,
  type RehearseWish,
  readRehearseCall,
  rehearseCommand,
} from "./rehearse.ts";

export async function rehearseOnMachine(
  args: string[],
  machine: Machine,
): Promise<CommandResult | number> {
  const io: RehearseIo = {
    library: machine.library,
    readFile: machine.readFile,
    version: machine.version,
    home: keptFolder,
  };
  const words = machine.home === undefined ? args : [...args, "--home", machine.home];
  if (!process.stdout.isTTY || !process.stdin.isTTY) return rehearseCommand(words, io);
  const call = await readRehearseCall(words, io);
  if (!call.ok) return failed(call.code, `rehearse: ${call.message}`);
  const { wish } = call;
  if (wish.json || wish.plain || wish.home !== undefined || wish.atMaxSpeed) {
    return rehearseCommand(words, io);
  }
  return onScreen(wish);
}

async function onScreen(wish: RehearseWish): Promise<CommandResult | number> {
  const { runRehearsalScreen } = await import("../../screen/run-rehearsal-screen.tsx");
  const { watchedRehearsal } = await import("../../session/rehearsal/watched-rehearsal.ts");
  let trouble: string | undefined;
  await runRehearsalScreen(
    (hooks) => {
      const watched = watchedRehearsal(wish.parts, hooks);
      return {
        ...watched,
        async play() {
          trouble = (await watched.play()).trouble;
        },
      };
    },
    { stdin: process.stdin, stdout: process.stdout, outlet: outletOf(process.stdout) },
    wish.speed === 0 ? undefined : wish.speed,
  );
  return trouble === undefined ? 0 : failed(1, `rehearse: ${trouble}`);
}

type Kept = ReturnType<NonNullable<RehearseIo["home"]>>;

/** A folder to keep a rehearsal in; one that holds real batches is refused. */
function keptFolder(folder: string): Kept {
  const disk = realDisk();
  if (existsSync(folder)) {
    const { state, unreadable } = readKitchen(folder);
    if (unreadable !== undefined) return { ok: false, code: 3, message: unreadable };
    const real = Object.values(state.batches).some((batch) => !batch.rehearsal);
    const opened = historyOf(state).some((event) => event.type === "opened" && !event.rehearsal);
    if (real || opened) {
      const message = `--home: ${folder} holds a real kitchen; name a folder of its own`;
      return { ok: false, code: 1, message };
    }
  }
  const { bootId, wallMs } = realClock().read();
  const self = { pid: process.pid, bootId, startedAt: new Date(wallMs).toISOString() };
  const lock = takeLock(disk, folder, self);
  if (!lock.ok) return { ok: false, code: lock.why === "held" ? 1 : 3, message: lock.message };
  return { ok: true, disk, done: () => lock.lock.release() };
}
