import type { MeaningOf } from "./meaning.ts";

/** A new timer. */
export const timerSet: MeaningOf<"timer-set"> = {
  cost: "changing",
  inPieces: true,
  when: ["always"],
  slots: { minutes: "number", label: "name" },
  example: "set a timer for ten minutes",
  forgiving: true,
  wordings: [
    "[<want>] time (me|us|it|this|that|them) [for] {minutes:duration}",
    `[<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
    {minutes:duration}`,
    "[<want>] (set|start|run|do) {minutes:duration} (for|on) [<the>] {label:thing}",
    "[<want>] (set|put) [<the>] {label:thing} (for|at|on) {minutes:duration}",
    "[<want>] (put|set) (me) (down|up) for {minutes:duration} [<timer-for> {label:thing}]",
    "[a|another|new] timer {minutes:duration} {label:thing}",
    "[a|another|new] timer {label:thing} {minutes:duration}",
    `[<want>] <set-timer> [a|the|another|my|an|a new|us a|me a] timer (for|of|at|on|to)
    {minutes:duration} [<timer-for> {label:thing}]`,
    `[<want>] <set-timer> [a|the|another|my|an|a new] timer <timer-for> [<the>] {label:thing}
    (for|of|at|to) {minutes:duration}`,
    `[<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} timer [<timer-for>
    {label:thing}]`,
    "[<want>] <set-timer> [a|another|an|the|my|a new] {minutes:duration} {label:thing} timer",
    `[<want>] <set-timer> [a|another|an|the|my|a new] {label:thing} timer (for|of|at|to)
    {minutes:duration}`,
    "[<want>] <set-timer> [a|the] timer {minutes:duration} [<timer-for> {label:thing}]",
    "[<want>] <set-timer> [a|the] {label:thing} timer {minutes:duration}",
    "[a|another|new] timer [for|of|on] {minutes:duration} [<timer-for> {label:thing}]",
    "[a|another|new] timer <timer-for> [<the>] {label:thing} [for|of|at] {minutes:duration}",
    "[a|an|another|the|new] {minutes:duration} timer [<timer-for> {label:thing}]",
    "[a] {minutes:duration} {label:thing} timer",
    "[a|the|new] {label:thing} timer [for|of|at|to|is] {minutes:duration}",
    "[<want>] time [<the>] {label:thing} for {minutes:duration}",
    "[<want>] time {minutes:duration} [<timer-for> {label:thing}]",
    "(give|allow) (me|us|the|<the>) {minutes:duration} [<timer-for> {label:thing}]",
    "(give|allow) [<the>] {label:thing} {minutes:duration}",
    `[<want>] (ding|ring|beep|wake|call|buzz|alert|holler at|tell|shout at|nudge|ping|poke|yell
    at|warn|chime|sound|notify|give me a shout|give me a holler|sing out|let me know|call out|
    call me|shout|yell|speak up) [me|us|a bell|the bell|an alarm] (in|after) {minutes:duration}
    [<timer-for> {label:thing}]`,
    `[<want>] (count|count down|countdown|start a countdown of|start counting|do a countdown of|
    start a countdown for|begin a countdown of|run a countdown of) [down|off|me down] [for|
    from] {minutes:duration} [<timer-for> {label:thing}]`,
    "[<want>] (set|put) [an|the] alarm (for|in) {minutes:duration} [<timer-for> {label:thing}]",
    "{minutes:duration} (for|on) {label:thing}",
    "{minutes:duration} on the (clock|timer) [<timer-for> {label:thing}]",
    `[<want>] (give|set|put|get|start|throw|i need|need) [me|us] {minutes:duration} (on|in) (a|
    the|my|another) (timer|clock|countdown) [<timer-for> {label:thing}]`,
    `[<want>] (put|set) {minutes:duration} on [<the>] [{label:thing}|a timer|the timer|the clock|
    a clock|timer|clock] [timer] [<timer-for> {label:thing}]`,
    "{label:thing} {minutes:duration} timer",
    "[<want>] (set|start|put) {minutes:duration} [<timer-for> {label:thing}]",
    "[<want>] (start|begin) (timing|a timer) [for] {minutes:duration} [<timer-for> {label:thing}]",
    "[<want>] (keep|keep an eye on the) time for {minutes:duration} [<timer-for> {label:thing}]",
    "[<want>] keep track of {minutes:duration} [<timer-for> {label:thing}]",
  ],
  spoken: [
    "[set a] timer for {minutes:length}",
    "[set a] {label:thing} timer for {minutes:length}",
    "[set a] timer for the {label:thing} for {minutes:length}",
  ],
  bags: [
    {
      asking: true,
      must: [
        "{minutes:duration}",
        "timer|clock|alarm|countdown|count down|time|count|ring|beep|ding|buzz|wake me",
      ],
      may: `
        <want>|set|start|put|give|get|make|run|begin|need|want|like|for|on|in|a|an|the|me|us|i|
        we|to|at|up|of|another|new|kitchen|egg {label=egg}|have|going|when|it is up|that is|
        started|can|could|(for|called|named|labeled) [<the>] {label:thing}|go|off|after|from
        now|count|down|that lasts|add|is|just|do|create|time|throw|set it|let us|will|would|
        you|with|could|can|may|should|called
      `,
    },
  ],
  lists: {
    "set-timer": `
      set|start|put|make|give me|run|begin|add|get|put on|set up|i need|i want|need|create|i
      would like|set me|start me|give us|can i have|can i get|can we get|can we have|could i
      have|may i have|set us|i could use|let us have|let us set|let us start|start up|set off|
      get me|kick off|have|throw on|set going|start running|start off|fire up|do|i am going to
      need|we need|turn on|put up
    `,
  },
};
