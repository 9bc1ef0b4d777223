/** Which names are known. What is there and could not be understood counts: its own faults are reported, not those of all that name it. */
import type { Content } from "../../model/content.ts";
import { addressOfPath, modulePath } from "../../model/link.ts";

export interface Known {
  has(id: string): boolean;
  keys(): Iterable<string>;
}

const pathOf = {
  tool: (id: string) => `tools/${id}.md`,
  substance: (id: string) => `substances/${id}.md`,
  hazard: (id: string) => `hazards/${id}.md`,
  module: modulePath,
};

/** The tools, substances, hazards or modules of all shares; listed only when asked for the nearest of them. */
export const knownOf =
  (kind: keyof typeof pathOf) =>
  ({ outlines }: Content): Known => ({
    has: (id) => outlines.has(pathOf[kind](id)),
    keys: () =>
      [...outlines.keys()].flatMap((path) => {
        const address = addressOfPath(path);
        return address?.kind === kind ? [address.id] : [];
      }),
  });

const everything: Known = { has: () => true, keys: () => [] };

/** Where programme.yaml could not be understood, any condition may be one of its own. */
export const knownConditions = ({ programme, outlines }: Content): Known =>
  outlines.get("programme.yaml")?.isSound === true ? programme.conditions : everything;
