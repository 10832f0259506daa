/** The watch in the background: begun, asked about, ended. */
import { spawn } from "node:child_process";
import { upper } from "../../kitchen/spoken-names.ts";
import { comesTrue, endWatch, watcherOf } from "../../session/watch/watch-lock.ts";
import { type CommandResult, failed } from "../call/command-result.ts";
import type { WatchCall } from "./watch-units.ts";

/** How long a watch may take to begin or to end, ms. */
const PATIENCE_MS = 15_000;

function told(folder: string, json: boolean, message: string): CommandResult {
  const watcher = watcherOf(folder);
  const { pid = null, startedAt: since = null } = watcher ?? {};
  const report = JSON.stringify({ watching: watcher !== undefined, pid, since, folder });
  return { code: 0, stdout: `${json ? report : message}\n`, stderr: "" };
}

/** Starts a watch of its own and waits until it holds the folder. */
export async function startWatch(
  folder: string,
  { program, args }: WatchCall,
  json: boolean,
): Promise<CommandResult> {
  const other = watcherOf(folder);
  if (other) return failed(1, `watch: ${watchedBy(folder, other)}`);
  const child = spawn(program, args, {
    detached: true,
    cwd: "/",
    stdio: ["ignore", "ignore", "pipe"],
    windowsHide: true,
  });
  let complaint = "";
  let over = false;
  let refused = false;
  child.on("error", (error) => {
    complaint = error.message;
    over = true;
  });
  child.on("close", (status) => {
    over = true;
    refused = status === 1;
  });
  child.stderr.on("data", (text) => {
    complaint += text;
  });
  await comesTrue(() => over || watcherOf(folder)?.pid === child.pid, PATIENCE_MS);
  child.stderr.destroy();
  child.unref();
  if (watcherOf(folder)?.pid !== child.pid) {
    const why = complaint.replace(/^brinebell watch: /, "").trim() || "it gives no reason";
    return failed(refused ? 1 : 3, `watch: the watch did not begin: ${why}`);
  }
  const mend = "brinebell watch --stop ends it";
  return told(folder, json, `Process ${child.pid} watches ${folder}; ${mend}.`);
}

export function watchedBy(
  folder: string,
  { pid, startedAt }: { pid: number; startedAt: string },
): string {
  const mend = "brinebell watch --stop ends it";
  return `process ${pid} has watched ${folder} since ${startedAt}; ${mend}`;
}

/** Who watches; status 1 where nobody does. */
export function watchStatus(folder: string, json: boolean): CommandResult {
  const watcher = watcherOf(folder);
  if (watcher) return told(folder, json, `${upper(watchedBy(folder, watcher))}.`);
  return { ...told(folder, json, `Nobody watches ${folder}.`), code: 1 };
}

/** Ends the watch; status 1 where there is none, 3 where it does not end. */
export async function stopWatch(folder: string, json: boolean): Promise<CommandResult> {
  const watcher = watcherOf(folder);
  if (!watcher) return failed(1, `watch: nobody watches ${folder}`);
  if (await endWatch(folder, watcher, PATIENCE_MS)) {
    return told(folder, json, `Process ${watcher.pid} has stopped watching.`);
  }
  return failed(3, `watch: process ${watcher.pid} does not end; end it by hand`);
}
