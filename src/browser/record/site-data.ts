/** The programme's data for records: scripts of one call each, so that they also load from disk. */
import type { DataGlobal, ModuleData, ProgrammeData } from "../../model/record-data.ts";
import { loadScript } from "../page/load-script.ts";

export interface SiteData {
  programme(): Promise<ProgrammeData>;
  /** Undefined where the site has no such module, or its data do not come. */
  module(id: string): Promise<ModuleData | undefined>;
}

/** `root` is the way from the page to the root of the site. Each file is loaded once. */
export function siteData(root: string): SiteData {
  const found = new Map<string, ProgrammeData | ModuleData>();
  const asked = new Map<string, Promise<void>>();
  (globalThis as DataGlobal).benchwrightData = (name, data) => {
    found.set(name, data);
  };
  const load = async (name: string): Promise<ProgrammeData | ModuleData | undefined> => {
    const loading = asked.get(name) ?? loadScript(`${root}record/data/${name}.js`);
    asked.set(name, loading);
    await loading;
    return found.get(name);
  };
  return {
    programme: async () => (await load("programme")) as ProgrammeData,
    module: async (id) => {
      if (!/^[a-z0-9-]+$/.test(id)) return undefined;
      return (await load(id).catch(() => undefined)) as ModuleData | undefined;
    },
  };
}
