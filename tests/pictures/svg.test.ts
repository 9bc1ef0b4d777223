/** Drawings that come from anywhere: what is dangerous is refused at its place, what editors wrote is gone, the lines stay. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { expect, test } from "vitest";
import { readDrawing } from "../../src/pictures/drawing.ts";
import { makePicture } from "../../src/pictures/make.ts";
import { cleanSvg } from "../../src/pictures/svg/clean.ts";
import { projectDir } from "../support/project.ts";
import { photograph, tracesIn } from "./photograph.ts";

const drawing = (inner: string, attributes = ""): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 10 20"${attributes}>${inner}</svg>`;

const clean = (text: string): string => {
  const found = cleanSvg(text);
  if (!("text" in found)) throw new Error(JSON.stringify(found));
  return found.text;
};

// After SVG 2, 2.5 and 12 to 16 (what a drawing can run or load), CSS Images 4 (url, image-set), XML 1.0 (document types, entities).
test.each([
  ["a script", "<script>alert(1)</script>", "<script>", "runs a script"],
  [
    "a script with a prefix of its own",
    '<s:script xmlns:s="http://www.w3.org/2000/svg"/>',
    "<s:script",
    "runs a script",
  ],
  ["an event", '<path onload="x()" d="M0 0"/>', "onload", "when something happens"],
  ["foreign content", "<foreignObject><p/></foreignObject>", "<foreignObject", "other things"],
  ["an element of HTML", '<p xmlns="http://www.w3.org/1999/xhtml"/>', "<p ", "web page"],
  ["a link", '<a href="https://example.org/"><path d=""/></a>', "href", "https://example.org/"],
  ["a link that runs", '<a xlink:href="javascript:x()"><path d=""/></a>', "xlink:href", "javascript"],
  ["an address in numbers", '<use href="&#x68;ttps://example.org/#a"/>', "href", "https://example.org/"],
  ["another file", '<use href="other.svg#a"/>', "href", "other.svg"],
  ["a drawing within", '<image href="data:image/svg+xml;base64,PHN2Zy8+"/>', "href", "data:image/svg"],
  ["a picture elsewhere", '<image href="//example.org/a.png"/>', "href", "//example.org"],
  ["a paint elsewhere", '<path fill="url(https://example.org/#a)" d=""/>', "fill", "example.org"],
  ["a style attribute", '<path style="fill:url(\'x.svg#a\')" d=""/>', "style", "x.svg"],
  ["a style in letters by number", '<path style="fill:\\75rl(x.svg)" d=""/>', "style", "numbers"],
  ["a style sheet taken in", "<style>@import 'a.css';</style>", "@import", "style sheet"],
  [
    "a font from elsewhere",
    "<style><![CDATA[@font-face{src:url(a.woff2)}]]></style>",
    "<![CDATA[",
    "a.woff2",
  ],
  [
    "a style sheet behind a comment",
    "<style>@im/**/port 'a.css'; a{fill:u/**/rl(x)}</style>",
    "@im",
    "style sheet",
  ],
  [
    "a change of a link",
    '<a href="#x"><set attributeName="href" to="//example.org/"/></a>',
    "attributeName",
    '"href"',
  ],
  ["another base", '<g xml:base="https://example.org/"><path d=""/></g>', "xml:base", "elsewhere"],
] as const)("%s is refused", (_, inner, at, says) => {
  const text = drawing(inner);
  const found = cleanSvg(text);
  expect(found).toMatchObject([{ code: "picture-unsafe", message: expect.stringContaining(says) }]);
  const [{ offset }] = found as readonly { offset: number }[] as [{ offset: number }];
  expect(text.slice(offset).startsWith(at), text.slice(offset, offset + 20)).toBe(true);
});

test.each([
  ["a document type", `<!DOCTYPE svg [<!ENTITY a "b">]>\n${drawing("&a;")}`, "document type"],
  ["a style sheet for the whole", `<?xml-stylesheet href="a.css"?>${drawing("")}`, "style sheet"],
])("%s is refused", (_, text, says) => {
  expect(cleanSvg(text)).toMatchObject([
    { code: "picture-unsafe", offset: 0, message: expect.stringContaining(says) },
  ]);
});

test.each([
  ["not closed", drawing("<g>"), "</svg> closes <g>"],
  ["cut off", drawing("").slice(0, -6), "<svg> is not closed"],
  ["an entity that nothing says", drawing("<text>&nbsp;</text>"), "&nbsp;"],
  ["an attribute twice", drawing('<path d="" d=""/>'), "stands twice"],
  ["a prefix that nothing says", drawing("<a:b/>"), '"a:"'],
  ["no namespace", "<svg viewBox='0 0 1 1'/>", 'expected <svg xmlns="http://www.w3.org/2000/svg">'],
  ["HTML", "<!-- x --><html></html>", "<html>"],
  ["nothing", "", "no <svg>"],
  ["two", `${drawing("")}${drawing("")}`, "two drawings"],
])("one that is %s is told as broken", (_, text, says) => {
  expect(cleanSvg(text)).toMatchObject([{ code: "picture-broken", message: expect.stringContaining(says) }]);
});

test("all faults are told at once", () => {
  expect(cleanSvg(drawing('<script/><path onclick="x" d=""/><style>@import "a"</style>'))).toHaveLength(3);
});

test("what editors write about the drawing and themselves is left out; the drawing is not", () => {
  const written = `<?xml version="1.0"?>
<!-- Made by the phone of Jo Nobody -->
<svg xmlns="http://www.w3.org/2000/svg" xmlns:ed="http://editor.example/ns" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9" ed:docname="drawer of Jo/secret words.svg">
<metadata><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">Invented Town</rdf:RDF></metadata>
<ed:view ed:zoom="2"><path d="M9 9"/></ed:view>
<title>A &amp; B</title><style>.a{fill:url(#g)}</style>
<path class="a" ed:label="secret words" d="M0 0"/><use xlink:href="#a" x="1"/>
</svg>`;
  expect(
    clean(written),
  ).toBe(`<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" viewBox="0 0 9 9">


<title>A &amp; B</title><style>.a{fill:url(#g)}</style>
<path class="a" d="M0 0"/><use xlink:href="#a" x="1"/>
</svg>
`);
});

test("a photograph within a drawing is made anew", async () => {
  const photo = await photograph("jpeg", { width: 60, height: 40 });
  const address = `data:image/jpeg;base64,${photo.toString("base64")}`;
  const [made] = await makePicture(
    "a.svg",
    Buffer.from(drawing(`<image width="9" height="9" href='${address}'/><path d="M1 1"/>`)),
  );
  const text = Buffer.from(made!.bytes).toString();
  const within = Buffer.from(/href='data:image\/jpeg;base64,([^']+)'/.exec(text)![1]!, "base64");
  expect(tracesIn(photo)).toContain("Phone of Invention");
  expect(tracesIn(within)).toEqual([]);
  expect(await sharp(within).metadata()).toMatchObject({ width: 60, height: 40, format: "jpeg" });
  expect(text).toContain('<path d="M1 1"/></svg>');
});

// SVG 2, 7.2 and 8.2.
test.each([
  ["a size", ' width="120" height="80.4px"', { width: 120, height: 80 }],
  ["a view box only", "", { width: 10, height: 20 }],
  ["a size in other units", ' width="10cm" height="5cm"', { width: 10, height: 20 }],
])("size of a drawing with %s", (_, attributes, size) => {
  expect(cleanSvg(drawing("", attributes))).toMatchObject({ size });
});

test("a drawing that is not UTF-8 is told", () => {
  expect(readDrawing(Buffer.from([0xff, 0xfe, 0x3c, 0x00])).faults).toMatchObject([
    { code: "picture-broken" },
  ]);
});

test("every drawing of the demo passes, and shows what it showed", () => {
  const folder = join(projectDir, "content/modules");
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".svg"),
  );
  expect(files.length).toBeGreaterThan(20);
  for (const file of files) {
    const text = readFileSync(join(folder, file), "utf8");
    const { clean: made, faults } = readDrawing(Buffer.from(text));
    expect(faults, file).toEqual([]);
    const elements = (svg: string) => svg.match(/<(?!!|\?)[a-zA-Z/][^>]*>/g);
    expect(elements(made!.text), file).toEqual(elements(text));
  }
});

const pieces = fc.constantFrom(
  ...[
    "<svg xmlns='http://www.w3.org/2000/svg'>",
    "</svg>",
    "<g>",
    "</g>",
    "<a:b/>",
    "<!--",
    "-->",
    "<![CDATA[",
    "]]>",
  ],
  ...[
    "<?x?>",
    "<!DOCTYPE",
    "&#x41;",
    "&#0;",
    "&",
    '"',
    "'",
    "<",
    ">",
    " xmlns:a='b'",
    "<style>",
    "url(",
    "é",
  ],
);

test("nothing makes it throw, and what it lets pass it lets pass again, unchanged", () => {
  fc.assert(
    fc.property(fc.array(fc.oneof(pieces, fc.string({ maxLength: 4 })), { maxLength: 30 }), (parts) => {
      const found = cleanSvg(parts.join(""));
      if ("text" in found) expect(cleanSvg(found.text)).toEqual(found);
      else expect(found.length).toBeGreaterThan(0);
    }),
    { numRuns: 2000 },
  );
});

test("a drawing as large as may be, with a photograph within it, is gone through", () => {
  const base64 = "A".repeat(9 * 1024 * 1024);
  const found = cleanSvg(drawing(`<image href="data:image/png;base64,${base64}"/>`));
  expect(found).toMatchObject({ embedded: [{ kind: "png" }] });
  const deep = cleanSvg(drawing(`${"<g>".repeat(100_000)}${"</g>".repeat(100_000)}`));
  expect(deep).toMatchObject({ size: { width: 10, height: 20 } });
});
