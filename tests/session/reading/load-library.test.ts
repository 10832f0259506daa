import { execFileSync } from "node:child_process";
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { KINDS } from "../../../src/kitchen/stages/kinds.ts";
import { checkRecipe, passes } from "../../../src/recipe/check-recipe.ts";
import { chooseProcess } from "../../../src/recipe/choose-process.ts";
import { methodsOf } from "../../../src/recipe/library.ts";
import { loadLibrary } from "../../../src/session/reading/load-library.ts";

const scratch = mkdtempSync(join(tmpdir(), "load-library-"));
const shipped = join(scratch, "recipes");
cpSync("recipes", shipped, { recursive: true });
const tablesOnly = join(scratch, "tables");
cpSync("recipes/tables.yaml", join(tablesOnly, "tables.yaml"));
afterAll(() => rmSync(scratch, { recursive: true, force: true }));

const idsOf = async (folders: string[], only?: string) => {
  return [...(await loadLibrary(folders, {}, only)).recipes.keys()];
};

describe("a folder of recipes that also contains other things", () => {
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

describe("a library from which one recipe is asked for", () => {
  it("reads only that one and the tables", async () => {
    expect(await idsOf([shipped, join(scratch, "none")], "pickled-beets")).toEqual([
      "pickled-beets",
    ]);
  });

  it("reads all where the name is not a file's", async () => {
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

describe("a person's own recipe", () => {
  const wish = { altitudeFt: 3000 };

  async function own(id: string, ...changes: [from: string | RegExp, to: string][]) {
    const folder = mkdtempSync(join(scratch, "own-"));
    let text = readFileSync("recipes/dilled-green-beans.yaml", "utf8");
    for (const [from, to] of [["id: dilled-green-beans", `id: ${id}`] as const, ...changes]) {
      text = text.replace(from, to);
    }
    writeFileSync(join(folder, `${id}.yaml`), text);
    const library = await loadLibrary([tablesOnly, folder], {});
    expect(library.problems).toEqual([]);
    const recipe = library.recipes.get(id);
    if (!recipe) throw new Error(`${id} was left out`);
    return { recipe, library, choice: chooseProcess(recipe, library.tables, wish) };
  }

  it("is canned where the check finds no danger in it", async () => {
    const { recipe, choice } = await own("my-beans");
    expect(recipe.tested).toBe(true);
    expect(choice.ok).toBe(true);
  });

  it("is a refrigerator food where it has a danger in it, its process refused", async () => {
    const { recipe, library, choice } = await own("weak-beans", [
      "amount: 4 cups",
      "amount: 1 cup",
    ]);
    expect(methodsOf(recipe)).toEqual(["refrigerator"]);
    expect(choice).toMatchObject({ ok: false });
    expect(!choice.ok && choice.reason).toMatch(/vinegar.*keep it in the refrigerator/);
    expect(passes(checkRecipe(recipe, library.tables, KINDS))).toBe(false);
  });

  it("without a tested source, or pointing to no table, is a refrigerator food too", async () => {
    const untested = await own("old-beans", [
      "class: acidified",
      "class: acidified\ntested: false",
    ]);
    expect(untested.choice).toMatchObject({ ok: false });
    expect(methodsOf(untested.recipe)).toEqual(["refrigerator"]);
    const tableless = await own("odd-beans", ["table: dilled-beans", "table: none-such"]);
    expect(!tableless.choice.ok && tableless.choice.reason).toMatch(/no tested table is called/);
  });
});
