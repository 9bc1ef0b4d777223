import type { Release } from "../engine/competency/release.ts";
import type { SignOffRules } from "../engine/competency/rules.ts";
import type { OrderCount } from "../engine/procedure/count-orders.ts";
import type { Pair, Precedence } from "../engine/procedure/precedence.ts";
import type { Sessions } from "../engine/procedure/sessions/plan-sessions.ts";
import type { Swap } from "../engine/procedure/swaps.ts";
import type { Tray } from "../engine/procedure/tray.ts";
import type { Address } from "./address.ts";
import type { ModuleQuiz } from "./content.ts";
import type { Module, ModuleStep } from "./module.ts";
import type { Programme } from "./programme.ts";
import type { Sheet } from "./sheet.ts";

/** A step with all that is worked out about it. */
export interface StepView {
  readonly step: ModuleStep;
  /** From 1, in the written order. */
  readonly number: number;
  /** The account once the step is done. */
  readonly tray: Tray;
  /** The reduced pairs that end at this step: what must come before it. */
  readonly needs: readonly Pair[];
  /** What earlier steps recorded for this one. */
  readonly recorded: readonly { readonly from: ModuleStep; readonly text: string }[];
}

/** Some of the steps, to be put in order: chosen ones, a phase, or a stretch of the procedure. */
export interface Practice {
  readonly id: string;
  readonly title: string;
  /** The precedence among the chosen steps, reduced, reasons read along the path. */
  readonly graph: Precedence;
  /** Steps that do not belong to it and are to be left out. */
  readonly mixedIn: readonly string[];
}

/** What pages of the whole programme, and of other modules, say of a module. */
export interface ModuleCard {
  readonly id: string;
  readonly title: string;
  readonly revision: number;
  readonly summary: string;
  readonly needs: readonly string[];
  readonly steps: readonly StepCard[];
  /** Whether something is off the machine after some step. */
  readonly fillsTray: boolean;
  /** Hands-on minutes. */
  readonly handsOn: number;
  /** Minutes of waiting. */
  readonly waits: number;
  /** How many sessions of the programme's length it takes; "longer" where no split fits one; undefined where no step has a time. */
  readonly sessions: number | "longer" | undefined;
  /** What a sign-off asks for: the programme's rules, and the module's own where they are stricter. */
  readonly rules: SignOffRules;
  /** How many practices and questions it has. */
  readonly practices: number;
  readonly questions: number;
  /** Whether the key to its quiz has a page. */
  readonly hasKey: boolean;
  /** Ids of the sheets that it declares. */
  readonly uses: Uses;
}

export interface StepCard {
  readonly id: string;
  readonly title: string;
  /** From 1, in the written order. */
  readonly number: number;
  readonly uses: Uses;
}

/** Ids of sheets by their kind. */
export type Uses = Readonly<Record<Sheet["kind"], readonly string[]>>;

export interface ModuleView {
  readonly module: Module;
  readonly card: ModuleCard;
  /** Ids of the modules that its pages name. */
  readonly names: readonly string[];
  readonly steps: readonly StepView[];
  /** Reduced. */
  readonly precedence: Precedence;
  /** Pairs that the author lets change places. */
  readonly swaps: readonly Swap[];
  /** How many orders are right, as far as a build counts. */
  readonly orders: OrderCount;
  readonly practices: readonly Practice[];
  /** The steps as written in sessions of the programme's length; undefined where the steps have no times. */
  readonly sessions: Sessions | undefined;
  readonly quiz: ModuleQuiz | undefined;
  /** As evidence refers to it; undefined where the programme keeps no records. */
  readonly release?: Release | undefined;
  readonly status?: Status | undefined;
}

/** How far a module's text has come (ISO 7200:2004, "document status"). Undefined where nobody releases anything. */
export type Status = "draft" | "not released" | "released";

export interface SheetView {
  readonly sheet: Sheet;
  readonly usedBy: readonly { readonly module: ModuleCard; readonly steps: readonly StepCard[] }[];
}

/** One hit of the search: a page, a section of it or a row of its parts list. */
export interface SearchDocument {
  readonly address: Address;
  /** The page's title. */
  readonly title: string;
  /** The section's heading; "" where the document is the page itself, or a row. */
  readonly heading: string;
  /** Names of tools, substances, hazards and parts that belong to it, threads that it names, short cells of its tables; a page's summary. */
  readonly terms: readonly string[];
  /** A row of the parts list: its terms are what it says. */
  readonly isRow?: true;
  /** It is a step of a procedure. */
  readonly isStep?: true;
  /** What stands there as prose, a text for each paragraph. */
  readonly says?: readonly string[];
}

export interface Site {
  readonly programme: Programme;
  /** Of all modules, stage by stage of the route, so that each stands after those that it needs, otherwise by title. */
  readonly cards: readonly ModuleCard[];
  /** All modules, or a share of them, in the same order. */
  readonly modules: readonly ModuleView[];
  readonly sheets: readonly SheetView[];
  /** Pictures to be copied, by path, with what changes whenever the file does. */
  readonly pictures: ReadonlyMap<string, string>;
}

/** Names of the fingerprinted files that pages refer to, relative to the site. */
export interface Assets {
  readonly style: string;
  /** Besides `style`, for all pages but operation sheets. */
  readonly furtherStyle: string;
  /** Besides both, for pages whose sheets are cut up, written on or hung up. */
  readonly paperStyle?: string;
  /** By entry: "read", "recorder", "bench", "practice", "dry-run", "quiz", "search", "sums". */
  readonly scripts: ReadonlyMap<string, string>;
}
