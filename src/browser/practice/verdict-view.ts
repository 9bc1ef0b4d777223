/** Shows a verdict below the list. */
import { t } from "../../engine/words.ts";
import { element } from "../page/element.ts";
import { toldItem } from "../page/told-item.ts";
import type { Verdict, VerdictLine } from "./verdict.ts";

/** The focus can be put on it, so that it is read out and reading goes on there. */
export function verdictView({ headline, detail, lines }: Verdict, right: boolean): HTMLElement {
  const kind = right ? "verdict is-right" : "verdict is-wrong";
  const heading = element("h3", { tabindex: "-1" }, headline);
  const list = lines.length === 0 ? undefined : element("ul", {}, ...lines.map(lineView));
  return element("section", { class: kind }, heading, element("p", {}, detail), list);
}

const lineView = ({ critical, ...told }: VerdictLine): HTMLLIElement =>
  toldItem(
    told,
    { class: critical ? "is-critical" : undefined },
    critical ? element("strong", {}, t`Critical. `) : undefined,
  );
