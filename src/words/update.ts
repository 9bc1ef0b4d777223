/**
 * Writes the list of all messages, and brings the catalogues up to it: what is new is added without a translation, what is no longer
 * used is taken out. Run with `npx tsx src/words/update.ts`.
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { toolFolder } from "../tool-folder.ts";
import { allMessages } from "./extract.ts";
import { mergedPo, potOf } from "./pot.ts";

const folder = toolFolder("words");
const messages = allMessages();
writeFileSync(join(folder, "en.pot"), potOf(messages));
for (const name of readdirSync(folder).filter((each) => each.endsWith(".po"))) {
  const file = join(folder, name);
  writeFileSync(file, mergedPo(readFileSync(file, "utf8"), messages));
}
process.stdout.write(`${messages.length} messages\n`);
