/** What `npm test` runs: everything that must hold. Prints a line a stage, what failed in full, and one closing line. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { needChromium } from "./support/chromium.ts";
import { demoBuild, lint, type Outcome, type Stage, typeCheck, vitest } from "./support/stages.ts";

const temporary = await mkdtemp(join(tmpdir(), "benchwright-test-"));
const site = join(temporary, "site");

const stages: readonly Stage[] = [
  typeCheck("tsconfig.json"),
  typeCheck("src/engine/tsconfig.json"),
  typeCheck("src/browser/tsconfig.json"),
  lint(),
  vitest("tests without a browser", "tests/vitest.config.ts", join(temporary, "unit.json")),
  demoBuild(site),
  {
    name: "tests in a browser",
    async run() {
      const chromium = await needChromium(console.log);
      const env = { CHROMIUM_PATH: chromium, BENCHWRIGHT_SITE: site };
      return vitest("", "tests/browser/vitest.config.ts", join(temporary, "browser.json"), env).run();
    },
  },
];

/** A stage that crashes, or in which nothing was tested, has failed. */
async function outcomeOf(stage: Stage): Promise<Outcome> {
  try {
    const outcome = await stage.run();
    if (outcome.passed + outcome.failed > 0) return outcome;
    return { passed: 0, failed: 1, output: `nothing was tested\n${outcome.output}` };
  } catch (error) {
    return { passed: 0, failed: 1, output: error instanceof Error ? error.message : String(error) };
  }
}

for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => process.exit(1));

let passed = 0;
let failed = 0;
for (const stage of stages) {
  const began = performance.now();
  const outcome = await outcomeOf(stage);
  passed += outcome.passed;
  failed += outcome.failed;
  const seconds = ((performance.now() - began) / 1000).toFixed(1);
  console.log(
    `${outcome.failed === 0 ? "ok  " : "FAIL"} ${stage.name}: ${outcome.passed} passed, ${outcome.failed} failed (${seconds} s)`,
  );
  if (outcome.failed > 0) console.log(`${outcome.output.trim()}\n`);
}
await rm(temporary, { recursive: true, force: true });
console.log(`${passed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
