/** What the endpointer concludes from a piece of sound. */
export type SpeechEdge = "quiet" | "begins" | "goes-on" | "pauses" | "ends" | "too-long";

type EndpointSettings = {
  /** Length of one piece, in ms. */
  pieceMs: number;
  /**
   * Speech stops below the noise's own mean rise plus this many deviations, within limits in dB.
   */
  deviations: number;
  leastOffsetDb: number;
  mostOffsetDb: number;
  /** Speech begins this far above where it stops, for this much of the last `onsetSpanMs`. */
  onsetAboveDb: number;
  onsetMs: number;
  onsetSpanMs: number;
  /** Silence that ends an utterance, unless more is asked for. */
  silenceMs: number;
  /** Speech longer than this is talk, not a command. */
  longestMs: number;
};

/** Settings found with the voice loop's noises and voices. */
export const ENDPOINTS: EndpointSettings = {
  pieceMs: 16,
  deviations: 3,
  leastOffsetDb: 0.9,
  mostOffsetDb: 3,
  onsetAboveDb: 1,
  onsetMs: 64,
  onsetSpanMs: 128,
  silenceMs: 320,
  longestMs: 6_000,
};

/** The weight of one piece in the smoothed rise, and in what is known about the noise. */
const SMOOTHING = 0.4;
const LEARNING = 0.02;

/** How much silence a loud piece cancels: a bubble does not undo a pause, a word does. */
const LOUD_PIECES = 4;

/**
 * Finds where speech begins and ends from its rise over the noise floor; how much the noise
 * itself wavers is learned while nobody speaks. After speech that is too long, nothing begins until
 * there is a silence.
 */
export class Endpointer {
  private readonly settings: EndpointSettings;
  private recent: boolean[] = [];
  private state: "quiet" | "speech" | "talk" = "quiet";
  private smoothDb = 0;
  private meanDb = 0.3;
  private deviationDb = 0.5;
  private spokenMs = 0;
  private silentMs = 0;
  private sinceMs = 0;

  constructor(settings: EndpointSettings = ENDPOINTS) {
    this.settings = settings;
  }

  /** Milliseconds since the last speech, while an utterance is open. */
  get sinceSpeechMs(): number {
    return this.sinceMs;
  }

  reset(): void {
    this.recent = [];
    this.state = "quiet";
    this.spokenMs = 0;
    this.silentMs = 0;
    this.sinceMs = 0;
  }

  /** `enoughMs` is asked when a silence would end the utterance: the silence that does. */
  push(riseDb: number, enoughMs: () => number): SpeechEdge {
    const { settings } = this;
    this.smoothDb += SMOOTHING * (riseDb - this.smoothDb);
    if (this.state === "quiet") return this.begin();
    this.spokenMs += settings.pieceMs;
    const loud = this.smoothDb >= this.offsetDb();
    const change = loud ? -LOUD_PIECES * settings.pieceMs : settings.pieceMs;
    this.silentMs = Math.max(0, this.silentMs + change);
    this.sinceMs = this.silentMs === 0 ? 0 : this.sinceMs + settings.pieceMs;
    if (this.state === "talk") {
      if (this.silentMs >= settings.silenceMs) this.reset();
      return "quiet";
    }
    if (this.spokenMs > settings.longestMs) {
      this.state = "talk";
      return "too-long";
    }
    if (loud) return "goes-on";
    if (this.silentMs < settings.silenceMs) return "pauses";
    return this.silentMs < enoughMs() ? "pauses" : "ends";
  }

  private offsetDb(): number {
    const { deviations, leastOffsetDb, mostOffsetDb } = this.settings;
    const spread = this.meanDb + deviations * this.deviationDb;
    return Math.min(mostOffsetDb, Math.max(leastOffsetDb, spread));
  }

  private begin(): SpeechEdge {
    const { pieceMs, onsetAboveDb, onsetMs, onsetSpanMs } = this.settings;
    const risen = this.smoothDb >= this.offsetDb() + onsetAboveDb;
    if (!risen) {
      this.meanDb += LEARNING * (this.smoothDb - this.meanDb);
      const away = Math.abs(this.smoothDb - this.meanDb) * 1.25;
      this.deviationDb += LEARNING * (away - this.deviationDb);
    }
    this.recent.push(risen);
    if (this.recent.length > onsetSpanMs / pieceMs) this.recent.shift();
    if (this.recent.filter(Boolean).length * pieceMs < onsetMs) return "quiet";
    this.reset();
    this.state = "speech";
    return "begins";
  }
}
