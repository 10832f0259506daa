import { type ChildProcess, spawn } from "node:child_process";
import type { Clock } from "../../ports/clock.ts";
import type { EarsEvents, EarsGrammar, EarsPort } from "../../ports/ears.ts";
import { findProgram } from "../find-program.ts";
import { type AdviceFor, installAdvice } from "../install-advice.ts";
import { Retry } from "../retry.ts";
import { findRecorder } from "./capture.ts";
import {
  jsonLines,
  type ListeningOrder,
  type ListeningReport,
  type ListeningSetup,
} from "./listening-lines.ts";

type ChildEarsParts = {
  /** The built listening program, a JavaScript file for this Node. */
  programPath: string;
  setup: ListeningSetup;
  events: EarsEvents & { onOver?(): void };
  clock: Clock;
  /** Where to look for programs, for advice on what to install. */
  searchPath: string;
  platform?: NodeJS.Platform;
};

/** How long the listening program has to end by itself, in ms. */
const LEAVE_MS = 500;

/** The ears: a listening program of our own in a process of its own, started again when it dies. */
export class ChildEars implements EarsPort {
  private readonly parts: ChildEarsParts;
  private readonly retry: Retry;
  private child: ChildProcess | undefined;
  private grammar: EarsGrammar | undefined;
  private speaking = false;
  private listening = false;

  constructor(parts: ChildEarsParts) {
    this.parts = parts;
    this.retry = new Retry(parts.clock, {
      problem: (message) => parts.events.onProblem(message),
      recovered: () => parts.events.onRecovered?.(),
    });
  }

  start(grammar: EarsGrammar): void {
    this.grammar = grammar;
    if (this.listening) return;
    this.listening = true;
    this.open();
  }

  expect(grammar: EarsGrammar): void {
    this.grammar = grammar;
    this.order({ do: "expect", grammar });
  }

  deafen(speaking: boolean): void {
    this.speaking = speaking;
    this.order({ do: "deafen", speaking });
  }

  async stop(): Promise<void> {
    this.listening = false;
    this.retry.stop();
    const child = this.child;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const ended = new Promise<void>((resolve) => child.once("close", () => resolve()));
    this.order({ do: "stop" });
    const callOff = this.parts.clock.after(LEAVE_MS, () => child.kill("SIGKILL"));
    await ended;
    callOff();
  }

  private order(order: ListeningOrder): void {
    this.child?.stdin?.write(`${JSON.stringify(order)}\n`);
  }

  private open(): void {
    const { programPath, setup } = this.parts;
    const child = spawn(process.execPath, [programPath, JSON.stringify(setup)], {
      stdio: ["pipe", "pipe", "ignore"],
      windowsHide: true,
    });
    this.child = child;
    let told = false;
    child.on("error", () => {});
    child.stdin?.on("error", () => {});
    child.stdout?.on("error", () => {});
    child.stdout?.setEncoding("utf8");
    const read = jsonLines<ListeningReport>((line) => {
      if (line.is === "problem") told = true;
      this.take(line);
    });
    child.stdout?.on("data", read);
    child.on("close", () => {
      if (this.child !== child || !this.listening) return;
      this.child = undefined;
      // Without its library it says so and ends at once; trying again would not help.
      if (told && child.exitCode === 3) return;
      this.retry.failed("Listening stopped; trying again. Typing goes on.", () => this.open());
    });
    if (this.grammar) this.order({ do: "expect", grammar: this.grammar });
    if (this.speaking) this.order({ do: "deafen", speaking: true });
  }

  private take(line: ListeningReport): void {
    const { events } = this.parts;
    if (line.is !== "problem") this.retry.works();
    if (line.is === "heard") events.onHeard(line.heard);
    if (line.is === "unheard") events.onUnheard?.(line.unheard);
    if (line.is === "level") events.onLevel?.(line.level);
    if (line.is === "recovered") events.onRecovered?.();
    if (line.is === "over") events.onOver?.();
    if (line.is === "problem") events.onProblem(this.problem(line.what, line.message));
  }

  private problem(what: "ears" | "microphone" | "grammar", message: string): string {
    if (what === "grammar") return `Listening continues with the earlier words: ${message}.`;
    const name = what === "ears" ? "Listening is not possible" : "The microphone gives nothing";
    const advice = what === "ears" ? [this.advice("ears")] : [];
    if (!this.recorderIsThere()) advice.push(this.advice("microphone"));
    return [`${name}: ${message}. Typing goes on.`, ...advice].join(" ");
  }

  private recorderIsThere(): boolean {
    const { searchPath, setup, platform = process.platform } = this.parts;
    return setup.source.from === "file" || findRecorder(searchPath, platform) !== undefined;
  }

  private advice(what: AdviceFor): string {
    const { searchPath, platform = process.platform } = this.parts;
    const hasProgram = (name: string) => !!findProgram([name], searchPath, platform);
    return installAdvice(what, { platform, hasProgram });
  }
}
