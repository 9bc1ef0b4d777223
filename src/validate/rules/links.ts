/** Links between items must lead to a content file, and to a place on it that exists. */

import type { Code } from "../../model/codes.ts";
import type { Content } from "../../model/content.ts";
import { addressOfPath, readLink } from "../../model/link.ts";
import type { Source } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter, Spot } from "../reporter.ts";
import type { Rule } from "./rule.ts";

export const links: Rule = {
  name: "links",
  check(content, reporter) {
    for (const source of content.sources.values()) {
      for (const { href, offset } of source.links)
        checkLink(source, href, { source, offset }, content, reporter);
    }
  },
};

/** Reports a link that leads nowhere or out of the content folder. Links to other sites are left alone. */
export function checkLink(
  source: Source,
  href: string,
  spot: Spot,
  content: Content,
  reporter: Reporter,
): void {
  const fault = faultOf(source, href, content);
  if (fault !== undefined) reporter.report(fault.code, spot, fault.found);
}

function faultOf(source: Source, href: string, content: Content): { code: Code; found: string } | undefined {
  const link = readLink(source.path, href);
  if (link.kind === "elsewhere") return undefined;
  if (link.kind === "outside")
    return { code: "leaves-content", found: `"${href}" leads out of the content folder` };
  const target = content.outlines.get(link.path);
  if (target === undefined || addressOfPath(target.path) === undefined) {
    return {
      code: "dead-link",
      found: `"${href}" leads to no page${nearestWords(link.path, content.outlines.keys())}`,
    };
  }
  if (link.at === undefined || !target.hasAllPlaces || target.places.includes(link.at)) return undefined;
  return {
    code: "dead-link",
    found: `"${target.path}" has no place "${link.at}"${nearestWords(link.at, target.places)}`,
  };
}
