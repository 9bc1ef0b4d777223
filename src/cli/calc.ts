/** Sums of the bench: a table of them, each in a file of `calc/`. */
import { air } from "./calc/air.ts";
import { convert } from "./calc/convert.ts";
import { strip } from "./calc/strip.ts";
import type { Sum } from "./calc/sum.ts";
import { thread } from "./calc/thread.ts";
import { torque } from "./calc/torque.ts";
import { vapour } from "./calc/vapour.ts";
import { type Call, type Command, WrongCall } from "./command.ts";

const sums: readonly Sum[] = [convert, thread, torque, strip, vapour, air];

/** The options of all sums, since arguments are read before the sum is known. */
const allOptions = Object.assign({}, ...sums.map(({ options }) => options)) as Command["options"];

export const calc: Command = {
  name: "calc",
  summary: "sums of the bench: units, threads, torque, stripping, solvent vapour, fresh air",
  usage: `${sums.map(({ name }) => name).join("|")} …`,
  options: allOptions,
  // The name, its words, and one too many, which is refused with the use of the sum.
  words: 2 + Math.max(...sums.map(({ words }) => words)),
  more: overview,
  run(call, output) {
    const [name, ...words] = call.positionals;
    const sum = sums.find((one) => one.name === name);
    if (sum === undefined) {
      const found = name === undefined ? "Which sum?" : `There is no sum "${name.slice(0, 60)}".`;
      throw new WrongCall(`${found}\n\n${overview()}`);
    }
    refuseStrangers(sum, call, words);
    sum.run(call, words, output);
    return 0;
  },
};

function refuseStrangers(
  { name, options, words: allowed, usage }: Sum,
  call: Call,
  words: readonly string[],
): void {
  const strange = Object.keys(allOptions).filter(
    (option) => !(option in options) && (call.text(option) !== undefined || call.flag(option)),
  );
  const extra = [
    ...strange.map((option) => `--${option}`),
    ...words.slice(allowed).map((word) => `"${word}"`),
  ];
  if (extra.length === 0) return;
  throw new WrongCall(`calc ${name} takes no ${extra.join(", ")}. Use: benchwright calc ${name} ${usage}`);
}

function overview(): string {
  const lines = sums.flatMap(({ name, summary, usage }) => [`  calc ${name}: ${summary}`, `    ${usage}`]);
  return ["Sums:", ...lines].join("\n");
}
