/** The examples of the README are real: their content gives its output, or passes check. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
import { kinds } from "../../src/engine/quiz/kinds.ts";
import { jsonSchemas } from "../../src/validate/schema/index.ts";
import { writeFolder } from "../support/content-folder.ts";

const readme = readFileSync(new URL("../../README.md", import.meta.url), "utf8");
const example = /````markdown\n([\s\S]*?)````/.exec(readme)![1]!;
const outputs = [...readme.matchAll(/```text\n([\s\S]*?)```/g)].map((match) => match[1]!);

async function print(...args: string[]): Promise<string> {
  const printed: string[] = [];
  await run(args, { out: (text) => printed.push(text), err: (text) => printed.push(text) });
  return printed.join("");
}

const folder = (module: string) =>
  writeFolder(
    new Map([
      ["programme.yaml", "name: Our workshop\n"],
      ["modules/box/module.md", module],
    ]),
  );

test("check says what the README says it says", async () => {
  expect(outputs).toHaveLength(2);
  expect(await print("check", "--content", folder(example))).toBe(outputs[0]);
});

/** The module of the example with the first two steps in their right order. */
function mendedModule(): string {
  const sections = example.split(/^(?=## )/m);
  return [sections[0], sections[2], sections[1], ...sections.slice(3)].join("\n");
}

test("with two steps the other way round it is content, and judges an order as the README says", async () => {
  const content = folder(mendedModule());
  expect(await print("check", "--content", content)).toBe("0 errors, 0 warnings\n");
  expect(
    await print("order", "--module", "box", "--content", content, "--given", "clean,guard-off,oil,guard-on"),
  ).toBe(outputs[1]);
});

/** Blocks that stand below the name of their file. */
const files = [...readme.matchAll(/^`([\w./-]+)`[^`\n]*:\n\n```\w+\n([\s\S]*?)```/gm)].map(
  ([, path, text]) => [path!, text!] as const,
);

test("the example of each kind of file passes check, and there is one of each kind of question", async () => {
  const content = writeFolder(
    new Map([
      ...files,
      ["modules/box/module.md", mendedModule()],
      ["modules/box/figures/guard.svg", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10"/>'],
    ]),
  );
  expect(await print("check", "--content", content)).toBe("0 errors, 0 warnings\n");
  expect(files.map(([path]) => path.split("/")[0])).toEqual([
    "programme.yaml",
    "tools",
    "substances",
    "hazards",
    "modules",
  ]);
  const quiz = files.at(-1)![1];
  for (const kind of Object.keys(kinds)) expect(quiz).toMatch(new RegExp(`^    kind: ${kind}$`, "m"));
});

test("the table names every field of the files that it describes, the optional ones in brackets", () => {
  for (const [name, schema] of jsonSchemas()) {
    const row = new RegExp(`^\\| \`${name}(?:s/ID\\.md|\\.yaml)\` \\| (.*) \\|$`, "m").exec(readme)?.[1];
    if (row === undefined) continue;
    const { properties, required } = schema as { properties: object; required: string[] };
    const [needed = "", optional = ""] = row.split("[");
    const namesIn = (text: string) => [...text.matchAll(/`([\w-]+)`/g)].map((match) => match[1]).sort();
    expect(namesIn(needed)).toEqual([...required].sort());
    expect(namesIn(optional)).toEqual(
      Object.keys(properties)
        .filter((field) => !required.includes(field))
        .sort(),
    );
  }
});

test("its commands are commands", async () => {
  const named = [...readme.matchAll(/npx benchwright ([a-z]+)/g)].map((match) => match[1]!);
  expect(new Set(named).size).toBeGreaterThan(4);
  const all = await print("help");
  for (const name of named) expect(all).toMatch(new RegExp(`^( {2}|benchwright )${name} `, "m"));
});
