/** Commands that do several things, each named by the word that follows: a table of actions. */
import { type Call, type Command, type ExitCode, type Output, WrongCall } from "./command.ts";

export interface Action {
  readonly name: string;
  readonly summary: string;
  /** What else the help text says of it. */
  readonly note?: string;
  /** What follows the name. */
  readonly usage: string;
  readonly options: Command["options"];
  /** How many words without an option may follow its name. */
  readonly words: number;
  /** `words` are those that follow the name. */
  run(call: Call, words: readonly string[], output: Output): Promise<ExitCode> | ExitCode;
}

/** The command `name`, which does what the word after it says. */
export function commandOf(name: string, summary: string, actions: readonly Action[]): Command {
  const options = Object.assign({}, ...actions.map((action) => action.options)) as Command["options"];
  const overview = () =>
    actions
      .flatMap((action) => [
        `  ${name} ${action.name}: ${action.summary}`,
        `    ${action.name} ${action.usage}`,
        ...(action.note === undefined ? [] : [`    ${action.note}`]),
      ])
      .join("\n");
  return {
    ...{ name, summary, options },
    usage: `${actions.map((action) => action.name).join("|")} …`,
    // The name, its words, and one too many, which is refused with the use of the action.
    words: 2 + Math.max(...actions.map(({ words }) => words)),
    more: overview,
    run(call, output) {
      const [word, ...words] = call.positionals;
      const action = actions.find((one) => one.name === word);
      if (action === undefined) {
        const found =
          word === undefined ? `What is ${name} to do?` : `There is no ${name} ${word.slice(0, 60)}.`;
        throw new WrongCall(`${found}\n\n${overview()}`);
      }
      refuseStrangers(name, action, call, Object.keys(options), words);
      return action.run(call, words, output);
    },
  };
}

function refuseStrangers(
  command: string,
  { name, options, words: allowed, usage }: Action,
  call: Call,
  all: readonly string[],
  words: readonly string[],
): void {
  const strange = all.filter(
    (option) => !(option in options) && (call.text(option) !== undefined || call.flag(option)),
  );
  const extra = [
    ...strange.map((option) => `--${option}`),
    ...words.slice(allowed).map((word) => `"${word}"`),
  ];
  if (extra.length === 0) return;
  throw new WrongCall(
    `${command} ${name} takes no ${extra.join(", ")}. Use: benchwright ${command} ${name} ${usage}`,
  );
}
