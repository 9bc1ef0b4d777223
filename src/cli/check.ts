import { reportJson } from "../report/json.ts";
import { reportText } from "../report/text.ts";
import { checkWith, pictureShop } from "./check-pictures.ts";
import { checkAndWatch } from "./check-watch.ts";
import { type Call, type Command, contentOption, jsonOption, printJson, WrongCall } from "./command.ts";
import { contentFolder, hasErrors, painter } from "./content.ts";
import { countsText } from "./counts.ts";

export const check: Command = {
  name: "check",
  summary: "validates content: its faults together, each with its place and what to do",
  usage: "[--content DIR] [--counts | --watch | --json]",
  options: {
    content: contentOption,
    counts: {
      type: "boolean",
      help: "print a line for each sound module: steps, width, height, right orders and the chance to hit one by lot",
    },
    watch: {
      type: "boolean",
      help: "check again after each change, and tell what has changed (Ctrl+C ends it)",
    },
    json: jsonOption,
  },
  more: () =>
    "What fields there are stands on the page authors/ of every built site, and what can be found in benchwright help codes.",
  async run(call, output) {
    if (call.flag("json") && call.flag("counts"))
      throw new WrongCall("--counts is for people; for a program there is order --module ID --count --json.");
    if (call.flag("watch")) {
      refuseWithWatch(call);
      return checkAndWatch(contentFolder(call), output);
    }
    const { content, diagnostics, texts } = await checkWith(await pictureShop(contentFolder(call)));
    if (call.flag("json")) printJson(output, reportJson(diagnostics));
    else {
      const text = `${reportText(diagnostics, texts, painter(process.stderr))}\n`;
      if (hasErrors(diagnostics)) output.err(text);
      else output.out(text);
      if (call.flag("counts")) output.out(`\n${countsText(content, diagnostics)}\n`);
    }
    return hasErrors(diagnostics) ? 1 : 0;
  },
};

function refuseWithWatch(call: Call): void {
  if (call.flag("json"))
    throw new WrongCall(
      "--watch goes on for a person who writes, and --json is one value for a program: call check --json after each change.",
    );
  if (call.flag("counts"))
    throw new WrongCall("--watch tells what has changed; call check --counts without it.");
}
