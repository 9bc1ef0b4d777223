/** The reference of fields, from the schemas: every field with its kind, whether it must be there, its words and an example. */
import type { AuthorsGuide, FieldRow, FieldTable } from "../../model/authors-guide.ts";
import { toldExamples } from "../told-examples.ts";
import { examples, questionExamples } from "./examples.ts";
import { flowText } from "./flow-text.ts";
import { jsonSchemas } from "./index.ts";

/** As much of a JSON Schema as is read here. */
interface Shape {
  readonly type?: string;
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
  readonly items?: Shape | false;
  readonly prefixItems?: readonly Shape[];
  readonly additionalProperties?: Shape | false;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
  readonly enum?: readonly string[];
  readonly const?: unknown;
  readonly pattern?: string;
}

const titles: Readonly<Record<string, string>> = {
  programme: "programme.yaml",
  module: "modules/ID/module.md: front matter",
  step: "modules/ID/module.md: the block of a step",
  quiz: "modules/ID/quiz.yaml",
  tool: "tools/ID.md: front matter",
  substance: "substances/ID.md: front matter",
  hazard: "hazards/ID.md: front matter",
  revisions: "modules/ID/revisions.yaml (written by record release)",
};

export function authorsGuide(): AuthorsGuide {
  return {
    tables: [...jsonSchemas()].flatMap(([name, schema]) => tablesOf(name, schema as Shape)),
    questions: questionExamples.map((question) => ({ kind: question.kind, text: blockText(question) })),
    told: toldExamples,
  };
}

/** One table, and of a quiz one more for each kind of question, with the fields that not all kinds have. */
function tablesOf(name: string, schema: Shape): FieldTable[] {
  const values = examples[name as keyof typeof examples];
  const whole = { id: name, title: titles[name]!, fields: unlike(fieldsOf(schema, values, "")) };
  const questions = schema.properties?.questions?.items;
  const kinds = questions === undefined || questions === false ? [] : (questions.oneOf ?? []);
  const ofKinds = kinds.map((shape) => {
    const kind = String(shape.properties?.kind?.const);
    const ofKind = questionExamples.filter((question) => question.kind === kind);
    return { kind, fields: unlike(fieldsOf(shape, [...ofKind, ...questionExamples], "")) };
  });
  const isCommon = (path: string) =>
    ofKinds.every(({ fields }) => fields.some((field) => field.path === path));
  const common = (ofKinds[0]?.fields ?? []).filter(({ path }) => isCommon(path));
  return [
    whole,
    ...(common.length === 0 ? [] : [{ id: "question", title: "A question of any kind", fields: common }]),
    ...ofKinds.map(({ kind, fields }) => ({
      id: `question-${kind}`,
      title: `A question of the kind ${kind}`,
      fields: fields.filter(({ path }) => !isCommon(path)),
    })),
  ];
}

/** A path once, where several shapes of a field have it. */
const unlike = (rows: readonly FieldRow[]): FieldRow[] => [
  ...new Map(rows.map((row) => [row.path, row])).values(),
];

/** The fields of a shape and of what lies in it, in the order of the schema. `values` are examples of it. */
function fieldsOf(shape: Shape, values: readonly unknown[], path: string): FieldRow[] {
  return Object.entries(shape.properties ?? {}).flatMap(([name, field]) => {
    const own = values.flatMap((value) => (hasField(value, name) ? [value[name]] : []));
    const at = path === "" ? name : `${path}.${name}`;
    const row = {
      path: at,
      isRequired: shape.required?.includes(name) ?? false,
      kind: kindOf(field),
      description: field.description ?? "",
      example: own.length === 0 ? "" : `${name}: ${shortened(flowText(own[0]))}`,
    };
    return [row, ...within(field, own, at)];
  });
}

/** What lies in a field. The kinds of question have tables of their own. */
function within(field: Shape, values: readonly unknown[], path: string): FieldRow[] {
  const { items, additionalProperties, anyOf = [] } = field;
  return [
    ...fieldsOf(field, values, path),
    ...(items
      ? within(
          items,
          values.flatMap((value) => (Array.isArray(value) ? value : [])),
          `${path}[]`,
        )
      : []),
    ...(additionalProperties ? within(additionalProperties, values.flatMap(entriesOf), `${path}.ID`) : []),
    ...anyOf.flatMap((one) => within(one, values, path)),
  ];
}

const hasField = (value: unknown, name: string): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value) && Object.hasOwn(value, name);

const entriesOf = (value: unknown): unknown[] =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? Object.values(value) : [];

/** In words, what may stand in a field. */
function kindOf(shape: Shape): string {
  const { type, anyOf, oneOf, items, prefixItems, properties, additionalProperties } = shape;
  const either = anyOf ?? oneOf;
  if (either !== undefined) return [...new Set(either.map(kindOf))].join(", or ");
  if (shape.const !== undefined) return String(shape.const);
  if (shape.enum !== undefined) return `one of: ${shape.enum.join(", ")}`;
  if (prefixItems !== undefined) return `a list of ${prefixItems.length} numbers`;
  if (type === "array") return items ? `a list: ${kindOf(items)}` : "a list";
  if (properties !== undefined) return "fields";
  if (type === "object") return additionalProperties ? `by id: ${kindOf(additionalProperties)}` : "fields";
  return plainKinds[type ?? ""] ?? (shape.pattern?.startsWith("^[a-z][a-z0-9-]*") ? "id" : "text");
}

const plainKinds: Readonly<Record<string, string>> = {
  integer: "whole number",
  number: "number",
  boolean: "true or false",
};

/** Longer values have fields of their own, which have examples. */
const longest = 120;
const shortened = (text: string): string => (text.length <= longest ? text : "…");

/** A question as an entry of a list, a field a line. */
const blockText = (question: Readonly<Record<string, unknown>>): string =>
  Object.entries(question)
    .map(([name, value], at) => `${at === 0 ? "- " : "  "}${name}:${listText(value)}\n`)
    .join("");

const listText = (value: unknown): string =>
  Array.isArray(value) && value.some((entry) => typeof entry === "object")
    ? value.map((entry) => `\n    - ${flowText(entry)}`).join("")
    : ` ${flowText(value)}`;
