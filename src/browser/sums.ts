/** The page of bench sums. */
import type { SumsPageData } from "../model/sums-data.ts";
import { replaceAddress } from "./page/address.ts";
import { pageData, scriptIsHere } from "./page/data.ts";
import { queryOf, type Values, valuesOf } from "./sums/link.ts";
import { SumView } from "./sums/sum-view.ts";
import { sums } from "./sums/table.ts";
import { unitChoice } from "./sums/unit-choice.ts";

const page = document.querySelector<HTMLElement>(".sums");
const choice = page?.querySelector<HTMLElement>(".unit-choice");
if (page && choice) {
  const { figures } = pageData<SumsPageData>() ?? { figures: {} };
  const units = unitChoice(choice, () => {
    for (const view of views) view.refresh();
  });
  const views = sums.flatMap((sum) => {
    const section = page.querySelector<HTMLElement>(`#${sum.id}`);
    return section === null ? [] : [new SumView(section, sum, { units, figures, changed: keep })];
  });
  let isFilling = true;
  const linked = valuesOf(location.search);
  for (const view of views) {
    const values = linked.get(view.id);
    if (values !== undefined) view.fill(values);
  }
  isFilling = false;
  keepOnPaper();
  scriptIsHere();
  if (location.hash.length > 1) document.getElementById(location.hash.slice(1))?.scrollIntoView();

  /** The address holds the sums that are answered, so that they are there again after a reload. */
  function keep(): void {
    if (isFilling) return;
    keepOnPaper();
    const address = new URL(location.href);
    address.search = queryOf(answered());
    if (address.href !== location.href) replaceAddress(address);
  }

  function answered(): Map<string, Values> {
    return new Map(
      views.flatMap((view) => (view.answered === undefined ? [] : [[view.id, view.answered] as const])),
    );
  }

  /** On paper go the sums that are answered; all of them, with their formulas, where none is. */
  function keepOnPaper(): void {
    page!.classList.toggle("has-answers", answered().size > 0);
  }
}
