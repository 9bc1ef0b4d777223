/** The example of the README is real: its content gives its output. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
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

test("with two steps the other way round it is content, and judges an order as the README says", async () => {
  const sections = example.split(/^(?=## )/m);
  const mended = [sections[0], sections[2], sections[1], sections[3]].join("\n");
  const content = folder(mended);
  expect(await print("check", "--content", content)).toBe("0 errors, 0 warnings\n");
  expect(
    await print("order", "--module", "box", "--content", content, "--given", "clean,guard-off,guard-on"),
  ).toBe(outputs[1]);
});
