/** What the page for authors shows of each code is what `check` says to the example by which the code is tested. */
import { expect, test } from "vitest";
import { toldExamples } from "./told-examples.ts";

const head = `/**
 * An example of each code as \`check\` tells it, for the page for authors. Not written by hand: it is made from the examples by
 * which codes are tested, by \`npx vitest run --config tests/vitest.config.ts tests/validate/told-examples.test.ts -u\`.
 */
// biome-ignore-all format: made by a test, which holds it to what check says.
import type { Code } from "../model/codes.ts";

export const toldExamples: ReadonlyMap<Code, string> = new Map<Code, string>([
`;

/** Of the source: a template keeps the lines as they are read. */
const rowOf = ([code, text]: readonly [string, string]): string =>
  `  ["${code}", \`${text.replace(/[`\\]|\$\{/g, (sign) => `\\${sign}`)}\`],\n`;

test("the kept examples are what check says", { timeout: 120_000 }, async () => {
  const rows = [...(await toldExamples())].map(rowOf);
  await expect(`${head}${rows.join("")}]);\n`).toMatchFileSnapshot("../../src/validate/told-examples.ts");
});
