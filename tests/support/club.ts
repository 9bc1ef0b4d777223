/** The programme of `competency.ts` as a content folder: what its people have signed and done fits what stands there. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { gzip } from "../../src/cli/gzip.ts";
import { presentReleases } from "../../src/cli/record/releases.ts";
import { statusListId } from "../../src/engine/competency/credential.ts";
import type { RecordEvent } from "../../src/engine/competency/event.ts";
import { portable } from "../../src/engine/competency/libraries.ts";
import type { Release } from "../../src/engine/competency/release.ts";
import { bitsOf, makeStatusList } from "../../src/engine/competency/status-list.ts";
import { read } from "../../src/read/read.ts";
import { validate } from "../../src/validate/validate.ts";
import {
  identifier,
  observationAt,
  type Person,
  person,
  recordText,
  signOffAt,
  statementEvent,
  theoryAt,
} from "./competency.ts";
import type { Files } from "./content-folder.ts";

export const ann = person("Ann Mentor");
export const ben = person("Ben Mentor");

const programmeText = `name: A restoring club
identifier: ${identifier}
time-zone: Europe/London
sign-off: {months: 24}
mentors:
  - {id: ann, name: Ann Mentor, key: "${ann.did}", highest-level: may teach, from: 2020-01-01}
  - {id: ben, name: Ben Mentor, key: "${ben.did}", may-sign: [motor], from: 2020-01-01}
`;

const moduleText = (title: string, needs: string, more = "") => `---
title: ${title}
summary: Three steps in a row.
revision: 1
needs: [${needs}]
${more}practices:
  - {id: order, title: Order, steps: [a, b, c]}
---

## A

\`\`\`yaml step
id: a
critical: true
\`\`\`

## B

\`\`\`yaml step
id: b
after: {a: b lies under a}
\`\`\`

## C

\`\`\`yaml step
id: c
after: {b: c lies under b}
\`\`\`
`;

const question = (id: string) => `  - id: ${id}
    kind: choose-one
    ask: ${id}?
    options: [{text: "no", why: because}, {text: "yes", right: true}, {text: never, why: because}]
    why: It is so.
    see: "#a"
`;

const quizText = `pass: 80 %\nquestions:\n${question("first")}${question("second")}`;

/** Two modules; the governor needs the motor and asks for a mentor in the room. */
export const clubFiles: Files = new Map([
  ["programme.yaml", programmeText],
  ["modules/motor/module.md", moduleText("The motor", "")],
  ["modules/motor/quiz.yaml", quizText],
  [
    "modules/governor/module.md",
    moduleText("The governor", "motor", "sign-off: {mentor-present: true, trainees-per-mentor: 2}\n"),
  ],
  ["modules/governor/quiz.yaml", quizText],
]);

/** The releases of a content folder by module. */
export function releasesIn(folder: string): ReadonlyMap<string, Release> {
  const { content } = validate(read(folder).reading);
  return new Map(presentReleases(content).map((release) => [release.module, release]));
}

/** The list of a mentor, with these places withdrawn. */
export async function listText(
  mentor: Person,
  withdrawn: readonly number[] = [],
  validUntil = "2036-12-31T00:00:00Z",
): Promise<string> {
  const list = await makeStatusList({
    ...{ issuer: mentor.did, id: statusListId(identifier, mentor.did), bits: bitsOf(withdrawn) },
    ...{ validFrom: "2026-01-01T00:00:00Z", validUntil, created: "2026-01-01T00:00:00Z" },
    ...{ sign: mentor.sign, gzip, primitives: portable },
  });
  return JSON.stringify(list);
}

/** Reading, hazards, quiz, practice and dry run, watched, done unaided, and signed off at level "alone". */
export async function signedOff(
  trainee: Person,
  release: Release,
  mentor: Person = ann,
  month = "2026-03",
): Promise<RecordEvent[]> {
  const observed = [
    observationAt(`${month}-10T19:00:00Z`, mentor, trainee, release, { outcome: "watched" }),
    observationAt(`${month}-17T19:00:00Z`, mentor, trainee, release),
  ];
  const sitting = theoryAt(`${month}-03T19:00:00Z`, trainee, release);
  const evidence = sitting
    .filter(({ kind }) => kind === "quiz")
    .map(({ id }) => ({ name: "Quiz", digest: id }));
  const signOff = signOffAt(`${month}-17T20:00:00Z`, mentor, trainee, release, { evidence });
  return [
    ...sitting,
    ...(await Promise.all([...observed, signOff].map((statement) => statementEvent(statement, mentor)))),
  ];
}

/** Writes a record file into a folder and gives its path. */
export async function writeRecordFile(
  folder: string,
  name: string,
  owner: Person,
  events: readonly RecordEvent[],
): Promise<string> {
  const file = join(folder, `${name}.record.json`);
  writeFileSync(file, await recordText(owner, events));
  return file;
}
