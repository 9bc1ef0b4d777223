import { describe, expect, test } from "vitest";
import { sheetOf, withAsLeft } from "../../../src/browser/desk/sheet.ts";
import { cardOf, releaseOf } from "../../support/competency.ts";

const phases = [
  { id: "strip", title: "Taking apart" },
  { id: "build", title: "Putting together" },
];
const step = (id: string, more: { check?: string; critical?: boolean; phase?: string }) => ({
  ...{ id, title: id, check: undefined, critical: false, phase: undefined },
  ...more,
});

const idsOf = (release: ReturnType<typeof releaseOf>) =>
  sheetOf(cardOf(release)).map(({ id, checks }) => [id, checks.map(({ step }) => step).join(" ")]);

describe("an observation sheet", () => {
  test("asks for checks and critical steps, phase by phase, in the order of work", () => {
    const steps = [
      step("a", { critical: true, phase: "strip" }),
      step("b", { phase: "strip" }),
      step("c", { check: "it turns", phase: "build" }),
      step("d", { check: "it stops", phase: "strip" }),
    ];
    expect(idsOf(releaseOf("motor", { phases, steps }))).toEqual([
      ["strip", "a d"],
      ["build", "c"],
    ]);
  });

  test("asks for every step where none is marked, and for the whole where there are no phases", () => {
    expect(idsOf(releaseOf("motor", { steps: [step("a", {}), step("b", {})] }))).toEqual([["", "a b"]]);
  });

  test("puts as-left checks into words", () => {
    expect(withAsLeft(" Calm. ", ["play (0.1 mm)", "no oil"])).toBe(
      "Calm.\nAs left, seen: play (0.1 mm); no oil.",
    );
    expect(withAsLeft("", [])).toBe("");
  });
});
