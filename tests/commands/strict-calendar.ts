/**
 * Reads a calendar by the grammar of RFC 5545 (sections 3.1, 3.3.11, 3.4 and 3.6) and nothing
 * looser: a second reader, of our own, beside the package the other checks use. Gives the entries'
 * values unescaped, or throws with the line that is off.
 */
export function strictCalendar(text: string): Record<string, string>[] {
  if (!text.endsWith("\r\n")) throw new Error("the last line has no end");
  if (/[^\r]\n|\r[^\n]/.test(text)) throw new Error("a line ends otherwise than with CR LF");
  const physical = text.slice(0, -2).split("\r\n");
  for (const line of physical) {
    if (Buffer.byteLength(line) > 75) throw new Error(`over 75 octets: ${line}`);
    if (line === "") throw new Error("an empty line");
  }
  const lines = physical
    .join("\r\n")
    .replace(/\r\n[ \t]/g, "")
    .split("\r\n");
  const rest = [...lines];
  const next = () => rest.shift() ?? "";
  const value = (name: string, pattern = /^.+$/): string => {
    const line = next();
    const found = line.slice(name.length + 1);
    if (!line.startsWith(`${name}:`) || !pattern.test(found)) throw new Error(`${name}: ${line}`);
    return found;
  };
  value("BEGIN", /^VCALENDAR$/);
  value("VERSION", /^2\.0$/);
  value("PRODID");
  if (rest[0]?.startsWith("METHOD:")) value("METHOD", /^[A-Z]+$/);
  while (rest[0]?.startsWith("X-")) next();
  const entries: Record<string, string>[] = [];
  while (rest[0] === "BEGIN:VEVENT") entries.push(entryOf(next, rest));
  value("END", /^VCALENDAR$/);
  if (rest.length > 0) throw new Error(`after the end: ${rest[0]}`);
  if (entries.length === 0) throw new Error("a calendar without a component");
  return entries;
}

const UTC = /^\d{8}T\d{6}Z$/;
/** TEXT: no bare comma or semicolon, and a backslash only before what may be escaped. */
const TEXT = /^(?:[^\\;,]|\\[\\;,nN])*$/;
const VALUES: Record<string, RegExp> = {
  UID: /^[\x21-\x7e]+$/,
  DTSTAMP: UTC,
  DTSTART: UTC,
  DTEND: UTC,
  SEQUENCE: /^\d+$/,
  "LAST-MODIFIED": UTC,
  SUMMARY: TEXT,
  DESCRIPTION: TEXT,
  STATUS: /^CANCELLED$/,
};

function entryOf(next: () => string, rest: readonly string[]): Record<string, string> {
  next();
  const entry: Record<string, string> = {};
  while (!/^(BEGIN|END):/.test(rest[0] ?? "END:")) {
    const line = next();
    const [, name = "", found = ""] = /^([A-Z-]+):(.*)$/.exec(line) ?? [];
    if (entry[name] !== undefined || !VALUES[name]?.test(found)) throw new Error(line);
    entry[name] = unescaped(found);
  }
  for (const name of ["UID", "DTSTAMP", "DTSTART"]) {
    if (entry[name] === undefined) throw new Error(`an entry without ${name}`);
  }
  // eventc = "BEGIN" eventprop *alarmc "END": no property of the entry comes after an alarm.
  while (rest[0] === "BEGIN:VALARM") alarm(next);
  const end = next();
  if (end !== "END:VEVENT") throw new Error(`after an alarm: ${end}`);
  return entry;
}

function alarm(next: () => string): void {
  const wanted = [/^BEGIN:VALARM$/, /^ACTION:DISPLAY$/, /^TRIGGER:-?PT\d+[SMH]$/];
  for (const pattern of [...wanted, /^DESCRIPTION:.+$/, /^END:VALARM$/]) {
    const line = next();
    if (!pattern.test(line)) throw new Error(`in an alarm: ${line}`);
  }
}

function unescaped(text: string): string {
  return text.replace(/\\([\\;,nN])/g, (_, one) => (one.toLowerCase() === "n" ? "\n" : one));
}
