/** Puts the words of a language into code while esbuild bundles it. */
import { readFile } from "node:fs/promises";
import { type BuildOptions, type Plugin, transform } from "esbuild";
import { toolFolder } from "../tool-folder.ts";
import { lookUp, readCatalogue } from "./catalogue.ts";
import { folders } from "./folders.ts";
import type { Words } from "./languages.ts";
import type { Message } from "./message.ts";
import { translateCode } from "./translate-code.ts";

/** What a bundle needs so that it speaks the language. Throws where a catalogue can't be read. */
export function bundleOptions({
  language,
  files,
}: Words): Required<Pick<BuildOptions, "plugins" | "define">> {
  const translate = lookUp(files.map(({ text }) => readCatalogue(text)));
  return {
    plugins: [wordsPlugin(translate)],
    define: { WORDS_LANGUAGE: JSON.stringify(language) },
  };
}

/** Files that mark nothing are left to esbuild, which is quicker. */
const marks = /\b(t|html)`|\btIn\(|\b(counted|plural)\(/;

function wordsPlugin(translate: ReturnType<typeof lookUp>): Plugin {
  return {
    name: "words",
    setup(build) {
      build.onLoad({ filter: /\.ts$/ }, async ({ path }) => {
        if (!folders.some((folder) => path.startsWith(toolFolder(folder)))) return undefined;
        const source = await readFile(path, "utf8");
        if (!marks.test(source) || /engine[\\/]words\.ts$/.test(path)) return undefined;
        const { code } = await transform(source, { loader: "ts", target: "esnext", charset: "utf8" });
        const missing: Message[] = [];
        const contents = translateCode(code, (message) => {
          const found = translate(message);
          if (found === undefined) missing.push(message);
          return found;
        });
        return {
          contents,
          loader: "js",
          errors: missing.map(({ id }) => ({ text: `no catalogue has "${id}"` })),
        };
      });
    },
  };
}
