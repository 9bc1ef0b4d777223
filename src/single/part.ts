/** A page of the site that becomes a part of the one file. */
import type { PageKind } from "../model/address.ts";

export interface Part {
  /** What kind of page it was. */
  readonly kind: PageKind;
  /** Its element's id; content has no id with an underscore at that place. */
  readonly id: string;
  /** What stands before the ids of its elements, so that no two parts have one in common. */
  readonly prefix: string;
  /** From the site's folder, with a slash at its end. */
  readonly folder: string;
  /** The title of the page, without the programme's name. */
  readonly title: string;
  /** What stands in `<main>`. */
  readonly main: string;
  /** What the page hands to its script. */
  readonly data: unknown;
  /** The page's own script, from the site's folder. */
  readonly script: string | undefined;
}

/** Scripts that work only on a site: they keep records and keep the site on the device. */
const ofSites = /\/(?:recorder|read|offline|paper|enlarge)-[^/]*\.js$/;

/** Reads a page as the build has written it. Throws where it has no main part: a fault of ours. */
export function partOf(page: string, at: Pick<Part, "kind" | "id" | "prefix" | "folder">): Part {
  const main = /<main id="s_main" tabindex="-1">\n(.*)\n<\/main>/s.exec(page)?.[1];
  if (main === undefined) throw new Error(`${at.folder}index.html has no main part`);
  const data = /<script type="application\/json" id="page-data">(.*?)<\/script>/s.exec(page)?.[1];
  const scripts = [...page.matchAll(/<script src="(?:\.\.\/)*([^"]+)" defer>/g)].map(
    (match) => `/${match[1]}`,
  );
  return {
    ...at,
    title: /<html [^>]*data-title="([^"]*)"/.exec(page)?.[1] ?? at.id,
    main,
    data: data === undefined ? undefined : JSON.parse(data),
    script: scripts.find((script) => !ofSites.test(script))?.slice(1),
  };
}
