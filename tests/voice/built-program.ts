import { mkdtempSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

/** Bundles the listening program as the build does, inside the project so that koffi is found. */
export async function buildListeningProgram(): Promise<string> {
  const root = join(import.meta.dirname, "../..");
  const folder = mkdtempSync(join(root, "node_modules/.listening-"));
  const outfile = join(folder, "listening-program.mjs");
  await build({
    entryPoints: [join(root, "src/voice/listening/listening-program.ts")],
    outfile,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    external: ["koffi"],
    logLevel: "error",
  });
  return outfile;
}
