import type { BuildOptions } from "esbuild";

/** Where compiled programs are kept in the package whose folder is `home`. */
export function keptIn(home: string): string;

/** The folder for the sources as they are, and for `texts` that go into the code besides. */
export function folderFor(home: string, texts?: readonly string[], suffix?: string): string;

/** Compiles the program into the folder. Rejects where it can't be made or kept. */
export function compile(
  home: string,
  folder: string,
  options?: Pick<BuildOptions, "plugins" | "define">,
): Promise<void>;
