/** The photographs of a folder, and why some folders are refused. */
import { readdirSync } from "node:fs";
import { BadInput } from "../command.ts";

/** More is no longer one procedure; a module may have 500 steps. */
export const mostPictures = 200;

export interface Folder {
  /** Names of the pictures. */
  readonly pictures: readonly string[];
  /** Names of files that are no pictures. */
  readonly others: readonly string[];
}

const isPicture = (name: string): boolean => /\.(?:jpe?g|png|webp|tiff?)$/i.test(name);
const isHeic = (name: string): boolean => /\.(?:heic|heif|hif)$/i.test(name);

/** Hidden files and folders within it are passed over. Throws a BadInput that says what to do. */
export function picturesIn(folder: string): Folder {
  const names = namesIn(folder);
  const heic = names.filter(isHeic);
  if (heic.length > 0) throw new BadInput(heicRefusal(folder, heic));
  const pictures = names.filter(isPicture);
  if (pictures.length === 0)
    throw new BadInput(
      `${folder}: no picture in it; expected .jpg, .jpeg, .png, .webp, .tif or .tiff files in the folder itself. Nothing is written.`,
    );
  if (pictures.length > mostPictures)
    throw new BadInput(
      `${folder}: ${pictures.length} pictures; a module is begun with ${mostPictures} at most. Take out those that show no step, or put the phases into folders of their own and begin a module with each. Nothing is written.`,
    );
  return { pictures, others: names.filter((name) => !isPicture(name)) };
}

/** Said of names, and of pictures that are HEIC under another name. */
export const heicRefusal = (folder: string, names: readonly string[]): string =>
  `${folder}: HEIC can't be read here: ${someOf(names)}. Have the telephone send or save them as JPEG, or convert them, for example with heif-convert of libheif: heif-convert ${names[0]} ${names[0]!.replace(/\.[^.]*$/, "")}.jpg. Nothing is written.`;

/** The first ten, and how many more. */
export function someOf(names: readonly string[]): string {
  const more = names.length - 10;
  return `${names.slice(0, 10).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter((entry) => !entry.isDirectory() && !entry.name.startsWith("."))
      .map(({ name }) => name)
      .sort();
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    const why = whyNot.get(code ?? "") ?? `can't be read as a folder (${message})`;
    throw new BadInput(`${folder}: ${why}. --photos takes the folder in which the photographs are.`);
  }
}

const whyNot: ReadonlyMap<string, string> = new Map([
  ["ENOENT", "there is no such folder"],
  ["ENOTDIR", "this is a file, not a folder"],
]);
