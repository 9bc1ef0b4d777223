/** Lists of withdrawals: one of each mentor, signed with the key that is listed, in date. */
import { statusListContexts } from "../../engine/competency/contexts.ts";
import { statusListId } from "../../engine/competency/credential.ts";
import { textAt } from "../../engine/competency/fields.ts";
import { readInstant } from "../../engine/competency/instant.ts";
import type { JsonObject } from "../../engine/competency/json.ts";
import { portable } from "../../engine/competency/libraries.ts";
import { checkProof } from "../../engine/competency/proof.ts";
import { issuerOf } from "../../engine/competency/read-proof.ts";
import type { Code } from "../../model/codes.ts";
import type { Content } from "../../model/content.ts";
import type { Withdrawals } from "../../model/released.ts";
import { remembered } from "../../model/remembered.ts";
import { nearestWords } from "../nearest.ts";
import type { Reporter } from "../reporter.ts";
import { inFile, type Rule } from "./rule.ts";

export const withdrawals: Rule = {
  name: "withdrawals",
  check(content, reporter) {
    const { mentors, identifier } = content.programme;
    for (const [index, { id }] of mentors.entries()) {
      if (identifier === undefined || content.outlines.has(`withdrawals/${id}.json`)) continue;
      const spot = inFile(content, { path: "programme.yaml" }, ["mentors", index, "id"]);
      reporter.report("withdrawals-missing", spot, `there is no withdrawals/${id}.json`);
    }
    for (const list of content.withdrawals.values()) checkList(list, content, reporter);
  },
};

function checkList(file: Withdrawals, content: Content, reporter: Reporter): void {
  const fault = faultOf(file, content);
  const source = content.sources.get(file.path)!;
  if (fault !== undefined) reporter.report(fault.code, { source, offset: 0 }, fault.found);
}

function faultOf({ mentor, list }: Withdrawals, content: Content): { code: Code; found: string } | undefined {
  const { mentors, identifier } = content.programme;
  const known = mentors.find(({ id }) => id === mentor);
  if (known === undefined) {
    const near = nearestWords(
      mentor,
      mentors.map(({ id }) => id),
    );
    const isSure = content.outlines.get("programme.yaml")?.isSound === true;
    return isSure ? { code: "unknown-mentor", found: `there is no mentor "${mentor}"${near}` } : undefined;
  }
  const unsigned = unsignedBecause(list);
  if (unsigned !== undefined) return { code: "withdrawals-unsigned", found: unsigned.replace(/\.$/, "") };
  const [issuer, wanted] = [issuerOf(list), statusListId(identifier ?? "", known.key)];
  if (issuer !== known.key)
    return {
      code: "withdrawals-key",
      found: `it is signed by ${issuer}, and the key of "${mentor}" is ${known.key}`,
    };
  if (list.id !== wanted)
    return { code: "withdrawals-key", found: `it is the list ${list.id}, not ${wanted}` };
  const until = textAt(list, "validUntil") ?? "no day";
  if ((readInstant(until) ?? 0) >= Date.parse(content.at)) return undefined;
  return { code: "withdrawals-expired", found: `it was good until ${until}` };
}

/** Signatures take milliseconds, and lists seldom change. */
const unsignedBecause = remembered(
  (list: JsonObject): string | undefined => checkProof(list, portable, statusListContexts)?.message,
);
