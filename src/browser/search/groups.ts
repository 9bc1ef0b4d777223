/** The kinds into which what is found is put together. */
import { t } from "../../engine/words.ts";
import type { SearchData } from "../../model/search-data.ts";

export type Group =
  | "procedure"
  | "knowledge"
  | "step"
  | "row"
  | "tool"
  | "substance"
  | "hazard"
  | "sum"
  | "page";

export const groupNames: Readonly<Record<Group, string>> = {
  procedure: t`Procedures`,
  knowledge: t`Bench knowledge`,
  step: t`Steps`,
  row: t`Parts lists`,
  tool: t`Tools`,
  substance: t`Substances`,
  hazard: t`Hazards`,
  sum: t`Bench sums`,
  page: t`Other pages`,
};

/** Of a place on a page: a module with steps is a procedure, any other bench knowledge. */
export function groupOf({ pages, prose }: SearchData, page: number, at: string, isRow = false): Group {
  const [kind, file, , places] = pages[page]!;
  if (kind === "tool" || kind === "substance" || kind === "hazard") return kind;
  if (kind !== "module") return file.startsWith("sums/") ? "sum" : "page";
  if (isRow) return "row";
  const steps = prose?.steps[page] ?? [];
  const place = at === "" ? 0 : 1 + places.findIndex((each) => each[1] === at);
  if (steps.includes(place)) return "step";
  return steps.length > 0 ? "procedure" : "knowledge";
}
