/** A module's draft from a folder of strip-down photographs: a step a picture. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { modulePath } from "../../model/link.ts";
import { BadInput } from "../command.ts";
import { photographedModuleText } from "../starters/photographed-module.ts";
import { heicRefusal, picturesIn, someOf } from "./in-folder.ts";
import { inOrder, type Ordered, type Photograph } from "./in-order.ts";
import { type Amiss, type Made, makeFigure } from "./make.ts";

interface Picture extends Photograph {
  readonly jpeg: Uint8Array;
}

/** What became of a photograph. */
export interface Placed {
  readonly photograph: string;
  /** By the camera's clock; null where it wrote no time. */
  readonly taken: string | null;
  readonly figure: string;
}

export interface PhotographDraft {
  /** By path in the content folder. */
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly by: Ordered<Picture>["by"];
  readonly placed: readonly Placed[];
  /** Files of the folder that are no pictures. */
  readonly leftOut: readonly string[];
}

/**
 * Reads all photographs of the folder before anything is written. Throws a BadInput where the folder has none, or some that can't be
 * used: all of those are named, and none is passed over, because a step would be missing unseen.
 */
export async function photographDraft(id: string, folder: string): Promise<PhotographDraft> {
  const { pictures: names, others } = picturesIn(folder);
  const { by, pictures } = inOrder(await readAll(folder, names));
  const placed = pictures.map(({ name, taken }, at) => ({
    photograph: name,
    taken: taken === undefined ? null : new Date(taken.clock).toISOString().slice(0, -1),
    figure: figureOf(at + 1),
  }));
  return {
    by,
    leftOut: others,
    files: new Map<string, string | Uint8Array>([
      [modulePath(id), photographedModuleText(id, placed)],
      ...pictures.map(({ jpeg }, at) => [`modules/${id}/${placed[at]!.figure}`, jpeg] as const),
    ]),
    placed,
  };
}

/** With two digits at least, so that a list of the files stands in order. */
const figureOf = (step: number): string => `figures/step-${String(step).padStart(2, "0")}.jpg`;

/** One after the other: sharp itself uses all cores, and a photograph as pixels takes much memory. */
async function readAll(folder: string, names: readonly string[]): Promise<Picture[]> {
  const read: { readonly name: string; readonly made: Made | Amiss }[] = [];
  for (const name of names) read.push({ name, made: await makeFigure(await bytesOf(folder, name)) });
  refuseAmiss(folder, read);
  return read.flatMap(({ name, made }) => ("jpeg" in made ? [{ name, ...made }] : []));
}

async function bytesOf(folder: string, name: string): Promise<Uint8Array> {
  try {
    return await readFile(join(folder, name));
  } catch (cause) {
    throw new BadInput(
      `${join(folder, name)}: can't be read (${(cause as Error).message}). Nothing is written.`,
    );
  }
}

function refuseAmiss(
  folder: string,
  read: readonly { readonly name: string; readonly made: Made | Amiss }[],
): void {
  const heic = read.filter(({ made }) => "amiss" in made && made.amiss === "heic").map(({ name }) => name);
  if (heic.length > 0) throw new BadInput(heicRefusal(folder, heic));
  const broken = read.flatMap(({ name, made }) =>
    "amiss" in made && made.amiss === "broken" ? [`${name} (${made.why})`] : [],
  );
  if (broken.length > 0)
    throw new BadInput(
      `${folder}: can't be read as pictures: ${someOf(broken)}. Copy them from the camera again, or take them out of the folder. Nothing is written.`,
    );
}
