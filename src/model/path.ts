/**
 * Resolves a relative path written in a content file to a path from the content folder, with forward slashes; undefined
 * where it leads out of the folder. Pure text: nothing on disk is looked at.
 */
export function resolvePath(from: string, written: string): string | undefined {
  if (/^([a-z]:|[\\/])/i.test(written)) return undefined;
  const parts = from.split("/").slice(0, -1);
  for (const part of written.split(/[\\/]/)) {
    if (part === "" || part === ".") continue;
    if (part !== "..") parts.push(part);
    else if (parts.pop() === undefined) return undefined;
  }
  return parts.join("/");
}
