/** A journal file covers one year; a year that needed a fresh file has several parts. */
export type FilePlace = { year: number; part: number };

const PATTERN = /^journal-(\d{4})(?:-([1-9]\d*))?\.jsonl$/;

/** `journal-2027.jsonl`, and `journal-2027-2.jsonl` for the second part of a year. */
export function fileName({ year, part }: FilePlace): string {
  return part === 1 ? `journal-${year}.jsonl` : `journal-${year}-${part}.jsonl`;
}

/** The journal's files among these names, oldest first; other names are ignored. */
export function filesInOrder(names: readonly string[]): FilePlace[] {
  return names
    .map((name) => PATTERN.exec(name))
    .filter((match) => match !== null)
    .map((match) => ({ year: Number(match[1]), part: Number(match[2] ?? 1) }))
    .sort((a, b) => a.year - b.year || a.part - b.part);
}
