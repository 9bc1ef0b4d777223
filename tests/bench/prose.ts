/** What of a module page an author wrote to be read. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { load } from "js-yaml";

const frontMatter = /^---\n(.*?)\n---\n/s;
const stepBlock = /```yaml step\n(.*?)```\n/gs;
/** Of a hazard's sheet, what a safety message says. */
const shown = ["title", "hazard", "consequence", "avoid"];

/**
 * The prose of a module: its Markdown body, every text of its front matter and step blocks (a string with a space in it:
 * so no id, count or date) once, and once what the safety messages say of each hazard that it names. Words that the tool
 * makes are no prose, nor is what a page takes from the programme or from sheets of tools and substances.
 */
export function proseOf(content: string, module: string): string {
  const source = readFileSync(join(content, "modules", module, "module.md"), "utf8");
  const data = [frontMatterOf(source), ...[...source.matchAll(stepBlock)].map(([, block]) => load(block!))];
  const hazards = new Set(data.flatMap((each) => textsIn(fieldsOf(each).get("hazards"))));
  const messages = [...hazards].map((id) => messageOf(join(content, "hazards", `${id}.md`)));
  const texts = [...data, ...messages].flatMap(textsIn).filter((text) => text.includes(" "));
  const body = source.replace(frontMatter, "").replaceAll(stepBlock, "");
  return [body, ...new Set(texts)].join("\n");
}

const frontMatterOf = (source: string): unknown => load(frontMatter.exec(source)?.[1] ?? "");

function messageOf(file: string): unknown {
  if (!existsSync(file)) return [];
  const fields = fieldsOf(frontMatterOf(readFileSync(file, "utf8")));
  return shown.map((field) => fields.get(field));
}

const fieldsOf = (data: unknown): ReadonlyMap<string, unknown> =>
  new Map(data !== null && typeof data === "object" ? Object.entries(data) : []);

/** All strings among the values, however deep; keys are names of fields and things, not prose. */
function textsIn(data: unknown): string[] {
  const found: string[] = [];
  const open = [data];
  while (open.length > 0) {
    const each = open.pop();
    if (typeof each === "string") found.push(each);
    else if (each !== null && typeof each === "object") open.push(...Object.values(each).reverse());
  }
  return found;
}
