/** Names that mean the same to who searches: one line with commas between, or a list. */
import { z } from "zod";
import { fault, text } from "./fields.ts";

const wanted = "two or more different names that mean the same, with commas between";

const line = text.transform((names) => names.split(",").map((name) => name.trim()));
/** What is empty is told of the whole row, so that it is told once. */
const list = z.array(z.string("text").trim().max(4000, "text of at most 4000 characters"));

export const sameMeaning = z
  .union([line, list], { error: "names that mean the same, with commas between: methylated spirit, meths" })
  .superRefine((names, context) => {
    const why = faultOf(names);
    if (why !== undefined) context.addIssue(fault("wrong-type", `${wanted}${why}`));
  });

/** The search takes names apart into letters and digits, and never finds one that has neither. */
function faultOf(names: readonly string[]): string | undefined {
  if (names.length === 0) return "; none stands there";
  if (names.includes("")) return "; one of them is empty";
  const unsearchable = names.find((name) => !/[\p{L}\p{N}]/u.test(name));
  if (unsearchable !== undefined) return `; there is no letter or digit in "${unsearchable.slice(0, 60)}"`;
  if (names.length === 1) return `, not "${names[0]!.slice(0, 60)}" alone`;
  const twice = names.find((name, at) => names.findIndex((other) => isSame(name, other)) < at);
  return twice === undefined ? undefined : `; "${twice.slice(0, 60)}" stands there twice`;
}

const isSame = (one: string, other: string): boolean => one.toLowerCase() === other.toLowerCase();
