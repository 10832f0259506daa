import { describe, expect, it } from "vitest";
import { parseIso } from "../../src/kitchen/time.ts";
import { readTemperatureLog } from "../../src/reckon/temperature-log.ts";
import { good, wrong } from "./good-result.ts";

const options = {
  parseIso: (text: string) => parseIso(text, "America/Denver"),
  unitIfUnsaid: "F" as const,
};
const log = (text: string) => readTemperatureLog(text, "log.csv", options);

describe("a temperature log", () => {
  it.each([
    ["minutes and a heading", "minutes,temp_F\n5,180\n7.5,185"],
    ["no heading", "5,180F\n7.5,185F"],
    ["semicolons, a BOM and CRLF", "\uFEFFTime (min);Temperature (F)\r\n5;180\r\n7.5;185\r\n"],
    ["columns the other way round", "tempF\ttime\n180\t5\n185\t7.5"],
    ["seconds", "seconds,temperature F\n300,180\n450,185"],
    ["hours", "time (h),temperature F\n0.5,180\n0.541666667,185"],
    ["ISO local times", "time,temp F\n2027-08-14T08:00:00,180\n2027-08-14T08:02:30,185"],
    ["ISO times with an offset", "time,F\n2027-08-14T14:00:00Z,180\n2027-08-14T08:02:30-06:00,185"],
    ["quotes, comments and blank lines", '# probe 2\n"time","temp F"\n\n"5","180"\n"7.5","185"\n'],
    ["Celsius", "time,celsius\n5,82.2222222\n7.5,85"],
  ])("with %s reads as minutes and Celsius", (_, text) => {
    const { readings } = good(log(text));
    expect(readings).toHaveLength(2);
    expect(readings[0]?.minutes).toBe(0);
    expect(readings[1]?.minutes).toBeCloseTo(2.5, 5);
    expect(readings[0]?.temperatureC).toBeCloseTo(82.222, 3);
    expect(readings[1]?.temperatureC).toBeCloseTo(85, 6);
  });

  it("says when no unit was given and the reference's was taken", () => {
    expect(good(log("time,temp\n0,180\n1,181")).notes[0]).toContain("taken as F");
    expect(good(log("time,temp F\n0,180\n1,181")).notes).toEqual([]);
  });

  it("keeps counting across the hour when clocks are set back", () => {
    const text = "time,F\n2027-11-07T01:30:00-06:00,180\n2027-11-07T01:30:00-07:00,180";
    expect(good(log(text)).readings[1]?.minutes).toBe(60);
  });

  it.each([
    ["nothing", "", "it is empty"],
    ["one column", "180\n181", "only one column"],
    ["no time column", "place,temp F\nlid,180", "names no time column"],
    ["no temperature column", "time,place\n0,lid", "names no temperature column"],
    ["no times", "time,temp F\nsoon,180\nlater,181", "line 2"],
    ["an empty time", "time,temp F\n0,180\n,181", "line 3"],
    ["words for temperature", "time,temp F\n0,hot\n1,hotter", "is not a temperature"],
    ["a broken probe", "time,temp F\n0,180\n1,1562", "check the probe"],
    ["times that run backwards", "time,temp F\n5,180\n4,181", "line 3: the time runs backwards"],
    ["one reading", "time,temp F\n5,180", "two or more are needed"],
  ])("with %s is an error that names the file", (_, text, reason) => {
    const message = wrong(log(text));
    expect(message).toContain("log.csv");
    expect(message).toContain(reason);
    expect(message).not.toContain("\n");
  });

  it("refuses a file of several megabytes without reading it through", () => {
    expect(wrong(log("0,180\n".repeat(1_000_000)))).toContain("over 4 MB");
  });
});
