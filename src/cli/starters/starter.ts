/** Content files to begin with: what `new` writes. */

/** Texts by their path in the content folder. */
export type StarterFiles = ReadonlyMap<string, string>;

/** `spring-motor` as a title: "Spring motor". */
export const titleOf = (id: string): string => `${id[0]!.toUpperCase()}${id.slice(1).replaceAll("-", " ")}`;
