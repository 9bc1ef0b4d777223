/** Takes one share of the modules down the line. What is asked of it and what it answers can be sent between threads. */
import { digestOf } from "../bundle/edition-digest.ts";
import { type Derived, derive, siteOf } from "../derive/derive.ts";
import { moduleData, programmeData } from "../derive/record-data.ts";
import { releaseCard } from "../derive/release.ts";
import { sheetDocuments } from "../derive/search.ts";
import type { ReleaseCard } from "../engine/competency/release.ts";
import type { Content, Outline } from "../model/content.ts";
import type { Diagnostic } from "../model/diagnostic.ts";
import type { EditionFile } from "../model/edition.ts";
import type { Size } from "../model/picture-files.ts";
import type { Assets, ModuleCard, SearchDocument } from "../model/site.ts";
import { type ReadMemory, read } from "../read/read.ts";
import type { Kept, Written } from "../render/kept.ts";
import type { PageCount } from "../render/page-count.ts";
import type { Note } from "../render/write.ts";
import { toolFolder } from "../tool-folder.ts";
import { outlinesOf } from "../validate/outlines.ts";
import { type Checked, check, type Parsed, parse } from "../validate/validate.ts";
import { checkWords } from "../words/check.ts";
import { owns, reads, type Share } from "./share.ts";

/** A fault of the content stops a build, a fault of ours throws. */
export interface Found {
  readonly diagnostics: readonly Diagnostic[];
  /** The texts in which something was found, by path. */
  readonly texts: ReadonlyMap<string, string>;
}

export interface Opened extends Found {
  readonly outlines: readonly Outline[];
  /** Pictures of the whole folder by path, with what changes whenever the file does. */
  readonly pictures: ReadonlyMap<string, string>;
}

export interface DerivedShare {
  readonly cards: readonly ModuleCard[];
  /** None where the programme keeps no records. */
  readonly releases: readonly ReleaseCard[];
  /** Search documents of each module by its id, and those of all sheets under "". */
  readonly documents: ReadonlyMap<string, readonly SearchDocument[]>;
}

export interface Folders {
  readonly contentDir: string;
  /** The site's folder; what lies in it already stays. */
  readonly outDir: string;
}

export interface RenderTask {
  /** Of all modules. */
  readonly cards: readonly ModuleCard[];
  /** Of all modules; none where the programme keeps no records. */
  readonly releases: readonly ReleaseCard[];
  readonly assets: Assets;
  /** Of pictures, by path. */
  readonly sizes: ReadonlyMap<string, Size>;
  readonly folders: Folders;
  /** The site that was built before and still stands, where only what changed is to be made. */
  readonly siteDir: string | undefined;
  readonly count: PageCount;
}

export interface Listed {
  /** Files as the offline list has them; none where there is to be no such list. */
  readonly listed: readonly EditionFile[];
}

export class Hand {
  readonly #contentDir: string;
  readonly #share: Share;
  readonly #memory: ReadMemory = new Map();
  readonly #pages: Kept["pages"] = new Map();
  #texts: ReadonlyMap<string, string> = new Map();
  #parsed: Parsed | undefined;
  #checked: Checked | undefined;
  #content: Content | undefined;
  #derived: Derived | undefined;

  constructor(contentDir: string, share: Share) {
    this.#contentDir = contentDir;
    this.#share = share;
  }

  /** Reads and parses its share. */
  open(): Opened {
    const wants = (path: string) => reads(this.#share, path);
    const { reading, diagnostics: inText } = read(this.#contentDir, { wants, memory: this.#memory });
    const { parsed, diagnostics } = parse(reading);
    this.#texts = reading.texts;
    this.#parsed = parsed;
    const outlines = outlinesOf(parsed).filter(({ path }) => owns(this.#share, path));
    return { outlines, pictures: reading.pictures, ...this.#found([...inText, ...diagnostics]) };
  }

  /** Looks at how its share hangs together with the whole, whose outlines are given. */
  check(outlines: readonly Outline[]): Found {
    this.#checked = check(this.#parsed!, outlines, this.#checked);
    const { content, diagnostics } = this.#checked;
    this.#content = content;
    const ofWords = this.#share.which === 0 ? checkWords(this.#contentDir, this.#texts) : [];
    return this.#found([...diagnostics, ...ofWords]);
  }

  /** Works out all that follows from its share, which must have no errors. */
  derive(): DerivedShare {
    const derived = derive(this.#content!);
    this.#derived = derived;
    const documents = new Map(derived.documents);
    if (this.#share.which === 0) documents.set("", sheetDocuments(this.#content!));
    const { revisions } = this.#content!;
    const releases = derived.releases.map((each) => releaseCard(each, revisions.get(each.module)));
    return { cards: derived.views.map(({ card }) => card), releases, documents };
  }

  /** Writes the pages of its modules, and what records load of them, except for what stands already as it would come out. */
  async renderModules({
    cards,
    assets,
    sizes,
    folders,
    siteDir,
    count,
  }: RenderTask): Promise<Written & Listed> {
    const { renderModules } = await import("../render/render.ts");
    const { writeModuleData } = await import("../render/record-data.ts");
    const listed: EditionFile[] = [];
    const note: Note = (file, bytes) => listed.push([file, digestOf(bytes), bytes.length]);
    const kept = { siteDir, pages: this.#pages, note: assets.scripts.has("offline") ? note : undefined };
    const { released } = this.#content!;
    const data = this.#derived!.releases.map((each) => moduleData(each, released.get(each.module) ?? []));
    const unchanged = writeModuleData(data, folders.outDir, kept);
    const written = await renderModules(this.#site(cards), assets, sizes, folders.outDir, kept, count);
    return { ...written, unchanged: [...unchanged, ...written.unchanged], listed };
  }

  /** Writes the pages that belong to no module and returns how many. Its share must hold the home page's module. */
  async renderProgramme({ cards, releases, assets, sizes, folders, count }: RenderTask): Promise<number> {
    const { renderProgramme } = await import("../render/render.ts");
    const { writeProgrammeData } = await import("../render/record-data.ts");
    const site = this.#site(cards);
    const data = programmeData(
      this.#content!,
      releases,
      site.cards.map(({ id }) => id),
    );
    if (data !== undefined) writeProgrammeData(data, folders.outDir);
    if (assets.scripts.has("offline")) {
      const { writeManifest } = await import("../bundle/manifest.ts");
      await writeManifest({ ...folders, layoutsDir: toolFolder("layouts"), programme: site.programme });
    }
    const { authorsGuide } = await import("../validate/schema/reference.ts");
    return renderProgramme(site, assets, sizes, folders.outDir, authorsGuide(), count);
  }

  #site(cards: readonly ModuleCard[]) {
    return siteOf(this.#content!, cards, this.#derived!.views);
  }

  /** Every hand looks at what belongs to no module, and one speaks of it. */
  #found(all: readonly Diagnostic[]): Found {
    const diagnostics = all.filter(({ file }) => owns(this.#share, file));
    const files = new Set(diagnostics.map(({ file }) => file));
    return { diagnostics, texts: new Map([...this.#texts].filter(([path]) => files.has(path))) };
  }
}
