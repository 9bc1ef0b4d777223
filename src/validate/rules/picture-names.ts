/** Pictures that lie where the build puts a file of its own: one of the two would be written over. */
import type { Content } from "../../model/content.ts";
import { sizedOf } from "../../model/picture-files.ts";
import { blankSource } from "../../model/source.ts";
import type { Rule } from "./rule.ts";

export const pictureNames: Rule = {
  name: "picture names",
  check(content, reporter) {
    for (const path of content.pictures.keys()) {
      const why = reason(path, content);
      if (why === undefined) continue;
      reporter.report("picture-name", { source: blankSource(path, "module", path), offset: 0 }, why);
    }
  },
};

/** Undefined for a name that is free. */
function reason(path: string, { pictures }: Content): string | undefined {
  if (/^assets\//i.test(path))
    return `"${path}" lies in the folder assets, which the site has for its own files`;
  const { picture, width } = sizedOf(path) ?? {};
  if (picture === undefined || !pictures.has(picture)) return undefined;
  return `"${path}" is called as the build calls "${picture}" made ${width} pixels wide`;
}
