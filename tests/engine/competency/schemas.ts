/** The published JSON Schemas of Open Badges 3.0 (draft 2019-09) and of VC 2.0 (draft 2020-12). */
import { Ajv2019 } from "ajv/dist/2019.js";
import { Ajv2020 } from "ajv/dist/2020.js";
import addFormats from "ajv-formats";
import type { Json } from "../../../src/engine/competency/json.ts";
import { referenceJson } from "./reference.ts";

type Validator = (value: unknown) => boolean;

/** Not strict: the schemas name keywords of their own. */
const options = { strict: false, allErrors: true };

function compiled(ajv: Ajv2019 | Ajv2020, path: string): (value: Json) => readonly string[] {
  // The package's types are those of CommonJS, where the function is the module.
  (addFormats as unknown as (ajv: unknown) => void)(ajv);
  const validate: Validator & { errors?: readonly object[] | null } = ajv.compile(referenceJson(path));
  return (value) => (validate(value) ? [] : (validate.errors ?? []).map((error) => JSON.stringify(error)));
}

/** What is wrong by the schema of an AchievementCredential. */
export const badgeFaults = compiled(new Ajv2019(options), "schemas/achievementcredential.json");
/** What is wrong by the schema of a Verifiable Credential. */
export const credentialFaults = compiled(new Ajv2020(options), "schemas/verifiable-credential-schema.json");
