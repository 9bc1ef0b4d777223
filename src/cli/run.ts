/** Finds the command, runs it, turns what goes wrong into a message and an exit code. */
import { build } from "./build.ts";
import { calc } from "./calc.ts";
import { chance } from "./chance.ts";
import { check } from "./check.ts";
import { BadInput, type Command, type ExitCode, type Output, readCall, WrongCall } from "./command.ts";
import { didYouMean } from "./did-you-mean.ts";
import { helpAll, helpCodes, helpOne } from "./help.ts";
import { items } from "./items/items.ts";
import { key } from "./key.ts";
import { newCommand } from "./new.ts";
import { order } from "./order.ts";
import { plan } from "./plan.ts";
import { record } from "./record.ts";
import { roster } from "./roster.ts";
import { schema } from "./schema.ts";
import { score } from "./score.ts";
import { serve } from "./serve.ts";
import { version } from "./version.ts";

const commands: readonly Command[] = [
  check,
  build,
  serve,
  newCommand,
  order,
  plan,
  calc,
  score,
  chance,
  items,
  record,
  roster,
  key,
  schema,
];

const asksForHelp = new Set(["help", "--help", "-h"]);

/** Runs one call, `args` being what follows the program's name. Nothing that a user writes makes it throw. */
export async function run(args: readonly string[], output: Output): Promise<ExitCode> {
  const [name, ...rest] = args;
  try {
    if (name === undefined || asksForHelp.has(name)) return help(rest[0], output);
    if (name === "--version") return version(output);
    const command = find(name);
    if (rest.some((word) => word === "--help" || word === "-h")) return help(name, output);
    return await command.run(readCall(command, rest), output);
  } catch (cause) {
    output.err(`${cause instanceof Error ? cause.message : String(cause)}\n`);
    if (cause instanceof WrongCall) return 2;
    if (!(cause instanceof BadInput))
      output.err("This is a fault of benchwright itself, not of your content.\n");
    return 1;
  }
}

function help(name: string | undefined, output: Output): ExitCode {
  if (name === "codes") output.out(helpCodes());
  else output.out(name === undefined ? helpAll(commands) : helpOne(find(name)));
  return 0;
}

function find(name: string): Command {
  const command = commands.find((one) => one.name === name);
  if (command === undefined) {
    const meant = didYouMean(
      name,
      commands.map((one) => one.name),
    );
    throw new WrongCall(`There is no command "${name}".${meant}\n\n${helpAll(commands)}`);
  }
  return command;
}
