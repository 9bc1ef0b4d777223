// biome-ignore-all lint/suspicious/noTemplateCurlyInString: what is tested is code in strings.
/** Messages in code: what is found, and what stands there once it is translated. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Message } from "../../src/words/message.ts";
import { messagesOf, translateCode } from "../../src/words/translate-code.ts";

/** Ids of a piece of code; a plural as "one | other". */
const found = (code: string): string[] =>
  messagesOf(code).map(({ context, id, plural }) =>
    [context === "" ? id : `${context}: ${id}`, plural].filter((text) => text !== "").join(" | "),
  );

const html = (text: string): string => `html\`${text}\``;

const withWords = (code: string, words: Readonly<Record<string, string | string[]>>): string =>
  translateCode(code, ({ id }: Message) => (words[id] === undefined ? undefined : [words[id]].flat()));

/** What the code gives when it runs, with the tags written out. */
function run(code: string, values: Readonly<Record<string, unknown>> = {}): unknown {
  const html = (texts: TemplateStringsArray, ...given: unknown[]) => String.raw({ raw: texts }, ...given);
  const plural = (count: number, ...forms: string[]) => forms[count === 1 ? 0 : 1];
  const counted = (count: number, ...forms: string[]) =>
    plural(count, ...forms)!.replace("{0}", String(count));
  const all = { html, t: html, plural, counted, ...values };
  return new Function(...Object.keys(all), `return ${code};`)(...Object.values(all));
}

describe("what is a message", () => {
  test.each<[name: string, code: string, ids: string[]]>([
    ["a marked text", "t`Step ${n} of ${total}`", ["Step {0} of {1}"]],
    ["a text with a context", 'tIn("a verb")`Order`', ["a verb: Order"]],
    ["blanks at the ends stay outside", "t` and more `", ["and more"]],
    ["a number with its noun", 'counted(n, "query", "queries")', ["{0} query | {0} queries"]],
    ["a regular plural", 'counted(n, "step")', ["{0} step | {0} steps"]],
    ["a sentence in two numbers", "plural(n, t`${n} is off`, t`${n} are off`)", ["{0} is off | {0} are off"]],
    ["a plain string", '"Modules"', []],
    ["text in a block", html("<p>Look here</p>"), ["Look here"]],
    [
      "a sentence with a link",
      html('<p>See <a href="${to}">the ${name}</a>, then go on.</p>'),
      ["See <0>the {0}</0>, then go on."],
    ],
    ["an empty element in a sentence", html("<p>One<br>two</p>"), ["One<0/>two"]],
    ["one element round all of it", html("<p><strong>Stop</strong></p>"), ["Stop"]],
    ["a value beside an element with words", html("<p>${x} <b>Why</b></p>"), ["Why"]],
    ["a value alone", html("<p>${x}</p>"), []],
    ["signs without letters", html("<p>${x} · ${y}</p>"), []],
    [
      "attributes that people read",
      html('<img alt="A box" title="${x} of it" class="big one">'),
      ["A box", "{0} of it"],
    ],
    ["the description of a page", html('<meta name="description" content="All of it">'), ["All of it"]],
    ["other metadata", html('<meta name="viewport" content="width=device-width">'), []],
    ["a piece of a tag", html(' class="on off"'), []],
    ["a script is none", html("<script>let x = 'a word'</script>"), []],
    ["messages inside a message", html("<p>Go ${html`<b>on</b>`}</p>"), ["Go {0}", "on"]],
    ["blank lines in the source", html("<p>one\\n  two</p>"), ["one two"]],
    ["entities", html("<p>salt &amp; pepper</p>"), ["salt & pepper"]],
  ])("%s", (_, code, ids) => {
    expect(found(code)).toEqual(ids);
  });
});

describe("what stands there afterwards", () => {
  test("a text, with its values in another order", () => {
    const code = withWords("t`Step ${a + 1} of ${b}`", { "Step {0} of {1}": "Von {1} der {0}." });
    expect(code).toBe("`Von ${b} der ${a + 1}.`");
  });

  test("a sentence keeps its tags with their attributes", () => {
    const words = { "See <0>the {0}</0> now": "Jetzt <0>{0}</0> ansehen" };
    const code = withWords(html('<p class="x">See <a href="${to}">the ${name}</a> now</p>'), words);
    expect(run(code, { to: "a.html", name: "Ort" })).toBe(
      '<p class="x">Jetzt <a href="a.html">Ort</a> ansehen</p>',
    );
  });

  test("a translation is text and never becomes a tag or code", () => {
    const code = withWords(html("<p>Hello</p>"), { Hello: '<script> `${1 + 1}` & \\ "' });
    expect(run(code)).toBe("<p>&lt;script&gt; `${1 + 1}` &amp; \\ &quot;</p>");
  });

  test("numbers: a form for each kind", () => {
    const words = { "{0} step": ["{0} Schritt", "{0} Schritte"] };
    expect([1, 3].map((n) => run(withWords(`counted(${n}, "step")`, words)))).toEqual([
      "1 Schritt",
      "3 Schritte",
    ]);
    const sentence = withWords("plural(n, t`${n} is off`, t`${n} are off`)", {
      "{0} is off": ["{0} ist ab", "{0} sind ab"],
    });
    expect(run(sentence, { n: 2 })).toBe("2 sind ab");
  });

  test("what has no translation stays, and what lies in it is still translated", () => {
    const code = withWords("t`Known: ${t`inner`}` + t`other`", { inner: "innen" });
    expect(code).toBe("t`Known: ${`innen`}` + t`other`");
  });

  test("any text comes out of the code as it went in (property)", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (words) => {
        const plain = words.replace(/[\ue000-\uf8ff]/g, "").replace(/[{<]/g, "");
        expect(run(withWords("t`Hello`", { Hello: plain }))).toBe(plain);
      }),
    );
  });
});
