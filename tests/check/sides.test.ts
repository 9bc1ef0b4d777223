/** Styles name sides by the direction of writing, so that a programme written from right to left is set mirrored. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { projectDir } from "../support/project.ts";

const folder = join(projectDir, "layouts/styles");
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
  name.endsWith(".css"),
);

/** What does not turn with the writing: a chevron is a box turned by an eighth, and a picture has a left and a right. */
const stays = [/^border-width: 0 3px 3px 0;$/, /^inset: [\d.]+% auto auto [\d.]+%;$/];

const property =
  /^\s*(?:(?:margin|padding|border|scroll-margin|scroll-padding)-(?:left|right)|left|right|text-align: (?:left|right)|float: (?:left|right))\b/;
const fourSides = /^\s*(?:margin|padding|inset|border-width|border-style): (.+);$/;

/** The values of a shorthand; what stands in brackets is one. */
const values = (text: string): string[] =>
  text.match(/(?:[^\s(]|\([^()]*(?:\([^()]*(?:\([^()]*\)[^()]*)*\)[^()]*)*\))+/g) ?? [];

function namesSides(line: string): boolean {
  if (property.test(line)) return true;
  const [, right, , left] = values(fourSides.exec(line)?.[1] ?? "");
  return left !== undefined && left !== right && !stays.some((one) => one.test(line.trim()));
}

test("no rule speaks of left and right", () => {
  expect(files.length).toBeGreaterThan(20);
  const found = files.flatMap((name) =>
    readFileSync(join(folder, name), "utf8")
      .split("\n")
      .flatMap((line, at) => (namesSides(line) ? [`${name}:${at + 1} ${line.trim()}`] : [])),
  );
  expect(found).toEqual([]);
});

test.each([
  ["margin-left: 1px;", true],
  ["  inset: 0 0 0 auto;", true],
  ["margin: 0 calc(-1 * (var(--a) + 1px)) 0 2px;", true],
  ["margin: 0 calc(-1 * (var(--a) + 1px)) 0 calc(-1 * (var(--a) + 1px));", false],
  ["margin-inline: 0 2px;", false],
])("%s", (line, isFound) => expect(namesSides(line)).toBe(isFound));
