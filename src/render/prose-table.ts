/** Tables of prose, ruled as all others are: each row has its head, and each cell bears the name of its column for narrow screens. */
import type MarkdownIt from "markdown-it";
import type { Token } from "markdown-it";
import { attribute, html } from "../../layouts/html.ts";

type Rules = InstanceType<typeof MarkdownIt>["renderer"]["rules"];

/** Puts the rules for tables into a renderer. A column that is set right becomes one of figures; nothing is styled inline. */
export function ruleTables(rules: Rules): void {
  rules.table_open = () => `<table class="ruled">\n`;
  rules.th_open = (tokens, index) => `<th scope="col"${classOf(tokens[index]!)}>`;
  rules.td_open = (tokens, index) => {
    const column = columnOf(tokens, index);
    if (column === 0) return `<th scope="row">`;
    return `<td${classOf(tokens[index]!)}${attribute("data-name", columnName(tokens, index, column))?.text ?? ""}>`;
  };
  rules.td_close = (tokens, index) => (columnOf(tokens, index) === 0 ? "</th>\n" : "</td>\n");
}

const classOf = (token: Token): string => {
  const isRight = /right/.test(String(token.attrGet("style") ?? ""));
  return isRight ? html` class="count"`.text : "";
};

/** Which cell of its row an opening or closing token belongs to, counted from 0. */
function columnOf(tokens: readonly Token[], index: number): number {
  const row = tokens.findLastIndex(({ type }, at) => at < index && type === "tr_open");
  return tokens.slice(row, index + 1).filter(({ type }) => type === "td_open").length - 1;
}

/** What stands at the head of a column; undefined where nothing does. */
function columnName(tokens: readonly Token[], index: number, column: number): string | undefined {
  const table = tokens.findLastIndex(({ type }, at) => at < index && type === "table_open");
  const heads = tokens
    .slice(table, index)
    .flatMap(({ type }, at) => (type === "th_open" ? [table + at] : []));
  const text = tokens[heads[column] ?? -1] && tokens[heads[column]! + 1];
  const words = (text?.children ?? []).map(({ content }) => content).join("");
  return words === "" ? undefined : words;
}
