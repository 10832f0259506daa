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

/** The oldest Node that has all that is used. Nothing newer than this file may be loaded before. */
const OLDEST_NODE = [20, 15] as const;
const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);

if (major < OLDEST_NODE[0] || (major === OLDEST_NODE[0] && minor < OLDEST_NODE[1])) {
  const needs = `it needs Node ${OLDEST_NODE.join(".")} or newer`;
  process.stderr.write(
    `brinebell: ${needs}, and this is ${process.version}; install a newer one\n`,
  );
  process.exitCode = 3;
} else {
  // A reader that has read enough (`| head`) is no fault of ours. An open kitchen has a handler of
  // its own, which closes the log first.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (process.stdout.listenerCount("error") > 1) return;
    if (error.code === "EPIPE") process.exit();
    process.stderr.write(`brinebell: the output cannot be written: ${error.message}\n`);
    process.exit(3);
  });
  // What cannot be complained about is no reason to fail otherwise.
  process.stderr.on("error", () => {});
  if (args.length === 1 && (args[0] === "--version" || args[0] === "-V")) {
    process.stdout.write(`${version}\n`);
  } else {
    // An older Node knows no `await` here, and has to be told so.
    import("./commands/run.ts")
      .then(async ({ run }) => {
        const status = await run(args, version, BRINEBELL_BUILD);
        if (status !== undefined) process.exitCode = status;
      })
      .catch((error: Error) => {
        process.stderr.write(`brinebell: it broke: ${error.message}\n`);
        process.exitCode = 1;
      });
  }
}
