/** Tests that need no browser: engine, stages, reference values, laws. Those in a browser have a configuration of their own. */
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: fileURLToPath(new URL("..", import.meta.url)),
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**"],
    setupFiles: ["tests/support/setup.ts"],
    allowOnly: false,
    expect: { requireAssertions: true },
    // Two cores: more workers only wait for one another.
    maxWorkers: 2,
    testTimeout: 60_000,
    hookTimeout: 60_000,
  },
});
