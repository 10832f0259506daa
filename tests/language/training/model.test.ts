import { describe, expect, it } from "vitest";
import { corpusDigest } from "../../../src/language/model/make-model.ts";
import { LEARNED_FROM } from "../../../src/language/model/weights.ts";
import { allSentences } from "./corpus-files.ts";

describe("the model that is shipped", () => {
  it("is learned from the corpus as it stands: npm run train", () => {
    expect(LEARNED_FROM).toBe(corpusDigest(allSentences()));
  });

  it("no longer fits the corpus as soon as one of its sentences changes", () => {
    const [first, ...others] = allSentences();
    if (!first) throw new Error("the corpus is empty");
    expect(corpusDigest([{ ...first, text: `${first.text}!` }, ...others])).not.toBe(LEARNED_FROM);
  });
});
