/** Which file of the site an address means. */

/** Without query and place; "" and what ends in a slash mean the page of that folder. Undefined outside the site. */
export function pathIn(root: string, address: string): string | undefined {
  const { origin, pathname } = new URL(address);
  const site = new URL(root);
  if (origin !== site.origin || !pathname.startsWith(site.pathname)) return undefined;
  try {
    const below = decodeURIComponent(pathname.slice(site.pathname.length));
    return below === "" || below.endsWith("/") ? `${below}index.html` : below;
  } catch {
    return undefined;
  }
}

/** The module that a file belongs to; undefined for one of the programme. */
export const moduleOf = (path: string): string | undefined =>
  /^modules\/([^/]+)\/./.exec(path)?.[1] ?? /^record\/data\/([^/]+)\.js$/.exec(path)?.[1];
