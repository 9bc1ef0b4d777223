/** Links and pictures of Markdown, as they are on the page where the prose stands. */
import MarkdownIt from "markdown-it";
import { expect, test } from "vitest";
import type { Address } from "../../src/model/address.ts";
import { markdownOptions } from "../../src/model/markdown.ts";
import { proseRenderer } from "../../src/render/prose.ts";

const module: Address = { kind: "module", id: "mill" };
const bench: Address = { kind: "bench", id: "mill" };

function render(markdown: string, from: Address, path = "modules/mill/module.md"): string {
  const prose = new MarkdownIt(markdownOptions).parse(markdown, {});
  const sizeOf = (file: string) =>
    file === "modules/mill/figures/a b.svg" ? { width: 8, height: 9 } : undefined;
  return proseRenderer(sizeOf, (_, at) => at !== "only-on-the-sheet")(
    { level: 0, title: "", offset: 0, prose, steps: [] },
    path,
    from,
  ).text.trim();
}

test.each([
  ["marked", "```text\na <b>\n```"],
  ["indented", "    a <b>"],
])("lines that are %s stand unbroken in a box that is reached by key", (_, markdown) => {
  expect(render(markdown, module)).toBe(
    '<pre tabindex="0" role="group" aria-label="Lines as they stand"><code>a &lt;b&gt;\n</code></pre>',
  );
});

test.each([
  ["a step of the same page", "[x](#felt-on)", module, '<p><a href="#felt-on">x</a></p>'],
  ["a step, seen from the bench view", "[x](#felt-on)", bench, '<p><a href="#felt-on">x</a></p>'],
  [
    "a heading that the bench view has not",
    "[x](#only-on-the-sheet)",
    bench,
    '<p><a href="../../../modules/mill/index.html#only-on-the-sheet">x</a></p>',
  ],
  ["a tool", "[x](../../tools/driver.md)", module, '<p><a href="../../tools/driver/index.html">x</a></p>'],
  [
    "a tool from the bench view",
    "[x](../../tools/driver.md)",
    bench,
    '<p><a href="../../../tools/driver/index.html">x</a></p>',
  ],
  [
    "a step of another module",
    "[x](../saw/module.md#a)",
    module,
    '<p><a href="../../modules/saw/index.html#a">x</a></p>',
  ],
  [
    "a web page",
    "[x](https://example.org/?a=1&b=2)",
    module,
    '<p><a href="https://example.org/?a=1&amp;b=2" rel="external noreferrer">x</a></p>',
  ],
  [
    "a picture with its size",
    '![say "it"](<figures/a b.svg>)',
    bench,
    '<p><img src="../../../modules/mill/figures/a%20b.svg" alt="say &quot;it&quot;" width="8" height="9" loading="lazy" decoding="async"> <a class="enlarge" href="../../../modules/mill/figures/a%20b.svg">Enlarge</a></p>',
  ],
])("%s", (_, markdown, from, expected) => {
  expect(render(markdown, from)).toBe(expected);
});

test("HTML is shown as text, quotes are typographic", () => {
  expect(render('<script>alert(1)</script> "a"', module)).toBe(
    "<p>&lt;script&gt;alert(1)&lt;/script&gt; “a”</p>",
  );
});

test("the same prose can be rendered for two pages", () => {
  const prose = new MarkdownIt(markdownOptions).parse("[x](../../tools/driver.md)", {});
  const renderer = proseRenderer(
    () => undefined,
    () => true,
  );
  const section = { level: 0, title: "", offset: 0, prose, steps: [] };
  const once = [bench, module, bench].map((from) => renderer(section, "modules/mill/module.md", from).text);
  expect(once[0]).toBe(once[2]);
  expect(once[0]).not.toBe(once[1]);
});

test("a table is ruled as all are: rows with heads, cells with the names of their columns, figures set right without a style", () => {
  const table = ["| thread | pitch | *from* |", "|---|--:|---|", "| [2 BA](#x) | 0.81 | BS 93 |"].join("\n");
  expect(render(table, module).replaceAll("\n", "")).toBe(
    '<table class="ruled"><thead><tr><th scope="col">thread</th><th scope="col" class="count">pitch</th>' +
      '<th scope="col"><em>from</em></th></tr></thead><tbody><tr><th scope="row"><a href="#x">2 BA</a></th>' +
      '<td class="count" data-name="pitch">0.81</td><td data-name="from">BS 93</td></tr></tbody></table>',
  );
});
