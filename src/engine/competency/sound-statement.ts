/** What must hold of every statement, whether it was read or is about to be signed. */
import { t } from "../words.ts";
import { publicKeyOfDid } from "./did-key.ts";
import { isDigest } from "./digest.ts";
import { readInstant } from "./instant.ts";
import type { Json } from "./json.ts";
import { levels, outcomes } from "./levels.ts";
import type { RecordCode, RecordProblem } from "./problems.ts";
import { quoted } from "./quoted.ts";
import type { Observation, SignOff, Statement } from "./sign-off.ts";
import { listLength } from "./status-bits.ts";

/** The first thing that is wrong; undefined where nothing is. O(size). */
export function faultOfStatement(statement: Statement): RecordProblem | undefined {
  const fault = firstFault(ofAll, statement);
  if (fault !== undefined || statement.kind === "new-key") return fault;
  const ofModule = firstFault(ofRelease, statement);
  if (ofModule !== undefined) return ofModule;
  return statement.kind === "sign-off"
    ? firstFault(ofSignOff, statement)
    : firstFault(ofObservation, statement);
}

type Demand<Of> = (statement: Of) => RecordProblem | undefined;

function firstFault<Of>(demands: readonly Demand<Of>[], statement: Of): RecordProblem | undefined {
  for (const demand of demands) {
    const fault = demand(statement);
    if (fault !== undefined) return fault;
  }
  return undefined;
}

/** `at` is the place in the credential; `of` what stands there. */
function demand<Of, Value extends Json | undefined>(
  at: string,
  expected: string,
  of: (statement: Of) => Value,
  isRight: (value: Value, statement: Of) => boolean,
  code: RecordCode = "schema",
): Demand<Of> {
  return (statement) =>
    isRight(of(statement), statement)
      ? undefined
      : { code, message: t`Expected ${expected}; found ${quoted(of(statement))}.`, at };
}

const uuid = /^urn:uuid:[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const isKey = (did: string): boolean => publicKeyOfDid(did) !== undefined;
const isNamed = (text: string): boolean => text.trim() !== "";
const isTime = (text: string): boolean => readInstant(text) !== undefined;
const isPlace = (place: number): boolean => Number.isInteger(place) && place >= 0 && place < listLength;
const areIds = (ids: readonly string[]): boolean => ids.every((id) => /^[a-z][a-z0-9-]*$/.test(id));
const isFraction = (value: number | undefined): boolean => value === undefined || (value >= 0 && value <= 1);

const isAfterStart = (until: string | undefined, { validFrom }: Statement): boolean =>
  until === undefined || (readInstant(until) ?? 0) > readInstant(validFrom)!;

const aKey = t`a key such as did:key:z6Mk…`;
const aTime = t`a time with its zone, such as 2026-11-27T19:30:00Z`;
const aDigest = t`a digest, uEi and 43 letters more`;
const someIds = t`ids with a comma and a space between them`;

const ofAll: readonly Demand<Statement>[] = [
  demand(
    "id",
    t`urn:uuid: and a UUID in small letters`,
    ({ id }) => id,
    (id) => uuid.test(id),
  ),
  demand("issuer.id", aKey, ({ issuer }) => issuer, isKey),
  demand("issuer.name", t`the mentor's name`, ({ issuerName }) => issuerName, isNamed),
  demand("credentialSubject.id", aKey, ({ subject }) => subject, isKey),
  demand("credentialSubject.identifier", t`the trainee's name`, ({ subjectName }) => subjectName, isNamed),
  demand("validFrom", aTime, ({ validFrom }) => validFrom, isTime),
  demand("validUntil", t`${aTime}, after validFrom`, ({ validUntil }) => validUntil, isAfterStart),
  demand(
    "credentialStatus.statusListIndex",
    t`a place on the list of withdrawals, 0 to ${listLength - 1}`,
    ({ statusIndex }) => statusIndex,
    isPlace,
    "status-list",
  ),
];

const ofRelease: readonly Demand<SignOff | Observation>[] = [
  demand("credentialSubject.achievement.name", t`the title of the module`, ({ title }) => title, isNamed),
  demand("evidence", t`${aDigest}, of the module's content`, ({ content }) => content, isDigest),
];

const ofSignOff: readonly Demand<SignOff>[] = [
  demand(
    "credentialSubject.result",
    t`a level, one of ${levels.join(", ")}`,
    ({ level }) => level,
    (level) => levels.includes(level),
  ),
  demand("credentialSubject.result", t`a score from 0 to 100, in percent`, ({ score }) => score, isFraction),
  demand(
    "evidence",
    t`${aDigest}, and a name, for each event`,
    ({ evidence }) => evidence.flatMap(({ name, digest }) => [name, digest]),
    (_, { evidence }) => evidence.every(({ name, digest }) => isNamed(name) && isDigest(digest)),
  ),
];

const ofObservation: readonly Demand<Observation>[] = [
  demand(
    "credentialSubject.result",
    t`an outcome, one of ${outcomes.join(", ")}`,
    ({ outcome }) => outcome,
    (outcome) => outcomes.includes(outcome),
  ),
  demand("evidence", t`phases: ${someIds}`, ({ phases }) => phases, areIds),
  demand("evidence", t`steps: ${someIds}`, ({ ticked }) => ticked, areIds),
];
