/** Commands that only read the record are built without what understands sentences. */
import { build } from "esbuild";
import { describe, expect, it } from "vitest";

const READERS = ["review", "pantry", "labels"];
/** The wordings of every meaning: of no use where nobody says anything. */
const WORDINGS = "src/language/intents/all.ts";

async function builtIn(name: string): Promise<string[]> {
  const { metafile } = await build({
    entryPoints: [`src/commands/record/${name}.ts`],
    bundle: true,
    write: false,
    metafile: true,
    platform: "node",
    format: "esm",
    packages: "external",
    plugins: [
      {
        name: "apart",
        setup: (build) => {
          build.onResolve({ filter: /^\./ }, ({ kind, path }) => {
            return kind === "dynamic-import" ? { path, external: true } : undefined;
          });
        },
      },
    ],
  });
  return Object.values(metafile.outputs).flatMap(({ inputs }) => {
    return Object.entries(inputs).flatMap(([path, { bytesInOutput }]) => {
      return bytesInOutput > 0 ? [path] : [];
    });
  });
}

describe("what a command brings along", () => {
  it.each(READERS)("is not the wordings where it only reads: %s", async (name) => {
    const paths = await builtIn(name);
    expect(paths).toContain(`src/commands/record/${name}.ts`);
    expect(paths).not.toContain(WORDINGS);
  });
});
