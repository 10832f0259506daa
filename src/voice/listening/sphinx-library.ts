import { existsSync } from "node:fs";
import { join } from "node:path";
import koffi from "koffi";

/** Handles into the library, only ever passed back to it. */
export type Native = object | bigint;

/** Where the recognizer's library and its English model are. */
type SphinxPlaces = { base: string; library: string; modelFolder: string };

const MODEL_FOLDERS = [
  "/usr/share/pocketsphinx/model/en-us",
  "/usr/local/share/pocketsphinx/model/en-us",
  "/opt/homebrew/share/pocketsphinx/model/en-us",
];

/**
 * The calls used from libpocketsphinx (versions 0.8 to "5 prealpha", which distributions carry).
 * Scores are logarithms in the library's own base.
 */
export type SphinxLibrary = ReturnType<typeof bind>;

function bind(places: SphinxPlaces) {
  const base = koffi.load(places.base);
  const sphinx = koffi.load(places.library);
  return {
    silence: base.func("void err_set_logfp(void *fp)"),
    config: base.func("void *cmd_ln_init(void *inout, void *defn, int strict, ...)"),
    freeConfig: base.func("int cmd_ln_free_r(void *config)"),
    knownArguments: sphinx.func("void *ps_args()"),
    init: sphinx.func("void *ps_init(void *config)"),
    free: sphinx.func("int ps_free(void *decoder)"),
    setGrammar: sphinx.func(
      "int ps_set_jsgf_string(void *decoder, const char *name, const char *s)",
    ),
    setPhoneLoop: sphinx.func(
      "int ps_set_allphone_file(void *decoder, const char *name, void *path)",
    ),
    select: sphinx.func("int ps_set_search(void *decoder, const char *name)"),
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

/**
 * Loads the library and finds the model.
 * @returns the library, or what is missing in words
 */
export function loadSphinx(
  modelFolder?: string,
): { library: SphinxLibrary; modelFolder: string } | { missing: string } {
  const folder = (modelFolder ? [modelFolder] : MODEL_FOLDERS).find((each) =>
    existsSync(join(each, "en-us", "mdef")),
  );
  if (!folder) return { missing: "the English model of pocketsphinx" };
  const [base, library] =
    process.platform === "darwin"
      ? ["libsphinxbase.3.dylib", "libpocketsphinx.3.dylib"]
      : ["libsphinxbase.so.3", "libpocketsphinx.so.3"];
  try {
    const bound = bind({ base, library, modelFolder: folder });
    bound.silence(null);
    return { library: bound, modelFolder: folder };
  } catch {
    return { missing: "the library pocketsphinx" };
  }
}
