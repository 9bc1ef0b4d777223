import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { contentFolder } from "./content.ts";
import { starters } from "./starters/index.ts";
import { programmeText } from "./starters/programme.ts";

const calls = [...starters].map(([what, { id }]) => (id === undefined ? what : `${what} ${id}`));

export const newCommand: Command = {
  name: "new",
  summary: "starts a programme, module, sheet or quiz that passes check",
  usage: "WHAT [ID] [--from MODULE] [--content DIR] [--json]",
  words: 2,
  options: {
    from: { type: "string", value: "MODULE", help: "refit: the module that takes apart what is put back" },
    content: contentOption,
    json: jsonOption,
  },
  more: () =>
    [
      "WHAT is one of",
      ...calls.map((call) => `  ${call}`),
      "No file that exists is written over. A refit is a draft: check reports each mark that is left in it.",
    ].join("\n"),
  run(call, output) {
    const content = contentFolder(call);
    const files = filesOf(call.positionals, content, call.text("from"));
    const written = writeAll(files, content);
    if (call.flag("json")) printJson(output, { file: written[0], files: written });
    else output.out(`Written: ${written.join(", ")}\nFill it in; benchwright check tells what is amiss.\n`);
    return 0;
  },
};

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
  if (id !== undefined && !/^[a-z][a-z0-9-]*$/.test(id))
    throw new WrongCall(
      `"${id}" is not a good id: use lower-case letters, digits and hyphens, beginning with a letter.`,
    );
  const files = new Map(starter.files(id ?? "", content, from ?? ""));
  if (!existsSync(join(content, "programme.yaml"))) files.set("programme.yaml", programmeText);
  return files;
}

/** Writes all files or, where one of them exists, none. Returns where they are. */
function writeAll(files: ReadonlyMap<string, string>, content: string): string[] {
  const places = [...files].map(([path, text]) => [join(content, path), text] as const);
  const taken = places.find(([file]) => existsSync(file));
  if (taken !== undefined) throw new WrongCall(`${taken[0]} exists already; nothing is written.`);
  for (const [file, text] of places) {
    mkdirSync(dirname(file), { recursive: true });
    // "wx" refuses a file that has come to exist meanwhile.
    writeFileSync(file, text, { flag: "wx" });
  }
  return places.map(([file]) => file);
}
