/** What is offered to somebody whose words were not understood fits the moment. */
import { expect, it } from "vitest";
import { examplesNow } from "../../src/session/hearing.ts";
import { kitchenAt } from "./kitchen-moments.ts";

it.each([
  ["brine and trimming", ["it's boiling and the lids are covered", "that's done"]],
  ["filling", ["eight pints filled"]],
  ["boiling-water process", ["it's boiling and the lids are covered"]],
] as const)("the examples at a %s", async (moment, first) => {
  const { state } = await kitchenAt(moment);
  expect(examplesNow(state, undefined).slice(0, first.length)).toEqual(first);
});
