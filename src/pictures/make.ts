/** Makes the files of the site from a picture of the content. */

import { makeDrawing, readDrawing } from "./drawing.ts";
import { isDrawing } from "./look.ts";
import { type MadeBytes, makeRaster, PictureFault } from "./raster.ts";

/** Throws a PictureFault where it can't be read to its end. */
export async function makePicture(file: string, bytes: Uint8Array): Promise<MadeBytes[]> {
  if (!isDrawing(file)) return makeRaster(file, bytes);
  const { clean, faults } = readDrawing(bytes);
  if (clean === undefined) throw new PictureFault("picture-broken", faults[0]?.message ?? "it can't be read");
  return [{ file, bytes: await makeDrawing(clean) }];
}
