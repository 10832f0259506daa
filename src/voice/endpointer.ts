/** What the endpointer makes of the piece it was given. */
export type SpeechEdge = "quiet" | "begins" | "goes-on" | "pauses" | "ends" | "too-long";

export type EndpointSettings = {
  /** Length of one piece, in ms. */
  pieceMs: number;
  /** Rise over the noise, in dB, at which speech begins and below which it stops. */
  onsetDb: number;
  offsetDb: number;
  /** So much of the last `onsetSpanMs` must rise for speech to begin. */
  onsetMs: number;
  onsetSpanMs: number;
  /** Silence that ends an utterance, and the longer one after the wake words alone. */
  silenceMs: number;
  wakeSilenceMs: number;
  /** Speech longer than this is talk, not a command. */
  longestMs: number;
};

/** Settings found by the voice loop; see there for what they were measured with. */
export const ENDPOINTS: EndpointSettings = {
  pieceMs: 16,
  onsetDb: 3.5,
  offsetDb: 2.2,
  onsetMs: 64,
  onsetSpanMs: 128,
  silenceMs: 320,
  wakeSilenceMs: 1_200,
  longestMs: 6_000,
};

/**
 * Finds where speech begins and ends from its rise over the noise floor. After speech that is too
 * long nothing begins until a silence.
 */
export class Endpointer {
  private readonly settings: EndpointSettings;
  private recent: boolean[] = [];
  private state: "quiet" | "speech" | "talk" = "quiet";
  private spokenMs = 0;
  private silentMs = 0;

  constructor(settings: EndpointSettings = ENDPOINTS) {
    this.settings = settings;
  }

  /** Milliseconds of silence since the last speech, while an utterance is open. */
  get silenceMs(): number {
    return this.silentMs;
  }

  reset(): void {
    this.recent = [];
    this.state = "quiet";
    this.spokenMs = 0;
    this.silentMs = 0;
  }

  /** `onlyWakeWords` is asked when a silence would end the utterance. */
  push(riseDb: number, onlyWakeWords: () => boolean): SpeechEdge {
    const { settings } = this;
    if (this.state === "quiet") return this.begin(riseDb);
    this.spokenMs += settings.pieceMs;
    this.silentMs = riseDb < settings.offsetDb ? this.silentMs + settings.pieceMs : 0;
    if (this.state === "talk") {
      if (this.silentMs >= settings.silenceMs) this.reset();
      return "quiet";
    }
    if (this.silentMs === 0) return this.checkLength();
    if (this.silentMs < settings.silenceMs) return "pauses";
    if (this.silentMs < settings.wakeSilenceMs && onlyWakeWords()) return "pauses";
    return "ends";
  }

  private begin(riseDb: number): SpeechEdge {
    const { pieceMs, onsetDb, onsetMs, onsetSpanMs } = this.settings;
    this.recent.push(riseDb >= onsetDb);
    if (this.recent.length > onsetSpanMs / pieceMs) this.recent.shift();
    const risen = this.recent.filter(Boolean).length * pieceMs;
    if (risen < onsetMs) return "quiet";
    this.reset();
    this.state = "speech";
    return "begins";
  }

  private checkLength(): SpeechEdge {
    if (this.spokenMs <= this.settings.longestMs) return "goes-on";
    this.state = "talk";
    return "too-long";
  }
}
