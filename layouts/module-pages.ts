/** The pages that a module may have besides its operation sheet. */
import { t } from "../src/engine/words.ts";
import type { ModuleCard } from "../src/model/site.ts";

export interface ModulePage {
  readonly kind: "order" | "bench" | "paper" | "practice" | "dry-run" | "quiz";
  readonly name: string;
  /** What one does there. */
  readonly phrase: string;
  readonly has: (card: ModuleCard) => boolean;
}

export const modulePages: readonly ModulePage[] = [
  {
    kind: "bench",
    name: t`Bench`,
    phrase: t`At the bench, a step at a time`,
    has: ({ steps }) => steps.length > 0,
  },
  {
    kind: "order",
    name: t`Order`,
    phrase: t`What must come before what`,
    has: ({ steps }) => steps.length > 1,
  },
  {
    kind: "paper",
    name: t`On paper`,
    phrase: t`Sheets to print for the bench`,
    has: ({ steps }) => steps.length > 0,
  },
  {
    kind: "practice",
    name: t`Practice`,
    phrase: t`Practise the order`,
    has: ({ practices }) => practices > 0,
  },
  {
    kind: "dry-run",
    name: t`Dry run`,
    phrase: t`Perform it on paper`,
    has: ({ steps }) => steps.length > 1,
  },
  { kind: "quiz", name: t`Quiz`, phrase: t`Sit the quiz`, has: ({ questions }) => questions > 0 },
];
