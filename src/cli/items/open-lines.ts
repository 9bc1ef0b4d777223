import { createReadStream, statSync } from "node:fs";
import { createInterface, type Interface } from "node:readline";
import { BadInput } from "../command.ts";

/** The lines of a file, without holding it in memory. Throws a BadInput where there is none. */
export function openLines(file: string): Interface {
  if (!statSync(file, { throwIfNoEntry: false })?.isFile())
    throw new BadInput(`${file}: there is no such file`);
  return createInterface({ input: createReadStream(file), crlfDelay: Infinity });
}
