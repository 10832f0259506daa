import type { MeaningOf } from "./meaning.ts";

/** Stops a timer. */
export const timerCancel: MeaningOf<"timer-cancel"> = {
  cost: "changing",
  when: ["timer"],
  slots: { target: "name" },
  example: "cancel the timer",
  forgiving: true,
  wordings: [
    "[<want>] (kill|cancel|stop|delete|clear|drop|end) [<the>] {target:known-timer}",
    "(i am|we are) done with [<the>] [{target:timer}] timer",
    "[<the>] {target:timer} timer is (done with|no longer needed|not needed)",
    "(stop|quit|no more) timing [<the>] {target:timer}",
    "(stop|quit) timing",
    "[<want>] <kill> [<the>|that|this] timer [now|off|please] [<timer-for> [<the>] {target:timer}]",
    "[<want>] <kill> [<the>|that] {target:timer} (timer|countdown|alarm) [off]",
    "[<want>] (turn|shut|switch|call|take) [<the>|that] [{target:timer}] timer off",
    `[<want>] (kill|cancel|delete|clear|stop) [<the>] (timer|countdown|alarm|clock) (for|on|
    named|called) [<the>] {target:timer}`,
    "[<want>] <kill> [<the>|all the|all|all of the] (timers|timer|countdown|countdowns)",
    "[i|we] (do not|no longer) need [<the>] [{target:timer}] timer [any more|any longer|now]",
    "no [more] (need for) [<the>] [{target:timer}] timer",
    "never mind [about] [<the>] [{target:timer}] timer",
    `[<the>] [{target:timer}] timer (can go|is not needed|off|is off|is not needed any more|can
    stop)`,
    "no more [{target:timer}] timer|[<the>] {target:timer} timer cancel",
  ],
  spoken: ["(cancel|stop) the [{target:known-timer}] timer"],
  bags: [
    {
      asking: true,
      must: ["timer|countdown|alarm", "<kill>|do not need|no longer need|never mind|no more|off"],
      may: `
        <want>|the|that|my|this|for|on|a|i|we|any more|any longer|now|all|one|it|<the>|up|of|
        can|timers|[<the>] {target:timer} timer|(for|on) [<the>] {target:timer}|please|go|
        running|is|just
      `,
    },
  ],
  lists: {
    kill: `
      kill|cancel|stop|delete|clear|forget|turn off|drop|remove|end|shut off|get rid of|quit|
      scratch|dump|never mind|ditch|lose|switch off|take off|forget about|drop off|call off|
      scrap|kill off|dismiss|abort|nix|knock off|erase|wipe|can|halt|disable|discard|toss|take
      away|take down
    `,
  },
};
