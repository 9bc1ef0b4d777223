/** One type scale, one spacing scale, one list of colours: what a style sheet sets for the screen, it takes from the tokens. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { projectDir } from "../support/project.ts";

const folder = join(projectDir, "layouts/styles");
const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter(
  (name) => name.endsWith(".css") && name !== "tokens.css",
);

interface Rule {
  readonly property: RegExp;
  /** What a value may not hold, where it could come from the tokens. */
  readonly not: RegExp;
  /** Files and values that go their own way, each with the reason. */
  readonly but: readonly (readonly [file: string, value: RegExp])[];
}

const rules: Readonly<Record<string, Rule>> = {
  "sizes of type": {
    property: /^font-size$/,
    not: /[\d.]+(?:rem|px)/,
    // Units of a drawing, not of the page.
    but: [
      ["precedence.css", /^1[39]px$/],
      ["figure.css", /^19px$/],
      ["paper/drawings.css", /^3px$/],
    ],
  },
  "small spaces": {
    property: /^(?:margin|padding|gap|column-gap|row-gap)(?:-[a-z]+)*$/,
    not: /(?<![\d.])0?\.\d+rem/,
    // The grip is a field of points, half a space apart.
    but: [["interactive/arrange.css", /^0\.625rem 0\.375rem$/]],
  },
  colours: {
    property: /^(?:color|background|background-color|fill|stroke|border[a-z-]*|outline[a-z-]*)$/,
    not: /#[\da-f]{3,8}\b|\b(?:rgb|hsl|oklch)a?\(/,
    // Pictures keep their colours in the dark, and so do the numbers and marks on them.
    but: [
      ["figure.css", /^#(?:fff|fbf8f1|1f2a30)$/],
      ["interactive/quiz.css", /^\dpx solid #(?:9a3b1e|fff)$/],
    ],
  },
};

/** Declarations of a file without those in data addresses, comments and for paper, where lengths are millimetres and points. */
function* declarations(text: string): Generator<readonly [property: string, value: string]> {
  const plain = text.replaceAll(/\/\*.*?\*\//gs, "").replaceAll(/url\(".*?"\)/g, "url()");
  for (const [, property, value] of plain.matchAll(/^\s*([a-z-]+):\s*([^;{]+);/gm)) yield [property!, value!];
}

test.each(Object.entries(rules))("%s come from the tokens", (_, { property, not, but }) => {
  expect(files.length).toBeGreaterThan(20);
  const excused = new Set<string>();
  const found = files.flatMap((file) =>
    [...declarations(readFileSync(join(folder, file), "utf8"))]
      .filter(([name, value]) => property.test(name) && not.test(value))
      .filter(([, value]) => {
        const excuse = but.find(([where, what]) => where === file && what.test(value));
        if (excuse !== undefined) excused.add(String(excuse));
        return excuse === undefined;
      })
      .map(([name, value]) => `${file}: ${name}: ${value}`),
  );
  expect(found).toEqual([]);
  // An excuse that nobody needs any more is taken away.
  expect(excused.size).toBe(but.length);
});
