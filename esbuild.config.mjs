// Builds the program: one small entry, everything else in chunks that load when needed.
import { chmodSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { crc32 } from "node:zlib";

const esbuild = await import("esbuild").catch(() => undefined);
if (!esbuild) {
  console.error("esbuild is not installed (npm install without --omit=dev brings it): not built");
  process.exit(0);
}
const { build } = esbuild;

const { version } = JSON.parse(readFileSync("package.json", "utf8"));

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

const built = await build({
  entryPoints: {
    brinebell: "src/main.ts",
    "read-library": "src/recipe/read-library.ts",
    "listening-program": "src/voice/listening-program.ts",
  },
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  jsx: "automatic",
  minify: true,
  legalComments: "none",
  external: ["koffi", "pdfkit"],
  chunkNames: "parts/[name]-[hash]",
  define: { "process.env.NODE_ENV": '"production"', BRINEBELL_VERSION: JSON.stringify(version) },
  banner: {
    js: 'import { createRequire as __require } from "node:module"; const require = __require(import.meta.url);',
  },
  plugins: [noDevtools],
  logLevel: "warning",
  metafile: true,
});

// What earlier builds left goes only once this one has worked.
const made = new Set(Object.keys(built.metafile.outputs));
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
chmodSync("dist/brinebell.js", 0o755);
