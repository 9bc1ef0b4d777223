/** Width and height of a picture, read from its first bytes, so that a page keeps room for it. */
import { closeSync, openSync, readSync } from "node:fs";
import { join } from "node:path";
import type { Size } from "../../layouts/book.ts";

/** More than the head of any SVG written by hand, and enough to find a JPEG's frame past a small preview. */
const headLength = 64 * 1024;

/** Looks sizes up in the content folder, each file once. Undefined where a file is missing or says no size in pixels. */
export function pictureSizes(contentDir: string): (file: string) => Size | undefined {
  const known = new Map<string, Size | undefined>();
  return (file) => {
    if (!known.has(file)) known.set(file, sizeOfFile(join(contentDir, file)));
    return known.get(file);
  };
}

function sizeOfFile(path: string): Size | undefined {
  try {
    return sizeOfBytes(readHead(path));
  } catch {
    return undefined;
  }
}

function readHead(path: string): Buffer {
  const file = openSync(path, "r");
  try {
    const buffer = Buffer.alloc(headLength);
    return buffer.subarray(0, readSync(file, buffer, 0, headLength, 0));
  } finally {
    closeSync(file);
  }
}

/** The size in the head of a PNG, JPEG or SVG file. */
export function sizeOfBytes(bytes: Buffer): Size | undefined {
  const reader = readers.find(({ is }) => is(bytes));
  const size = reader?.size(bytes);
  return size !== undefined && size.width > 0 && size.height > 0 ? size : undefined;
}

const readers: readonly { is(bytes: Buffer): boolean; size(bytes: Buffer): Size | undefined }[] = [
  { is: (bytes) => bytes.subarray(1, 4).toString("latin1") === "PNG", size: pngSize },
  { is: (bytes) => bytes.length > 2 && bytes.readUInt16BE(0) === 0xffd8, size: jpegSize },
  { is: () => true, size: svgSize },
];

/** PNG (ISO/IEC 15948) 11.2.2: the header chunk comes first, width and height at bytes 16 and 20. */
function pngSize(bytes: Buffer): Size | undefined {
  return bytes.length < 24 ? undefined : { width: bytes.readUInt32BE(16), height: bytes.readUInt32BE(20) };
}

/** JPEG (ITU-T T.81) B.1 and B.2.2: segments follow one another; a frame header holds height, then width. */
function jpegSize(bytes: Buffer): Size | undefined {
  for (let at = 2; at + 9 < bytes.length; at += 2 + bytes.readUInt16BE(at + 2)) {
    const marker = bytes.readUInt16BE(at);
    if ((marker & 0xff00) !== 0xff00) return undefined;
    const isFrame = marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);
    if (isFrame) return { width: bytes.readUInt16BE(at + 7), height: bytes.readUInt16BE(at + 5) };
  }
  return undefined;
}

/** SVG 2, 7.2 and 8.2: width and height in px or without a unit, otherwise the size of the view box. */
function svgSize(bytes: Buffer): Size | undefined {
  const tag = /<svg\b[^>]*>/.exec(bytes.toString("utf8"))?.[0];
  if (tag === undefined) return undefined;
  const pixels = (name: string) =>
    Number(new RegExp(`\\s${name}\\s*=\\s*["']([\\d.]+)(?:px)?["']`).exec(tag)?.[1]);
  const box =
    /\sviewBox\s*=\s*["']([^"']+)["']/
      .exec(tag)?.[1]
      ?.trim()
      .split(/[\s,]+/)
      .map(Number) ?? [];
  const [width, height] = [pixels("width") || box[2], pixels("height") || box[3]];
  if (width === undefined || height === undefined) return undefined;
  return { width: Math.round(width), height: Math.round(height) };
}
