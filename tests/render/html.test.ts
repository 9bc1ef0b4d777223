import { expect, test } from "vitest";
import { attribute, escapeHtml, html, join, raw } from "../../layouts/html.ts";

// HTML living standard, 13.1.2.3: in text and in double-quoted attributes these five need no more than this.
test("what is put in is escaped, in elements and attributes", () => {
  const text = `<a href="x" title='y'>&amp;`;
  expect(html`<p title="${text}">${text}</p>`.text).toBe(
    '<p title="&lt;a href=&quot;x&quot; title=&#39;y&#39;&gt;&amp;amp;">&lt;a href=&quot;x&quot; title=&#39;y&#39;&gt;&amp;amp;</p>',
  );
  expect(escapeHtml("plain")).toBe("plain");
});

test("HTML is kept, lists are joined, nothing stands for nothing, 0 is a number", () => {
  expect(html`${raw("<b>")}${[html`<i>`, ["x", undefined, null, false, true, 0]]}`.text).toBe("<b><i>x0");
});

test("pieces that stand for nothing get no separator", () => {
  expect(join(["a", undefined, false, "", "<"], " & ").text).toBe("a &amp; &lt;");
});

test("attributes", () => {
  expect(attribute("title", 'a"b').text).toBe(' title="a&quot;b"');
  expect(attribute("open", true).text).toBe(" open");
  expect([attribute("open", false).text, attribute("open", undefined).text]).toEqual(["", ""]);
});
