import { reportJson } from "../report/json.ts";
import { reportText } from "../report/text.ts";
import { type Command, contentOption, jsonOption, printJson } from "./command.ts";
import { checkContent, contentFolder, hasErrors, painter } from "./content.ts";

export const check: Command = {
  name: "check",
  summary: "validates content: every fault at once, with its place and what to do",
  usage: "[--content DIR] [--json]",
  options: { content: contentOption, json: jsonOption },
  run(call, output) {
    const { diagnostics, texts } = checkContent(contentFolder(call));
    if (call.flag("json")) printJson(output, reportJson(diagnostics));
    else {
      const text = `${reportText(diagnostics, texts, painter(process.stderr))}\n`;
      if (hasErrors(diagnostics)) output.err(text);
      else output.out(text);
    }
    return hasErrors(diagnostics) ? 1 : 0;
  },
};
