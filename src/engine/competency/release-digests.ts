/** The digests by which evidence names what it was given to. Of JSON as it is published: what is undefined is left out. */
import type { PackedProcedure } from "../procedure/packed.ts";
import type { Precedence } from "../procedure/precedence.ts";
import type { Quiz } from "../quiz/quiz.ts";
import { withoutKey } from "../quiz/without-key.ts";
import { digestOf } from "./digest.ts";
import type { Json } from "./json.ts";
import type { Primitives } from "./primitives.ts";
import type { Digest } from "./release.ts";

type Hash = Pick<Primitives, "sha256">;

/** Of the quiz, or of what may be seen of it where it is supervised: its key can't be guessed at by way of the digest. */
export function digestOfQuiz(quiz: Quiz, primitives: Hash): Digest {
  const seen = quiz.supervised === true ? { ...quiz, questions: quiz.questions.map(withoutKey) } : quiz;
  return digestOf(asJson(seen), primitives);
}

/** `titles` are those of all steps that are shown. */
export interface PracticeContent {
  readonly title: string;
  readonly graph: Precedence;
  readonly mixedIn: readonly string[];
  readonly titles: readonly (readonly [step: string, title: string])[];
}

export const digestOfPractice = (practice: PracticeContent, primitives: Hash): Digest =>
  digestOf(asJson(practice), primitives);

export const digestOfRun = (
  run: { readonly precedence: Precedence; readonly procedure: PackedProcedure },
  primitives: Hash,
): Digest => digestOf(asJson(run), primitives);

/**
 * Of what the author wrote of a module: its text, however its lines end, and its quiz. Figures and the sheets that it names are not
 * in it, nor is its list of revisions.
 */
export const digestOfContent = (text: string, quiz: Digest | undefined, primitives: Hash): Digest =>
  digestOf({ module: text.replaceAll("\r\n", "\n"), quiz: quiz ?? null }, primitives);

/** Plain data as a file holds it. */
export const asJson = (value: unknown): Json => JSON.parse(JSON.stringify(value)) as Json;
