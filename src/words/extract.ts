/** All messages of the site, from the sources of the tool. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { transformSync } from "esbuild";
import { toolFolder } from "../tool-folder.ts";
import { folders } from "./folders.ts";
import { keyOf, type Message } from "./message.ts";
import { messagesOf } from "./translate-code.ts";

export interface Found extends Message {
  /** Files, relative to the tool's folder. */
  readonly where: readonly string[];
}

/** The messages in the order of the files in which they first stand. Throws where a file is no TypeScript. */
export function allMessages(): Found[] {
  const found = new Map<string, Message & { readonly where: Set<string> }>();
  for (const file of folders.flatMap(sourcesIn)) {
    const source = readFileSync(toolFolder(file), "utf8");
    const { code } = transformSync(source, { loader: "ts", target: "esnext", charset: "utf8" });
    for (const message of file === "src/engine/words.ts" ? [] : messagesOf(code)) {
      const key = keyOf(message);
      const before = found.get(key);
      // A text with a plural serves those without one too.
      const merged = before === undefined || before.plural === "" ? message : before;
      found.set(key, { ...merged, where: (before?.where ?? new Set()).add(file) });
    }
  }
  return [...found.values()].map((message) => ({ ...message, where: [...message.where] }));
}

function sourcesIn(folder: string): string[] {
  return readdirSync(toolFolder(folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"))
    .map((name) => join(folder, name).replaceAll("\\", "/"))
    .sort();
}
