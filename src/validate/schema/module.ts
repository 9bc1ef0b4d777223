import { z } from "zod";
import { parseQuantity } from "../../engine/workshop/quantity.ts";
import { fastenerKinds } from "../../model/module.ts";
import { byId, fault, fields, id, ids, text, texts, wholeNumber, writtenQuantity } from "./fields.ts";
import { figure } from "./figure.ts";
import { moduleSignOff } from "./sign-off.ts";
import { protection, protectionWords } from "./step.ts";

const countFrom0 = z.int("a whole number").min(0, "a whole number from 0");
const outOrSlack = fields(
  { out: countFrom0.default(0), slack: countFrom0.default(0) },
  { out: "How many are out.", slack: "How many are in and slack." },
);

const heldBy = z.union([ids, z.record(id, z.union([z.literal("all"), outOrSlack]))], {
  error: "a list of fastener sets, or a map such as {motor-bolts: {out: 2, slack: 1}}",
});

const part = fields(
  {
    name: text,
    count: wholeNumber.default(1),
    "held-by": heldBy.optional(),
    covers: ids.optional(),
    in: id.optional(),
    replaces: id.optional(),
    "only-while": byId(text).optional(),
    "never-left": z.literal("off").optional(),
    "keep-dry": z.boolean().default(false),
    keep: text.optional(),
    note: text.optional(),
  },
  {
    name: "What the part is called at the bench.",
    count: "How many pieces it is, where several come off and go back together; the tray counts them all.",
    "held-by": "Fastener sets that hold it; with {out: 2, slack: 1} where not all have to come out.",
    covers:
      "What can't be reached while it is on: parts, each with the fasteners that hold it, or fastener sets where it hides no more.",
    in: "The assembly that it lies in.",
    replaces: "The part whose place it takes: it starts off the machine, the old one ends off.",
    "only-while": "States in which it may be taken off or put back: {power: let down}.",
    "never-left": "off, where work must never be left while it is off.",
    "keep-dry": "Whether no oil may stay on it: brake faces, friction discs, tension discs.",
    keep: "Where it is kept once it is off: tray A.",
    note: "What else to know of it.",
  },
);

const loose = z.enum(["slack", "out"]);

const tappedHole = fields(
  {
    material: text,
    engagement: writtenQuantity("length", "6 mm").optional(),
    sound: z.boolean().default(true),
  },
  {
    material: "What the thread is cut into: brass, steel-mild, zinc-3.",
    engagement: "The length of full thread that holds: 6 mm.",
    sound: "false where it is cracked, crumbling, repaired or stripped before.",
  },
);

/** In m: from the shortest grub screw to the longest coach bolt, by far. */
const likeliest = { least: 0.0005, most: 1 };

/** What is no length of a screw is a slip of the unit: "10 mil" is a quarter of a millimetre. */
const screwLength = writtenQuantity("length", "6 mm or 1/2 in").superRefine((written, context) => {
  const read = parseQuantity(written, "length");
  if (!read.ok || (read.value.base >= likeliest.least && read.value.base <= likeliest.most)) return;
  const inMm = Number((read.value.base * 1000).toPrecision(3));
  context.addIssue(
    fault("wrong-unit", `the length of a fastener, such as 6 mm or 1/2 in; "${written}" is ${inMm} mm`),
  );
});

const fastener = fields(
  {
    name: text,
    count: wholeNumber,
    kind: z.enum(fastenerKinds).default("machine screw"),
    thread: text.optional(),
    length: screwLength.optional(),
    drive: text.optional(),
    keep: text.optional(),
    matched: z.boolean().default(false),
    stays: text.optional(),
    "never-left": z
      .union([loose.transform((one) => [one]), z.array(loose)], { error: "slack, out or [slack, out]" })
      .optional(),
    torque: text.optional(),
    "torque-source": text.optional(),
    class: z
      .union([text, z.number().transform(String)], { error: "a class such as 8.8 or A2-70" })
      .optional(),
    into: tappedHole.optional(),
    note: text.optional(),
  },
  {
    name: "What the set is called at the bench.",
    count: "How many there are.",
    kind: "What they are; machine screw where nothing is said.",
    thread: "The thread as the trade writes it: 4 BA, M3x0.5, 1/4-20 UNC.",
    length:
      "The length: 6 mm, 1/2 in. Screws of different lengths are a set each; a part may be held by several.",
    drive: "What the driver takes hold of: slotted, hexagon.",
    keep: "Where they are kept once they are out: tray A.",
    matched: "Whether each one goes back into its own hole.",
    stays: "Why no step undoes them: they hold what is never taken apart here.",
    "never-left":
      "slack, out or both, where work must never be left while they are so. Slack counts while what they hold is in its place.",
    torque: "How tight: words such as snug, or a figure that has its source.",
    "torque-source": "Where a figure of torque comes from.",
    class: "Property class or material of the screw, where it is known: 8.8, A2-70, CU2.",
    into: "What the screw goes into, where a figure of torque is given.",
    note: "What else to know of them.",
  },
);

const state = fields(
  {
    name: text,
    values: z.array(text).min(2, "at least two values"),
    starts: text,
    ends: text.optional(),
    "never-left": texts.optional(),
  },
  {
    name: "What has this state, such as the mainspring.",
    values: "The states that it can be in.",
    starts: "The one before the first step.",
    ends: "The one after the last step; as it started where nothing is said.",
    "never-left": "States in which work must never be left.",
  },
);

const left = z.union(
  [
    z.enum(["off", "discarded", "slack"]),
    outOrSlack,
    fields({ to: id }, { to: "Id of the module that goes on with it." }),
  ],
  { error: "off, discarded, slack, {out: 1, slack: 2} or {to: module-id}" },
);

const limitCheck = fields(
  { check: text, limit: text.optional() },
  { check: "What is looked at or measured.", limit: "What is still good." },
);

const ends = fields(
  { done: text.optional(), conserve: text.optional(), refer: text.optional() },
  {
    done: "When the work is done.",
    conserve: "When the machine is kept as it is.",
    refer: "When it goes to someone who knows more.",
  },
);

const practice = fields(
  { id, title: text, phase: id.optional(), steps: ids.optional(), "mixed-in": ids.default([]) },
  {
    id: "The practice's id, once in this module.",
    title: "What is to be put in order, as the heading of the practice.",
    phase: "The phase whose steps are asked for.",
    steps: "Ids of the steps that are asked for, where they are not those of a phase.",
    "mixed-in": "Ids of steps that do not belong to it, for the trainee to leave out.",
  },
);

const substanceUsed = fields(
  { use: id, amount: writtenQuantity("volume", "150 mL").optional(), place: text.optional() },
  {
    use: "Id of the substance.",
    amount: "How much of it: 150 mL. Of what goes on by the drop, 0.05 mL a drop.",
    place: "Where it is used: outdoors.",
  },
);

export const module = fields(
  {
    title: text,
    summary: text,
    revision: wholeNumber,
    issued: z
      .string()
      .regex(/^\d{4}-\d{2}-\d{2}$/, "a date such as 2026-11-20")
      .optional(),
    "written-by": text.optional(),
    "approved-by": text.optional(),
    needs: ids.default([]),
    "begins-from": id.optional(),
    tools: ids.default([]),
    substances: z.array(substanceUsed).default([]),
    hazards: ids.default([]),
    conditions: ids.default([]),
    figure: figure.optional(),
    parts: byId(part).optional(),
    fasteners: byId(fastener).optional(),
    state: byId(state).optional(),
    leaves: z
      .union([ids, z.record(id, left)], { error: "a list of ids, or a map of ids to how each is left" })
      .optional(),
    phases: byId(text).optional(),
    practices: z.array(practice).optional(),
    "as-found": z.array(limitCheck).default([]),
    "as-left": z.array(limitCheck).default([]),
    ends: ends.default({}),
    sources: texts.default([]),
    "sign-off": moduleSignOff.optional(),
    draft: texts.default([]),
    ...protection,
  },
  {
    title: "What is done, as the heading of the module.",
    summary: "What it is for, in one sentence.",
    revision: "Raised when a sign-off of before should no longer count.",
    issued: "Date of issue: 2026-11-20.",
    "written-by": "Who wrote it.",
    "approved-by": "Who approved it.",
    needs: "Ids of the modules to be signed off first.",
    "begins-from":
      "Id of the module whose closing tray and states it starts with: what that one leaves off is off.",
    tools: "Ids of all tools that its steps take.",
    substances: "All substances that its steps take, with amount and place.",
    hazards: "Ids of the hazards of the whole module.",
    conditions: "Ids of the programme's conditions that must be known before work begins.",
    figure: "A picture of the whole machine, with the numbers of its parts.",
    parts: "The parts, by id.",
    fasteners: "The fastener sets, by id.",
    state: "What can be in one state or another, by id: a spring that is wound or let down.",
    leaves: "What is left off, slack or out at the end, or goes on to another module.",
    phases: "Names of the phases, by id.",
    practices: "What trainees put in order; each phase where nothing is said.",
    "as-found": "Checks before the work, with their limits.",
    "as-left": "Checks after the work, with their limits.",
    ends: "What decides how the work ends.",
    sources: "Books and papers that it draws on.",
    "sign-off": "What a sign-off on it asks for beyond the programme's own rules.",
    draft: "What is still to be written or gone through; check reports each as an error.",
    ...protectionWords,
  },
);

export type ModuleData = z.output<typeof module>;
export type PracticeData = z.output<typeof practice>;
export type HeldByData = z.output<typeof heldBy>;
export type LeftData = z.output<typeof left>;
