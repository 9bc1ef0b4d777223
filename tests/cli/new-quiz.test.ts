import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { run } from "../../src/cli/run.ts";
import { changed, type Files, soundFiles, writeFolder } from "../support/content-folder.ts";

async function newQuiz(files: Files): Promise<{ quiz: string; checked: string }> {
  const folder = writeFolder(new Map([...files].filter(([path]) => !path.endsWith("quiz.yaml"))));
  const printed: string[] = [];
  const output = { out: (text: string) => printed.push(text), err: (text: string) => printed.push(text) };
  expect(await run(["new", "quiz", "box", "--content", folder], output)).toBe(0);
  printed.length = 0;
  await run(["check", "--content", folder], output);
  return { quiz: readFileSync(join(folder, "modules/box/quiz.yaml"), "utf8"), checked: printed.join("") };
}

test("a new quiz offers the mistakes of the steps as wrong options, in comments", async () => {
  const written =
    'mistakes:\n  - mistake: |\n      Pulling "hard"\n      at it\n    result: "It: breaks # now"';
  const { quiz, checked } = await newQuiz(
    changed("modules/box/module.md", "refit: [wheel]", `refit: [wheel]\n${written}`),
  );
  expect(quiz).toContain(
    '#     - {text: "Pulling \\"hard\\" at it", why: "It: breaks # now"}   # wheel-on\n',
  );
  expect(checked).toMatch(/^0 errors|\n0 errors/);
});

test("without mistakes it offers none", async () => {
  const { quiz } = await newQuiz(soundFiles);
  expect(quiz).not.toContain("#     -");
});
