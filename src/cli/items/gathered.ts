/** What was found where sittings were looked for, and what of it counts. */
export interface Gathered {
  /** Record files that could be read, and files of sittings that were handed in. */
  readonly records: number;
  readonly handedIn: number;
  /** Sittings of one person after their first that are left out. */
  readonly later: number;
  /** Sittings that stand in another file too. */
  readonly copies: number;
  /** Sittings of this module's quiz as it was before it was changed; those handed in may be of another module. */
  readonly otherQuiz: number;
  readonly skipped: readonly Skipped[];
}

/** A file, or an event of it, that counts for nothing. */
export interface Skipped {
  readonly file: string;
  readonly why: string;
}

/** Sentences on what counts and what does not; none where nothing is left to be said. */
export function gatheredWords(gathered: Gathered, all: boolean): string[] {
  const { records, handedIn, later, copies, otherQuiz } = gathered;
  return [
    ...(records === 0 ? [] : [recordWords(records, later, all)]),
    ...(records > 0 && handedIn > 0
      ? [
          `${many(handedIn, "sitting")} handed in as ${handedIn === 1 ? "a file" : "files"} of their own: nobody's name is on them, so each counts as one person's first.`,
        ]
      : []),
    ...(copies === 0
      ? []
      : [`${many(copies, "sitting")} stood in more than one file and ${counts(copies)} once.`]),
    ...(otherQuiz === 0
      ? []
      : [
          `${many(otherQuiz, "sitting")} of another quiz, or of this one before it was changed, left out: the questions were others.`,
        ]),
  ];
}

function recordWords(records: number, later: number, all: boolean): string {
  if (all)
    return `From ${many(records, "record")}, with all sittings of each person: later ones are not independent of the first, so that intervals are narrower than they should be.`;
  const left = later === 0 ? "" : `; ${many(later, "later sitting")} left out (--all-sittings counts them)`;
  return `From ${many(records, "record")}, of each person the first sitting only, since later ones are not independent of it${left}.`;
}

const many = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;
const counts = (count: number): string => (count === 1 ? "counts" : "count");
