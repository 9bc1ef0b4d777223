/** The pages that a module may have besides its operation sheet. */
import type { ModuleCard } from "../src/model/site.ts";

export interface ModulePage {
  readonly kind: "order" | "bench" | "practice" | "dry-run" | "quiz";
  readonly name: string;
  /** What one does there. */
  readonly phrase: string;
  readonly has: (card: ModuleCard) => boolean;
}

export const modulePages: readonly ModulePage[] = [
  {
    kind: "bench",
    name: "Bench",
    phrase: "At the bench, a step at a time",
    has: ({ steps }) => steps.length > 0,
  },
  {
    kind: "order",
    name: "Order",
    phrase: "What must come before what",
    has: ({ steps }) => steps.length > 1,
  },
  {
    kind: "practice",
    name: "Practice",
    phrase: "Practise the order",
    has: ({ practices }) => practices > 0,
  },
  {
    kind: "dry-run",
    name: "Dry run",
    phrase: "Perform it on paper",
    has: ({ steps }) => steps.length > 1,
  },
  { kind: "quiz", name: "Quiz", phrase: "Sit the quiz", has: ({ questions }) => questions > 0 },
];
