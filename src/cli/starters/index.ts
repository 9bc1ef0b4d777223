/** What `new` can begin, one row each. */
import { modulePath } from "../../model/link.ts";
import { read } from "../../read/read.ts";
import { noSuchModule } from "../no-such-module.ts";
import { moduleText } from "./module.ts";
import { programmeFiles } from "./programme.ts";
import { mistakesIn, quizText } from "./quiz.ts";
import { refitFiles } from "./refit.ts";
import { hazardText, substanceText, toolText } from "./sheets.ts";
import type { StarterFiles } from "./starter.ts";

interface Starter {
  /** What the id is called in a call; undefined where there is none. */
  readonly id: string | undefined;
  /** The id where the call gives none but says --from; undefined where there is no --from. */
  readonly idFrom?: (from: string) => string;
  /** Other ways to call it, behind the id. */
  readonly ways?: readonly string[];
  /** `from` is the module of --from, where there is one. */
  files(id: string, content: string, from: string): StarterFiles;
}

const one = (path: (id: string) => string, text: (id: string) => string): Starter => ({
  id: "ID",
  files: (id) => new Map([[path(id), text(id)]]),
});

export const starters: ReadonlyMap<string, Starter> = new Map([
  ["programme", { id: undefined, files: () => programmeFiles }],
  ["module", { ...one(modulePath, (id) => moduleText(id)), ways: ["--photos DIR"] }],
  ["tool", one((id) => `tools/${id}.md`, toolText)],
  ["substance", one((id) => `substances/${id}.md`, substanceText)],
  ["hazard", one((id) => `hazards/${id}.md`, hazardText)],
  ["quiz", { id: "MODULE", files: quizFiles }],
  [
    "refit",
    {
      id: "[ID] --from MODULE",
      idFrom: (from) => `${from}-refit`,
      files: (id, content, from) => refitFiles(id, from, content),
    },
  ],
]);

/** Its questions send the reader to the module's first step, or to its page where it has none. */
function quizFiles(module: string, content: string): StarterFiles {
  const path = modulePath(module);
  const { reading } = read(content, { wants: (one) => one === path });
  const [source] = reading.sources;
  if (source === undefined) throw noSuchModule(module, modulesIn(content));
  const step = source.sections.flatMap(({ steps }) => steps.map(idOf)).find((id) => id !== undefined);
  const see = step === undefined ? "module.md" : `#${step}`;
  const mistakes = mistakesIn(source.sections.flatMap(({ steps }) => steps));
  return new Map([[`modules/${module}/quiz.yaml`, quizText(see, mistakes)]]);
}

const modulesIn = (content: string): string[] =>
  read(content)
    .reading.sources.filter(({ kind }) => kind === "module")
    .map(({ id }) => id);

function idOf({ value }: { readonly value: unknown }): string | undefined {
  const id = (value as { id?: unknown } | null | undefined)?.id;
  return typeof id === "string" ? id : undefined;
}
