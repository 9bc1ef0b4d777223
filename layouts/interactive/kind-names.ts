import type { PageKind } from "../../src/model/address.ts";

/** What a page of each kind is called beside its title. */
export const kindNames: Readonly<Record<PageKind, string>> = {
  module: "module",
  bench: "bench view",
  practice: "practice",
  quiz: "quiz",
  tool: "tool",
  substance: "substance",
  hazard: "hazard",
  plain: "page",
};
