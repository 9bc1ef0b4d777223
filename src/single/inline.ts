/** Files of a site as addresses that need no request (RFC 2397). */
import { readFileSync } from "node:fs";
import { extname, join, posix } from "node:path";

const types = new Map([
  [".svg", "image/svg+xml"],
  [".png", "image/png"],
  [".jpg", "image/jpeg"],
  [".jpeg", "image/jpeg"],
  [".webp", "image/webp"],
  [".avif", "image/avif"],
  [".gif", "image/gif"],
  [".woff2", "font/woff2"],
]);

/** Each file is read once. Throws where there is no such file: a fault of ours. */
export function inliner(site: string): (file: string) => string {
  const known = new Map<string, string>();
  return (file) => {
    const address = known.get(file) ?? dataAddress(readFileSync(join(site, decodeURI(file))), file);
    known.set(file, address);
    return address;
  };
}

function dataAddress(content: Buffer, file: string): string {
  const type = types.get(extname(file).toLowerCase()) ?? "application/octet-stream";
  return `data:${type};base64,${content.toString("base64")}`;
}

/** A style sheet with the files that it names within it. `file` is its own, from the site's folder. */
export function inlineStyle(css: string, file: string, inline: (file: string) => string): string {
  return css.replace(/url\((["']?)(?!data:|#)([^"')]+)\1\)/g, (_, _quote, path: string) => {
    const named = posix.normalize(posix.join(posix.dirname(file), path));
    return `url("${inline(named)}")`;
  });
}
