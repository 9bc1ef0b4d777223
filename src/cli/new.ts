import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { moduleOf, modulePath } from "../model/link.ts";
import { Stopped } from "./asked/ask.ts";
import { askForModule, choicesOf } from "./asked/module.ts";
import { type Streams, withAsker } from "./asked/terminal.ts";
import {
  BadInput,
  type Call,
  type Command,
  contentOption,
  type ExitCode,
  jsonOption,
  type Output,
  printJson,
  WrongCall,
} from "./command.ts";
import { checkContent, contentFolder } from "./content.ts";
import { draftWords } from "./photographs/words.ts";
import { askedModuleText } from "./starters/asked-module.ts";
import { badIdWords, refuseBadId } from "./starters/id.ts";
import { starters } from "./starters/index.ts";
import { programmeText } from "./starters/programme.ts";

const calls = [...starters].flatMap(([what, { id, ways = [] }]) =>
  ["", ...ways].map((way) => [what, id, way].filter(Boolean).join(" ")),
);

export const newCommand: Command = {
  name: "new",
  summary: "starts a programme, module, sheet or quiz that passes check",
  usage: "WHAT [ID] [--from MODULE | --photos DIR] [--content DIR] [--yes | --json]",
  words: 2,
  // An id in two words: what is meant is known.
  tooMany: ([what = "", ...said]) =>
    starters.get(what)?.id?.includes("ID") === true ? badIdWords(said.join(" ")) : undefined,
  options: {
    from: { type: "string", value: "MODULE", help: "refit: the module that takes apart what is put back" },
    photos: { type: "string", value: "DIR", help: "module: a draft of photographs, a step a picture" },
    content: contentOption,
    yes: { type: "boolean", help: "module: ask nothing, even on a terminal" },
    json: jsonOption,
  },
  more: () =>
    [
      "WHAT is one of",
      ...calls.map((call) => `  ${call}`),
      "On a terminal module asks what is needed, one question after the other.",
      "With --photos it asks nothing: each picture of the folder is a step, in the order in which they were taken or, where",
      "one does not say when (EXIF), by name. Figures are made small, upright and without what the camera wrote, position included.",
      "What is to be written stands in the draft. HEIC is not read: convert it to JPEG first.",
      "No file that exists is written over. A refit is a draft: check reports each mark that is left in it.",
    ].join("\n"),
  run: (call, output) => begin(call, output, asksAt(process)),
};

/** Writes what the call asks for. `streams` is where a person can be asked; undefined where there is nobody. */
export async function begin(call: Call, output: Output, streams: Streams | undefined): Promise<ExitCode> {
  const content = contentFolder(call);
  const photos = call.text("photos");
  if (photos !== undefined) refusePhotos(call, photos);
  const files = filesOf(call.positionals, content, call.text("from"));
  refuseTaken(files, content, call.positionals);
  if (photos !== undefined) return beginWithPhotographs(call, output, files, photos);
  const isAsked =
    streams !== undefined && call.positionals[0] === "module" && !call.flag("yes") && !call.flag("json");
  const written = writeAll(
    isAsked ? await withAnswers(files, call.positionals[1]!, content, streams) : files,
    content,
    call.positionals,
  );
  if (call.flag("json")) printJson(output, { file: written[0], files: written });
  else
    output.out(
      `Written: ${written.join(", ")}\nWrite your own words in place of what stands there; benchwright check tells what is still to be written, and what is amiss.\n`,
    );
  return 0;
}

/** The draft in the place of the plain module, with its figures. */
async function beginWithPhotographs(
  call: Call,
  output: Output,
  files: ReadonlyMap<string, string>,
  folder: string,
): Promise<ExitCode> {
  const { photographDraft } = await import("./photographs/draft.ts");
  const draft = await photographDraft(call.positionals[1]!, folder);
  const written = writeAll(new Map([...files, ...draft.files]), contentFolder(call), call.positionals);
  if (call.flag("json")) {
    const { by, placed, leftOut } = draft;
    printJson(output, { file: written[0], files: written, order: by, photographs: placed, leftOut });
  } else output.out(draftWords(draft, written));
  return 0;
}

function refusePhotos(call: Call, folder: string): void {
  const [what] = call.positionals;
  if (call.text("from") !== undefined)
    throw new WrongCall(
      "--photos and --from can't be had together: --photos begins a module with pictures of a strip-down, --from begins the refit of a module that is written. Leave one of them out.",
    );
  if (what !== undefined && what !== "module")
    throw new WrongCall("--photos goes with module: benchwright new module ID --photos DIR");
  if (folder.trim() === "")
    throw new WrongCall("Name the folder of photographs: benchwright new module ID --photos DIR");
}

/** A person is there where what they type and what they read are both a terminal. */
function asksAt({ stdin, stdout }: Pick<NodeJS.Process, "stdin" | "stdout">): Streams | undefined {
  return stdin.isTTY && stdout.isTTY ? { input: stdin, output: stdout, isTerminal: true } : undefined;
}

/** The files with the module that the answers come to in the place of the plain one. */
async function withAnswers(
  files: ReadonlyMap<string, string>,
  id: string,
  content: string,
  streams: Streams,
): Promise<ReadonlyMap<string, string>> {
  const choices = choicesOf(checkContent(content).content);
  try {
    const answers = await withAsker(streams, (asker) => askForModule(asker, id, choices));
    return new Map([...files, [modulePath(id), askedModuleText(answers)]]);
  } catch (cause) {
    throw cause instanceof Stopped ? new BadInput("\nStopped; nothing is written.") : cause;
  }
}

function filesOf(
  [what, given]: readonly string[],
  content: string,
  from: string | undefined,
): ReadonlyMap<string, string> {
  const starter = starters.get(what ?? "");
  const id = given ?? (from === undefined ? undefined : starter?.idFrom?.(from));
  const isFrom = from !== undefined;
  if (
    starter === undefined ||
    (starter.id === undefined) !== (id === undefined) ||
    (starter.idFrom !== undefined) !== isFrom
  )
    throw new WrongCall(
      `Say one of these:\n${calls
        .map((words) => `  benchwright new ${words}\n`)
        .join("")
        .trimEnd()}`,
    );
  if (id !== undefined) refuseBadId(id);
  const files = new Map(starter.files(id ?? "", content, from ?? ""));
  if (!existsSync(join(content, "programme.yaml"))) files.set("programme.yaml", programmeText);
  return files;
}

/** Writes all files or, where one of them exists, none. Returns where they are. */
function writeAll(
  files: ReadonlyMap<string, string | Uint8Array>,
  content: string,
  asked: readonly string[],
): string[] {
  refuseTaken(files, content, asked);
  const places = [...files].map(([path, held]) => [join(content, path), held] as const);
  for (const [file, held] of places) {
    mkdirSync(dirname(file), { recursive: true });
    // "wx" refuses a file that has come to exist meanwhile.
    writeFileSync(file, held, { flag: "wx" });
  }
  return places.map(([file]) => file);
}

function refuseTaken(files: ReadonlyMap<string, unknown>, content: string, [what]: readonly string[]): void {
  const taken = [...files.keys()].find((path) => existsSync(join(content, path)));
  if (taken === undefined) return;
  const wayOut = hasOnePlace.has(what)
    ? "Write on in it, or remove it to begin anew."
    : wayRound(taken, content);
  throw new WrongCall(`${join(content, taken)} exists already; nothing is written. ${wayOut}`);
}

/** What has no id of its own. */
const hasOnePlace: ReadonlySet<string | undefined> = new Set(["programme", "quiz"]);

function wayRound(taken: string, content: string): string {
  const module = moduleOf(taken);
  const inTheWay = module === undefined ? "that file" : `the folder ${join(content, "modules", module)}`;
  return `Take another id, or remove ${inTheWay} where nothing in it is needed.`;
}
