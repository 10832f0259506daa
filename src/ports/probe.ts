/**
 * A thermometer or pressure sensor that sends lines of text. Never throws, never hangs: if it goes
 * away, only its readings are lost.
 */

/** What the probe reports to its owner. */
export type ProbeEvents = {
  /** One whole line, without its end; `old` where it stood in the file before that was opened. */
  onLine(line: string, old: boolean): void;
  /** One line, once for every outage: what is wrong and how to fix it. */
  onProblem(message: string): void;
  /** Readings arrive again after a problem was reported. */
  onRecovered?(): void;
};

/** The probe as the session sees it. */
export type ProbePort = {
  start(events: ProbeEvents): void;
  stop(): void;
};
