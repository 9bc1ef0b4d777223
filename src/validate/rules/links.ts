/** Links between items must lead to a content file, and to a place on it that exists. */
import { placesOn, readLink } from "../../model/link.ts";
import type { Content } from "../../model/content.ts";
import type { Source } from "../../model/source.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter } from "../reporter.ts";
import type { Rule } from "./rule.ts";

export const links: Rule = {
  name: "links",
  check(content, reporter) {
    for (const source of content.sources.values()) {
      for (const { href, offset } of source.links) checkLink(source, href, { source, offset }, content, reporter);
    }
  },
};

/** Reports a link that leads nowhere or out of the content folder. Links to other sites are left alone. */
export function checkLink(
  source: Source,
  href: string,
  spot: Parameters<Reporter["report"]>[1],
  content: Content,
  reporter: Reporter,
): void {
  const link = readLink(source.path, href);
  if (link.kind === "elsewhere") return;
  if (link.kind === "outside") return reporter.report("leaves-content", spot, `"${href}" leads out of the content folder`);
  const target = content.sources.get(link.path);
  if (target === undefined || target.kind === "programme" || target.kind === "quiz") {
    return reporter.report("dead-link", spot, `"${href}" leads to no page${nearestWords(link.path, content.sources.keys())}`);
  }
  if (link.at === undefined) return;
  const places = placesOn(target);
  if (!places.has(link.at)) reporter.report("dead-link", spot, `"${target.path}" has no place "${link.at}"${nearestWords(link.at, places)}`);
}
