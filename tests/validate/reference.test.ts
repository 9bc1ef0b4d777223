/** What the page for authors shows is true: its examples pass the schemas, and every field has words and one. */
import { expect, test } from "vitest";
import { parse } from "yaml";
import { kinds } from "../../src/engine/quiz/kinds.ts";
import { exampleModule } from "../../src/model/authors-guide.ts";
import { examples } from "../../src/validate/schema/examples.ts";
import { schemas } from "../../src/validate/schema/index.ts";
import { authorsGuide } from "../../src/validate/schema/reference.ts";
import { callCommand } from "../support/call-command.ts";
import { writeFolder } from "../support/content-folder.ts";

const guide = authorsGuide();
const fields = guide.tables.flatMap(({ id, fields }) =>
  fields.map((field) => [`${id} ${field.path}`, field] as const),
);

test.each(Object.keys(schemas) as (keyof typeof schemas)[])("the examples of %s pass its schema", (name) => {
  expect(examples[name].length).toBeGreaterThan(0);
  for (const value of examples[name]) expect(schemas[name].safeParse(value).error?.issues ?? []).toEqual([]);
});

test("every field has words, a kind and an example that YAML takes", () => {
  expect(fields.length).toBeGreaterThan(150);
  expect(
    fields.filter(([, field]) => field.description === "" || field.kind === "").map(([name]) => name),
  ).toEqual([]);
  expect(fields.filter(([, field]) => field.example === "").map(([name]) => name)).toEqual([]);
  for (const [name, { path, example }] of fields)
    expect(Object.keys(parse(example)), name).toEqual([path.split(".").at(-1)]);
});

test("every kind of question has its table and an example that says what it is read as", () => {
  expect(guide.questions.map(({ kind }) => kind).sort()).toEqual(Object.keys(kinds).sort());
  expect(guide.tables.map(({ id }) => id)).toEqual(
    expect.arrayContaining(Object.keys(kinds).map((kind) => `question-${kind}`)),
  );
  const questions = guide.questions.flatMap(({ text }) => parse(text));
  expect(questions).toEqual(examples.quiz[0]!.questions);
});

const programme = ["programme.yaml", "name: Our workshop\n"] as const;

test("the module that steps are learned from is sound", async () => {
  const content = writeFolder(new Map([programme, ["modules/governor/module.md", exampleModule]]));
  expect(await callCommand("check", "--content", content)).toMatchObject({
    code: 0,
    out: "0 errors, 0 warnings\n",
  });
});

test("questions are taken as the page for authors shows them, with that module", async () => {
  const quiz = `questions:\n${guide.questions.map(({ text }) => text.replace(/^/gm, "  ").trimEnd()).join("\n")}\n`;
  const content = writeFolder(
    new Map([
      programme,
      ["modules/governor/module.md", exampleModule],
      ["modules/governor/quiz.yaml", quiz],
      [
        "modules/governor/figures/guard.svg",
        "<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'/>",
      ],
    ]),
  );
  const { out } = await callCommand("check", "--json", "--content", content);
  const { diagnostics } = JSON.parse(out) as {
    diagnostics: { code: string; severity: string; message: string }[];
  };
  expect(diagnostics.filter(({ severity }) => severity === "error")).toEqual([]);
});
