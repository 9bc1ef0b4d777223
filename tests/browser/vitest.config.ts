/** Tests in a browser, on the built demo. `BENCHWRIGHT_SITE` names a site that is built already. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("../..", import.meta.url)),
  test: {
    include: ["tests/browser/**/*.test.ts"],
    globalSetup: ["tests/browser/site/global-setup.ts"],
    allowOnly: false,
    expect: { requireAssertions: true, poll: { timeout: 10_000 } },
    // Each worker has a Chromium of its own; two cores carry two.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
