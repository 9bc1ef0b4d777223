/** Takes a statement out of a credential, as it is written there: whether it is sound is judged afterwards. */
import { readAchievementId } from "./achievement.ts";
import { at, textAt } from "./fields.ts";
import type { Json } from "./json.ts";
import type { Level, Outcome } from "./levels.ts";
import type { Statement } from "./sign-off.ts";
import { contentIn, eventsIn, idsIn, narrativeIn } from "./statement-evidence.ts";
import { levelIn, outcomeIn, scoreIn } from "./statement-results.ts";

/** Undefined where it is not about anything of the programme with this identifier. */
export function statementIn(credential: Json, identifier: string): Statement | undefined {
  const achievement = at(credential, "credentialSubject", "achievement");
  const about = readAchievementId(textAt(achievement, "id") ?? "", identifier);
  if (about === undefined) return undefined;
  const signed = signedIn(credential);
  if (about.kind === "new-key") return { ...signed, ...about, kind: "new-key" };
  const release = {
    ...signed,
    module: about.module,
    revision: about.revision,
    title: textAt(achievement, "name") ?? "",
    content: contentIn(credential),
    words: narrativeIn(credential, "words"),
  };
  return about.kind === "sign-off"
    ? {
        ...release,
        kind: "sign-off",
        level: levelIn(credential) as Level,
        score: scoreIn(credential),
        evidence: eventsIn(credential),
      }
    : {
        ...release,
        kind: "observation",
        outcome: outcomeIn(credential) as Outcome,
        phases: idsIn(credential, "phases"),
        ticked: idsIn(credential, "steps"),
      };
}

function signedIn(credential: Json) {
  const subject = at(credential, "credentialSubject");
  return {
    id: textAt(credential, "id") ?? "",
    issuer: textAt(credential, "issuer", "id") ?? "",
    issuerName: textAt(credential, "issuer", "name") ?? "",
    subject: textAt(subject, "id") ?? "",
    subjectName: textAt(subject, "identifier", 0, "identityHash") ?? "",
    validFrom: textAt(credential, "validFrom") ?? "",
    validUntil: textAt(credential, "validUntil"),
    statusIndex: indexOf(textAt(credential, "credentialStatus", "statusListIndex") ?? ""),
  };
}

/** NaN of what is no number written plainly. */
const indexOf = (text: string): number => (/^(?:0|[1-9]\d{0,8})$/.test(text) ? Number(text) : Number.NaN);
