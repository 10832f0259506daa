/** What a command gets from the machine it runs on. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readRegular } from "../journal/regular-file.ts";
import { dataFolder, ownRecipes } from "../session/data-folder.ts";
import { machineZone } from "../session/time/machine-zone.ts";

export type Machine = {
  version: string;
  /** Identifies the source the program was built from. */
  build: string;
  home: string | undefined;
  folder: string;
  /** True where the call or the environment named the folder, and not the platform. */
  chosen: boolean;
  readonly zone: string;
  /** All recipes; with `only` an id, the others may be missing. */
  library(only?: string): Promise<import("../recipe/library.ts").Library>;
  /**
   * The text of a file that a call names, or of standard input for `-`; with `mostBytes`, so many
   * and one more. Rejects where something other than a file is there.
   */
  readFile(path: string, mostBytes?: number): Promise<string>;
  /** The font that labels are printed in; throws where the program was not installed whole. */
  labelFont(): import("./record/label-font.ts").FontFiles;
};

/** Where the built program and its recipes are. */
const HERE = fileURLToPath(new URL(".", import.meta.url));

/** From a chunk of the build or from the source, the folder that holds `recipes/`. */
function programFolder(): string {
  for (const up of ["..", join("..", ".."), "."]) {
    const folder = join(HERE, up);
    try {
      readFileSync(join(folder, "recipes", "tables.yaml"));
      return folder;
    } catch {
      // Look one folder further up.
    }
  }
  return join(HERE, "..");
}

/** A file, or `-` for standard input; with `mostBytes` so many and one more. */
async function readFile(path: string, mostBytes?: number): Promise<string> {
  if (path !== "-") return readRegular(path, mostBytes).toString("utf8");
  let text = "";
  process.stdin.setEncoding("utf8");
  for await (const chunk of process.stdin) {
    text += chunk;
    if (mostBytes !== undefined && text.length > mostBytes) break;
  }
  return text;
}

export function machineFor(home: string | undefined, version: string, build: string): Machine {
  const folder = dataFolder(home, process.env);
  return {
    version,
    build,
    home,
    folder,
    chosen: home !== undefined || Boolean(process.env.BRINEBELL_HOME),
    // Looked up only when needed: it takes as long as everything else that most calls do.
    get zone() {
      return machineZone();
    },
    async library(only) {
      const { loadLibrary } = await import("../session/reading/load-library.ts");
      const program = programFolder();
      const known = parsedByBuild(program);
      return loadLibrary([join(program, "recipes"), ownRecipes(folder)], known, only);
    },
    readFile,
    labelFont: () => {
      const font = (name: string) => readFileSync(join(programFolder(), "dist", "fonts", name));
      return { regular: font("regular.ttf"), bold: font("bold.ttf") };
    },
  };
}

function parsedByBuild(
  program: string,
): import("../session/reading/load-library.ts").ParsedByDigest {
  try {
    return JSON.parse(readFileSync(join(program, "dist", "recipes.json"), "utf8"));
  } catch {
    return {};
  }
}
