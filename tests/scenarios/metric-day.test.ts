/** A metric kitchen: what is said, asked and shown, and how its answers are taken. */
import { describe, expect, it } from "vitest";
import { historyOf } from "../../src/kitchen/events.ts";
import { MadeUpKitchen } from "../../src/session/rehearsal/made-up-kitchen.ts";
import { SILENT } from "../../src/session/short-session.ts";
import { view } from "../../src/session/view/view.ts";
import { theLibrary } from "./play.ts";

const LEFT =
  /\b(?:inch(?:es)?|feet|ft|psi|lb|ounces?|Fahrenheit|gallons?|(?:cups?|pounds?)(?!\)| weight))\b/i;

/** Up to hot beans beside a hot canner. */
const READY = ["done", "the canner's ready", "it's boiling", "done"];

function kitchen(gauge?: "dial") {
  const canner = { id: "canner", name: "canner", holds: { pint: 9, quart: 7 } };
  const made = new MadeUpKitchen({
    library: theLibrary(),
    startMs: Date.parse("2027-08-14T08:00:00-06:00"),
    zone: "America/Denver",
    setUp: [
      {
        type: "kitchen-set",
        units: "metric",
        canners: [
          gauge
            ? { ...canner, gauge: { kind: gauge, testedSeason: 2027, readsHighPsi: 0 } }
            : canner,
        ],
        t: 0,
      },
    ],
    version: "0",
    voice: () => SILENT,
  });
  const say = (words: string, minutes = 1) => {
    made.clock.advance(minutes * 60_000);
    made.session.tick();
    return made.session.hear(words).lines.join(" ");
  };
  const shown = () => {
    const { session, lines } = made;
    const parts = { lines, notRecorded: false, pending: session.waitingFor };
    return view(session.state, session.now(), parts);
  };
  return { made, say, shown };
}

/** All that a view shows, without what the person said. */
function texts(shown: ReturnType<ReturnType<typeof kitchen>["shown"]>): string {
  const { hands, heat, rest, question, key, keys, next, clock, place } = shown;
  const items = [...hands, ...heat, ...rest].flatMap((one) => [
    one.say,
    one.brief,
    ...(one.amounts ?? []),
  ]);
  const labels = keys.map(({ label }) => label);
  return [
    ...items,
    question?.text,
    question?.answer,
    key.text,
    ...labels,
    ...next,
    clock?.say,
    place,
  ]
    .filter(Boolean)
    .join(" \n");
}

describe("a metric kitchen", () => {
  it("says, asks and shows a day of beans in metric units alone", () => {
    const { made, say, shown } = kitchen();
    const words = [
      ...[
        "1890",
        "start the dilly beans, two kilos",
        "what now",
        "how much salt",
        "start the brine",
      ],
      ...["it's boiling", "five percent", "what headspace", "done", "the canner's ready"],
      ...["four pints filled", "1.3 centimeters", "new lids", "the jars are in", "what now"],
      ...["it's boiling and the lids are covered", "how long"],
    ];
    for (const one of words) {
      say(one);
      expect(texts(shown()), one).not.toMatch(LEFT);
    }
    const said = made.lines.filter(({ kind }) => kind !== "heard").map(({ text }) => text);
    for (const text of said) expect(text).not.toMatch(LEFT);
    expect(said.join(" ")).toContain("1,890 meters");
    expect(shown().place).toContain("1890 m");
  });

  it("takes a bare altitude for meters and a bare headspace for centimeters", () => {
    const { made, say } = kitchen();
    say("1890");
    expect(made.session.state.kitchen.altitudeFt).toBe(6201);
    say("start the dilly beans, two kilos");
    for (const one of ["start the brine", "it's boiling", "five percent", "done"]) say(one);
    say("the canner's ready", 30);
    say("four pints filled");
    say("1.3");
    const batch = Object.values(made.session.state.batches)[0];
    const headspace = historyOf(made.session.state).find(
      (event) => event.type === "confirmed" && event.factor === "headspace",
    );
    expect(batch).toBeDefined();
    expect(headspace).toMatchObject({ held: true, value: 0.5 });
  });

  it.each([
    ["half an inch", 0.5],
    ["13 millimeters", 0.5],
    ["1.3 centimeters", 0.5],
  ])("takes a unit that is said for that unit: %s", (words, inches) => {
    const { made, say } = kitchen();
    say("1890 meters");
    say("start the dilly beans, two kilos");
    for (const one of ["start the brine", "it's boiling", "five percent", "done"]) say(one);
    say("the canner's ready", 30);
    say("four pints filled");
    say(words);
    const headspace = historyOf(made.session.state).find(
      (event) => event.type === "confirmed" && event.factor === "headspace",
    );
    expect(headspace).toMatchObject({ held: true, value: inches });
  });

  it("names the gauge's own pounds beside its kilopascals", () => {
    const { made, say } = kitchen("dial");
    say("1890 meters");
    say("start the snap beans, four kilos");
    for (const one of [
      ...READY,
      "nine pints filled",
      "the jars are in",
      "it's venting",
      "what now",
    ]) {
      say(one, 20);
    }
    const said = made.lines.map(({ text }) => text).join(" ");
    expect(said).toMatch(/the dial shows \d+ kilopascals \(1\d pounds\)/);
  });
});
