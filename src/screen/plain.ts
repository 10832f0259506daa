/** The kitchen as plain lines. */
import { createInterface } from "node:readline";
import type { Line, Session } from "../session/session.ts";

export type PlainHost = {
  session: Session;
  lines: Line[];
  onChange(listener: () => void): () => void;
};

export async function runPlain(
  host: PlainHost,
  io: { stdin: NodeJS.ReadableStream; stdout: NodeJS.WritableStream },
): Promise<void> {
  let shown = 0;
  const show = () => {
    for (; shown < host.lines.length; shown++) io.stdout.write(`${host.lines[shown]?.text}\n`);
  };
  const stop = host.onChange(show);
  show();
  for await (const line of createInterface({ input: io.stdin })) {
    if (line.trim() !== "") host.session.hear(line);
  }
  stop();
}
