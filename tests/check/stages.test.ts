import { describe, expect, test } from "vitest";
import { complaintOf, countTests } from "../support/stages.ts";

const file = (...statuses: string[]) => ({
  name: "a.test.ts",
  status: "passed",
  assertionResults: statuses.map((status, i) => ({ status, fullName: `test ${i}` })),
});
const count = (...testResults: ReturnType<typeof file>[]) => countTests(JSON.stringify({ testResults }));

describe("counting a report of tests", () => {
  test("passed and failed ones", () => {
    expect(count(file("passed", "passed"), file("failed"))).toEqual({ passed: 2, failed: 1, notes: [] });
  });

  test("one that was skipped has not passed", () => {
    expect(count(file("passed", "skipped", "todo"))).toMatchObject({ passed: 1, failed: 2 });
  });

  test("a file without tests has failed", () => {
    expect(count(file("passed"), file())).toMatchObject({
      passed: 1,
      failed: 1,
      notes: ["no test in a.test.ts"],
    });
  });

  test("no report is a failure", () => {
    expect(countTests("")).toMatchObject({ passed: 0, failed: 1 });
    expect(countTests("{}")).toMatchObject({ passed: 0, failed: 1 });
  });
});

describe("the answer of a build", () => {
  test.each([
    [0, '{"pages": 3}', "pages", undefined, undefined],
    [0, '{"pages": 0}', "pages", undefined, "pages: 0, expected some"],
    [0, '{"warnings": 2}', "warnings", 0, "warnings: 2, expected 0"],
    [0, "{}", "warnings", 0, "warnings: undefined, expected 0"],
    [1, '{"pages": 3}', "pages", undefined, "ended with 1"],
    [0, "a line of text", "pages", undefined, "no JSON in which to find pages"],
  ])("%s %s: %s", (code, stdout, field, expected, complaint) => {
    expect(complaintOf({ code, stdout }, field, expected)).toBe(complaint);
  });
});
