import { z } from "zod";
import { parseRoom } from "../../engine/workshop/air/room-written.ts";
import { byId, celsius, fault, fields, minutes, share, text, wholeNumber } from "./fields.ts";
import { identifier, timeZone } from "./identifier.ts";
import { sameMeaning } from "./same-meaning.ts";
import { mentor, programmeSignOff } from "./sign-off.ts";

/** In m³. */
const roomVolume = z.string("a volume such as 60 m³").transform((written, context) => {
  const read = parseRoom(written);
  if (read.ok) return read.value;
  context.addIssue(
    fault("wrong-unit", `a volume such as 60 m³ or 5 m x 4 m x 3 m, not "${written.slice(0, 60)}"`),
  );
  return z.NEVER;
});

export const condition = fields(
  { name: text, "look-for": text, "if-unknown": text },
  {
    name: "What may be in the machine, such as lead in paint.",
    "look-for": "How it shows itself before work begins.",
    "if-unknown": "What to do where nobody can say whether it is there.",
  },
);

const room = fields(
  { volume: roomVolume, temperature: celsius.optional(), "no-ignition": z.boolean().default(false) },
  {
    volume: "How much air it holds: 60 m³, or 5 m x 4 m x 3 m.",
    temperature: "How warm it gets: 20 °C where nothing is said.",
    "no-ignition":
      "true where every source of ignition is kept out of it: flames, sparks, heaters, switches.",
  },
);

export const programme = fields(
  {
    name: text,
    place: text.optional(),
    summary: text.optional(),
    language: z
      .string()
      .regex(/^[a-z]{2,3}(-[A-Za-z0-9]+)*$/, "a language tag such as en")
      .default("en"),
    units: z.enum(["metric", "inch"]).default("metric"),
    session: minutes.optional(),
    pass: share.optional(),
    "sit-again": minutes.optional(),
    conditions: byId(condition).optional(),
    emergency: text.optional(),
    room: room.optional(),
    identifier: identifier.optional(),
    "time-zone": timeZone.default("UTC"),
    "sign-off": programmeSignOff.optional(),
    mentors: z.array(mentor).default([]),
    "soon-days": wholeNumber.default(60),
    words: z.array(sameMeaning).max(500, "at most 500 rows").default([]),
  },
  {
    name: "The programme's name, as it stands at the head of every page.",
    place: "Where the workshop is.",
    summary: "Who works there on what, in a sentence or two.",
    language:
      "The language of the content and of the site’s own words, as a language tag: en, de. Others than those that the tool has take a catalogue, words/<language>.po.",
    units: "The units that come first: metric or inch.",
    session: "How long an evening's work is: 2 h 30 min.",
    pass: "The pass mark of a quiz that names none: 80 %.",
    "sit-again": "How long to wait after a sitting that was not passed: 12 h. No wait where nothing is said.",
    conditions: "What to look for in a machine before work on it, by id.",
    room: "The room in which substances are used indoors.",
    emergency: "What to do and whom to call in an emergency.",
    identifier:
      "What names the programme for ever, in records and sign-offs: its https address, or a tag such as tag:workshop.example,2026:bench. Without it no records are kept.",
    "time-zone": "Where days end, for dates of sign-offs: Europe/London. UTC where nothing is said.",
    "sign-off": "What a sign-off asks for; a module may ask for more.",
    mentors: "Who may sign trainees off, with their public keys and what they may sign.",
    "soon-days": "How many days before a sign-off lapses this is said: 60 where nothing is.",
    words:
      "Names that mean the same, a row each, by any of which the search finds the others: methylated spirit, meths.",
  },
);
