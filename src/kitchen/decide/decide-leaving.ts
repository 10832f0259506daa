/** Deciding on a warning ahead of an end, and on leaving the program. */
import { stageClock } from "../agenda.ts";
import { isLoad } from "../owners.ts";
import { ownerName, upper } from "../spoken-names.ts";
import { isOver } from "../stage-run.ts";
import { isOfCanner, rulesOf } from "../stages/kinds.ts";
import { MINUTE_MS } from "../time.ts";
import { watchedRuns } from "../watched.ts";
import { decideResume } from "./decide-batch.ts";
import { type Candidate, candidateStages } from "./decide-stages.ts";
import { askYes, type Deciding, type Decision, done, refused } from "./decision.ts";

/** The furthest ahead that anybody is warned, minutes. */
const MOST_AHEAD = 24 * 60;

/**
 * A warning before the end of what was named, else of what is watched, else of what is due first.
 */
export function decideWarnAhead(deciding: Deciding<"warn-ahead">): Decision {
  const { state, now, wish } = deciding;
  const { minutes } = wish.command.slots;
  if (!(minutes > 0 && minutes <= MOST_AHEAD)) return refused("How many minutes before?");
  const one = soonest(deciding);
  if (!one) return refused("Nothing is running that I could warn you about.");
  const { owner, run } = one;
  const dueAt = stageClock(run)?.dueAt;
  if (dueAt !== undefined && dueAt - minutes * MINUTE_MS <= now) {
    return refused(`${upper(run.spec.title)} of ${ownerName(state, owner)} ends before that.`);
  }
  return done({ type: "warning-set", owner: owner.id, stage: run.id, minutes, t: now });
}

function soonest(deciding: Deciding<"warn-ahead">): Candidate | undefined {
  const timed = candidateStages(deciding, deciding.wish.command.ref, (owner, run) => {
    // What happens in the canner is its load's.
    if (isOver(run) || (!isLoad(owner) && isOfCanner(run.spec))) return false;
    return stageClock(run) !== undefined || rulesOf(run.spec).role === "treatment";
  });
  const due = ({ run }: Candidate) => stageClock(run)?.dueAt ?? Number.POSITIVE_INFINITY;
  const rank = ({ run }: Candidate) => (rulesOf(run.spec).watched ? 0 : 1);
  return timed.toSorted((a, b) => rank(a) - rank(b) || due(a) - due(b))[0];
}

/** Being back: what was held goes on. */
export function decideBack(deciding: Deciding<"back">): Decision {
  const { state, wish } = deciding;
  const held = Object.values(state.batches).some((batch) => batch.state === "held");
  const command = { ...wish.command, intent: "resume", slots: {} } as const;
  return held ? decideResume({ ...deciding, wish: { ...wish, command } }) : { kind: "tell" };
}

/** Leaves the program; while something must be kept, only after a yes. */
export function decideQuit({ state, wish }: Deciding<"quit">): Decision {
  const [kept] = watchedRuns(state);
  if (kept && wish.confirmed !== true) {
    const name = `${ownerName(state, kept.owner)}, ${kept.run.spec.title},`;
    return askYes(
      wish,
      `${upper(name)} must be watched. Close all the same? Minutes while I am closed count only ` +
        "if you can vouch for them. Say yes or no.",
    );
  }
  return { kind: "leave" };
}
