import { t } from "../../words.ts";
import { problem } from "../problem.ts";
import type { Check } from "./check.ts";
import { called } from "./words.ts";

/** Whether the programme knows what was signed: the module, its revision, and that content under it. */
export const knownRevision: Check = (signed, { releases }) => {
  const { statement } = signed;
  if (statement.kind === "new-key") return undefined;
  if (!releases.cards.has(statement.module))
    return problem(
      "revision",
      t`${called(signed)} names a module that the programme does not have. Ask the programme whether it was renamed or given up.`,
    );
  if (releases.accepts(statement, statement.content)) return undefined;
  return problem(
    "revision",
    t`${called(signed)} was made on a text (${statement.content}) that the programme does not list for revision ${statement.revision} of the module. Expected one of its revisions.yaml. If the text was a released one, record it (record release); otherwise have it watched and signed on the text as it is now.`,
  );
};

/** A sign-off on an earlier revision, where the rules ask for a new one. An earlier observation is no fault, it only does not count. */
export const presentRevision: Check = (signed, { releases }) => {
  const { statement } = signed;
  const card = statement.kind === "sign-off" ? releases.cards.get(statement.module) : undefined;
  if (card === undefined || statement.kind !== "sign-off" || statement.revision >= card.revision)
    return undefined;
  if (card.rules.newRevision === "holds" || !releases.accepts(statement, statement.content)) return undefined;
  return problem(
    "revision",
    t`${called(signed)} is on an earlier revision; the module is now at revision ${card.revision}, which asks for a new sign-off. Go through what has changed, be watched, and have it signed.`,
  );
};

export const revisionWithdrawn: Check = (signed, { releases, on }) => {
  const { statement } = signed;
  if (statement.kind === "new-key") return undefined;
  const withdrawn = releases.revision(statement)?.withdrawn;
  if (withdrawn === undefined || withdrawn.from > on) return undefined;
  return problem(
    "withdrawn",
    t`${called(signed)} no longer counts: the programme has withdrawn this revision from ${withdrawn.from} on (${withdrawn.because}). Stop work on this module and ask the programme what to do.`,
  );
};
