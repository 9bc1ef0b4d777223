import type { Situation } from "./situation.ts";

/** The id of the mentor behind a key; the key itself where nobody is listed. */
export const mentorNames =
  ({ mentors }: Situation) =>
  (key: string): string =>
    mentors.get(key)?.[0]?.id ?? key;
