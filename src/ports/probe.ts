/**
 * A thermometer or pressure sensor that hands over lines of text. Never throws, never hangs: one
 * that goes away costs its readings and nothing else.
 */

/** What the probe tells its owner. */
export type ProbeEvents = {
  /** One whole line, without its end; `old` where it stood in the file before that was opened. */
  onLine(line: string, old: boolean): void;
  /** One line, once for every outage: what is wrong and how to mend it. */
  onProblem(message: string): void;
  /** Readings come again after a problem was reported. */
  onRecovered?(): void;
};

/** The probe as the session sees it. */
export type ProbePort = {
  start(events: ProbeEvents): void;
  stop(): void;
};
