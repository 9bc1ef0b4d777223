/** Finds the messages of a piece of JavaScript, and puts translations in their places. */
import {
  type CallExpression,
  type Node,
  parse,
  type TaggedTemplateExpression,
  type TemplateLiteral,
} from "acorn";
import { full } from "acorn-walk";
import { fillHoles, hole, literal, withHoles } from "./holes.ts";
import { attributeRun, htmlRun, type Run } from "./html-message.ts";
import { hasLetters, readable } from "./html-text.ts";
import type { Message, Translate } from "./message.ts";

/**
 * The code with every message that `translate` knows replaced; the others stay as they are. Takes JavaScript (types
 * stripped) as a module and throws a SyntaxError for anything else. Linear in the length of the code but for nested templates.
 */
export function translateCode(code: string, translate: Translate): string {
  return new Translator(code, translate).whole();
}

/** The messages of a piece of code, in the order in which they stand. */
export function messagesOf(code: string): Message[] {
  const messages: Message[] = [];
  translateCode(code, (message) => {
    messages.push(message);
    return undefined;
  });
  return messages;
}

/** A place in the code and what makes the source that goes there. */
interface Mark {
  readonly node: Node;
  readonly write: () => string;
}

class Translator {
  readonly #code: string;
  readonly #translate: Translate;
  readonly #marks: Mark[] = [];

  constructor(code: string, translate: Translate) {
    this.#code = code;
    this.#translate = translate;
    const program = parse(code, { ecmaVersion: "latest", sourceType: "module" });
    full(program, (node) => {
      if (node.type === "TaggedTemplateExpression") this.#tagged(node as TaggedTemplateExpression);
      else if (node.type === "CallExpression") this.#call(node as CallExpression);
    });
    this.#marks.sort((a, b) => a.node.start - b.node.start || b.node.end - a.node.end);
  }

  whole(): string {
    return this.#range(0, this.#code.length);
  }

  /** The source between two offsets with the outermost marks in it written anew; those see to what lies in them. */
  #range(start: number, end: number): string {
    let text = "";
    let at = start;
    for (let next = this.#firstFrom(start); next < this.#marks.length; next++) {
      const { node, write } = this.#marks[next]!;
      if (node.start >= end) break;
      if (node.start < at) continue;
      text += this.#code.slice(at, node.start) + write();
      at = node.end;
    }
    return text + this.#code.slice(at, end);
  }

  #firstFrom(offset: number): number {
    let low = 0;
    let high = this.#marks.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (this.#marks[middle]!.node.start < offset) low = middle + 1;
      else high = middle;
    }
    return low;
  }

  #tagged(node: TaggedTemplateExpression): void {
    const { tag, quasi } = node;
    if (tag.type === "Identifier" && tag.name === "html")
      this.#marks.push({ node, write: () => this.#html(node) });
    else if (contextOf(tag) !== undefined)
      this.#marks.push({ node, write: () => this.#plain(node, quasi, contextOf(tag)!) });
  }

  /** A tagged text: the translation is a plain template. White space at the ends stays as it is. */
  #plain(node: Node, quasi: TemplateLiteral, context: string): string {
    const [, before = "", id = "", after = ""] = /^(\s*)([\s\S]*?)(\s*)$/.exec(idOf(quasi))!;
    const translation = hasLetters(id) ? this.#translate({ context, id, plural: "" }) : undefined;
    if (translation === undefined) return this.#inside(node, quasi);
    return this.#text(before + translation[0]! + after, quasi);
  }

  /** A text with `{0}` as a template literal. */
  #text(words: string, quasi: TemplateLiteral): string {
    const text = words.replace(/\{(\d+)\}/g, (_, number: string) => hole(Number(number)));
    return literal(text, this.#expressions(quasi));
  }

  #expressions(quasi: TemplateLiteral): (index: number) => string {
    return (index) => {
      const { start, end } = quasi.expressions[index]!;
      return this.#range(start, end);
    };
  }

  #html(node: TaggedTemplateExpression): string {
    const { quasi } = node;
    const template = withHoles(quasi.quasis.map(({ value }) => value.cooked!));
    const { runs, shown } = readable(template);
    const all = [
      ...runs.map((run) => htmlRun(run, template)),
      ...shown.map((each) => attributeRun(each, template)),
    ];
    const edits = all
      .map((run) => ({ run, words: this.#translate({ context: "", id: run.id, plural: "" })?.[0] }))
      .filter((edit): edit is { run: Run; words: string } => edit.words !== undefined)
      .sort((a, b) => a.run.start - b.run.start);
    if (edits.length === 0) return this.#inside(node, quasi);
    return `html${literal(edited(template, edits), this.#expressions(quasi))}`;
  }

  /** A template that stays, with what lies in its expressions written anew. */
  #inside(node: Node, quasi: TemplateLiteral): string {
    let text = "";
    let at = node.start;
    for (const { start, end } of quasi.expressions) {
      text += this.#code.slice(at, start) + this.#range(start, end);
      at = end;
    }
    return text + this.#code.slice(at, node.end);
  }

  /** `counted(n, "step", "steps")` and `plural(n, t`…`, t`…`)`. */
  #call(node: CallExpression): void {
    const { callee } = node;
    if (callee.type !== "Identifier") return;
    if (callee.name === "counted") this.#marks.push({ node, write: () => this.#counted(node) });
    else if (callee.name === "plural") this.#marks.push({ node, write: () => this.#plural(node) });
  }

  #counted(node: CallExpression): string {
    const [count, one, many] = node.arguments;
    const words = wordsOf(one);
    const others = many === undefined && words !== undefined ? `${words}s` : wordsOf(many);
    const forms =
      words === undefined || others === undefined
        ? undefined
        : this.#translate({ context: "", id: `{0} ${words}`, plural: `{0} ${others}` });
    if (forms === undefined) return this.#keep(node);
    const texts = forms.map((form) => JSON.stringify(form)).join(", ");
    return `counted(${this.#range(count!.start, count!.end)}, ${texts})`;
  }

  #plural(node: CallExpression): string {
    const [count, one, many] = node.arguments;
    const [first, second] = [templateOf(one), templateOf(many)];
    if (first === undefined || second === undefined) return this.#keep(node);
    const message = { context: first.context, id: idOf(first.quasi), plural: idOf(second.quasi) };
    const forms = this.#translate(message);
    if (forms === undefined) return this.#keep(node, true);
    const texts = forms.map((form) => this.#text(form, second.quasi)).join(", ");
    return `plural(${this.#range(count!.start, count!.end)}, ${texts})`;
  }

  /** The call as it is; of a plural its texts are no messages of their own. */
  #keep(node: CallExpression, isPlural = false): string {
    let text = "";
    let at = node.start;
    for (const argument of node.arguments) {
      const quasi = isPlural ? templateOf(argument)?.quasi : undefined;
      text += this.#code.slice(at, argument.start);
      text += quasi === undefined ? this.#range(argument.start, argument.end) : this.#inside(argument, quasi);
      at = argument.end;
    }
    return text + this.#code.slice(at, node.end);
  }
}

function edited(template: string, edits: readonly { readonly run: Run; readonly words: string }[]): string {
  let text = "";
  let at = 0;
  for (const { run, words } of edits) {
    text += template.slice(at, run.start) + run.fill(words);
    at = run.end;
  }
  return text + template.slice(at);
}

/** "" for `t`, the context for `tIn("context")`; undefined for another tag. */
function contextOf(tag: Node): string | undefined {
  if (tag.type === "Identifier") return (tag as { name?: string }).name === "t" ? "" : undefined;
  if (tag.type !== "CallExpression") return undefined;
  const { callee, arguments: given } = tag as CallExpression;
  if (callee.type !== "Identifier" || callee.name !== "tIn") return undefined;
  return wordsOf(given[0]);
}

function templateOf(node: Node | undefined): { quasi: TemplateLiteral; context: string } | undefined {
  if (node?.type !== "TaggedTemplateExpression") return undefined;
  const { tag, quasi } = node as TaggedTemplateExpression;
  const context = contextOf(tag);
  return context === undefined ? undefined : { quasi, context };
}

/** A string that stands there as it is. */
function wordsOf(node: Node | undefined): string | undefined {
  const value = node?.type === "Literal" ? (node as { value?: unknown }).value : undefined;
  return typeof value === "string" ? value : undefined;
}

function idOf({ quasis }: TemplateLiteral): string {
  const text = withHoles(quasis.map(({ value }) => value.cooked!));
  return fillHoles(text, (index) => `{${index}}`);
}
