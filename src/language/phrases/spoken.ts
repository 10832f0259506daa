// data table
import type { Family } from "./family.ts";

/**
 * The wordings most used aloud, the commonest of each family first. They are what the recogniser
 * listens for; understanding knows them like all the others. The families are short on purpose:
 * what cannot be said cannot be misheard. Left out are short words that noise is taken for
 * ("done", "next", "okay") and wordings that sound like another's ("hold on" like "how long").
 */
export const SPOKEN: readonly Family[] = [
  // --- at any moment
  { intent: "what-now", phrases: ["what now", "what do i do now"] },
  { intent: "what-next", phrases: ["what is next", "what comes next"] },
  { intent: "overview", phrases: ["what is running"] },
  {
    intent: "time-left",
    phrases: [
      "(how long|how much longer) [for the {target:open}]",
      "how much time is left",
      "how long have the {target:open} got",
    ],
  },
  {
    intent: "finish-time",
    phrases: [
      "when will the {target:open} be done",
      "when will (it|they) be done",
      "when do the jars come out",
    ],
  },
  { intent: "repeat", phrases: ["say (that|it) again"] },
  { intent: "undo", phrases: ["undo that"] },
  { intent: "acknowledge", phrases: ["got it", "thank you"] },
  { intent: "hush", phrases: ["hush [for {minutes:duration}]", "be quiet"] },
  { intent: "unhush", phrases: ["talk to me", "you can talk again"] },
  { intent: "help", phrases: ["help", "what can i say"] },
  {
    intent: "timer-set",
    phrases: [
      "[set a] timer for {minutes:length}",
      "[set a] {label:thing} timer for {minutes:length}",
      "[set a] timer for the {label:thing} for {minutes:length}",
    ],
  },
  {
    intent: "timer-add",
    phrases: ["add {minutes:length} [to the {target:known-timer} timer]", "{minutes:more}"],
  },
  { intent: "timer-cancel", phrases: ["(cancel|stop) the [{target:known-timer}] timer"] },
  {
    intent: "begin",
    phrases: ["start [the] {lot}", "let us make [the] {lot}", "start the <pot>", "the <pot> is on"],
  },
  { intent: "plan", phrases: ["plan the day", "what is the plan"] },
  { intent: "how-much", phrases: ["{what:asked}"] },
  // --- while something is running
  {
    intent: "done",
    phrases: ["that is done", "the {target} (is|are) done", "finished with the {target}"],
  },
  {
    intent: "done",
    set: { target: "jars" },
    phrases: ["the jars are out", "jars are out [of the canner]"],
  },
  { intent: "done", set: { target: "heat off" }, phrases: ["[the] heat is off"] },
  { intent: "done", set: { target: "canner" }, phrases: ["[the] canner is (ready|hot)"] },
  { intent: "correct-time", phrases: ["that was {at:ago}"] },
  { intent: "hold", phrases: ["hold the {target}", "hold everything"] },
  { intent: "resume", phrases: ["carry on [with the {target}]", "resume [the {target}]"] },
  { intent: "abandon", phrases: ["abandon the {target}"] },
  { intent: "focus", phrases: ["switch to the {target}", "go to the {target}"] },
  // --- heat
  {
    intent: "boiling",
    phrases: [
      "it is boiling [now|and the lids are covered {covered=true}]",
      "the {target} (is|are) boiling",
      "(it is|we are) at a [full|rolling] boil",
      "(full|rolling) boil",
      "we have a [full|rolling] boil",
    ],
  },
  {
    intent: "boil-lost",
    phrases: [
      "it stopped boiling",
      "the {target} stopped boiling",
      "it went off the boil",
      "we lost the boil",
      "the boil stopped",
    ],
  },
  {
    intent: "temperature",
    phrases: [
      "[it is at] {value:temperature} degrees",
      "the {target} is at {value:temperature} degrees",
    ],
  },
  // --- the canner
  {
    intent: "loaded",
    phrases: ["the jars are in [the canner]", "the canner is loaded", "they are in the canner"],
  },
  { intent: "water-low", phrases: ["the water is low", "the water is below the lids"] },
  {
    intent: "pressure",
    phrases: [
      "{value:number} {unit=psi} pounds [of pressure|on the gauge]",
      "[it is|the gauge is|we are] at {value:number} {unit=psi} pounds",
      "the gauge (says|reads) {value:number} {unit=psi} [pounds]",
    ],
  },
  { intent: "pressure", set: { value: 0, unit: "psi" }, phrases: ["[the] pressure is zero"] },
  {
    intent: "pressure-lost",
    phrases: ["the pressure dropped", "we lost pressure", "the pressure is down"],
  },
  { intent: "weight-rocking", phrases: ["the weight is (rocking|jiggling)"] },
  {
    intent: "venting",
    phrases: ["steam is coming out", "it is venting", "a full column of steam"],
  },
  // --- jars
  {
    intent: "jars-filled",
    phrases: [
      "{count:whole} {size} filled",
      "{count:whole} jars filled",
      "[i] filled {count:whole} {size}",
      "that is {count:whole} {size}",
      "{count:whole} {size}",
    ],
  },
  { intent: "set-aside", phrases: ["{count:whole} jar set aside", "set {count:whole} jar aside"] },
  {
    intent: "jar-broken",
    phrases: ["a jar broke {count=1}"],
  },
  {
    intent: "sealed",
    set: { all: true },
    phrases: ["all sealed", "they are all sealed", "everything sealed"],
  },
  { intent: "sealed", phrases: ["{count:whole} sealed", "(jar|jars|number) {jars} sealed"] },
  {
    intent: "seal-failed",
    phrases: [
      "(jar|jars|number) {jars} did not seal",
      "(jar|jars) {jars} failed",
      "{count:whole} did not seal",
      "{count:whole} failed",
    ],
  },
  {
    intent: "disposition",
    set: { what: "refrigerate" },
    phrases: ["put (it|them) in the fridge", "refrigerate (it|them)", "in the fridge"],
  },
  { intent: "disposition", set: { what: "freeze" }, phrases: ["freeze (it|them)"] },
  {
    intent: "disposition",
    set: { what: "reprocess" },
    phrases: ["reprocess (it|them)", "process (it|them) again"],
  },
  { intent: "disposition", set: { what: "discard" }, phrases: ["throw (it|them) out"] },
  { intent: "disposition", set: { what: "carried-on" }, phrases: ["carry on as it is"] },
  // --- answers
  { intent: "yes", phrases: ["yes", "yeah", "yes it (did|is)", "yes they are", "that is right"] },
  { intent: "no", phrases: ["no", "no it did not", "no they are not", "nope"] },
  {
    intent: "altitude",
    phrases: [
      "{feet:number} feet",
      "(we are|it is) at {feet:number} feet",
      "the altitude is {feet:number} [feet]",
    ],
  },
];
