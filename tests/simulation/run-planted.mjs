/**
 * `npm run world:planted [-- --only WORDS] [--unplanted]`: plants one bug after another in the
 * program and plays the days that ought to show it. A bug is caught where a property breaks that
 * the program keeps.
 * With `--unplanted` the same days are played without any, and none may be caught.
 */
import { spawn } from "node:child_process";
import { availableParallelism } from "node:os";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { build } from "esbuild";

const { values } = parseArgs({
  options: {
    only: { type: "string", default: "" },
    unplanted: { type: "boolean", default: false },
  },
});
const root = join(import.meta.dirname, "../..");
const world = join(import.meta.dirname, "world");

/** Puts a wrapper before the one module, for whoever imports it. */
function planting({ name, module, export: what }) {
  const target = join(root, module);
  const contents = `
    export * from "real:${target}";
    import * as real from "real:${target}";
    import { PLANTED } from "${join(world, "planted.ts")}";
    let planted;
    export function ${what}(...args) {
      planted ??= PLANTED.find((one) => one.name === ${JSON.stringify(name)}).wrap(real.${what});
      return planted(...args);
    }`;
  return {
    name: "planting",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /^real:/ }, ({ path }) => ({ path: path.slice("real:".length) }));
      onResolve({ filter: /^\.\.?\// }, ({ path, resolveDir }) => {
        const same = join(resolveDir, path) === target;
        return same ? { path: target, namespace: "planted" } : undefined;
      });
      onLoad({ filter: /.*/, namespace: "planted" }, () => ({ contents, resolveDir: root }));
    },
  };
}

async function bundle(entry, plugins = []) {
  const { outputFiles, warnings } = await build({
    entryPoints: [join(world, entry)],
    bundle: true,
    write: false,
    platform: "node",
    format: "esm",
    target: "node20",
    packages: "external",
    logLevel: "silent",
    plugins,
  });
  const gone = warnings.find((one) => one.id === "import-is-undefined");
  if (gone) throw new Error(gone.text);
  return outputFiles[0].contents;
}

function work(contents, args) {
  const child = spawn(process.execPath, ["--input-type=module", "-", ...args], {
    cwd: root,
    stdio: ["pipe", "inherit", "pipe", "ipc"],
  });
  child.stdin.end(contents);
  let told;
  let trouble = "";
  child.stderr.on("data", (data) => {
    trouble += data;
  });
  child.on("message", (message) => {
    told = message;
  });
  return new Promise((resolve) => {
    child.on("close", () => resolve({ told, trouble: trouble.split("\n").find(Boolean) ?? "" }));
  });
}

async function planted() {
  const contents = await bundle("planted.ts");
  return import(`data:text/javascript;base64,${Buffer.from(contents).toString("base64")}`);
}

/** The property and the day that show a planted bug, or why nothing does. */
async function tryOne(plant) {
  try {
    const contents = await bundle("play-planted.ts", values.unplanted ? [] : [planting(plant)]);
    const { told, trouble } = await work(contents, [plant.name]);
    if (!told) return { caught: false, how: `the program does not survive it: ${trouble}` };
    if (told === "missed") return { caught: false, how: "no property breaks" };
    const { seed, card, mishaps } = told.wish;
    return { caught: true, how: `${told.fault} (seed ${seed}, ${card ?? ""}, ${mishaps.join()})` };
  } catch (error) {
    return { caught: false, how: `its place is gone: ${error.message.split("\n")[0]}` };
  }
}

const { PLANTED } = await planted();
const wanted = PLANTED.filter((one) => one.name.includes(values.only));
const queue = [...wanted];
let caught = 0;
async function worker() {
  for (let plant = queue.shift(); plant; plant = queue.shift()) {
    const result = await tryOne(plant);
    if (result.caught) caught += 1;
    const where = `${plant.module} ${plant.export}`;
    console.log(`${result.caught ? "caught" : "MISSED"}  ${plant.name} (${where})`);
    console.log(`        ${result.how}`);
  }
}
await Promise.all(Array.from({ length: Math.min(4, availableParallelism()) }, worker));
console.log(`${caught} of ${wanted.length} planted bugs caught`);
process.exit(caught === wanted.length ? 0 : 1);
