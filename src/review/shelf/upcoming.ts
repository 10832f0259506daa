/** One thing that is coming, as lists and calendars have it. */
export type Upcoming = {
  /** The same for the same thing at every call. */
  id: string;
  /** Wall instant, epoch ms. */
  at: number;
  title: string;
  detail: string;
  batch: string | null;
  overdue: boolean;
  /** When what it follows from was last written to, wall ms. */
  changedAt: number;
};

/** A reminder as found, and what its last change is looked up by. */
export type FoundReminder = Omit<Upcoming, "overdue" | "changedAt"> & { owner: string };
