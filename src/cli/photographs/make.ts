/** A photograph as a figure: upright, no larger than a figure need be, and nothing in it but the picture. */
import sharp from "sharp";
import { type Taken, takenIn } from "./taken.ts";

/** Fills a page of A4 with 240 dots an inch, and can be looked into on a screen. */
const longestSide = 2000;

/** A phone's best pictures have 50 million; beyond this a picture may be made to fill the memory. */
const mostPixels = 100_000_000;

export interface Made {
  readonly taken: Taken | undefined;
  readonly jpeg: Uint8Array;
}

/** What a photograph is, where it can't be used. */
export type Amiss = { readonly amiss: "heic" } | { readonly amiss: "broken"; readonly why: string };

/**
 * Reads, turns and makes it anew as JPEG in sRGB: sharp hands on no EXIF, XMP or IPTC, and so no position, unless it is asked to.
 */
export async function makeFigure(bytes: Uint8Array): Promise<Made | Amiss> {
  try {
    const { format, compression, exif } = await sharp(bytes, { limitInputPixels: mostPixels }).metadata();
    if (format === "heif" && compression !== "av1") return { amiss: "heic" };
    const jpeg = await sharp(bytes, { failOn: "error", limitInputPixels: mostPixels })
      .autoOrient()
      .resize({ width: longestSide, height: longestSide, fit: "inside", withoutEnlargement: true })
      .toColourspace("srgb")
      .flatten({ background: "#fff" })
      .jpeg({ quality: 82, progressive: true })
      .toBuffer();
    return { taken: takenIn(exif), jpeg };
  } catch (cause) {
    const said = cause instanceof Error ? cause.message : String(cause);
    return { amiss: "broken", why: said.trim().replace(/:?\s*\n\s*/g, "; ") };
  }
}
