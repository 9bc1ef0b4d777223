/** Content checked with its pictures, each read to its end. */
import { sortDiagnostics } from "../model/diagnostic.ts";
import type { PictureShop } from "../pictures/shop.ts";
import { cacheFolder, picturesIn } from "./build.ts";
import { type Checked, checkContent } from "./content.ts";

interface Place {
  readonly contentDir: string;
  readonly shop: PictureShop;
}

/** Loaded only now, so that other commands start without the library for pictures. */
export async function pictureShop(contentDir: string): Promise<Place> {
  const { PictureShop } = await import("../pictures/shop.ts");
  return { contentDir, shop: new PictureShop({ contentDir, cacheDir: picturesIn(cacheFolder()) }) };
}

/** Pictures that were made before are known to be sound, and those that have not changed are not opened again. */
export async function checkWith({ contentDir, shop }: Place): Promise<Checked> {
  const { content, ...found } = checkContent(contentDir);
  const { diagnostics, texts } = await shop.look(content.pictures);
  const faulty = new Set(diagnostics.map(({ file }) => file));
  const sound = new Map([...content.pictures].filter(([path]) => !faulty.has(path)));
  const all = [...found.diagnostics, ...diagnostics, ...(await shop.faults(sound))];
  return { content, diagnostics: sortDiagnostics(all), texts: new Map([...found.texts, ...texts]) };
}
