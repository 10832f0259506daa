/** One thing that is coming up, as lists and calendars show it. */
export type Upcoming = {
  /** The same for the same thing at every call. */
  id: string;
  /** Wall instant, epoch ms. */
  at: number;
  title: string;
  detail: string;
  batch: string | null;
  overdue: boolean;
  /** When what it follows from last changed, wall ms. */
  changedAt: number;
};

/** A reminder as found, with the owner by which its last change is looked up. */
export type FoundReminder = Omit<Upcoming, "overdue" | "changedAt"> & { owner: string };
