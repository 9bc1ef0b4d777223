/** A content folder as the site of all its modules, as pages are made from it. */
import { derive, siteOf } from "../../src/derive/derive.ts";
import type { Content } from "../../src/model/content.ts";
import type { Site } from "../../src/model/site.ts";

export function wholeSite(content: Content): Site {
  const { views } = derive(content);
  return siteOf(
    content,
    views.map(({ card }) => card),
    views,
  );
}
