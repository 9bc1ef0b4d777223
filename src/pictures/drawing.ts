/** Drawings: cleaned, and the pictures within them made anew. */
import { isUtf8 } from "node:buffer";
import { makeEmbedded, PictureFault } from "./raster.ts";
import { type CleanSvg, cleanSvg, type SvgFault } from "./svg/clean.ts";

/** What there is of a drawing before it is made: its text for reports, and what it comes to. */
export interface ReadDrawing {
  readonly text: string;
  readonly clean: CleanSvg | undefined;
  readonly faults: readonly SvgFault[];
}

export function readDrawing(bytes: Uint8Array): ReadDrawing {
  if (!isUtf8(bytes)) {
    const message = "the drawing is not UTF-8 text";
    return { text: "", clean: undefined, faults: [{ code: "picture-broken", message, offset: 0 }] };
  }
  const text = new TextDecoder().decode(bytes);
  const found = cleanSvg(text);
  return "text" in found ? { text, clean: found, faults: [] } : { text, clean: undefined, faults: found };
}

/** The drawing as it goes into the site. Throws a PictureFault where a picture within it can't be read. */
export async function makeDrawing({ text, embedded }: CleanSvg): Promise<Uint8Array> {
  let made = "";
  let at = 0;
  for (const { start, end, kind, base64 } of embedded) {
    const bytes = await within(kind, Buffer.from(base64, "base64"));
    made += `${text.slice(at, start)}data:image/${kind === "jpg" ? "jpeg" : kind};base64,${Buffer.from(bytes).toString("base64")}`;
    at = end;
  }
  return Buffer.from(made + text.slice(at));
}

async function within(kind: string, bytes: Uint8Array): Promise<Uint8Array> {
  try {
    return await makeEmbedded(kind.toLowerCase(), bytes);
  } catch (cause) {
    if (!(cause instanceof PictureFault)) throw cause;
    throw new PictureFault(cause.code, `of a picture within the drawing: ${cause.message}`);
  }
}
