/**
 * The listening program: a process of its own, so that neither the load nor a crash of the native
 * recognizer affects the kitchen. Its one argument is a {@link ListeningSetup} as JSON; orders come
 * on standard input, reports go to standard output. It ends with its input.
 */
import type { EarsGrammar } from "../../ports/ears.ts";
import { Retry } from "../retry.ts";
import { type Capture, recorderMissing, startCapture } from "./capture.ts";
import { Listener } from "./listener.ts";
import {
  jsonLines,
  type ListeningOrder,
  type ListeningReport,
  type ListeningSetup,
} from "./listening-lines.ts";
import { Recognizer } from "./recognizer.ts";
import { loadSphinx } from "./sphinx-library.ts";

function report(line: ListeningReport): void {
  process.stdout.write(`${JSON.stringify(line)}\n`);
}

const clock = {
  after(ms: number, run: () => void): () => void {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};

function makeListener(setup: ListeningSetup): Listener | undefined {
  const loaded = loadSphinx(setup.modelFolder);
  if ("missing" in loaded) {
    const missing = [...loaded.missing, ...recorderMissing(setup.source)].join(", ");
    report({ is: "problem", what: "ears", message: `missing: ${missing}` });
    return undefined;
  }
  const { library, modelFolder } = loaded;
  return new Listener({
    recognizer: new Recognizer(library, modelFolder, setup.wakeWords),
    withWakeWords: setup.wakeWords.length > 0,
    wallMs: () => Date.now(),
    monoMs: () => performance.now(),
    events: {
      onHeard: (heard) => report({ is: "heard", heard }),
      onUnheard: (unheard) => report({ is: "unheard", unheard }),
      onLevel: (level) => report({ is: "level", level }),
    },
  });
}

function keepCapturing(setup: ListeningSetup, listener: Listener): () => void {
  let capture: Capture | undefined;
  const retry = new Retry(clock, {
    problem: (message) => report({ is: "problem", what: "microphone", message }),
    recovered: () => report({ is: "recovered" }),
  });
  const open = () => {
    capture = startCapture(setup.source, {
      onSamples(samples) {
        retry.works();
        listener.hear(samples);
      },
      onEnd(end) {
        if (end.over) report({ is: "over" });
        else retry.failed(end.reason, open);
      },
    });
  };
  open();
  return () => {
    retry.stop();
    capture?.stop();
  };
}

function expectSafely(listener: Listener, grammar: EarsGrammar): void {
  try {
    listener.expect(grammar);
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    report({ is: "problem", what: "grammar", message });
  }
}

function listen(setup: ListeningSetup): void {
  const listener = makeListener(setup);
  if (!listener) {
    process.exitCode = 3;
    return;
  }
  let stop: (() => void) | undefined;
  const leave = () => {
    stop?.();
    // At its own end Node waits for a pipe that is being opened and that nobody writes into.
    process.kill(process.pid, "SIGKILL");
  };
  const orders = jsonLines<ListeningOrder>((order) => {
    if (order.do === "deafen") listener.deafen(order.speaking);
    if (order.do === "stop") leave();
    if (order.do !== "expect") return;
    expectSafely(listener, order.grammar);
    // Nothing can be heard before there is a grammar, so the microphone opens only now.
    stop ??= keepCapturing(setup, listener);
  });
  process.stdin.setEncoding("utf8");
  process.stdin.on("data", orders);
  process.stdin.on("end", leave);
  process.stdout.on("error", leave);
}

listen(JSON.parse(process.argv[2] ?? "{}") as ListeningSetup);
