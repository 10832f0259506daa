import { execFileSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { loadLibrary } from "../../src/session/load-library.ts";

const scratch = mkdtempSync(join(tmpdir(), "load-library-"));
const shipped = join(scratch, "recipes");
cpSync("recipes", shipped, { recursive: true });
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const idsOf = async (folders: string[], only?: string) => {
  return [...(await loadLibrary(folders, {}, only)).recipes.keys()];
};

describe("a folder of recipes with what is none in it", () => {
  it.skipIf(process.platform === "win32")("is read all the same, and each is named", async () => {
    const odd = join(scratch, "odd");
    mkdirSync(join(odd, "folder.yaml"), { recursive: true });
    symlinkSync(join(odd, "nowhere"), join(odd, "dangling.yaml"));
    symlinkSync("/dev/zero", join(odd, "endless.yaml"));
    execFileSync("mkfifo", [join(odd, "pipe.yaml")]);
    writeFileSync(join(odd, "huge.yaml"), "");
    truncateSync(join(odd, "huge.yaml"), 3e9);
    const library = await loadLibrary([shipped, odd], {});
    expect(library.recipes.size).toBeGreaterThan(40);
    expect(library.problems).toMatchObject([
      /^dangling.yaml: it cannot be read/,
      /^endless.yaml: this is no file/,
      /^folder.yaml: this is no file/,
      /^huge.yaml: over 200 kB/,
      /^pipe.yaml: this is no file/,
    ]);
  });
});

describe("a library of which one recipe is asked for", () => {
  it("reads that one and the tables alone", async () => {
    expect(await idsOf([shipped, join(scratch, "none")], "pickled-beets")).toEqual([
      "pickled-beets",
    ]);
  });

  it("reads all where the name is no file's", async () => {
    expect((await idsOf([shipped], "dilly beans")).length).toBeGreaterThan(40);
    expect((await idsOf([shipped], "../pickled-beets")).length).toBeGreaterThan(40);
  });

  it("reads all where the person has recipes of their own", async () => {
    const own = join(scratch, "own");
    mkdirSync(own);
    writeFileSync(join(own, "bad.yaml"), "id: [");
    const library = await loadLibrary([shipped, own], {}, "pickled-beets");
    expect(library.recipes.size).toBeGreaterThan(40);
    expect(library.problems.join()).toContain("bad.yaml");
  });
});
