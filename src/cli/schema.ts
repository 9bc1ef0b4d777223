import { jsonSchemas } from "../validate/schema/index.ts";
import { type Command, printJson, WrongCall } from "./command.ts";

export const schema: Command = {
  name: "schema",
  summary: "prints JSON Schemas, so that an editor completes and checks the YAML",
  usage: "[NAME]",
  options: { json: { type: "boolean", help: "the output is JSON in any case" } },
  run(call, output) {
    const schemas = jsonSchemas();
    const [name, ...more] = call.positionals;
    const known = [...schemas.keys()].join(", ");
    if (more.length > 0) throw new WrongCall(`Give one name at most: ${known}.`);
    if (name === undefined) printJson(output, Object.fromEntries(schemas));
    else if (schemas.has(name)) printJson(output, schemas.get(name));
    else throw new WrongCall(`There is no schema "${name}"; there are ${known}.`);
    return 0;
  },
};
