import { z } from "zod";
import { substanceUses } from "../../model/sheet.ts";
import { byId, fields, id, ids, minutes, text, textOr, texts, wholeNumber } from "./fields.ts";
import { figure } from "./figure.ts";

/** `a`, `[a, b]`, `{a: 2}` or `[a, {b: 2}]`: what an act is done to, with a count where not all. */
const targets = z.union([id, z.array(z.union([id, z.record(id, wholeNumber)])), z.record(id, wholeNumber)], {
  error: "an id, a list of ids, or a map of ids to counts such as {guard-screws: 1}",
});

const because = fields(
  { because: text, critical: z.boolean().default(false) },
  {
    because: "Why that step comes first.",
    critical: "Whether getting it the wrong way round ruins something or hurts someone.",
  },
);

const reason = z.union([text, because], { error: "a reason in words" });

const mistake = fields(
  { mistake: text, result: text },
  { mistake: "What people do wrong here.", result: "What comes of it." },
);

const remedy = fields(
  { sign: text, cause: text, do: text },
  { sign: "What shows that it is not right.", cause: "What is likely to be behind it.", do: "What to do." },
);

export const protection = {
  wear: texts.optional(),
  "never-wear": texts.optional(),
  waste: texts.optional(),
};

export const protectionWords = {
  wear: "What to wear: a text or a list.",
  "never-wear": "What must not be worn, such as gloves near turning gears.",
  waste: "Where rags and dirty solvent go.",
};

const madeValue = textOr("one value of the state; one that changes twice is changed in two steps");

const taken = z.union(
  [
    id,
    fields(
      { use: id, for: z.enum(substanceUses) },
      {
        use: "Id of the substance.",
        for: "What it is taken for in this step, where that is not all that its sheet names: an oil for cleaning.",
      },
    ),
  ],
  {
    error: `the id of a substance, or {use: id, for: purpose}, the purpose one of ${substanceUses.join(", ")}`,
  },
);

export const step = fields(
  {
    id,
    slacken: targets.optional(),
    remove: targets.optional(),
    work: targets.optional(),
    refit: targets.optional(),
    tighten: targets.optional(),
    makes: byId(madeValue).optional(),
    through: ids.optional(),
    while: byId(text).optional(),
    after: byId(reason).optional(),
    "may-swap": byId(text).optional(),
    critical: z.boolean().default(false),
    time: minutes.optional(),
    wait: minutes.optional(),
    stop: z.boolean().default(false),
    dries: z.boolean().default(false),
    "hot-work": z.boolean().default(false),
    tools: ids.optional(),
    substances: z.array(taken).optional(),
    hazards: ids.optional(),
    conditions: ids.optional(),
    check: text.optional(),
    phase: id.optional(),
    figure: figure.optional(),
    record: texts.optional(),
    "record-for": id.optional(),
    feel: text.optional(),
    mistakes: z.array(mistake).optional(),
    "if-not": z.array(remedy).optional(),
    draft: texts.optional(),
    ...protection,
  },
  {
    id: "The step's id, once in this module.",
    slacken: "Fastener sets that are slackened: an id, a list, or ids with counts.",
    remove:
      "Parts that are taken off and fasteners that are taken out, in the order written: what holds comes before what it holds.",
    work: "Parts that are worked on: cleaned, oiled, tried. Within a step what is worked on comes after what is removed and before what is refitted; for another order make two steps.",
    refit:
      "Parts that are put back and fasteners that are put in, slack as yet, in the order written: a part comes before what holds it.",
    tighten: "Fastener sets that are tightened.",
    makes: "States that the step brings about once its acts are done, each one value: {power: let down}.",
    through: "Covers that are on while this is done, because one works through them.",
    while: "States that must hold while this is done: {power: wound}.",
    after: "Steps that come first for a reason that the acts do not show: {step-id: the reason}.",
    "may-swap": "Steps with which this one may change places after all: {step-id: the reason}.",
    critical: "Whether doing it out of order ruins something or hurts someone.",
    time: "Time at the bench: 5 min.",
    wait: "Time to wait afterwards, for drying or soaking: 12 h.",
    stop: "Whether work may be left after this step.",
    dries: "Whether what it works on is dry once it is done.",
    "hot-work": "Whether there is heat, flame or sparks: soldering, grinding, a hot-air gun.",
    tools: "Ids of the tools that it takes.",
    substances:
      "Ids of the substances that it takes; {use: id, for: cleaning} where one is taken for another purpose than its sheet names.",
    hazards: "Ids of the hazards that stand before it.",
    conditions: "Ids of the programme's conditions that must be known before it.",
    check: "What to see before going on.",
    phase: "Id of the phase that it belongs to.",
    figure: "A picture of it.",
    record: "What to note before anything is slackened: turns out, marks, order of shims.",
    "record-for": "Id of the later step beside which the note is wanted again.",
    feel: "What it feels, sounds or looks like when right.",
    mistakes: "What people do wrong here, and what comes of it.",
    "if-not": "What to do where the check is not as it should be.",
    draft: "What is still to be written or gone through here; check reports each as an error.",
    ...protectionWords,
  },
);

export type StepData = z.output<typeof step>;
export type TargetsData = NonNullable<StepData["slacken"]>;
