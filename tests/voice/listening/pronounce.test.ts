import { describe, expect, it } from "vitest";
import { pronounce } from "../../../src/voice/listening/pronounce.ts";

const KNOWN: Record<string, string> = {
  dill: "D IH L",
  pickle: "P IH K AH L",
  jar: "JH AA R",
  bean: "B IY N",
  crush: "K R AH SH",
  head: "HH EH D",
  space: "S P EY S",
};
const lookup = (word: string) => KNOWN[word];

describe("how a word sounds that the dictionary lacks", () => {
  it.each([
    ["dill", "D IH L"],
    ["dilled", "D IH L D"],
    ["pickled", "P IH K AH L D"],
    ["jars", "JH AA R Z"],
    ["bean's", "B IY N Z"],
    ["crushed", "K R AH SH T"],
    ["headspace", "HH EH D S P EY S"],
    ["Jarring", "JH AA R IH NG"],
  ])("%s", (word, phones) => {
    expect(pronounce(word, lookup)).toBe(phones);
  });

  it("is guessed letter by letter for a variety's name", () => {
    expect(pronounce("zorvade", lookup)).toBe("Z AO R V EY D");
    expect(pronounce("quill", lookup)).toBe("K W IH L");
    expect(pronounce("jalapeño", lookup)).toBe("JH AE L AE P EH N OW");
  });

  it("is empty where there is nothing to say", () => {
    expect(pronounce("123", lookup)).toBe("");
  });
});
