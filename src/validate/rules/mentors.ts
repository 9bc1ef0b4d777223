/** Who may sign: each mentor once, with a key of their own, for modules that there are. */
import type { Mentor } from "../../engine/competency/rules.ts";
import type { Content } from "../../model/content.ts";
import type { YamlPath } from "../../model/source.ts";
import type { Reporter, Spot } from "../reporter.ts";
import { knownOf } from "./known.ts";
import { reportUnknown } from "./references.ts";
import { inFile, type Rule } from "./rule.ts";

const knownModules = knownOf("module");

export const mentors: Rule = {
  name: "mentors",
  check(content, reporter) {
    const { mentors: all, identifier } = content.programme;
    const spot = (path: YamlPath, end?: Spot["end"]) =>
      inFile(content, { path: "programme.yaml" }, path, end);
    if (all.length > 0 && identifier === undefined)
      reporter.report("identifier-missing", spot(["mentors"], "key"), "there are mentors and no identifier");
    const first = new Map<string, number>();
    for (const [index, mentor] of all.entries()) {
      const at = (...path: YamlPath) => spot(["mentors", index, ...path]);
      const again = (field: "id" | "key", code: "duplicate-id" | "key-twice", words: string) => {
        const earlier = first.get(mentor[field]);
        if (earlier === undefined) first.set(mentor[field], index);
        else
          reporter.report(code, at(field), words, {
            ...spot(["mentors", earlier, field]),
            message: "the first one stands here",
          });
      };
      again("id", "duplicate-id", `two mentors have the id "${mentor.id}"`);
      again("key", "key-twice", `"${mentor.id}" has the key of "${all[first.get(mentor.key) ?? index]!.id}"`);
      checkDates(mentor, at, reporter);
      checkModules(mentor, content, at, reporter);
    }
  },
};

function checkDates({ from, to }: Mentor, at: (...path: YamlPath) => Spot, reporter: Reporter): void {
  if (to !== undefined && to < from)
    reporter.report("dates-reversed", at("to"), `to: ${to} is before from: ${from}`);
}

function checkModules(
  { maySign }: Mentor,
  content: Content,
  at: (...path: YamlPath) => Spot,
  reporter: Reporter,
): void {
  if (maySign === "all") return;
  const known = knownModules(content);
  for (const [index, id] of maySign.entries())
    reportUnknown("unknown-module", "module", id, known, at("may-sign", index), reporter);
}
