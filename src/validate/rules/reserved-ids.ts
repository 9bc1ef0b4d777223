/** Ids of modules that would collide with files of the site. */
import { programmeDataFile } from "../../model/record-data.ts";
import { moduleRule } from "./rule.ts";

/** `record/data/programme.js` is the programme's own. */
const reserved = /([^/]+)\.js$/.exec(programmeDataFile)![1]!;

export const reservedIds = moduleRule("reserved-ids", ({ id, path }, content, reporter) => {
  if (id !== reserved) return;
  const source = content.sources.get(path)!;
  reporter.report("reserved-id", { source, offset: 0 }, `a module can't be called "${id}"`);
});
