/**
 * Runs benchmarks: each is bundled in memory and handed to a node of its own.
 *
 *     node tests/bench/run.mjs            all of them
 *     node tests/bench/run.mjs journal    tests/bench/journal-bench.ts
 *     node tests/bench/run.mjs plan DIR   what follows the names is handed on
 */
import { spawn } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const folder = import.meta.dirname;
const ENDING = "-bench.ts";
const all = readdirSync(folder)
  .filter((name) => name.endsWith(ENDING))
  .map((name) => name.slice(0, -ENDING.length));
const words = process.argv.slice(2);
const firstOther = words.findIndex((word) => !all.includes(word));
const wanted = firstOther < 0 ? words : words.slice(0, firstOther);
const handedOn = words.slice(wanted.length);
if (wanted.length === 0 && handedOn.length > 0) {
  console.error(`there is no benchmark ${handedOn[0]}; there are: ${all.join(", ")}`);
  process.exit(2);
}

async function run(name) {
  const bundled = await build({
    entryPoints: [join(folder, name + ENDING)],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
  });
  const options = ["--expose-gc", "--input-type=module", "-", ...handedOn];
  const child = spawn(process.execPath, options, {
    cwd: join(folder, "../.."),
    stdio: ["pipe", "inherit", "inherit"],
  });
  child.stdin.end(bundled.outputFiles[0].contents);
  return new Promise((resolve) => child.on("close", resolve));
}

let failed = 0;
for (const name of wanted.length > 0 ? wanted : all) {
  console.log(`\n== ${name}`);
  if ((await run(name)) !== 0) failed += 1;
}
process.exit(failed === 0 ? 0 : 1);
