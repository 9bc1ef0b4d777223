/** The building blocks of the schemas: text, ids, lists, maps by id, and quantities in words. */
import { z } from "zod";
import { isDate } from "../../engine/competency/calendar.ts";
import { isDigest } from "../../engine/competency/digest.ts";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { idPattern } from "../../model/id.ts";

const idWords = "an id of lower-case letters, digits and hyphens, beginning with a letter";

export const id = z.string(idWords).regex(idPattern, idWords);

/** Text; `expected` is said where something else stands there. */
export const textOr = (expected?: string) =>
  z.string(expected).trim().min(1, "some text").max(4000, "text of at most 4000 characters");

export const text = textOr();
export const texts = z.union([text.transform((one) => [one]), z.array(text)], {
  error: "text, or a list of texts",
});
export const ids = z.array(id);
export const wholeNumber = z.int("a whole number").min(1, "a whole number from 1");

/** A day that there is. */
export const date = z.string("a date such as 2026-11-20").superRefine((written, context) => {
  if (!isDate(written)) context.addIssue("a date such as 2026-11-20");
});

const digestWords = "a digest such as uEi and 43 more letters, digits, - and _";

export const digest = z.string(digestWords).superRefine((written, context) => {
  if (!isDigest(written)) context.addIssue(digestWords);
});

/**
 * An object that refuses unknown fields, with a word on each, which editors show. The message of an unknown field is the
 * list of known ones, from which the nearest is offered; that of something else in its place shows how its fields are written.
 */
export function fields<Shape extends Record<string, z.ZodType>>(
  shape: Shape,
  words: { readonly [Field in keyof Shape]: string },
) {
  const known = Object.keys(shape).join(" ");
  const described = Object.entries(shape).map(([name, schema]) => [name, schema.describe(words[name]!)]);
  return z.strictObject(Object.fromEntries(described) as Shape, {
    error: ({ code }) =>
      code === "unrecognized_keys" ? known : code === "invalid_type" ? howWritten(shape) : undefined,
  });
}

/** The fields as they are written in one line: those that must be there, then some of the others. */
function howWritten(shape: Record<string, z.ZodType>): string {
  const names = Object.keys(shape);
  const isNeeded = (name: string) => !shape[name]!.safeParse(undefined).success;
  const needed = names.filter(isNeeded);
  const others = names.filter((name) => !isNeeded(name)).slice(0, Math.max(0, mostShown - needed.length));
  const shown = [...needed, ...others];
  const more = shown.length < names.length ? " and others" : "";
  return `fields with values: { ${shown.map((name) => `${name}: …`).join(", ")} }${more}`;
}

const mostShown = 5;

/** A map from ids to values, in the order written. */
export function byId<Value extends z.core.SomeType>(value: Value) {
  return z.record(id, value).transform((record) => new Map(Object.entries(record)));
}

/** Marks a fault with the code under which it is reported. */
export function fault(code: string, message: string) {
  return { code: "custom" as const, params: { code }, message };
}

/** A time as people write it, `5 min` or `2 h 30 min`, in minutes. */
export const minutes = quantity("time", "5 min or 2 h 30 min", "min", (seconds) => seconds / 60);

/** What to write where a number stands without its unit. */
function numberNeeds(unit: string, example: string, inUnit: (found: number) => number = (found) => found) {
  return {
    error: ({ input }: { readonly input?: unknown }): string => {
      if (Array.isArray(input)) return `one figure, ${example}; list what differs as a thing of its own`;
      return typeof input === "number" ? `it with its unit, such as ${inUnit(input)} ${unit}` : example;
    },
  };
}

/** A share below 1 is likely to be meant as a fraction. */
const asPercent = (found: number): number => (found <= 1 ? found * 100 : found);

/** A share as people write it, `80 %`, as a fraction from 0 to 1. */
export const share = z
  .string(numberNeeds("%", "a share such as 80 %", asPercent))
  .transform((written, context) => {
    const read = parseQuantity(written);
    if (read.ok && read.value.unit === "%" && read.value.amount >= 0 && read.value.amount <= 100)
      return read.value.amount / 100;
    context.addIssue(fault("wrong-unit", `a share such as 80 %, not "${written.slice(0, 60)}"`));
    return z.NEVER;
  });

/** Text that must be a quantity of a dimension; kept as written. */
export function writtenQuantity(dimension: string, example: string) {
  const [, unit = ""] = /^\S+ (\S+)/.exec(example) ?? [];
  return z
    .string(numberNeeds(unit, `a ${dimension} such as ${example}`))
    .trim()
    .min(1, `a ${dimension} such as ${example}`)
    .superRefine((written, context) => {
      const read = parseQuantity(written);
      if (read.ok && read.value.dimension === dimension) return;
      context.addIssue(
        fault("wrong-unit", `a ${dimension} such as ${example}, not "${written.slice(0, 60)}"`),
      );
    });
}

function quantity(dimension: string, example: string, unit: string, fromBase: (base: number) => number) {
  return z.string(numberNeeds(unit, `a ${dimension} such as ${example}`)).transform((written, context) => {
    const read = parseQuantity(written);
    if (read.ok && read.value.dimension === dimension && read.value.base >= 0)
      return fromBase(read.value.base);
    context.addIssue(fault("wrong-unit", `a ${dimension} such as ${example}, not "${written.slice(0, 60)}"`));
    return z.NEVER;
  });
}

/** A temperature as people write it, in °C; it may be below zero. */
export const celsius = z
  .string(numberNeeds("°C", "a temperature such as 20 °C"))
  .transform((written, context) => {
    const read = parseQuantity(written, "temperature");
    if (read.ok) return read.value.base;
    context.addIssue(fault("wrong-unit", `a temperature such as 20 °C, not "${written.slice(0, 60)}"`));
    return z.NEVER;
  });
