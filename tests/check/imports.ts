/** Finds every import of TypeScript files with esbuild's parser, those of types among them. */
import { readFile } from "node:fs/promises";
import { relative } from "node:path";
import { build, type Plugin } from "esbuild";

export interface Import {
  /** The file, relative to the project, with forward slashes. */
  readonly file: string;
  /** As written: a relative path, `node:fs`, a package. */
  readonly specifier: string;
  /** True where nothing of it is there at run time. */
  readonly typeOnly: boolean;
}

export interface Found {
  readonly files: readonly string[];
  readonly imports: readonly Import[];
}

/**
 * All imports of the given files, which are paths below `root`. esbuild drops imports of types, so it parses each file
 * twice, the second time with the word `type` taken out of import and export declarations; what only the second parse
 * finds is an import of types. `import("…").Name`, a type, is found in the text.
 */
export async function findImports(root: string, files: readonly string[]): Promise<Found> {
  const asWritten = await parse(root, files, (text) => text);
  const withTypes = await parse(root, files, withoutTypeWord);
  const imports = [...withTypes].flatMap(([file, specifiers]) =>
    [...specifiers].map((specifier) => ({
      file,
      specifier,
      typeOnly: asWritten.get(file)?.has(specifier) !== true,
    })),
  );
  return { files: [...withTypes.keys()], imports };
}

/** `import type {A}`, `import type A from`, `export type {A} from`, `export type * from`; not `export type A =`. */
function withoutTypeWord(text: string): string {
  const inlineTypes = [...text.matchAll(/\bimport\(\s*(["'][^"']+["'])\s*\)\s*\./g)].map(
    (match) => `import ${match[1]};`,
  );
  const declarations = text.replace(/\b(import\s+|export\s+(?=type\s*[{*]))type\s*(?=[{*\s])/g, "$1 ");
  return `${declarations}\n${inlineTypes.join("\n")}\n`;
}

type Change = (text: string) => string;

async function parse(
  root: string,
  files: readonly string[],
  change: Change,
): Promise<Map<string, Set<string>>> {
  const { metafile } = await build({
    entryPoints: [...files],
    absWorkingDir: root,
    outdir: "nowhere",
    bundle: true,
    write: false,
    metafile: true,
    platform: "node",
    format: "esm",
    logLevel: "silent",
    // Keeps imports that are not used at run time, as far as they are not of types.
    tsconfigRaw: { compilerOptions: { verbatimModuleSyntax: true } },
    plugins: [eachFileAlone(root, change)],
  });
  return new Map(
    Object.entries(metafile.inputs).map(([file, { imports }]) => [
      file.replace(/^each:/, ""),
      new Set(imports.filter(({ path }) => path !== "<runtime>").map(({ path }) => path)),
    ]),
  );
}

/** Follows no import: each is left standing as it is written. */
function eachFileAlone(root: string, change: Change): Plugin {
  return {
    name: "each file alone",
    setup({ onResolve, onLoad }) {
      onResolve({ filter: /.*/ }, ({ kind, path, resolveDir }) =>
        kind === "entry-point"
          ? { path: relative(root, `${resolveDir}/${path}`).replaceAll("\\", "/"), namespace: "each" }
          : { path, external: true },
      );
      onLoad({ filter: /.*/, namespace: "each" }, async ({ path }) => ({
        contents: change(await readFile(`${root}/${path}`, "utf8")),
        loader: path.endsWith(".tsx") ? "tsx" : "ts",
      }));
    },
  };
}
