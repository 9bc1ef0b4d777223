import { jsonSchemas } from "../validate/schema/index.ts";
import { type Command, printJson, WrongCall } from "./command.ts";

export const schema: Command = {
  name: "schema",
  summary: "prints JSON Schemas, so that an editor completes and checks the YAML",
  usage: "[NAME]",
  words: 1,
  more: () => `NAME is one of ${[...jsonSchemas().keys()].join(", ")}; without it all are printed.`,
  options: { json: { type: "boolean", help: "the output is JSON in any case" } },
  run(call, output) {
    const schemas = jsonSchemas();
    const [name] = call.positionals;
    const known = [...schemas.keys()].join(", ");
    if (name === undefined) printJson(output, Object.fromEntries(schemas));
    else if (schemas.has(name)) printJson(output, schemas.get(name));
    else throw new WrongCall(`There is no schema "${name}"; there are ${known}.`);
    return 0;
  },
};
