/** How the files of a content folder are shared out among hands. */
import { moduleOf } from "../model/link.ts";

export interface Share {
  /** From 0; the first also has all that belongs to no module. */
  readonly which: number;
  readonly of: number;
}

export const everything: Share = { which: 0, of: 1 };

/** True where the file is this share's to answer for. Any share may look at files that belong to no module. */
export function owns(share: Share, path: string): boolean {
  return shareOf(path, share.of) === share.which;
}

/** True where the file is to be read: its own, and what belongs to no module, which all need. */
export function reads(share: Share, path: string): boolean {
  return moduleOf(path) === undefined || owns(share, path);
}

/** The same for all files of a module, whatever others there are, so that a change moves no module to another hand. */
function shareOf(path: string, shares: number): number {
  const module = moduleOf(path);
  return module === undefined ? 0 : hash(module) % shares;
}

/** FNV-1a, 32 bits, over UTF-16 units. */
function hash(text: string): number {
  let value = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) value = Math.imul(value ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return value;
}
