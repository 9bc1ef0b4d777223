/** Rule (e): one step works on an assembly, the other removes or refits anything in it. */
import { moves } from "../touch.ts";
import type { Rule } from "./rule.ts";

export const assemblyWork: Rule = {
  name: "assembly work",
  binds: "a step that works on an assembly, and one that removes or refits anything in it",
  reason(a, b, { the }) {
    if (a.kind === "work" && moves(b) && b.lies.has(a.target)) {
      return `${the(a.target)} is worked on before ${the(b.target)} ${b.kind === "remove" ? "comes out of it" : "goes back into it"}`;
    }
    if (b.kind === "work" && moves(a) && a.lies.has(b.target)) {
      return `${the(b.target)} is worked on with ${the(a.target)} ${a.kind === "remove" ? "out of it" : "back in it"}`;
    }
    return undefined;
  },
};
