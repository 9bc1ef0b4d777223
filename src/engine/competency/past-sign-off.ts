/** A sign-off that counts no more, and why. */
import { levels } from "./levels.ts";
import type { RecordCode } from "./problems.ts";
import type { Releases } from "./releases.ts";
import type { Standing } from "./state.ts";
import type { JudgedSignOff } from "./support.ts";

/** What a sign-off comes to that has these against it and nothing else. The first row that is among them tells. */
const rows: readonly (readonly [RecordCode, Standing])[] = [
  ["withdrawn", "withdrawn"],
  ["revision", "earlier revision"],
  ["lapsed", "lapsed"],
  ["status-list", "unconfirmed"],
];
const codes: ReadonlySet<RecordCode> = new Set(rows.map(([code]) => code));

export interface PastSignOff {
  readonly signOff: JudgedSignOff;
  readonly standing: Standing;
}

/** Above "under eye", on a content that the programme knows: one that only waits to be confirmed, or the last that was made. */
export function pastSignOff(signOffs: readonly JudgedSignOff[], releases: Releases): PastSignOff | undefined {
  const past = signOffs
    .filter(({ signed: { statement }, problems }) => {
      const isKnown = releases.accepts(statement, statement.content);
      return isKnown && isAlone(statement.level) && problems.every(({ code }) => codes.has(code));
    })
    .map((signOff) => ({ signOff, standing: standingOf(signOff) }));
  const waiting = past.filter(({ standing }) => standing === "unconfirmed");
  return (waiting.length > 0 ? waiting : past).toSorted(lastFirst)[0];
}

export const isAlone = (level: (typeof levels)[number]): boolean =>
  levels.indexOf(level) >= levels.indexOf("alone");

function standingOf({ problems }: JudgedSignOff): Standing {
  const found = new Set(problems.map(({ code }) => code));
  return rows.find(([code]) => found.has(code))![1];
}

const lastFirst = ({ signOff: { signed: a } }: PastSignOff, { signOff: { signed: b } }: PastSignOff) =>
  b.from - a.from || (a.digest < b.digest ? -1 : 1);
