/** A fixed text of our own, of at most three sentences, with its source. */
export type OwnText = {
  text: string;
  /** A publication; null where it is from memory. */
  source: string | null;
};

const GUIDE = "the USDA Complete Guide to Home Canning, Guide";

export const SOURCES = {
  general: `${GUIDE} 1`,
  tomatoes: `${GUIDE} 3`,
  vegetables: `${GUIDE} 4`,
  pickles: `${GUIDE} 6`,
  jams: `${GUIDE} 7`,
  center: "the National Center for Home Food Preservation",
  washington: "Washington State University Extension",
  nebraska: "the University of Nebraska Extension",
  iowa: "Iowa State University Extension",
} as const;

/** The text with its source behind it. */
export function withSource({ text, source }: OwnText): string {
  return source === null ? `${text} That is from memory.` : `${text} By ${source}.`;
}

/** Said where nothing is known here. */
export const ASK_EXTENSION = "I don't know that here. Ask your extension service.";
