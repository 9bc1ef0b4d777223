/** What a sign-off asks for, in a programme and, where stricter, in a module; and who may sign. */
import { z } from "zod";
import { publicKeyOfDid } from "../../engine/competency/did-key.ts";
import { levels } from "../../engine/competency/levels.ts";
import { date, digest, fault, fields, id, ids, share, text, wholeNumber } from "./fields.ts";

const countFrom0 = z.int("a whole number").min(0, "a whole number from 0");

/** Fields that both have; what is not written is not there. */
const asked = {
  pass: share.optional(),
  practice: z.boolean().optional(),
  "dry-run": z.boolean().optional(),
  watched: countFrom0.optional(),
  unaided: countFrom0.optional(),
  occasions: wholeNumber.optional(),
  mentors: wholeNumber.optional(),
  months: wholeNumber.optional(),
  "new-revision": z.enum(["holds", "again"]).optional(),
  "minimum-age": wholeNumber.optional(),
  induction: text.optional(),
  "mentor-present": z.boolean().optional(),
  "trainees-per-mentor": wholeNumber.optional(),
};

const askedWords = {
  pass: "The least share of a quiz's points, where it is more than the quiz's own pass mark: 80 %.",
  practice: "Whether every practice of the module must have been put right.",
  "dry-run": "Whether the whole procedure must have been performed on paper without a critical stop.",
  watched: "How often a mentor must have watched it, help allowed.",
  unaided: "How often a mentor must have watched it done without help.",
  occasions: "On how many days it must have been watched, at least.",
  mentors: "By how many mentors it must have been watched, at least.",
  months: "How many months a sign-off holds; it does not lapse where nothing is said.",
  "new-revision":
    "What becomes of a sign-off when the module's revision is raised: holds until it lapses, or again, to be made again.",
  "minimum-age": "The least age in years, for the mentor to make sure of; no age is recorded.",
  induction: "What else the mentor makes sure of before the work, in words.",
  "mentor-present": "Whether a mentor must be in the room even for who is signed off to work alone.",
  "trainees-per-mentor": "How many trainees one mentor may watch over at most.",
};

export const moduleSignOff = fields(asked, askedWords);

export const programmeSignOff = fields(
  { ...asked, "lapsed-needs": z.enum(["suspend", "keep"]).optional() },
  {
    ...askedWords,
    "lapsed-needs":
      "What becomes of a sign-off while one on a module that it needs has lapsed: suspend or keep.",
  },
);

const keyWords = "a public key such as did:key:z6Mk…, as key public prints it";

const key = z.string(keyWords).superRefine((written, context) => {
  if (publicKeyOfDid(written) === undefined)
    context.addIssue(fault("bad-key", `${keyWords}, not "${written.slice(0, 80)}"`));
});

const maySign = z.union([z.literal("all"), ids], { error: "all, or a list of ids of modules" });

export const mentor = fields(
  {
    id,
    name: text,
    key,
    "may-sign": maySign.default("all"),
    "highest-level": z.enum(levels).default("alone"),
    from: date,
    to: date.optional(),
    compromised: date.optional(),
    keep: z.array(digest).default([]),
    "own-records": z.array(key).default([]),
  },
  {
    id: "The mentor's id, once in the programme; their list of withdrawals is withdrawals/ID.json.",
    name: "The name as the roster shows it.",
    key: "Their public key, as key public prints it: did:key:z6Mk….",
    "may-sign": "Ids of the modules that they may sign, or all.",
    "highest-level": "The highest level that they may sign: under eye, alone, may teach.",
    from: "The first day on which what they sign counts: 2026-11-20.",
    to: "The last day on which what they sign counts.",
    compromised:
      "The day from which somebody else may have had the key: of all that it signed only what keep lists counts.",
    keep: "Digests of what was signed with a compromised key and counts all the same.",
    "own-records": "The keys of their own records, which they can't sign for.",
  },
);

export type ModuleSignOffData = z.output<typeof moduleSignOff>;
export type MentorData = z.output<typeof mentor>;
