/** What the search finds of the pages that every programme has: the route sheet, each sum, each series of the thread chart. */
import { t } from "../src/engine/words.ts";
import type { Address } from "../src/model/address.ts";
import type { SearchDocument } from "../src/model/site.ts";
import { sumForms, sumsTitle } from "./interactive/sums.ts";
import { formulasTitle } from "./pages/formulas.ts";
import { routeTitle } from "./pages/route.ts";
import { threadCharts, threadChartTitle } from "./pages/threads.ts";

/** Sizes are names at the table of their series and no documents of their own, which would weigh on the index. */
export function sumDocuments(): SearchDocument[] {
  const sums = place("sums", sumsTitle);
  const chart = place("sums/threads", threadChartTitle);
  const route = place("route", routeTitle);
  const formulas = place("sums/formulas", formulasTitle);
  return [
    route("", "", [t`stages of training`, t`working alone`, t`sign-off`, t`first evening`]),
    sums("", "", ["calculators", t`sums with units, threads, torque and vapour`]),
    ...sumForms.map(({ id, title, foundBy }) => sums(id, title, foundBy)),
    chart("", "", [t`thread table`, t`tap drill`, t`tapping drill`, t`clearance hole`, t`threads per inch`]),
    formulas("", "", ["formula", "equations", "standards", "references"]),
    ...threadCharts().map(({ id, title, rows }) =>
      chart(
        id,
        title,
        rows.map(({ size }) => size.designation),
      ),
    ),
  ];
}

/** Makes documents of one page; `at` is "" for the page itself. */
function place(id: string, title: string) {
  const page: Address = { kind: "plain", id };
  return (at: string, heading: string, terms: readonly string[]): SearchDocument => ({
    address: at === "" ? page : { ...page, at },
    title,
    heading,
    terms,
  });
}
