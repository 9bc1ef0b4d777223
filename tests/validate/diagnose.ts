/** What `check` finds in a content folder, pictures included; without the words of other languages. */
import type { Diagnostic } from "../../src/model/diagnostic.ts";
import { PictureShop } from "../../src/pictures/shop.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";

export async function diagnose(contentDir: string): Promise<Diagnostic[]> {
  const { reading, diagnostics } = read(contentDir);
  const shop = new PictureShop({ contentDir, cacheDir: undefined });
  const looked = await shop.look(reading.pictures);
  return [...diagnostics, ...validate(reading).diagnostics, ...looked.diagnostics];
}
