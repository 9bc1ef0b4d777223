/** Which files a picture of the content becomes in the site: pages name them before they are made. */

/** In pixels, as it is seen: after a photograph has been turned upright. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface MadeFile extends Size {
  /** Relative to the site, with forward slashes. */
  readonly file: string;
}

export interface PictureFiles {
  /** At the path that the picture has in the content, of the same kind, no wider than the widest step. */
  readonly main: MadeFile;
  /** The same picture as WebP, narrowest first; none where the main file is all there is. */
  readonly sizes: readonly MadeFile[];
}

/**
 * Widths in pixels of the files that are made of a wider picture. The column of text is 704 px wide: 480 fills a phone, 960 a
 * tablet or a phone with fine pixels, 1600 a screen with fine pixels, and shows detail when a figure is enlarged.
 */
export const widthSteps: readonly number[] = [480, 960, 1600];

/** The width that is kept on devices and goes into a module's one file: wide enough to be read at the bench, a third of the bytes of the widest. */
export const carriedWidth = 960;

const raster = /\.(?:png|jpe?g|webp)$/i;

/** True for a picture that is made in several widths. A drawing has every size, and a GIF may move. */
export const isRaster = (file: string): boolean => raster.test(file);

/** Never wider than the picture itself. */
export function filesOf(file: string, size: Size): PictureFiles {
  const widest = widthSteps.at(-1)!;
  if (!isRaster(file)) return { main: { file, ...size }, sizes: [] };
  const main = { file, ...atWidth(size, Math.min(size.width, widest)) };
  if (size.width <= widthSteps[0]!) return { main, sizes: [] };
  const widths = [...widthSteps.filter((width) => width < main.width), main.width];
  return { main, sizes: widths.map((width) => ({ file: sizedFile(file, width), ...atWidth(size, width) })) };
}

/** The file of a picture in one width. */
export const sizedFile = (file: string, width: number): string => `${file}.${width}.webp`;

const atWidth = ({ width, height }: Size, wanted: number): Size => ({
  width: wanted,
  height: Math.max(1, Math.round((height * wanted) / width)),
});

/** The size to carry along: the widest up to `carriedWidth`. */
export const carried = ({ main, sizes }: PictureFiles): MadeFile =>
  sizes.findLast(({ width }) => width <= carriedWidth) ?? sizes[0] ?? main;

const sized = /^(.+\.(?:png|jpe?g|webp))\.(\d+)\.webp$/i;

/** The picture of which a file of the site is one size, by the file's name; undefined for any other file. */
export function sizedOf(file: string): { readonly picture: string; readonly width: number } | undefined {
  const [, picture, width] = sized.exec(file) ?? [];
  return picture === undefined ? undefined : { picture, width: Number(width) };
}

/** Of the files of a site, those that are carried along: of each picture that is there in several sizes, one. O(n). */
export function carriedFiles(files: readonly string[]): ReadonlySet<string> {
  const best = new Map<string, number>();
  const there = new Set(files);
  for (const file of files) {
    const one = sizedOf(file);
    if (one === undefined || !there.has(one.picture)) continue;
    best.set(one.picture, better(best.get(one.picture), one.width));
  }
  return new Set(
    files.filter((file) => {
      const one = sizedOf(file);
      const wanted = best.get(one?.picture ?? file);
      return wanted === undefined || one?.width === wanted;
    }),
  );
}

/** The wider one up to the carried width, otherwise the narrower. */
function better(before: number | undefined, width: number): number {
  if (before === undefined) return width;
  const [narrow, wide] = before < width ? [before, width] : [width, before];
  return wide <= carriedWidth ? wide : narrow;
}
