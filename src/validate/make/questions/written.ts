/** Questions whose answer is a figure: given, or worked out from a case. */
import type { Question } from "../../../engine/quiz/kinds.ts";
import { type SumName, workSum } from "../../../engine/quiz/sums.ts";
import { readTolerance } from "../../../engine/quiz/tolerance.ts";
import { convert, parseQuantity, type Quantity } from "../../../engine/workshop/quantity.ts";
import { asked, type DataOf, type Making, report, wrongUnit } from "./making.ts";

export function makeNumber(data: DataOf<"number">, making: Making): Question | undefined {
  const answer = parseQuantity(String(data.answer));
  if (!answer.ok) return wrongUnit(making, "answer", answer.problem);
  if (data.tolerance === undefined)
    return { ...asked(data), kind: "number", answer: answer.value, tolerance: undefined };
  const tolerance = readTolerance(answer.value, String(data.tolerance));
  if (!tolerance.ok) return wrongUnit(making, "tolerance", tolerance.problem);
  return { ...asked(data), kind: "number", answer: answer.value, tolerance: tolerance.value };
}

export function makeWorked(data: DataOf<"worked">, making: Making): Question | undefined {
  const cases = data.cases.map((figures, place) =>
    makeCase(data, new Map(Object.entries(figures)), place, making),
  );
  if (!cases.every((one) => one !== undefined)) return undefined;
  const [first] = cases;
  if (first === undefined || data.tolerance === undefined)
    return { ...asked(data), kind: "worked", cases, tolerance: undefined, chosen: 0 };
  const tolerance = readTolerance(first.answer, String(data.tolerance));
  if (!tolerance.ok) return wrongUnit(making, "tolerance", tolerance.problem);
  return { ...asked(data), ask: first.ask, kind: "worked", cases, tolerance: tolerance.value, chosen: 0 };
}

function makeCase(
  data: DataOf<"worked">,
  figures: ReadonlyMap<string, string>,
  place: number,
  making: Making,
): { ask: string; answer: Quantity } | undefined {
  if (data.sum === "convert" && data.in === undefined)
    return wrongCase(making, place, 'the sum "convert" needs in: the unit to convert to');
  const sum = workSum(data.sum as SumName, figures);
  const told = sum.ok && data.in !== undefined ? convert(sum.value, data.in) : sum;
  if (!told.ok) {
    const { found, expected } = told.problem;
    return wrongCase(making, place, `the case has ${found}; expected ${expected}`);
  }
  const blank = [...data.ask.matchAll(/\{([^{}]*)\}/g)].find(([, name]) => !figures.has(name!));
  if (blank !== undefined)
    return wrongCase(making, place, `"ask" names ${blank[0]}, which the case does not give`);
  return { ask: data.ask.replace(/\{([^{}]*)\}/g, (_, name) => figures.get(name)!), answer: told.value };
}

function wrongCase(making: Making, place: number, words: string): undefined {
  report(making, "quiz-case", ["cases", place], words);
}
