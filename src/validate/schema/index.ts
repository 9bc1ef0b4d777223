/** Every schema by its name, and the JSON Schemas that editors use. */
import { z } from "zod";
import { module } from "./module.ts";
import { programme } from "./programme.ts";
import { quiz } from "./quiz.ts";
import { revisions } from "./revisions.ts";
import { hazard, substance, tool } from "./sheets.ts";
import { step } from "./step.ts";

export const schemas = { programme, module, step, quiz, tool, substance, hazard, revisions };

/** JSON Schema (2020-12) of what an author writes, by name. */
export function jsonSchemas(): Map<string, object> {
  return new Map(
    Object.entries(schemas).map(([name, schema]) => [
      name,
      { title: `Benchwright ${name}`, ...z.toJSONSchema(schema, { io: "input", target: "draft-2020-12" }) },
    ]),
  );
}
