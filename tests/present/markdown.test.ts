import { describe, expect, test } from "vitest";
import { excerpt, isSafeLink, renderProse } from "../../src/present/markdown/render-prose.ts";

const render = (source: string) => renderProse(source, { idPrefix: "p-", topHeading: 2 }).html;

// Each tries to run something, load something or get out of the text.
const attacks = [
  "<script>alert(1)</script>",
  "<SCRIPT SRC=//evil.example/x.js></SCRIPT>",
  "<img src=x onerror=alert(1)>",
  "<svg/onload=alert(1)>",
  "<iframe src=javascript:alert(1)>",
  "<a href=javascript:alert(1)>x</a>",
  "<body onload=alert(1)>",
  "<style>@import '//evil.example/x.css'</style>",
  "<link rel=stylesheet href=//evil.example/x.css>",
  "<meta http-equiv=refresh content='0;url=//evil.example'>",
  "<base href=//evil.example/>",
  "<form action=//evil.example><button>x</button></form>",
  "<details open ontoggle=alert(1)>",
  "<math><mtext></form><form><mglyph><style></math><img src onerror=alert(1)>",
  "<!--><script>alert(1)</script>-->",
  "<div style='background:url(javascript:alert(1))'>",
  "[x](javascript:alert(1))",
  "[x](JaVaScRiPt:alert(1))",
  "[x](java&#115;cript:alert(1))",
  "[x](javascript&colon;alert(1))",
  "[x](&#x6A;avascript:alert(1))",
  "[x](java%0ascript:alert(1))",
  "[x](%6aavascript:alert(1))",
  "[x](<java\tscript:alert(1)>)",
  "[x](\u0001javascript:alert(1))",
  "[x](vbscript:msgbox(1))",
  "[x](data:text/html;base64,PHNjcmlwdD5hbGVydCgxKTwvc2NyaXB0Pg==)",
  "[x](file:///etc/passwd)",
  "[x](//evil.example/)",
  "[x](\\\\evil.example\\share)",
  "[x](/\\evil.example)",
  "[x](http:javascript:alert(1))",
  "[x]( javascript:alert(1) 'title')",
  '[x](https://a.example/"onmouseover="alert(1))',
  "[x]: javascript:alert(1)\n\n[x]",
  "<javascript:alert(1)>",
  "<https://a.example/'onmouseover='alert(1)>",
  "![x](javascript:alert(1))",
  "![x](https://evil.example/pixel.gif)",
  '![" onerror="alert(1)](x.jpg)',
  "```html\n<script>alert(1)</script>\n```",
  "`<img src=x onerror=alert(1)>`",
  "| a |\n|--:|\n| <img src=x onerror=alert(1)> |",
  "# <img src=x onerror=alert(1)>",
  '# x" onmouseover="alert(1)',
  "[__proto__]: https://a.example\n\n[__proto__]",
];

describe("nothing in prose runs or loads", () => {
  test.each(attacks)("%s", (attack) => {
    for (const { name, attributes } of tagsOf(render(attack))) {
      expect(harmless, `<${name}> in the output`).toContain(name);
      for (const [key, value] of attributes) {
        expect(["id", "href", "class", "scope", "role", "tabindex", "aria-label"]).toContain(key);
        if (key === "href") expect(value).toMatch(/^(https?:\/\/|mailto:|#|[\w.~%/-]+$)/);
      }
    }
  });

  test("at least forty ways were tried", () => {
    expect(attacks.length).toBeGreaterThanOrEqual(40);
  });
});

test.each([
  "https://journal.example/a?b=1#c",
  "http://journal.example",
  "mailto:ada@journal.example",
  "#rivets",
  "2026-03-13",
  "../../hours/index.html",
])("%s is a safe link", (url) => {
  expect(isSafeLink(url)).toBe(true);
});

describe("prose", () => {
  test("signs stay as typed", () => {
    expect(render(`6' and 3/32" (c) +-3 -- "so" {{ x }} ...`)).toBe(
      `<p>6' and 3/32&quot; (c) +-3 -- &quot;so&quot; {{ x }} ...</p>\n`,
    );
  });

  test("addresses are linked, part numbers that look like some are not", () => {
    expect(render("https://a.example and rib.no and AN470.AD and f@b.example")).toBe(
      '<p><a href="https://a.example">https://a.example</a> and rib.no and AN470.AD and f@b.example</p>\n',
    );
  });

  test("headings have prefixed ids of their own and leave no level out", () => {
    expect(render("# Rivets\n\n### Row A\n\n# Rivets\n\n# ...")).toBe(
      '<h2 id="p-rivets">Rivets</h2>\n<h3 id="p-row-a">Row A</h3>\n<h2 id="p-rivets-2">Rivets</h2>\n<h2 id="p-heading">...</h2>\n',
    );
  });

  test("tables scroll, and a column on the right is a class, not a style", () => {
    const html = render("| a | b |\n|---|--:|\n| 1 | 2 |");
    expect(html).toContain('<section class="scroll" aria-label="table" tabindex="0">');
    expect(html).toContain('<th scope="col" class="n">b</th>');
    expect(html).toContain('<td class="n">2</td>');
    expect(html).not.toContain("style");
  });

  test("a link to a date leads to that day's sheet, or is words alone", () => {
    const html = renderProse("[then](2026-03-13), [**not** shown](2026-03-12)", {
      idPrefix: "p-",
      topHeading: 2,
      dayHref: (date) => (date === "2026-03-13" ? "../13/index.html" : undefined),
    }).html;
    expect(html).toBe('<p><a href="../13/index.html">then</a>, <strong>not</strong> shown</p>\n');
  });

  test("one page's headings do not count on another", () => {
    expect(render("# A")).toBe(render("# A"));
  });
});

describe("an excerpt", () => {
  test("is plain words without headings", () => {
    expect(excerpt("# Head\n\nOne *two*\n`three`.\n\nFour.", 100)).toBe("One two three. Four.");
  });

  test("ends with a sentence when one is long enough", () => {
    expect(excerpt("The first sentence. The second is cut", 24)).toBe("The first sentence.");
  });

  test("ends between words otherwise", () => {
    expect(excerpt("one two three four", 12)).toBe("one two …");
  });

  test("of nothing is nothing", () => {
    expect(excerpt("\n", 10)).toBe("");
  });
});

describe("a fenced block that leads somewhere", () => {
  const source = "One.\n\n```layout\ntitle: A\n```\n\n- ```layout\n  title: B\n  ```\n";
  const linked = (line: number) =>
    line === 2 ? { text: 'Layout 1: <A> & "B"', href: "#layout-1" } : undefined;

  test("is a link in its place, its words escaped; others stay as typed", () => {
    const { html } = renderProse(source, { idPrefix: "p-", topHeading: 2, fenceLink: linked });
    expect(html).toContain(
      '<p><a href="#layout-1">Layout 1: &lt;A&gt; &amp; &quot;B&quot;</a></p>',
    );
    expect(html).not.toContain("title: A");
    expect(html).toContain("title: B");
  });

  test("is asked for only at the left margin", () => {
    const asked: number[] = [];
    renderProse(source, {
      idPrefix: "p-",
      topHeading: 2,
      fenceLink: (line) => {
        asked.push(line);
        return undefined;
      },
    });
    expect(asked).toEqual([2]);
  });

  test("is no part of an excerpt", () => {
    expect(excerpt(source, 80)).toBe("One.");
  });
});

const harmless =
  "p a h2 h3 h4 h5 h6 strong em s code pre ul ol li blockquote hr br section table thead tbody tr th td".split(
    " ",
  );

function tagsOf(html: string) {
  return [...html.matchAll(/<([a-z][\w-]*)((?:[^>"']|"[^"]*"|'[^']*')*)>/gi)].map(
    ([, name = "", rest = ""]) => ({
      name: name.toLowerCase(),
      attributes: [...rest.matchAll(/([\w:-]+)\s*=\s*"([^"]*)"/g)].map(
        ([, key = "", value = ""]) => [key.toLowerCase(), value] as const,
      ),
    }),
  );
}
