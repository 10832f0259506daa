/** The zone that the machine is set to; UTC where it is set to none that is known. */
export function machineZone(): string {
  const zone: string | undefined = new Intl.DateTimeFormat().resolvedOptions().timeZone;
  if (!zone) return "UTC";
  known.set(zone, known.get(zone) ?? isKnown(zone));
  return known.get(zone) ? zone : "UTC";
}

/** Asked for every second, and slow to find out. */
const known = new Map<string, boolean>();

/** An empty TZ makes the system's zone `Etc/Unknown`, by which no time can be told. */
function isKnown(zone: string): boolean {
  try {
    return new Intl.DateTimeFormat("en-US", { timeZone: zone }) !== undefined;
  } catch {
    return false;
  }
}
