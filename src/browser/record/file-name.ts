/** How a record's file is called: the name without what some file systems refuse, and the day. */

const longest = 40;

/** "jo-m-2026-05-12.record.json"; `at` is a time in RFC 3339. */
export const fileName = (name: string, at: string): string =>
  `${[slug(name), at.slice(0, 10)].filter((part) => part !== "").join("-")}.record.json`;

/** Lower-case letters and figures of any script, with hyphens between. */
export function slug(name: string): string {
  const parts =
    name
      .normalize("NFC")
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu) ?? [];
  return [...parts.join("-")].slice(0, longest).join("").replace(/-$/, "");
}
