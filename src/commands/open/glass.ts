/** A second program on the same data: a window on the kitchen that runs, or words handed to it. */
import { createInterface } from "node:readline";
import type { ScreenIo } from "../../screen/screen-host.ts";
import { type Glass, openGlass } from "../../session/glass/open-glass.ts";
import { type TellReply, tell } from "../../session/tell/tell-client.ts";
import { complain, printLine } from "../call/print.ts";
import type { Machine } from "../machine.ts";

/** A kitchen that opens at the same moment has three seconds in all to start listening. */
const TRIES = 20;
const AGAIN_MS = 150;

/** Repeats a call until it returns something, for as long as an opening takes. */
async function soon<Given>(
  call: () => Promise<Given>,
  isIt: (given: Given) => boolean,
): Promise<Given> {
  for (let left = TRIES; ; left--) {
    const given = await call();
    if (isIt(given) || left === 0) return given;
    await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
  }
}

/** A window on the open kitchen; undefined where that kitchen offers none. */
export function glassSoon(machine: Machine, plain: boolean): Promise<Glass | undefined> {
  const hello = { build: machine.build, plain };
  return soon(
    () => openGlass(machine.folder, hello),
    (glass) => glass !== undefined,
  );
}

/** Shows the kitchen through a glass until the person leaves or the kitchen is closed. */
export async function lookThrough(
  glass: Glass,
  io: ScreenIo,
  lost: Promise<"lost">,
): Promise<number> {
  const { host, kind } = glass;
  const ended = Promise.race([glass.ended, lost]);
  const show =
    kind === "view"
      ? (await import("../../screen/run-screen.tsx")).runScreen
      : (await import("../../screen/plain.ts")).runPlain;
  await show(host, io, { ended });
  glass.close();
  return 0;
}

function tellSoon(machine: Machine, words: string): Promise<TellReply> {
  return soon(
    () => tell(machine.folder, words),
    (reply) => reply.ok || reply.why !== "no-kitchen",
  );
}

/** A second program on the same data hands its words to the first. */
export async function talkToTheOther(machine: Machine, why: string): Promise<number> {
  complain(`brinebell: ${why}`);
  complain("What you type here goes to that kitchen.");
  let status = 0;
  for await (const line of createInterface({ input: process.stdin })) {
    const words = line.trim();
    if (words === "") continue;
    const reply = await tellSoon(machine, words);
    if (!reply.ok) {
      complain(`brinebell: ${reply.message}`);
      status = 3;
      continue;
    }
    for (const answer of reply.lines) printLine(answer);
  }
  return status;
}
