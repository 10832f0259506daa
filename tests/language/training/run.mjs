/** Runs a TypeScript file of this folder: `node tests/language/training/run.mjs train-model`. */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { build } from "esbuild";

const [name, ...words] = process.argv.slice(2);
const bundled = await build({
  entryPoints: [join(import.meta.dirname, `${name}.ts`)],
  bundle: true,
  write: false,
  platform: "node",
  format: "esm",
  target: "node20",
  packages: "external",
});
const options = ["--max-old-space-size=4096", "--input-type=module", "-", ...words];
const child = spawn(process.execPath, options, { stdio: ["pipe", "inherit", "inherit"] });
child.stdin.end(bundled.outputFiles[0].contents);
child.on("close", (status) => process.exit(status ?? 1));
