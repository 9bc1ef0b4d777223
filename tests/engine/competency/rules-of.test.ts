/** The stricter of two rules, field by field: over random rules, and by examples. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { SignOffRules } from "../../../src/engine/competency/rules.ts";
import { strictest, usualRules } from "../../../src/engine/competency/rules-of.ts";

const count = fc.integer({ min: 0, max: 4 });
const maybe = (max: number) => fc.option(fc.integer({ min: 1, max }), { nil: undefined });
const anyRules: fc.Arbitrary<SignOffRules> = fc.record({
  pass: fc.constantFrom(0.5, 0.8, 1),
  practice: fc.boolean(),
  dryRun: fc.boolean(),
  watched: count,
  unaided: count,
  occasions: count,
  mentors: count,
  months: maybe(36),
  newRevision: fc.constantFrom("holds" as const, "again" as const),
  minimumAge: maybe(21),
  induction: fc.option(fc.constantFrom("Fire drill", "Lathe talk"), { nil: undefined }),
  mentorPresent: fc.boolean(),
  traineesPerMentor: maybe(6),
});

test("is at least as strict as each, the same both ways round, and changes nothing of itself", () => {
  fc.assert(
    fc.property(anyRules, anyRules, (a, b) => {
      const both = strictest(a, b);
      expect(strictest(a, a)).toEqual(a);
      expect({ ...both, induction: "" }).toEqual({ ...strictest(b, a), induction: "" });
      for (const one of [a, b]) {
        expect(both.pass).toBeGreaterThanOrEqual(one.pass);
        expect(both.unaided).toBeGreaterThanOrEqual(one.unaided);
        expect(both.months ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(
          one.months ?? Number.POSITIVE_INFINITY,
        );
        expect(both.minimumAge ?? 0).toBeGreaterThanOrEqual(one.minimumAge ?? 0);
        expect(both.mentorPresent || !one.mentorPresent).toBe(true);
        expect(both.induction ?? "").toContain(one.induction ?? "");
      }
    }),
  );
});

test("what a module leaves out is the programme's", () => {
  expect(strictest(usualRules, {})).toEqual(usualRules);
  expect(strictest(usualRules, { unaided: 3, pass: 0.5, months: 24, induction: "Fire drill" })).toEqual({
    ...usualRules,
    unaided: 3,
    months: 24,
    induction: "Fire drill",
  });
});

test("each induction is asked for, once", () => {
  const rules = { ...usualRules, induction: "Fire drill; Lathe talk" };
  expect(strictest(rules, { induction: "Lathe talk; Spring talk" }).induction).toBe(
    "Fire drill; Lathe talk; Spring talk",
  );
});
