/** What `new module` asks on a terminal, and the module that the answers come to. */
import type { Content } from "../../model/content.ts";
import { prompts } from "../../model/unwritten.ts";
import { titleOf } from "../starters/starter.ts";
import { type Asker, askFor, numbered, numberWithin, oneOf, someOf } from "./ask.ts";

export const moduleKinds = ["procedure", "bench knowledge"] as const;
export type ModuleKind = (typeof moduleKinds)[number];

export interface ModuleAnswers {
  readonly kind: ModuleKind;
  readonly title: string;
  readonly summary: string;
  readonly needs: readonly string[];
  readonly tools: readonly string[];
  readonly hazards: readonly string[];
  /** Of a procedure: how many steps. */
  readonly steps: number;
}

/** The ids that a module may name. */
export interface Choices {
  readonly modules: readonly string[];
  readonly tools: readonly string[];
  readonly hazards: readonly string[];
}

export const choicesOf = ({ modules, tools, hazards }: Content): Choices => ({
  modules: [...modules.keys()].sort(),
  tools: [...tools.keys()].sort(),
  hazards: [...hazards.keys()].sort(),
});

/** As schema and page have it. */
const longestTitle = 120;
const longestSummary = 400;

/** Of steps a procedure of more is better begun in two modules. */
const mostSteps = 60;

/** Asks one question after the other. Throws Stopped where no answer comes. */
export async function askForModule(asker: Asker, id: string, choices: Choices): Promise<ModuleAnswers> {
  asker.say(
    `A new module "${id}". An empty answer takes what stands in brackets; Ctrl+C leaves nothing written.\n`,
  );
  asker.say(numbered(moduleKinds));
  const kind = (await askFor(asker, "Which kind?", moduleKinds[0], oneOf(moduleKinds))) as ModuleKind;
  const title = await askFor(asker, "Title?", titleOf(id), line(longestTitle));
  const summary = await askFor(
    asker,
    "What it is for, in one sentence?",
    prompts.summary,
    line(longestSummary),
  );
  const needs = await askForSome(asker, "Which modules must be learned before?", choices.modules);
  const tools = await askForSome(asker, "Which tools?", choices.tools);
  const hazards = await askForSome(asker, "Which hazards?", choices.hazards);
  const steps =
    kind === "procedure"
      ? await askFor(asker, `How many steps (3 to ${mostSteps})?`, "3", numberWithin(3, mostSteps))
      : 0;
  return { kind, title, summary, needs, tools, hazards, steps };
}

/** Nothing to choose from, nothing asked. */
async function askForSome(
  asker: Asker,
  question: string,
  names: readonly string[],
): Promise<readonly string[]> {
  if (names.length === 0) return [];
  asker.say(numbered(names));
  return askFor(asker, `${question} Numbers or names, commas between.`, "", someOf(names));
}

const line =
  (longest: number) =>
  (answer: string): { value: string } | { wrong: string } =>
    answer.length <= longest
      ? { value: answer }
      : { wrong: `That is ${answer.length} characters long; at most ${longest} will do.` };
