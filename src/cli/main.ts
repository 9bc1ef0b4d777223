/** The entry of the program. */
import { programFor } from "./in-language.ts";
import { run } from "./run.ts";

const args = process.argv.slice(2);

const output = {
  out: (text: string) => void process.stdout.write(text),
  err: (text: string) => void process.stderr.write(text),
};

const program = await programFor(args);

/** Where the program in the programme's language lies, which has to be started in place of this one; else this one has run. */
export const elsewhere = program === "this" || "fault" in program ? undefined : program.url;

if (program === "this") process.exitCode = await run(args, output);
else if ("fault" in program) {
  output.err(`${program.fault}\n`);
  process.exitCode = 1;
}
