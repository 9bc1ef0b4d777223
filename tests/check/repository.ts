/** What must not stand in the project's files, as far as it can be seen in their text. */

export interface TextRule {
  readonly name: string;
  /** The files that it is for, by path. */
  readonly files: RegExp;
  readonly forbids: RegExp;
  readonly why: string;
  /** A line that the rule must find: joined from pieces, so that it does not find itself here. */
  readonly example: readonly string[];
}

export const textRules: readonly TextRule[] = [
  {
    name: "paths of one machine",
    files: /^(?!tests\/)/,
    forbids: /(?<![\w.~/-])\/(?:work|root|home|tmp|Users)\//,
    why: "The project runs anywhere.",
    example: ["read /ro", "ot/notes"],
  },
  {
    name: "paths of one machine, in tests",
    files: /^tests\//,
    forbids: /(?<![\w.~/-])\/(?:work|root|home)\//,
    why: "The tests run anywhere.",
    example: ["cd /ho", "me/me"],
  },
  {
    name: "files outside the project",
    files: /./,
    forbids: /\.\.\/shared\b/,
    why: "What a test needs is in the project.",
    example: ["../sha", "red/x"],
  },
  {
    name: "hosts of package registries",
    files: /./,
    forbids: /\b(?:registry|pypi|proxy|mirror)\.[a-z0-9-]+\.(?:org|com|io|dev)\b/,
    why: "Where packages come from is for the one who installs them to say.",
    example: ["https://regi", "stry.npmjs.org/x"],
  },
  {
    name: "clock and randomness in the engine",
    files: /^src\/engine\//,
    forbids:
      /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bperformance\.now\b|\bgetRandomValues\b|\brandomUUID\b/,
    why: "The engine gives the same answer to the same question; time and chance are passed in.",
    example: ["const x = Math.", "random();"],
  },
  {
    name: "imports of a computed name",
    files: /^(?:src|layouts)\/.*\.ts$/,
    forbids: /\bimport\(\s*(?!["'\s])/,
    why: "The import laws can't see where they lead.",
    example: ["await imp", "ort(name)"],
  },
  {
    name: "a type check that is switched off",
    files: /\.ts$/,
    forbids: /@ts-(?:ignore|nocheck|expect-error)/,
    why: "What the types can't say is said by a function that checks it.",
    example: ["// @ts-", "ignore"],
  },
  {
    name: "work that is not done",
    files: /\.(?:ts|css|md|ya?ml)$/,
    forbids: /\b(?:TO(?:DO)|FIX(?:ME)|X{3})\b/,
    why: "What is missing is done, or told to the reader as missing.",
    example: ["// TO", "DO later"],
  },
  {
    name: "tests that do not run",
    files: /^tests\/.*\.ts$/,
    forbids: /\b(?:test|it|describe)\.(?:skip|only|todo|skipIf|runIf|fails)\b/,
    why: "A test that is not run holds nothing.",
    example: ["test.sk", "ip('x')"],
  },
  {
    name: "text that becomes code or markup on a page",
    files: /^src\/browser\/.*\.ts$/,
    forbids: /\b(?:innerHTML|outerHTML|insertAdjacentHTML|document\.write)\b|\beval\(|\bnew Function\b/,
    why: "Nothing that was written or typed becomes markup.",
    example: ["p.inner", "HTML = x"],
  },
];

/** Every line of the text that the rule forbids, as "file:line: name: the line". */
export function breaches(rule: TextRule, file: string, text: string): string[] {
  if (!rule.files.test(file)) return [];
  return text
    .split("\n")
    .flatMap((line, i) =>
      rule.forbids.test(line) ? [`${file}:${i + 1}: ${rule.name}: ${line.trim().slice(0, 100)}`] : [],
    );
}
