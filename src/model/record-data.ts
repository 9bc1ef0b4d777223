/**
 * What the pages of the competency record load, as scripts that each make one call, `benchwrightData("name", {…})`, so that they also
 * work from disk, where nothing can be fetched. Only where the programme keeps records.
 */
import type { JsonObject } from "../engine/competency/json.ts";
import type { Release, ReleaseCard } from "../engine/competency/release.ts";
import type { RecordRules } from "../engine/competency/rules.ts";

/** `record/data/programme.js`, under the name "programme". */
export interface ProgrammeData {
  readonly rules: RecordRules;
  /** Of all modules, each after those that it needs, otherwise by title. */
  readonly modules: readonly ReleaseCard[];
  /** The signed lists of withdrawals by the ids of mentors, as they stood when the site was built. */
  readonly withdrawals: readonly (readonly [mentor: string, list: JsonObject])[];
}

/** `record/data/<module>.js`, under the module's id; no module is called "programme". */
export interface ModuleData {
  readonly release: Release;
  /** Releases that were kept and differ from the present one, to mark old answers again. */
  readonly earlier: readonly Release[];
}

/** The function that a page must have before such a script is loaded. */
export type DataGlobal = { benchwrightData?: (name: string, data: ProgrammeData | ModuleData) => void };

/** Files of the site. */
export const programmeDataFile = "record/data/programme.js";
export const moduleDataFile = (module: string): string => `record/data/${module}.js`;
