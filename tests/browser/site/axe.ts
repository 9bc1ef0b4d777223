/** Accessibility rules that a machine can check: axe-core, WCAG 2.2 A and AA and its best practices. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { AxeResults, RunOptions } from "axe-core";
import type { Page } from "playwright-core";

const source = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const options: RunOptions = {
  runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
  rules: { "target-size": { enabled: true } },
  resultTypes: ["violations"],
};

/** What breaks a rule on the page as it stands, as "rule: element: what is wrong". Throws where axe has looked at nothing. */
export async function axeViolations(page: Page): Promise<string[]> {
  await page.evaluate(source);
  const results = await page.evaluate<AxeResults, RunOptions>(
    (settings) =>
      (Reflect.get(globalThis, "axe") as { run(settings: RunOptions): Promise<AxeResults> }).run(settings),
    options,
  );
  if (results.passes.length === 0) throw new Error("axe has checked nothing");
  return results.violations.flatMap(({ id, nodes }) =>
    nodes.map(
      ({ target, failureSummary }) =>
        `${id}: ${target.join(" ")}: ${failureSummary?.replaceAll(/\s+/g, " ")}`,
    ),
  );
}
