/** A mentor's statement in the shape of Open Badges 3.0. */
import { achievementId, achievementOf } from "./achievement.ts";
import { credentialContexts } from "./contexts.ts";
import type { JsonObject } from "./json.ts";
import type { Statement } from "./sign-off.ts";
import { evidenceOf } from "./statement-evidence.ts";
import { resultsOf } from "./statement-results.ts";

export interface Unsigned extends JsonObject {
  readonly "@context": readonly string[];
}

/** The address of a mentor's list of withdrawals; `mentor` is their did:key. */
export const statusListId = (identifier: string, mentor: string): string =>
  `${identifier}/withdrawals/${mentor}`;

/** The credential without its proof. `identifier` and `programmeName` are those of the programme. */
export function credentialOf(statement: Statement, identifier: string, programmeName: string): Unsigned {
  const evidence = evidenceOf(statement);
  return {
    "@context": credentialContexts,
    id: statement.id,
    type: ["VerifiableCredential", "OpenBadgeCredential"],
    issuer: { id: statement.issuer, type: ["Profile"], name: statement.issuerName },
    validFrom: statement.validFrom,
    ...(statement.validUntil === undefined ? {} : { validUntil: statement.validUntil }),
    credentialSubject: subjectOf(statement, identifier, programmeName),
    ...(evidence.length === 0 ? {} : { evidence }),
    credentialSchema: [
      {
        id: "https://purl.imsglobal.org/spec/ob/v3p0/schema/json/ob_v3p0_achievementcredential_schema.json",
        type: "1EdTechJsonSchemaValidator2019",
      },
    ],
    credentialStatus: statusOf(statement, identifier),
  };
}

function subjectOf(statement: Statement, identifier: string, programmeName: string): JsonObject {
  const result = resultsOf(statement, achievementId(statement, identifier));
  return {
    id: statement.subject,
    type: ["AchievementSubject"],
    identifier: [
      {
        type: "IdentityObject",
        hashed: false,
        identityHash: statement.subjectName,
        identityType: "name",
      },
    ],
    achievement: achievementOf(statement, { identifier, name: programmeName }),
    ...(result.length === 0 ? {} : { result }),
  };
}

function statusOf({ issuer, statusIndex }: Statement, identifier: string): JsonObject {
  const list = statusListId(identifier, issuer);
  return {
    id: `${list}#${statusIndex}`,
    type: "BitstringStatusListEntry",
    statusPurpose: "revocation",
    statusListIndex: String(statusIndex),
    statusListCredential: list,
  };
}
