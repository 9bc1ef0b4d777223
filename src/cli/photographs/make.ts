/** A photograph as a figure: upright, no larger than a figure need be, and nothing in it but the picture. */
import sharp from "sharp";
import { inOneLine, opened, pixelLimit } from "../../pictures/raster.ts";
import { type Taken, takenIn } from "./taken.ts";

/** Fills a page of A4 with 240 dots an inch, and can be looked into on a screen. */
const longestSide = 2000;

export interface Made {
  readonly taken: Taken | undefined;
  readonly jpeg: Uint8Array;
}

/** What a photograph is, where it can't be used. */
export type Amiss = { readonly amiss: "heic" } | { readonly amiss: "broken"; readonly why: string };

/** Reads and makes it anew as JPEG. */
export async function makeFigure(bytes: Uint8Array): Promise<Made | Amiss> {
  try {
    const { format, compression, exif } = await sharp(bytes, { limitInputPixels: pixelLimit }).metadata();
    if (format === "heif" && compression !== "av1") return { amiss: "heic" };
    const jpeg = await opened(bytes)
      .resize({ width: longestSide, height: longestSide, fit: "inside", withoutEnlargement: true })
      .flatten({ background: "#fff" })
      .jpeg({ quality: 82, progressive: true })
      .toBuffer();
    return { taken: takenIn(exif), jpeg };
  } catch (cause) {
    return { amiss: "broken", why: inOneLine(cause) };
  }
}
