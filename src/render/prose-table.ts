/** Tables of prose, ruled as all others are: each row has its head, and each cell bears the name of its column for narrow screens. */
import type MarkdownIt from "markdown-it";
import type { Token } from "markdown-it";
import { attribute, html } from "../../layouts/html.ts";

type Rules = InstanceType<typeof MarkdownIt>["renderer"]["rules"];

/**
 * Puts the rules for tables into a renderer. A column that is set right becomes one of figures; nothing is styled inline.
 * Tables don't lie in one another, so it is enough to know the one in hand and the cell.
 */
export function ruleTables(rules: Rules): void {
  let names: readonly string[] = [];
  let column = -1;
  rules.table_open = (tokens, index) => {
    names = columnNames(tokens, index);
    return `<table class="ruled">\n`;
  };
  rules.th_open = (tokens, index) => `<th scope="col"${classOf(tokens[index]!)}>`;
  rules.tr_open = () => {
    column = -1;
    return "<tr>\n";
  };
  rules.td_open = (tokens, index) => {
    column++;
    if (column === 0) return `<th scope="row">`;
    return `<td${classOf(tokens[index]!)}${attribute("data-name", names[column] || undefined)?.text ?? ""}>`;
  };
  rules.td_close = () => (column === 0 ? "</th>\n" : "</td>\n");
}

const classOf = (token: Token): string => {
  const isRight = /right/.test(String(token.attrGet("style") ?? ""));
  return isRight ? html` class="count"`.text : "";
};

/** What stands at the head of each column of a table that opens at `table`. */
function columnNames(tokens: readonly Token[], table: number): string[] {
  const names: string[] = [];
  for (let at = table; tokens[at] !== undefined && tokens[at]!.type !== "thead_close"; at++)
    if (tokens[at]!.type === "th_open")
      names.push((tokens[at + 1]?.children ?? []).map(({ content }) => content).join(""));
  return names;
}
