// Builds the program: a small entry, and a file for whatever it loads when it needs it.
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { basename, resolve } from "node:path";
import { crc32 } from "node:zlib";

const esbuild = await import("esbuild").catch(() => undefined);
if (!esbuild) {
  console.error("esbuild is not installed (npm install without --omit=dev brings it): not built");
  process.exit(0);
}

const { version } = JSON.parse(readFileSync("package.json", "utf8"));

/**
 * What answers at once is built whole: finding and opening a file takes longer than reading the
 * few that two commands might share.
 */
const WHOLE = [
  "src/main.ts",
  "src/commands/run.ts",
  "src/commands/recipes/check.ts",
  "src/commands/record/labels.ts",
  "src/commands/record/pantry.ts",
  "src/commands/day/heap.ts",
  "src/commands/recipes/recipes.ts",
  "src/commands/reckon/reckon.ts",
  "src/commands/reckon/reckon-recipe.ts",
  "src/commands/record/review.ts",
  "src/commands/record/seeds.ts",
  "src/session/reading/load-library.ts",
  "src/session/reading/read-kitchen.ts",
];

/** Run by a program of its own, or by this build. */
const STARTED = ["src/voice/listening/listening-program.ts", "src/kitchen/read-library.ts"];

/** The source: every file's text by its absolute path. */
const source = new Map();
for (const name of readdirSync("src", { recursive: true }).sort()) {
  const path = resolve("src", name);
  if (/\.tsx?$/.test(name)) source.set(path, readFileSync(path, "utf8"));
}

/** Names this source: what a snapshot was worked out by. */
const buildId = crc32([...source.values()].join("")).toString(16);

/** The files that some other loads when it needs them, by their absolute path. */
function loadedLater() {
  const found = new Set();
  for (const [path, text] of source) {
    for (const [, target] of text.matchAll(/await import\("(\.[^"]+)"\)/g)) {
      found.add(resolve(path, "..", target));
    }
  }
  return found;
}

/** The name in `dist/` of a source file that is built as a file of its own. */
const outputs = new Map();
for (const path of [...WHOLE, ...STARTED].map((file) => resolve(file)).concat(...loadedLater())) {
  const name = basename(path)
    .replace(/^main\.ts$/, "brinebell.ts")
    .replace(/\.tsx?$/, "");
  const other = [...outputs].find(([known, its]) => its === name && known !== path)?.[0];
  if (other) throw new Error(`${other} and ${path} would both be dist/${name}.js; rename one`);
  outputs.set(path, name);
}

/** Leaves out what is a file of its own, wherever it is loaded when needed. */
const apart = {
  name: "apart",
  setup(build) {
    build.onResolve({ filter: /^\./ }, ({ kind, path, resolveDir, importer }) => {
      if (kind !== "dynamic-import" || importer.includes("node_modules")) return undefined;
      const name = outputs.get(resolve(resolveDir, path));
      return name && { path: `./${name}.js`, external: true };
    });
  },
};

/** Ink can load a debugger's front end; nobody here has it. */
const noDevtools = {
  name: "no-devtools",
  setup(build) {
    build.onResolve({ filter: /^react-devtools-core$/ }, (found) => {
      return { path: found.path, namespace: "none" };
    });
    build.onLoad({ filter: /.*/, namespace: "none" }, () => ({ contents: "export default {};" }));
  },
};

/** As a module of Node's own, `process` would open standard input only to list what it has. */
const plainProcess = {
  name: "plain-process",
  setup(build) {
    build.onResolve({ filter: /^node:process$/ }, ({ path }) => ({ path, namespace: "plain" }));
    build.onLoad({ filter: /.*/, namespace: "plain" }, () => ({
      contents: `export default process;
        export const { env } = process;
        export const cwd = () => process.cwd();`,
    }));
  },
};

/** The folders of the packages that are built in. */
const inside = new Set();

/** Packages of the older kind ask for `require`, which a module has to make for itself. */
const REQUIRE =
  'import { createRequire as __require } from "node:module"; const require = __require(import.meta.url);';

/**
 * Builds these of the outputs; gives the paths of the files made. The entry has to be read by a
 * Node that is too old for the rest, so that it can say so.
 */
async function built(paths, splitting, target = "node20") {
  const { metafile } = await esbuild.build({
    entryPoints: Object.fromEntries(paths.map((path) => [outputs.get(path), path])),
    outdir: "dist",
    bundle: true,
    splitting,
    format: "esm",
    platform: "node",
    target,
    jsx: "automatic",
    minify: true,
    legalComments: "none",
    external: ["koffi", "pdfkit", "fontkit"],
    chunkNames: "parts/[name]-[hash]",
    define: {
      "process.env.NODE_ENV": '"production"',
      BRINEBELL_VERSION: JSON.stringify(version),
      BRINEBELL_BUILD: JSON.stringify(buildId),
    },
    banner: { js: splitting ? REQUIRE : "" },
    plugins: [apart, noDevtools, plainProcess],
    logLevel: "warning",
    metafile: true,
  });
  for (const input of Object.keys(metafile.inputs)) {
    const [package_] = /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input) ?? [];
    if (package_) inside.add(package_);
  }
  return Object.keys(metafile.outputs);
}

/** The terms of the MIT licence, which are the same for all: those of ours. */
const MIT_TERMS = readFileSync("LICENSE", "utf8").replace(/^[\s\S]*?(?=Permission is)/, "");

/** The licence of a package that is built in, as its authors want it kept. */
function notice(folder, licence = /^licen[cs]e/i) {
  const { name, version, license, author } = JSON.parse(
    readFileSync(`${folder}/package.json`, "utf8"),
  );
  const file = readdirSync(folder).find((one) => licence.test(one));
  const by = typeof author === "string" ? author : author?.name;
  if (!file && (license !== "MIT" || !by)) throw new Error(`${folder} has no licence to be kept`);
  const text = file ? readFileSync(`${folder}/${file}`, "utf8") : `Copyright ${by}\n\n${MIT_TERMS}`;
  return `${name} ${version} (${license})\n\n${text.trim()}\n`;
}

const whole = new Set(WHOLE.map((file) => resolve(file)));
const shared = [...outputs.keys()].filter((path) => !whole.has(path));
const entry = resolve("src/main.ts");
whole.delete(entry);
const made = new Set([
  ...(await built([entry], false, "node13.2")),
  ...(await built([...whole], false)),
  ...(await built(shared, true)),
]);

// What earlier builds left goes only once this one has worked.
for (const name of readdirSync("dist", { recursive: true, withFileTypes: true })) {
  const path = `${name.parentPath}/${name.name}`.replaceAll("\\\\", "/");
  if (name.isFile() && !made.has(path)) rmSync(path);
}

// Recipes are parsed once, here, and kept under the digest of their text.
const { parseLibraryFile } = await import("./dist/read-library.js");
const parsed = {};
for (const name of readdirSync("recipes").sort()) {
  if (!/\.ya?ml$/.test(name)) continue;
  const text = readFileSync(`recipes/${name}`, "utf8");
  // The digest as load-library.ts makes it.
  parsed[`${crc32(text).toString(16)}.${text.length}`] = parseLibraryFile(name, text);
}
writeFileSync("dist/recipes.json", JSON.stringify(parsed));
const rule = `\n${"-".repeat(80)}\n\n`;
const notices = [...inside].sort().map((folder) => notice(folder));

// The font of labels, under a licence of its own.
const FONT = "node_modules/@expo-google-fonts/noto-sans";
mkdirSync("dist/fonts", { recursive: true });
copyFileSync(`${FONT}/400Regular/NotoSans_400Regular.ttf`, "dist/fonts/regular.ttf");
copyFileSync(`${FONT}/700Bold/NotoSans_700Bold.ttf`, "dist/fonts/bold.ttf");
notices.push(notice(FONT, /^LICENSE_FONT$/));
writeFileSync("dist/NOTICES.txt", notices.join(rule));
chmodSync("dist/brinebell.js", 0o755);
