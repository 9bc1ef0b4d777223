/** Of a programme's and a module's rules the stricter holds: what a module asks less than its programme says something untrue. */
import type { SignOffRules } from "../../engine/competency/rules.ts";
import { strictest } from "../../engine/competency/rules-of.ts";
import { signOffFields } from "../make/sign-off.ts";
import { inFile, moduleRule } from "./rule.ts";

type Field = keyof SignOffRules;

export const weakerSignOff = moduleRule("weaker-sign-off", ({ path, signOff }, content, reporter) => {
  const asked = content.programme.signOff;
  const held = strictest(asked, signOff);
  for (const field of Object.keys(signOff) as Field[]) {
    if (field === "induction" || held[field] === signOff[field]) continue;
    const name = signOffFields[field];
    reporter.report(
      "rule-weaker",
      inFile(content, { path }, ["sign-off", name]),
      `${name}: is ${show(field, signOff[field])} here, and ${show(field, asked[field])} in programme.yaml`,
    );
  }
});

const show = (field: Field, value: SignOffRules[Field]): string =>
  field === "pass" ? `${Math.round(Number(value) * 1000) / 10} %` : String(value);
