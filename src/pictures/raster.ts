/** Photographs and other pictures made of pixels: made anew, upright, in sRGB, and with nothing in them but the picture. */
import sharp, { type Sharp } from "sharp";
import { filesOf, type MadeFile, type Size } from "../model/picture-files.ts";

/** A phone's best pictures have 50 million; beyond this a picture may be made to fill the memory. */
export const pixelLimit = 100_000_000;

/** Thrown where a picture can't be used, in words. */
export class PictureFault extends Error {
  readonly code: "picture-broken" | "picture-pixels" | "unreadable";
  constructor(code: PictureFault["code"], message: string) {
    super(message);
    this.code = code;
  }
}

/** What is taken, whichever of these its name says that it is. */
const readKinds: ReadonlySet<string> = new Set(["jpeg", "png", "webp", "gif"]);

/**
 * The size as it is seen, read from the head of the file. Throws a PictureFault where it is no picture, or one of more pixels
 * than the limit.
 */
export async function rasterSize(bytes: Uint8Array): Promise<Size> {
  const {
    autoOrient,
    pages = 1,
    pageHeight,
    format,
  } = await understood(() => sharp(bytes, { limitInputPixels: false }).metadata());
  if (!readKinds.has(format))
    throw new PictureFault(
      "picture-broken",
      `the picture is of the kind "${format}", whatever its name says`,
    );
  const { width, height } = { ...autoOrient, ...(pages > 1 && pageHeight ? { height: pageHeight } : {}) };
  if (width * height * pages <= pixelLimit) return { width, height };
  throw new PictureFault(
    "picture-pixels",
    `the picture has ${width} × ${height} pixels${pages > 1 ? ` in ${pages} frames` : ""}; the limit is ${pixelLimit} in all`,
  );
}

export interface MadeBytes {
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** Makes all files of a picture. Throws a PictureFault where it can't be read to its end. */
export async function makeRaster(file: string, bytes: Uint8Array): Promise<MadeBytes[]> {
  if (/\.gif$/i.test(file)) return [{ file, bytes: await makeGif(bytes) }];
  const { main, sizes } = filesOf(file, await rasterSize(bytes));
  const kind = kindOf(file);
  // Read once: the narrower ones are made from the widest.
  const { data, info } = await understood(() =>
    opened(bytes).resize(main.width, main.height).raw().toBuffer({ resolveWithObject: true }),
  );
  const raw = { width: info.width, height: info.height, channels: info.channels };
  const at = ({ width, height }: MadeFile): Sharp => {
    const picture = sharp(data, { raw });
    return width === raw.width ? picture : picture.resize(width, height);
  };
  const made: MadeBytes[] = [{ file: main.file, bytes: await written[kind](at(main)) }];
  for (const size of sizes)
    made.push({ file: size.file, bytes: await (kind === "png" ? drawn(at(size)) : written.webp(at(size))) });
  return made;
}

/** A picture within a drawing, as it is but for what it carries. */
export async function makeEmbedded(kind: string, bytes: Uint8Array): Promise<Uint8Array> {
  await rasterSize(bytes);
  return understood(() => written[kindOf(`.${kind}`)](opened(bytes)));
}

/** Upright and in sRGB, whatever profile it came with; sharp hands on no EXIF, XMP, IPTC or text unless it is asked to. */
export const opened = (bytes: Uint8Array): Sharp =>
  sharp(bytes, { failOn: "error", limitInputPixels: pixelLimit }).autoOrient().toColourspace("srgb");

const makeGif = (bytes: Uint8Array): Promise<Uint8Array> =>
  rasterSize(bytes).then(() =>
    understood(() =>
      sharp(bytes, { failOn: "error", animated: true, limitInputPixels: pixelLimit }).gif().toBuffer(),
    ),
  );

type Kind = "jpeg" | "png" | "webp";

const kindOf = (file: string): Kind =>
  /\.png$/i.test(file) ? "png" : /\.webp$/i.test(file) ? "webp" : "jpeg";

/** Quality 80 can't be told from the original at the distance of a hand's breadth: common practice. */
const written: Readonly<Record<Kind, (picture: Sharp) => Promise<Uint8Array>>> = {
  jpeg: (picture) =>
    picture.flatten({ background: "#fff" }).jpeg({ quality: 80, progressive: true }).toBuffer(),
  png: (picture) => picture.png({ compressionLevel: 9 }).toBuffer(),
  webp: (picture) => picture.webp({ quality: 80, effort: 3 }).toBuffer(),
};

/** What was kept as PNG has lines and lettering, which stay sharp. */
const drawn = (picture: Sharp): Promise<Uint8Array> =>
  picture.webp({ nearLossless: true, quality: 60, effort: 3 }).toBuffer();

/** Whatever the library says of a picture that it can't read, as a fault of the picture. */
async function understood<Result>(work: () => Promise<Result>): Promise<Result> {
  try {
    return await work();
  } catch (cause) {
    throw new PictureFault("picture-broken", `the picture can't be read: ${inOneLine(cause)}`);
  }
}

/** What the library says, which may be of several lines. */
export const inOneLine = (cause: unknown): string =>
  (cause instanceof Error ? cause.message : String(cause)).trim().replace(/:?\s*\n\s*/g, "; ");
