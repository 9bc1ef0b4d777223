/** The import laws: which folder may import what, and why. Checked by `laws.test.ts` over `src/` and `layouts/`. */

/** What an import leads to: a folder or file of `src/`, `layouts`, `node:` for all of Node's modules, or a package. */
export type Target = string;

export interface Law {
  /** A folder or file of the project; the longest one that fits a file holds. */
  readonly from: string;
  /** Besides the folder itself. */
  readonly may: readonly Target[];
  /** Targets of which only types may be imported: nothing of them runs. */
  readonly types?: readonly Target[];
  readonly why: string;
}

export const laws: readonly Law[] = [
  {
    from: "src/engine",
    may: [],
    why: "The engine runs in Node and in the browser and gives the same answer in both, so it knows neither; what it needs is passed in.",
  },
  {
    from: "src/model",
    may: [],
    types: ["src/engine"],
    why: "The model is what passes between stages: shapes, in which a graph or a tray is a type of the engine.",
  },
  {
    from: "src/read",
    may: ["src/model", "node:", "gray-matter", "yaml", "js-yaml", "markdown-it"],
    why: "Reading turns files into sources; what they mean is judged by the next stage.",
  },
  {
    from: "src/validate",
    may: ["src/model", "src/engine", "zod"],
    why: "Validation judges what was read. It opens no file, so that a rule is tested on a text alone.",
  },
  {
    from: "src/derive",
    may: ["src/model", "src/engine", "zod"],
    why: "What follows from the content follows from it alone: no file, no clock.",
  },
  {
    from: "src/render",
    may: [
      "src/model",
      "src/engine",
      "src/tool-folder.ts",
      "layouts",
      "node:",
      "@11ty/eleventy",
      "markdown-it",
    ],
    why: "Rendering makes pages of a site; it is the only place that knows Eleventy.",
  },
  {
    from: "src/bundle",
    may: ["src/model", "src/engine", "node:", "esbuild", "lunr", "sharp"],
    why: "Bundling names the browser's entries by path only. Of the engine it needs how words are cut, which the search page must do alike; the icons of an installed site are made from the drawn one.",
  },
  {
    from: "src/pictures",
    may: ["src/model", "node:", "sharp"],
    why: "Pictures come from anywhere and carry more than is seen; one folder opens them, and nothing of them goes into a site but what it has made.",
  },
  {
    from: "src/single",
    may: ["src/model", "layouts", "node:"],
    why: "One file of a module is made of the pages of a built site, and depends on nothing by which they were made.",
  },
  {
    from: "src/report",
    may: ["src/model"],
    why: "A report is made of diagnostics and texts; it prints nothing itself.",
  },
  {
    from: "src/browser",
    may: [
      "src/engine",
      "src/model/edition.ts",
      "src/model/picture-files.ts",
      "src/model/search-data.ts",
      "lunr",
      "idb",
    ],
    types: ["src/model"],
    why: "What runs on a page is small: the engine, a thin layer over the page, the search library, and one that gives the browser's database promises. The names of the files by which a site is kept on a device, those of pictures among them, and by which prose is searched, are those that the bundler writes.",
  },
  {
    from: "layouts",
    may: ["src/model", "src/engine"],
    why: "Layouts make pages of a site and nothing else, so that they can be read and changed without knowing the stages.",
  },
  {
    from: "src/words",
    may: ["src/model", "src/tool-folder.ts", "node:", "esbuild", "acorn", "acorn-walk", "gettext-parser"],
    why: "Words of other languages are put into the code before it runs, so no other folder knows of catalogues.",
  },
  {
    from: "src/crew",
    may: ["*"],
    why: "A hand takes a share of the modules through the stages, on a thread of its own where there are many; stages know nothing of it.",
  },
  {
    from: "src/tool-folder.ts",
    may: ["node:"],
    why: "Where the tool's own folders lie is known in one place.",
  },
  { from: "src/build.ts", may: ["*"], why: "The build is where the stages meet." },
  { from: "src/cli", may: ["*"], why: "Commands supply input and output to stages and engine." },
];

/** A single import that a law forbids and that is right all the same. */
export interface Exception {
  readonly from: string;
  readonly to: string;
  readonly why: string;
}

const libraries = (to: string): Exception => ({
  from: "src/engine/competency/libraries.ts",
  to,
  why: "Ed25519, SHA-2 and base58 are not written a second time; they run anywhere, and one file hands them on.",
});

export const exceptions: readonly Exception[] = [
  libraries("@noble/ed25519"),
  libraries("@noble/hashes/sha2.js"),
  libraries("@scure/base"),
  {
    from: "src/model/practice.ts",
    to: "src/engine/words.ts",
    why: "A practice without a title is given one, which is marked for translation as all words of the site are.",
  },
  {
    from: "src/browser/evening/qr.ts",
    to: "uqr",
    why: "QR codes for the evening sheet: a standard of many pages, by a small library that draws nothing and asks for nothing; one file uses it.",
  },
];

/** Arrows that are known to exist. Where one is not found, the check has not seen what it claims to have seen. */
export const knownArrows: readonly (readonly [from: string, to: Target])[] = [
  ["src/model", "src/engine"],
  ["src/read", "node:"],
  ["src/read", "src/model"],
  ["src/validate", "src/engine"],
  ["src/derive", "src/engine"],
  ["src/render", "layouts"],
  ["src/render", "@11ty/eleventy"],
  ["src/bundle", "esbuild"],
  ["src/pictures", "sharp"],
  ["src/browser", "src/engine"],
  ["layouts", "src/model"],
  ["src/build.ts", "src/read"],
  ["src/build.ts", "src/crew"],
  ["src/crew", "src/validate"],
  ["src/cli", "src/build.ts"],
];
