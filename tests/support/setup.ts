/**
 * Runs before every test file. A test without an assertion fails (`requireAssertions`), and a property of fast-check is
 * an assertion: its report is handed to vitest, with the number of runs, so that a property that never ran fails too.
 */
import * as fc from "fast-check";
import { expect } from "vitest";

fc.configureGlobal({
  ...fc.readConfigureGlobal(),
  reporter: (details) => {
    if (details.failed) throw new Error(fc.defaultReportMessage(details), { cause: details.errorInstance });
    expect(details.numRuns, "runs of the property").toBeGreaterThan(0);
  },
});
