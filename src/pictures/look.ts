/** What there is to know of a picture before it is made. */
import { createHash } from "node:crypto";
import { codes } from "../model/codes.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { Size } from "../model/picture-files.ts";
import { placeAt } from "../model/place.ts";
import { readDrawing } from "./drawing.ts";
import { PictureFault, rasterSize } from "./raster.ts";

export interface Look {
  /** SHA-256 of its bytes, in hexadecimal. */
  readonly digest: string;
  /** Undefined where it has faults, or is a drawing that says no size in pixels. */
  readonly size: Size | undefined;
  readonly diagnostics: readonly Diagnostic[];
  /** Of a drawing with faults, for reports. */
  readonly text: string | undefined;
}

export const isDrawing = (file: string): boolean => /\.svg$/i.test(file);

/** Reads the head of a picture of pixels, and the whole of a drawing. Never throws on what it finds. */
export async function lookAt(file: string, bytes: Uint8Array): Promise<Look> {
  const digest = createHash("sha256").update(bytes).digest("hex");
  if (!isDrawing(file)) return { digest, text: undefined, ...(await lookAtRaster(file, bytes)) };
  const { text, clean, faults } = readDrawing(bytes);
  const diagnostics = faults.map(({ code, message, offset }) => faultOf(file, code, message, text, offset));
  return { digest, size: clean?.size, diagnostics, text: faults.length === 0 ? undefined : text };
}

async function lookAtRaster(file: string, bytes: Uint8Array): Promise<Pick<Look, "size" | "diagnostics">> {
  try {
    return { size: await rasterSize(bytes), diagnostics: [] };
  } catch (cause) {
    return { size: undefined, diagnostics: [faultIn(file, cause)] };
  }
}

/** What was thrown, as a fault of the picture. Throws again what is no fault of a picture. */
export function faultIn(file: string, cause: unknown): Diagnostic {
  if (!(cause instanceof PictureFault)) throw cause;
  return faultOf(file, cause.code, cause.message);
}

function faultOf(
  file: string,
  code: PictureFault["code"] | "picture-unsafe",
  message: string,
  text = "",
  offset = 0,
): Diagnostic {
  const { severity, mend } = codes[code];
  return { code, severity, ...placeAt(file, text, offset), message: `${message}. ${mend}`, other: undefined };
}
