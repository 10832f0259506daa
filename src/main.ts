#!/usr/bin/env node
/**
 * The command line. It loads only what the command asked for needs: most commands never see the
 * screen, and the version is printed before anything is loaded at all.
 */
declare const BRINEBELL_VERSION: string;
/** Names the source this was built from. */
declare const BRINEBELL_BUILD: string;

export {};

const version = BRINEBELL_VERSION;
const args = process.argv.slice(2);

if (args.length === 1 && (args[0] === "--version" || args[0] === "-V")) {
  process.stdout.write(`${version}\n`);
} else {
  // A reader that has read enough (`| head`) is no fault of ours. An open kitchen has a handler of
  // its own, which closes the log first.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (process.stdout.listenerCount("error") > 1) return;
    if (error.code === "EPIPE") process.exit(0);
    process.stderr.write(`brinebell: the output cannot be written: ${error.message}\n`);
    process.exit(3);
  });
  const { run } = await import("./commands/run.ts");
  const status = await run(args, version, BRINEBELL_BUILD);
  if (status !== undefined) process.exitCode = status;
}
