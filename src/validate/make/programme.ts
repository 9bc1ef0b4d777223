import type { z } from "zod";
import type { Programme } from "../../model/programme.ts";
import type * as schema from "../schema/programme.ts";
import { defaultSignOff, makeMentor, makeSignOff } from "./sign-off.ts";

/** What holds where programme.yaml says nothing, or can't be read while other faults are looked for. */
export const defaultProgramme: Programme = {
  name: "Programme",
  place: undefined,
  summary: undefined,
  language: "en",
  units: "metric",
  session: 150,
  pass: 0.8,
  sitAgain: 0,
  conditions: new Map(),
  emergency: undefined,
  room: { volumeM3: 30, celsius: 20, noIgnition: false, isStated: false },
  identifier: undefined,
  timeZone: "UTC",
  signOff: defaultSignOff,
  lapsedNeeds: "suspend",
  mentors: [],
  soonDays: 60,
  words: [],
};

export function makeProgramme(data: z.output<typeof schema.programme>): Programme {
  const { name, place, summary, language, units, emergency, identifier } = data;
  const conditions = [...(data.conditions ?? [])].map(
    ([id, one]) =>
      [id, { id, name: one.name, lookFor: one["look-for"], ifUnknown: one["if-unknown"] }] as const,
  );
  return {
    ...{ name, place, summary, language, units, emergency, identifier },
    timeZone: data["time-zone"],
    signOff: { ...defaultSignOff, ...makeSignOff(data["sign-off"]) },
    lapsedNeeds: data["sign-off"]?.["lapsed-needs"] ?? defaultProgramme.lapsedNeeds,
    mentors: data.mentors.map(makeMentor),
    soonDays: data["soon-days"],
    words: data.words,
    session: data.session ?? defaultProgramme.session,
    pass: data.pass ?? defaultProgramme.pass,
    sitAgain: data["sit-again"] ?? defaultProgramme.sitAgain,
    conditions: new Map(conditions),
    room:
      data.room === undefined
        ? defaultProgramme.room
        : {
            volumeM3: data.room.volume,
            celsius: data.room.temperature ?? defaultProgramme.room.celsius,
            noIgnition: data.room["no-ignition"],
            isStated: true,
          },
  };
}
