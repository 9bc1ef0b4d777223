import { z } from "zod";
import { date, digest, fields, text, wholeNumber } from "./fields.ts";

const withdrawn = fields(
  { from: date, because: text },
  {
    from: "From this day on nothing signed on the revision counts: 2026-11-20.",
    because: "Why it was taken back, as the notice to stop work says it.",
  },
);

const revision = fields(
  {
    revision: wholeNumber,
    content: z.array(digest).min(1, "at least one digest"),
    withdrawn: withdrawn.optional(),
  },
  {
    revision: "A number that the module's revision: has or had.",
    content: "Digests of what was released under it, the first one first: a typo mended adds one.",
    withdrawn:
      "Where the programme has taken the revision back: from which day, and why. record recall tells whom it touches.",
  },
);

export const revisions = fields(
  { revisions: z.array(revision) },
  { revisions: "The revisions released, in rising order. record release writes them." },
);
