/** Examples of what can be wrong with mentors, rules of sign-offs, releases and withdrawals. */
import type { Code } from "../../src/model/codes.ts";
import { changed, type Files, soundFiles, withFile } from "../support/content-folder.ts";
import { didOf, identifier, signedList } from "../support/mentors.ts";
import type { Example } from "./examples.ts";

const module = "modules/box/module.md";
const programme = "programme.yaml";

const whole = (code: Code, file: string, text: string, at: string): Example => ({
  code,
  files: withFile(file, text),
  file,
  at,
});

/** The sound programme with lines more in programme.yaml. */
const withLines = (lines: string, files: Files = soundFiles): Files =>
  changed(programme, "name: Test bench\n", `name: Test bench\n${lines}\n`, files);

const inProgramme = (code: Code, lines: string, at: string, says?: string): Example => ({
  code,
  files: withLines(lines),
  file: programme,
  at,
  ...(says === undefined ? {} : { says }),
});

/** One mentor, and what else is said of them. */
const withMentor = (more = "", files: Files = soundFiles): Files =>
  withLines(
    `identifier: ${identifier}\nmentors:\n  - {id: ada, name: Ada, key: "${didOf(1)}", from: 2026-01-01${more}}`,
    files,
  );

const list = "withdrawals/ada.json";
const listed = (code: Code, text: string, says?: string): Example => ({
  code,
  files: withFile(list, text, withMentor()),
  file: list,
  at: text.slice(0, 1),
  ...(says === undefined ? {} : { says }),
});

const revisions = "modules/box/revisions.yaml";
const digest = "uEiCJU4jdx6eEEZMLG-nPFjrKFhTgmDn4QFs6haVqGap1IQ";
const released = (code: Code, numbers: readonly number[], at: string, says?: string): Example => ({
  code,
  files: withFile(
    revisions,
    `revisions:\n${numbers.map((n) => `  - {revision: ${n}, content: [${digest}]}\n`).join("")}`,
  ),
  file: revisions,
  at,
  ...(says === undefined ? {} : { says }),
});

export const recordExamples: readonly Example[] = [
  inProgramme("bad-identifier", "identifier: http://bench.example", "http:", "an https address"),
  inProgramme("bad-identifier", "identifier: https://bench.example/", "https:", "without / at its end"),
  inProgramme("bad-identifier", "identifier: tag:bench,2026", "tag:"),
  inProgramme("unknown-time-zone", "time-zone: Europe/Sarnley", "Europe", "IANA"),
  inProgramme("unknown-time-zone", 'time-zone: "+01:00"', '"+01'),
  inProgramme(
    "identifier-missing",
    `mentors:\n  - {id: ada, name: Ada, key: "${didOf(1)}", from: 2026-01-01}`,
    "mentors:",
  ),
  inProgramme(
    "bad-key",
    "mentors:\n  - {id: ada, name: Ada, key: did:key:z6MkNone, from: 2026-01-01}",
    "did:key:z6MkNone",
    "key public",
  ),
  {
    code: "bad-key",
    files: withMentor(", own-records: [ada]"),
    file: programme,
    at: "ada]",
  },
  inProgramme(
    "wrong-type",
    `mentors:\n  - {id: ada, name: Ada, key: "${didOf(1)}", from: 2026-02-30}`,
    "2026-02-30",
    "a date such as",
  ),
  { code: "dates-reversed", files: withMentor(", to: 2025-12-31"), file: programme, at: "2025-12-31" },
  {
    code: "unknown-module",
    files: withMentor(", may-sign: [bax]"),
    file: programme,
    at: "bax]",
    says: 'nearest known is "box"',
  },
  {
    code: "duplicate-id",
    files: withMentor(`}\n  - {id: ada, name: Bea, key: "${didOf(2)}", from: 2026-01-01`),
    file: programme,
    at: "ada, name: Bea",
  },
  {
    code: "key-twice",
    files: withMentor(`}\n  - {id: bea, name: Bea, key: "${didOf(1)}", from: 2026-01-01`),
    file: programme,
    at: `"${didOf(1)}", from: 2026-01-01}\ncond`,
    says: 'has the key of "ada"',
  },
  {
    code: "rule-weaker",
    files: changed(
      module,
      "revision: 1\n",
      "revision: 1\nsign-off: {unaided: 1}\n",
      withLines("sign-off: {unaided: 2}"),
    ),
    file: module,
    at: "1}",
    says: "unaided: is 1 here, and 2 in programme.yaml",
  },
  {
    code: "rule-weaker",
    files: changed(
      module,
      "revision: 1\n",
      "revision: 1\nsign-off: {months: 36}\n",
      withLines("sign-off: {months: 24}"),
    ),
    file: module,
    at: "36}",
  },
  whole(
    "reserved-id",
    "modules/programme/module.md",
    "---\ntitle: T\nsummary: S.\nrevision: 1\n---\n\nProse.\n",
    "---",
  ),
  released("revision-order", [2], "2,", "the module is at 1"),
  released("revision-order", [1, 1], "1, content", "revision 1 stands after revision 1"),
  { code: "revision-unreleased", files: withMentor(), file: module, at: "1", says: "is not released" },
  {
    code: "revision-unreleased",
    files: withFile(revisions, `revisions:\n  - {revision: 1, content: [${digest}]}\n`, withMentor()),
    file: module,
    at: "1",
    says: "is not what was released",
  },
  whole("release-altered", `modules/box/released/1-${digest}.json`, '{"module":"box"}', "{"),
  { code: "withdrawals-missing", files: withMentor(), file: programme, at: "ada" },
  listed("withdrawals-unreadable", "{"),
  listed("withdrawals-unreadable", '{"a":1,"a":2}'),
  listed("withdrawals-unreadable", "[]", "no JSON object"),
  listed("withdrawals-unsigned", "{}"),
  listed(
    "withdrawals-unsigned",
    JSON.stringify({ ...signedList({ key: 1 }), validUntil: "2099-01-01T00:00:00Z" }),
    "changed after signing",
  ),
  listed("withdrawals-key", JSON.stringify(signedList({ key: 2 })), didOf(2)),
  listed("withdrawals-key", JSON.stringify(signedList({ key: 1, id: "urn:another" })), "urn:another"),
  listed(
    "withdrawals-expired",
    JSON.stringify(signedList({ key: 1, until: "2026-02-01T00:00:00Z" })),
    "good until 2026-02-01",
  ),
  {
    code: "unknown-mentor",
    files: withFile("withdrawals/ida.json", JSON.stringify(signedList({ key: 1 })), withMentor()),
    file: "withdrawals/ida.json",
    at: "{",
    says: 'nearest known is "ada"',
  },
];
