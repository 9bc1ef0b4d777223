/** Hands what a call says to the engine's reading of it; what makes no sense is a WrongCall that says what would. */
import { Fields, type Trouble } from "../../engine/workshop/asked/fields.ts";
import { type Call, type Command, WrongCall } from "../command.ts";

/** Fields of a sum that are not options of the same name: words of the call, or options named otherwise. */
export type Named = Readonly<Record<string, { readonly text: string | undefined; readonly name: string }>>;

/**
 * The answer of `read` to what the call says: its options are the fields of the sum. A WrongCall tells of every field
 * what is wrong with it.
 */
export function asked<Answer>(
  call: Call,
  options: Command["options"],
  read: (fields: Fields) => Answer | undefined,
  named: Named = {},
): Answer {
  const fields = new Fields(new Map([...optionsOf(call, options), ...namedTexts(named)]));
  const answer = read(fields);
  if (answer !== undefined && fields.troubles.length === 0) return answer;
  throw new WrongCall(fields.troubles.map((trouble) => wordsOf(trouble, fields, named)).join("\n"));
}

function optionsOf(call: Call, options: Command["options"]): [string, string][] {
  return Object.entries(options).flatMap(([name, { type }]): [string, string][] => {
    const text = type === "boolean" ? (call.flag(name) ? "yes" : undefined) : call.text(name);
    return text === undefined ? [] : [[name, text]];
  });
}

function namedTexts(named: Named): [string, string][] {
  return Object.entries(named).flatMap(([field, { text }]): [string, string][] =>
    text === undefined ? [] : [[field, text]],
  );
}

function wordsOf({ field, found, expected }: Trouble, fields: Fields, named: Named): string {
  const name = named[field]?.name ?? `--${field}`;
  if (found === undefined) return `${name} is missing; expected ${expected}.`;
  const text = clip(fields.text(field) ?? "");
  const where = found.includes(text) ? name : `${name} "${text}"`;
  return `${where}: found ${found}; expected ${expected}.`;
}

function clip(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
