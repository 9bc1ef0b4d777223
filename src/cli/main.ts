/** The entry of the program. */
import { programFor } from "./in-language.ts";
import { run } from "./run.ts";

const args = process.argv.slice(2);
const elsewhere = await programFor(args);
if (elsewhere === undefined) {
  process.exitCode = await run(args, {
    out: (text) => void process.stdout.write(text),
    err: (text) => void process.stderr.write(text),
  });
} else await import(elsewhere);
