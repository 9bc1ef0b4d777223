/** The entry of the program. */
import { programFor } from "./in-language.ts";
import { run } from "./run.ts";

const args = process.argv.slice(2);

/** Where the program in the programme's language lies, which has to be started in place of this one; else this one has run. */
export const elsewhere = await programFor(args);

if (elsewhere === undefined)
  process.exitCode = await run(args, {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
  });
