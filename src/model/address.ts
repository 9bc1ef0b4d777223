/** Where every page of the site stands, and how one page links to another without knowing where the site is hosted. */

export const pageKinds = [
  "module",
  "order",
  "bench",
  "paper",
  "practice",
  "dry-run",
  "quiz",
  "quiz-key",
  "tool",
  "substance",
  "hazard",
  "plain",
] as const;
export type PageKind = (typeof pageKinds)[number];

/** A page, and perhaps a place on it. `plain` pages are those that stand alone: "" is the home page. */
export interface Address {
  readonly kind: PageKind;
  readonly id: string;
  /** An element's id on the page. */
  readonly at?: string;
}

const folders: Record<PageKind, (id: string) => string> = {
  module: (id) => `modules/${id}/`,
  order: (id) => `modules/${id}/order/`,
  bench: (id) => `modules/${id}/bench/`,
  paper: (id) => `modules/${id}/paper/`,
  practice: (id) => `modules/${id}/practice/`,
  "dry-run": (id) => `modules/${id}/dry-run/`,
  quiz: (id) => `modules/${id}/quiz/`,
  "quiz-key": (id) => `modules/${id}/quiz/key/`,
  tool: (id) => `tools/${id}/`,
  substance: (id) => `substances/${id}/`,
  hazard: (id) => `hazards/${id}/`,
  plain: (id) => (id === "" ? "" : `${id}/`),
};

/** The element id of a fastener set's row in the parts list of its module; no heading has one of this form. */
export const rowOf = (fastener: string): string => `f_${fastener}`;

/** The folder of a page in the site, "" for the home page, otherwise ending in a slash. */
export function folderOf(page: Address): string {
  return folders[page.kind](page.id);
}

/** The file of a page in the site. */
export function fileOf(page: Address): string {
  return `${folderOf(page)}index.html`;
}

/** A link from a page to a file of the site, relative, so that it works under any path and from disk. */
export function linkToFile(from: Address, file: string): string {
  return `${"../".repeat(folderOf(from).split("/").length - 1)}${file}`;
}

/** A link from one page to another or to a place on it. */
export function linkTo(from: Address, to: Address): string {
  const anchor = to.at === undefined ? "" : `#${to.at}`;
  return `${linkToFile(from, fileOf(to))}${anchor}`;
}
