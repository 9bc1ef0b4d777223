/** What a page hands to its script, as the JSON of its data block. */
import type { Digest } from "../engine/competency/release.ts";
import type { PackedProcedure } from "../engine/procedure/packed.ts";
import type { Precedence } from "../engine/procedure/precedence.ts";
import type { Swap } from "../engine/procedure/swaps.ts";
import type { Question } from "../engine/quiz/kinds.ts";
import type { Paper } from "../engine/quiz/paper.ts";
import type { PageKind } from "./address.ts";
import type { Mistake } from "./module.ts";
import type { SignalWord } from "./sheet.ts";

/** Names what a page keeps in the browser: what was kept of an earlier revision is not taken up. */
export interface Kept {
  readonly module: string;
  readonly revision: number;
}

/** Of a page whose doings go into the record, where the programme keeps records. */
export interface Recorded {
  /** The programme's identifier. */
  readonly programme: string;
  /** The way to "My record". */
  readonly href: string;
}

/** A step by id and title. */
export interface NamedStep {
  readonly id: string;
  readonly title: string;
}

export interface PracticeTask {
  readonly id: string;
  readonly title: string;
  /** In the written order. */
  readonly steps: readonly NamedStep[];
  /** Steps that do not belong to it and are to be left out. */
  readonly mixedIn: readonly NamedStep[];
  readonly precedence: Precedence;
  /** Pairs of its steps that the author lets change places. */
  readonly swaps: readonly Swap[];
  /** By which the record names it; undefined where no records are kept. */
  readonly digest: Digest | undefined;
}

export interface PracticeData extends Kept {
  readonly record: Recorded | undefined;
  readonly practices: readonly PracticeTask[];
}

/** A step with what could come of it when it is taken at the wrong time. */
export interface DryRunStep extends NamedStep {
  /** Its place on the operation sheet. */
  readonly href: string;
  /** Ids of hazards, gravest first. */
  readonly hazards: readonly string[];
  readonly mistakes: readonly Mistake[];
}

export interface DryRunHazard {
  readonly id: string;
  readonly title: string;
  readonly signal: SignalWord;
  readonly consequence: string;
  readonly href: string;
}

export interface DryRunData extends Kept {
  readonly record: (Recorded & { readonly digest: Digest }) | undefined;
  /** In the written order. */
  readonly steps: readonly DryRunStep[];
  /** Those that steps name. */
  readonly hazards: readonly DryRunHazard[];
  readonly precedence: Precedence;
  readonly procedure: PackedProcedure;
}

/** A link to what to read again, with its words. */
export interface See {
  readonly href: string;
  readonly text: string;
}

export interface QuizItem {
  readonly question: Question;
  readonly see: See | undefined;
}

export interface QuizData extends Kept {
  readonly record: (Recorded & { readonly digest: Digest }) | undefined;
  readonly pass: number;
  readonly paper: Paper | undefined;
  /** The page takes answers and marks nothing: its questions come without their key. */
  readonly supervised: boolean;
  /** Minutes from a sitting that was not passed to the next. */
  readonly sitAgain: number;
  readonly items: readonly QuizItem[];
}

/** A step after which one waits. */
export interface BenchWait {
  /** Its id. */
  readonly step: string;
  /** More than 0. */
  readonly minutes: number;
  /** The same in words: "30 min". */
  readonly words: string;
  /** Something dries meanwhile. */
  readonly dries: boolean;
}

export interface BenchData extends Kept {
  /** In the written order. */
  readonly waits: readonly BenchWait[];
}

export interface RecordPageData {
  /** The programme's identifier. */
  readonly programme: string;
  /** The way from the page to the root of the site. */
  readonly root: string;
}

export interface FaultsModule {
  readonly id: string;
  readonly title: string;
  readonly revision: number;
}

export interface FaultsData {
  /** The way from the page to the root of the site. */
  readonly root: string;
  /** In the order of the programme. */
  readonly modules: readonly FaultsModule[];
  /** From this page to a module's pages; `*` stands for its id. */
  readonly links: Readonly<Record<"module" | "practice" | "dry-run" | "quiz", string>>;
}

export interface SearchPageData {
  /** The way from the page to the root of the site. */
  readonly root: string;
  /** What a page of each kind is called. */
  readonly kinds: Readonly<Record<PageKind, string>>;
  /** Lists of names that mean the same. */
  readonly words: readonly (readonly string[])[];
}
