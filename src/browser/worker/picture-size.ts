/** A picture is kept in one size; where the network is away, that one stands for the others. */
import { sizedFile, sizedOf, widthSteps } from "../../model/picture-files.ts";

/** The file of the edition that shows the same picture as `path`, which is not in it; undefined where there is none. */
export function sizeKept(path: string, files: ReadonlyMap<string, unknown>): string | undefined {
  const picture = sizedOf(path)?.picture ?? path;
  const known = widthSteps.map((width) => sizedFile(picture, width)).find((file) => files.has(file));
  if (known !== undefined) return known;
  const start = `${picture}.`;
  return [...files.keys()].find((file) => file.startsWith(start) && sizedOf(file)?.picture === picture);
}
