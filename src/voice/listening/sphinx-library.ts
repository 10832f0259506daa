import { existsSync } from "node:fs";
import { join } from "node:path";
import koffi from "koffi";

/** Handles into the library, only ever passed back to it. */
export type Native = object | bigint;

const MODEL_FOLDERS = [
  "/usr/share/pocketsphinx/model/en-us",
  "/usr/local/share/pocketsphinx/model/en-us",
  "/opt/homebrew/share/pocketsphinx/model/en-us",
];

/** Where package managers put libraries that the system's own search does not look for. */
const LIBRARY_FOLDERS = ["", "/usr/local/lib/", "/opt/homebrew/lib/"];

/**
 * The calls used from libpocketsphinx (0.8 to "5 prealpha", and 5, whose calls have other names).
 * Scores are logarithms in the library's own base.
 */
export type SphinxLibrary = ReturnType<typeof bind>;

const NAMED = "void *decoder, const char *name";

type Library = ReturnType<typeof koffi.load>;

/** What differs from one version to the other: names, and how settings are given. */
function bindEarlier(sphinx: Library, base: Library) {
  const config = base.func("void *cmd_ln_init(void *inout, void *defn, int strict, ...)");
  const known = sphinx.func("void *ps_args()");
  return {
    silence: base.func("void err_set_logfp(void *fp)"),
    /** A configuration of these settings, by their names without a dash. */
    config(settings: Record<string, string>): Native | null {
      const words = Object.entries(settings).flatMap(([name, value]) => [`-${name}`, value]);
      return config(null, known(), 0, ...words.flatMap((each) => ["str", each]), "void *", null);
    },
    freeConfig: base.func("int cmd_ln_free_r(void *config)"),
    setGrammar: sphinx.func(`int ps_set_jsgf_string(${NAMED}, const char *s)`),
    setPhoneLoop: sphinx.func(`int ps_set_allphone_file(${NAMED}, void *path)`),
    select: sphinx.func(`int ps_set_search(${NAMED})`),
  };
}

function bindFive(sphinx: Library): ReturnType<typeof bindEarlier> {
  const init = sphinx.func("void *ps_config_init(void *defn)");
  const set = sphinx.func(
    "void *ps_config_set_str(void *config, const char *name, const char *value)",
  );
  return {
    silence: sphinx.func("void err_set_logfp(void *fp)"),
    config(settings) {
      const config = init(null);
      for (const [name, value] of Object.entries(settings)) set(config, name, value);
      return config;
    },
    freeConfig: sphinx.func("int ps_config_free(void *config)"),
    setGrammar: sphinx.func(`int ps_add_jsgf_string(${NAMED}, const char *s)`),
    setPhoneLoop: sphinx.func(`int ps_add_allphone_file(${NAMED}, void *path)`),
    select: sphinx.func(`int ps_activate_search(${NAMED})`),
  };
}

function bind(sphinx: Library, base: Library | undefined) {
  return {
    ...(base ? bindEarlier(sphinx, base) : bindFive(sphinx)),
    init: sphinx.func("void *ps_init(void *config)"),
    free: sphinx.func("int ps_free(void *decoder)"),
    addWord: sphinx.func(
      "int ps_add_word(void *decoder, const char *w, const char *phones, int up)",
    ),
    pronunciation: sphinx.func("const char *ps_lookup_word(void *decoder, const char *word)"),
    startStream: sphinx.func("int ps_start_stream(void *decoder)"),
    startUtterance: sphinx.func("int ps_start_utt(void *decoder)"),
    process: sphinx.func(
      "int ps_process_raw(void *decoder, const void *data, size_t samples, int noSearch, int full)",
    ),
    endUtterance: sphinx.func("int ps_end_utt(void *decoder)"),
    frames: sphinx.func("int ps_get_n_frames(void *decoder)"),
    hypothesis: sphinx.func("const char *ps_get_hyp(void *decoder, _Out_ int *score)"),
    segments: sphinx.func("void *ps_seg_iter(void *decoder, _Out_ int *score)"),
    nextSegment: sphinx.func("void *ps_seg_next(void *segment)"),
    freeSegments: sphinx.func("void ps_seg_free(void *segment)"),
    segmentWord: sphinx.func("const char *ps_seg_word(void *segment)"),
    segmentFrames: sphinx.func("void ps_seg_frames(void *segment, _Out_ int *from, _Out_ int *to)"),
    segmentScores: sphinx.func(
      "int ps_seg_prob(void *segment, _Out_ int *acoustic, _Out_ int *language, _Out_ int *back)",
    ),
  };
}

/** Version 5 is numbered 4 or 5, by its release. */
const FIVE = [".5", ".4", ""];

/** The first library of this name that loads, or undefined. `version`: as in its file's name. */
function load(name: string, version: string): Library | undefined {
  const file = process.platform === "darwin" ? `${name}${version}.dylib` : `${name}.so${version}`;
  for (const folder of LIBRARY_FOLDERS) {
    try {
      return koffi.load(folder + file);
    } catch {}
  }
  return undefined;
}

function loadAny(): SphinxLibrary | undefined {
  const base = load("libsphinxbase", ".3");
  const earlier = base && load("libpocketsphinx", ".3");
  const sphinx = earlier ?? FIVE.map((each) => load("libpocketsphinx", each)).find((each) => each);
  try {
    return sphinx && bind(sphinx, earlier && base);
  } catch {
    return undefined;
  }
}

/**
 * Loads the library and finds the model.
 * @returns the library, or all that is missing, in words
 */
export function loadSphinx(
  modelFolder?: string,
): { library: SphinxLibrary; modelFolder: string } | { missing: string[] } {
  const folder = (modelFolder ? [modelFolder] : MODEL_FOLDERS).find((each) =>
    existsSync(join(each, "en-us", "mdef")),
  );
  const library = loadAny();
  library?.silence(null);
  if (folder && library) return { library, modelFolder: folder };
  const missing = library ? [] : ["the library pocketsphinx"];
  if (!folder) missing.push("the English model of pocketsphinx");
  return { missing };
}
