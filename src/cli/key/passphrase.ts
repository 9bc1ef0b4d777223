/** Passphrases: never from an argument, which other people on the machine could read. */
import { readSync } from "node:fs";
import { BadInput } from "../command.ts";

/** An environment variable in which a script may leave it. */
export const passphraseVariable = "BENCHWRIGHT_PASSPHRASE";

export const passphraseWords = `The passphrase is asked for on the terminal and not shown, or read from the variable ${passphraseVariable}, or from the first line of standard input where that is no terminal.`;

/** `isNew`: asked for twice on a terminal, so that a slip locks nobody out. */
export async function passphrase(file: string, isNew = false): Promise<string> {
  const left = process.env[passphraseVariable];
  if (left !== undefined) return left;
  if (process.stdin.isTTY !== true) return firstLine();
  const given = await ask(`Passphrase for ${file}: `);
  if (isNew && (await ask("The same again: ")) !== given)
    throw new BadInput("The two were not the same; nothing is written. Begin again.");
  return given;
}

const newline = 0x0a;
const longest = 4096;

function firstLine(): string {
  const bytes: number[] = [];
  const one = Buffer.alloc(1);
  while (bytes.length < longest && readSync(0, one, 0, 1, null) === 1 && one[0] !== newline)
    bytes.push(one[0]!);
  return Buffer.from(bytes).toString("utf8").replace(/\r$/, "");
}

const keys = { enter: ["\r", "\n", "\u0004"], back: ["\u007f", "\b"], stop: "\u0003" } as const;

/** Reads a line of the terminal without showing it. */
function ask(question: string): Promise<string> {
  const { stdin, stderr } = process;
  stderr.write(question);
  stdin.setRawMode(true);
  stdin.setEncoding("utf8").resume();
  return new Promise((done, fail) => {
    let typed: string[] = [];
    const end = () => {
      stdin.off("data", hear).pause();
      stdin.setRawMode(false);
      stderr.write("\n");
    };
    const hear = (text: string) => {
      for (const letter of text) {
        if (letter === keys.stop) {
          end();
          return fail(new BadInput("Stopped; nothing is done."));
        }
        if ((keys.enter as readonly string[]).includes(letter)) {
          end();
          return done(typed.join(""));
        }
        typed = (keys.back as readonly string[]).includes(letter) ? typed.slice(0, -1) : [...typed, letter];
      }
    };
    stdin.on("data", hear);
  });
}
