/**
 * Runs before every test file. A test without an assertion fails (`requireAssertions`), and a property of fast-check is
 * an assertion: its report is handed to vitest, with the number of runs, so that a property that never ran fails too.
 *
 * The cases of a property follow from one seed, so that the same tests say the same of the same code. To look for others,
 * give a seed: PROPERTY_SEED=7 npx vitest run …, as often as one likes.
 */
import * as fc from "fast-check";
import { expect } from "vitest";

fc.configureGlobal({
  ...fc.readConfigureGlobal(),
  seed: Number(process.env.PROPERTY_SEED ?? 20261128),
  reporter: (details) => {
    if (details.failed) throw new Error(fc.defaultReportMessage(details), { cause: details.errorInstance });
    expect(details.numRuns, "runs of the property").toBeGreaterThan(0);
  },
});
