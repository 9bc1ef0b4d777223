/** What `npm test` is made of: stages that count what passed and what failed. */
import { readFile } from "node:fs/promises";
import { type Ended, localBin, runCommand, runTool } from "./run-command.ts";

export interface Outcome {
  readonly passed: number;
  readonly failed: number;
  /** Shown where something failed. */
  readonly output: string;
}

export interface Stage {
  readonly name: string;
  run(): Promise<Outcome>;
}

/** Long enough for a slow machine, short enough that a stage that hangs is told of; vitest itself ends a test that hangs. */
const timeout = 540_000;
const testsTimeout = 2_700_000;

const outputOf = ({ stdout, stderr, signal, code }: Ended): string =>
  [stdout, stderr, code === 0 ? "" : signal === null ? `ended with ${code}` : `killed by ${signal}`]
    .filter((text) => text.trim() !== "")
    .join("\n");

/** One check that passes where the program ends with 0. */
async function asOne(running: Promise<Ended>): Promise<Outcome> {
  const ended = await running;
  const passed = ended.code === 0;
  return { passed: Number(passed), failed: Number(!passed), output: outputOf(ended) };
}

export function typeCheck(project: string): Stage {
  return {
    name: `types of ${project}`,
    run: () => asOne(runCommand(localBin("tsc"), ["-p", project], { timeout })),
  };
}

export function lint(): Stage {
  const args = [
    "check",
    "--config-path",
    "tests/check/lint.json",
    "--error-on-warnings",
    "--max-diagnostics=200",
  ];
  return { name: "lint", run: () => asOne(runCommand(localBin("biome"), args, { timeout })) };
}

/** Builds the demo programme; a warning is a failure, because the demo is the example that others follow. */
export function demoBuild(to: string): Stage {
  return {
    name: "build of the demo",
    async run() {
      const checked = await runTool(["check", "--content", "content", "--json"], { timeout });
      const built = await runTool(["build", "--fresh", "--content", "content", "--to", to, "--json"], {
        timeout,
      });
      const complaints = [
        complaintOf(checked, "errors", 0),
        complaintOf(checked, "warnings", 0),
        complaintOf(built, "pages"),
      ];
      const failed = complaints.some((complaint) => complaint !== undefined);
      const output = [
        ...complaints.filter((complaint) => complaint !== undefined),
        outputOf(checked),
        outputOf(built),
      ];
      return { passed: Number(!failed), failed: Number(failed), output: output.join("\n") };
    },
  };
}

/**
 * What is wrong with an answer in JSON in which `field` should be `expected`, or at least 1 where nothing is expected;
 * undefined where all is well.
 */
export function complaintOf(
  ended: Pick<Ended, "code" | "stdout">,
  field: string,
  expected?: number,
): string | undefined {
  const answer: unknown = parse(ended.stdout);
  if (typeof answer !== "object" || answer === null) return `no JSON in which to find ${field}`;
  const value: unknown = Reflect.get(answer, field);
  const right = typeof value === "number" && (expected === undefined ? value > 0 : value === expected);
  if (!right) return `${field}: ${String(value)}, expected ${expected ?? "some"}`;
  return ended.code === 0 ? undefined : `ended with ${ended.code}`;
}

function parse(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

/** The tests under a configuration of vitest, counted one by one. */
export function vitest(
  name: string,
  config: string,
  report: string,
  env: Record<string, string> = {},
): Stage {
  return {
    name,
    async run() {
      const args = [
        "run",
        "--config",
        config,
        "--reporter=dot",
        "--reporter=json",
        `--outputFile.json=${report}`,
      ];
      const ended = await runCommand(localBin("vitest"), args, {
        timeout: testsTimeout,
        env: { ...env, NO_COLOR: "1" },
      });
      const text = await readFile(report, "utf8").catch(() => "");
      const { passed, failed, notes } = countTests(text);
      // A run that fails though each test passes: a file that can't be loaded, an error outside any test.
      const unexplained = ended.code !== 0 && failed === 0 ? 1 : 0;
      return { passed, failed: failed + unexplained, output: [...notes, outputOf(ended)].join("\n") };
    },
  };
}

interface Counted {
  readonly passed: number;
  readonly failed: number;
  readonly notes: readonly string[];
}

interface Report {
  readonly testResults: readonly {
    readonly name: string;
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string; readonly fullName: string }[];
  }[];
}

/** Counts a report of vitest. What was skipped has not passed, and a file without a test that ran has failed. */
export function countTests(json: string): Counted {
  const report = parse(json) as Report | undefined;
  if (!Array.isArray(report?.testResults))
    return { passed: 0, failed: 1, notes: ["no report of the tests was written"] };
  const tests = report.testResults.flatMap((file) => file.assertionResults);
  const passed = tests.filter(({ status }) => status === "passed").length;
  const empty = report.testResults
    .filter((file) => file.assertionResults.length === 0)
    .map(({ name }) => name);
  const unrun = tests
    .filter(({ status }) => status !== "passed" && status !== "failed")
    .map(({ fullName }) => fullName);
  const notes = [...empty.map((name) => `no test in ${name}`), ...unrun.map((name) => `not run: ${name}`)];
  return { passed, failed: tests.length - passed + empty.length, notes };
}
