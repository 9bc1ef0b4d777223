/** Asks the same sum on the page and of the command. */
import type { UnitSystem } from "../../../src/browser/sums/amounts.ts";
import type { Answer } from "../../../src/browser/sums/answer.ts";
import { sums } from "../../../src/browser/sums/table.ts";
import { run } from "../../../src/cli/run.ts";
import { Fields, type Trouble } from "../../../src/engine/workshop/asked/fields.ts";

export type Values = Readonly<Record<string, string>>;

export interface OnPage {
  readonly answer: Answer | undefined;
  readonly troubles: readonly Trouble[];
}

export function askPage(id: string, values: Values, units: UnitSystem = "metric"): OnPage {
  const fields = new Fields(new Map(Object.entries(values)));
  const answer = sums.find((sum) => sum.id === id)!.reckon(fields, units);
  return { answer, troubles: fields.troubles };
}

/** The page's sums by the name of their command, and its fields by the names of its options. */
const commands: Readonly<Record<string, string>> = { identify: "thread" };
const options: Readonly<Record<string, Readonly<Record<string, string>>>> = { strip: { class: "screw" } };
const words: Readonly<Record<string, readonly string[]>> = {
  convert: ["quantity", "unit"],
  thread: ["thread"],
};

export async function askCommand(id: string, values: Values, ...more: readonly string[]) {
  const bare = words[id] ?? [];
  const named = Object.entries(values).filter(([field]) => !bare.includes(field));
  const args = [
    ...bare.flatMap((field) => values[field] ?? []),
    ...named.flatMap(([field, value]) => argsOf(options[id]?.[field] ?? field, value)),
  ];
  const heard = { out: "", err: "" };
  const code = await run(["calc", commands[id] ?? id, ...args, ...more], {
    out: (text) => {
      heard.out += text;
    },
    err: (text) => {
      heard.err += text;
    },
  });
  return { code, ...heard };
}

const argsOf = (option: string, value: string): string[] =>
  option === "used" ? ["--used"] : [`--${option}`, value];

/** What the command answers as data. */
export async function dataOf(id: string, values: Values): Promise<Data> {
  const { code, out, err } = await askCommand(id, values, "--json");
  if (code !== 0) throw new Error(err);
  return JSON.parse(out) as Data;
}

export interface Amount {
  readonly value: number;
  readonly unit: string;
}

export interface Data {
  readonly assumptions: readonly string[];
  readonly warnings: readonly string[];
  readonly sources: readonly string[];
  readonly [name: string]: unknown;
}
