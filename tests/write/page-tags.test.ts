import fc from "fast-check";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { describe, expect, test } from "vitest";
import { PageFault, tagsOf } from "../../src/write/page-tags.ts";

const shape = (html: string): string[] =>
  tagsOf(html).map(({ name, attributes, line }) =>
    [line, name, ...[...attributes].map(([key, value]) => `${key}=${value}`)].join(" "),
  );

test("names, attributes and lines of opening tags", () => {
  const html = `<!doctype html>
<html lang=en><head><title>a < b & "c"</title>
<meta charset='utf-8'></head>
<body><!-- <img src="no.jpg"> -->
<A HREF = "x.html?a=1&amp;b=2#&#x66;&#111;o" hidden>x</A
><br/><img
  src="a.jpg" alt="1 > 0">
</body></html>
`;
  expect(shape(html)).toEqual([
    "2 html lang=en",
    "2 title",
    "3 meta charset=utf-8",
    "4 body",
    "5 a href=x.html?a=1&b=2#foo hidden=",
    "6 img src=a.jpg alt=1 > 0",
  ]);
});

test("a tag that can load, link, run, name or set nothing is passed over", () => {
  const html =
    '<p>1</p><td class="a" scope="row">2</td><td id="b">3</td><g style="x"></g><p onclick="y">';
  expect(shape(html)).toEqual(["1 td id=b", "1 g style=x", "1 p onclick=y"]);
});

test("what stands in a script or a style sheet is no tag", () => {
  const tags = tagsOf('<script type="a">if (a<b) "<img src=x>"</script><style>a>b{}</style><p>');
  expect(tags.map(({ name, rawText }) => [name, rawText])).toEqual([
    ["script", 'if (a<b) "<img src=x>"'],
    ["style", "a>b{}"],
  ]);
});

describe("refuses what a browser might read in another way", () => {
  test.each([
    ["a bare sign", "<p>1 < 2</p>"],
    ["a quote within a bare value", `<a href=x"y>`],
    ["an attribute that stands twice", '<a href="a" href="b">'],
    ["a slash between name and attribute", '<img/src="x">'],
    ["an open tag", '<a href="x'],
    ["an open comment", "<!-- "],
    ["an open script", "<script>alert(1)"],
  ])("%s", (_, html) => {
    expect(() => tagsOf(`\n${html}`)).toThrow(PageFault);
    try {
      tagsOf(`\n${html}`);
    } catch (error) {
      expect(error).toMatchObject({ line: 2 });
    }
  });
});

test("reads back every address and text that a layout may place", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme" }), fc.string(), (href, text) => {
      const page = renderToString(h("p", null, text, h("a", { href, title: text }, text)));
      const tags = tagsOf(page);
      expect(tags.map(({ name }) => name)).toEqual(["a"]);
      const link = tags[0];
      expect(link?.attributes.get("href")).toBe(href);
      expect(link?.attributes.get("title")).toBe(text);
    }),
    { numRuns: 300 },
  );
});
