import { describe, expect, it } from "vitest";
import { ENDPOINTS, Endpointer, type SpeechEdge } from "../../../src/voice/listening/endpointer.ts";

const pieces = (ms: number) => Math.round(ms / ENDPOINTS.pieceMs);

/** Pushes so many ms of a rise and returns every edge but the dull ones. */
function push(endpointer: Endpointer, ms: number, riseDb: number, enoughMs = 0): SpeechEdge[] {
  const edges: SpeechEdge[] = [];
  for (let n = 0; n < pieces(ms); n++) edges.push(endpointer.push(riseDb, () => enoughMs));
  return edges.filter((edge) => edge !== "quiet" && edge !== "goes-on" && edge !== "pauses");
}

describe("where speech begins and ends", () => {
  it("begins with a rise and ends after a third of a second of silence", () => {
    const endpointer = new Endpointer();
    expect(push(endpointer, 1000, 0)).toEqual([]);
    expect(push(endpointer, 800, 10)).toEqual(["begins"]);
    expect(push(endpointer, 250, 0)).toEqual([]);
    expect(push(endpointer, 250, 0)[0]).toBe("ends");
  });

  it("does not begin with a click, or end in the gap within a word", () => {
    const endpointer = new Endpointer();
    expect(push(endpointer, 32, 8)).toEqual([]);
    expect(push(endpointer, 500, 0)).toEqual([]);
    expect(push(endpointer, 400, 10)).toEqual(["begins"]);
    expect(push(endpointer, 150, 0)).toEqual([]);
    expect(push(endpointer, 400, 10)).toEqual([]);
  });

  it("waits longer where asked to", () => {
    const endpointer = new Endpointer();
    push(endpointer, 500, 10);
    expect(push(endpointer, 1000, 0, 1200)).toEqual([]);
    expect(push(endpointer, 400, 0, 1200)[0]).toBe("ends");
  });

  it("treats speech without a pause as talk, and listens again after a silence", () => {
    const endpointer = new Endpointer();
    expect(push(endpointer, 8000, 10)).toEqual(["begins", "too-long"]);
    push(endpointer, 500, 0);
    expect(push(endpointer, 500, 10)).toEqual(["begins"]);
  });

  it("learns how much the noise itself wavers", () => {
    const endpointer = new Endpointer();
    const wavering = [0, 3, 1, 3.5, 0.5, 2.5];
    const edges: SpeechEdge[] = [];
    for (let n = 0; n < 4000; n++) {
      edges.push(endpointer.push(wavering[n % wavering.length] ?? 0, () => 0));
    }
    expect(edges.slice(1000)).not.toContain("begins");
    expect(push(endpointer, 500, 9)).toEqual(["begins"]);
  });
});
