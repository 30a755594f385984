import { symlinkSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { checkOutput, outputProblemText } from "../../src/write/output-checks.ts";
import { scratchFolder } from "../support/scratch-folder.ts";
import { locatedJpeg, plainJpeg } from "../support/small-photos.ts";

const policy =
  "default-src 'none'; img-src 'self'; style-src 'self'; font-src 'self'; media-src 'self'; script-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'";

/** A page with this body; the policy and what follows it in the head may be replaced. */
function page(body: string, content = policy, head = ""): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${content}">${head}<title>A day</title></head>
<body>
${body}
</body></html>
`;
}

async function problems(files: Readonly<Record<string, string | Uint8Array>>): Promise<string[]> {
  return (await checkOutput(scratchFolder(files))).problems.map(outputProblemText);
}

const whole = {
  "index.html": page('<a href="2026/03/14/#rib">day</a> <a href=".">home</a> <a href="#">up</a>'),
  "2026/03/14/index.html": page('<h2 id="rib">Rib</h2><img src="../../../photos/a.jpg" alt="">'),
  "404.html": page('<a href="/">home</a>'),
  "style.css": "@font-face { src: url(fonts/a.woff2) }",
  "fonts/a.woff2": "",
  "photos/a.jpg": await plainJpeg(1),
};

test("a whole site has no problems", async () => {
  const report = await checkOutput(scratchFolder(whole));
  expect(report).toEqual({ problems: [], pages: 3, files: 6 });
});

describe("links", () => {
  test.each([
    ['<a href="2026/03/14/">', []],
    ['<a href="./2026/03/14/index.html?x=1">', []],
    ['<a href="2026/../style.css">', []],
    ['<a href="#top">', []],
    ['<a href="https://example.org/">', []],
    ['<a href="mailto:shop@example.org">', []],
    ['<link rel="canonical" href="https://example.org/">', []],
    ['<link rel="alternate" type="application/atom+xml" href="style.css">', []],
    ['<a href="gone/">', ["broken-link", "`gone/` leads to nothing"]],
    ['<a href="2026/03/14">', ["broken-link", "`2026/03/14` lacks its closing `/`"]],
    ['<a href="2026/">', ["broken-link", "`2026/` leads to nothing"]],
    ['<a href="Style.css">', ["broken-link", "`Style.css` leads to nothing"]],
    [
      '<a href="2026/03/14/#spar">',
      ["broken-link", "`2026/03/14/#spar` leads to a place that `2026/03/14/index.html` lacks"],
    ],
    ['<a href="#spar">', ["broken-link", "`#spar` leads to a place that `index.html` lacks"]],
    ['<a href="../">', ["leaves-site", "`../` climbs out of the site"]],
    [
      '<a href="2026/%2e%2e/%2e%2e/x">',
      ["leaves-site", "`2026/%2e%2e/%2e%2e/x` climbs out of the site"],
    ],
    [
      '<a href="/2026/03/14/">',
      ["leaves-site", "`/2026/03/14/` does not start at the page itself"],
    ],
    [
      '<a href="javascript:alert(1)">',
      ["leaves-site", "`javascript:alert(1)` is not a link that is allowed"],
    ],
    [
      '<a href="java&#x73;cript:alert(1)">',
      ["leaves-site", "`javascript:alert(1)` is not a link that is allowed"],
    ],
    [
      '<a href="data:text/html,x">',
      ["leaves-site", "`data:text/html,x` is not a link that is allowed"],
    ],
    [
      '<a href="//example.org/">',
      ["leaves-site", "`//example.org/` is not a link that is allowed"],
    ],
    [
      '<a href="\\\\example.org">',
      ["leaves-site", "`\\\\example.org` is not a link that is allowed"],
    ],
    ['<a href="%00">', ["broken-link", "`%00` is not a valid address"]],
    ['<a href="%zz">', ["broken-link", "`%zz` is not a valid address"]],
    ['<form action="gone/">', ["broken-link", "`gone/` leads to nothing"]],
  ])("%s", async (tag, [code, message]: readonly string[] | []) => {
    const found = await problems({ ...whole, "index.html": page(`<p>\n${tag}</p>`) });
    expect(found).toEqual(code === undefined ? [] : [`index.html:5: error[${code}]: ${message}`]);
  });
});

describe("what a page loads comes from the site", () => {
  test.each([
    ['<img src="https://example.org/a.jpg">', "https://example.org/a.jpg"],
    [
      '<img src="photos/a.jpg" srcset="photos/a.jpg 1x, //example.org/b.jpg 2x">',
      "//example.org/b.jpg",
    ],
    ['<script src="https://example.org/a.js"></script>', "https://example.org/a.js"],
    ['<link rel="stylesheet" href="https://example.org/a.css">', "https://example.org/a.css"],
    ['<link rel="preconnect" href="https://example.org">', "https://example.org"],
    [
      '<link rel="alternate stylesheet" href="https://example.org/a.css">',
      "https://example.org/a.css",
    ],
    ['<iframe src="https://example.org/"></iframe>', "https://example.org/"],
    ['<video poster="https://example.org/a.jpg"></video>', "https://example.org/a.jpg"],
    ['<object data="https://example.org/a.svg"></object>', "https://example.org/a.svg"],
    ['<svg><use xlink:href="https://example.org/a.svg#b"/></svg>', "https://example.org/a.svg#b"],
    ['<img src="data:image/png;base64,AA==">', "data:image/png;base64,AA=="],
  ])("%s", async (tag, url) => {
    expect(await problems({ ...whole, "index.html": page(tag) })).toEqual([
      `index.html:4: error[foreign-resource]: loads \`${url}\` from outside the site`,
    ]);
  });

  test("and is there", async () => {
    const found = await problems({
      ...whole,
      "index.html": page('<img src="photos/a.jpg" srcset="photos/a.jpg 1x, photos/b.jpg 2x">'),
      "style.css": '/* url(x.png) */\n@import "more.css"; a { background: url("https://e.org/x") }',
    });
    expect(found).toEqual([
      "index.html:4: error[broken-link]: `photos/b.jpg` leads to nothing",
      "style.css:2: error[broken-link]: `more.css` leads to nothing",
      "style.css:2: error[foreign-resource]: loads `https://e.org/x` from outside the site",
    ]);
  });
});

describe("the content security policy", () => {
  const withPolicy = (content: string) => problems({ "index.html": page("", content) });

  test("is missing", async () => {
    expect(await problems({ "index.html": "<!doctype html><title>x</title><p>x</p>" })).toEqual([
      "index.html: error[weak-policy]: has no content security policy",
    ]);
  });

  test("stands behind something that is loaded", async () => {
    const late = page("").replace("<meta charset", '<link rel="icon" href="i.svg"><meta charset');
    expect(await problems({ "index.html": late, "i.svg": "<svg/>" })).toEqual([
      "index.html:2: error[weak-policy]: the content security policy stands too late",
    ]);
  });

  test.each([
    [policy.replace("default-src 'none'; ", ""), "`default-src` is not `'none'`"],
    [policy.replace("base-uri 'none'", "base-uri 'self'"), "`base-uri` is not `'none'`"],
    [
      policy.replace("style-src 'self'", "style-src 'self' 'unsafe-inline'"),
      "`style-src` allows `'unsafe-inline'`",
    ],
    [policy.replace("img-src 'self'", "img-src *"), "`img-src` allows `*`"],
    [
      policy.replace("img-src 'self'", "img-src 'self' https://example.org"),
      "`img-src` allows `https://example.org`",
    ],
  ])("%s", async (content, message) => {
    expect(await withPolicy(content)).toEqual([`index.html:2: error[weak-policy]: ${message}`]);
  });

  test("allows compiled code on one page, the search page, and on no second", async () => {
    const search = page(
      "",
      policy.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"),
    );
    expect(await problems({ "search/index.html": search })).toEqual([]);
    expect(await problems({ "search/index.html": search, "index.html": search })).toEqual([
      "site: error[weak-policy]: 2 pages allow `wasm-unsafe-eval`; only the search page needs it",
    ]);
  });
});

describe("nothing is written into a page that belongs into a file", () => {
  test.each([
    ["<style>p{}</style>", "a style sheet is written into the page"],
    ["<script>1</script>", "a script is written into the page"],
    ['<script type="module">1</script>', "a script is written into the page"],
    ['<p style="color:red">', "`p` has a `style` attribute"],
    ['<svg><path d="M0 0" style="fill:red"/></svg>', "`path` has a `style` attribute"],
    ['<body onload="x()">', "`body` has the script attribute `onload`"],
    ['<base href="./">', "`base` changes where links lead"],
    ['<iframe srcdoc="x"></iframe>', "`iframe` has a `srcdoc` attribute"],
  ])("%s", async (tag, message) => {
    const found = await problems({ "index.html": page(tag) });
    expect(found).toContain(`index.html:4: error[inline-code]: ${message}`);
  });

  test("data about the page may", async () => {
    const data = '<script type="application/ld+json">{"@context":"https://schema.org"}</script>';
    expect(await problems({ "index.html": page(data) })).toEqual([]);
  });

  test("a drawing may carry its own colours but no script", async () => {
    expect(await problems({ "a.svg": "<svg><style>p{}</style><g style='x'/></svg>" })).toEqual([]);
    expect(await problems({ "a.svg": '<svg onload="x()"><script>1</script></svg>' })).toHaveLength(
      2,
    );
  });
});

test("a picture with metadata, whatever its name", async () => {
  const located = await locatedJpeg();
  expect(await problems({ "pictures/a.jpg": located, "icon.bin": located })).toEqual([
    ...["Exif", "GPS", "ns.adobe.com"].map(
      (mark) => `icon.bin: error[hidden-metadata]: carries metadata: \`${mark}\``,
    ),
    ...["Exif", "GPS", "ns.adobe.com"].map(
      (mark) => `pictures/a.jpg: error[hidden-metadata]: carries metadata: \`${mark}\``,
    ),
  ]);
});

test("a photograph that no page shows, as a private one", async () => {
  const jpeg = await plainJpeg(1);
  const photos = {
    "photos/aa-480.jpg": jpeg,
    "photos/aa-800.jpg": jpeg,
    "photos/bb-480.jpg": jpeg,
    "icons/own.jpg": jpeg,
  };
  const shown = page('<img src="photos/aa-480.jpg" alt="">');
  expect(await problems({ ...photos, "index.html": shown })).toEqual([
    "photos/bb-480.jpg: error[unshown-picture]: is published, but no page shows it",
  ]);
  const linked = page('<img src="photos/aa-480.jpg" alt=""><a href="photos/bb-480.jpg">b</a>');
  expect(await problems({ ...photos, "index.html": linked })).toEqual([]);
});

test("a text that speaks of GPS is not metadata", async () => {
  expect(await problems({ "index.html": page("<p>GPS antenna, Exif</p>") })).toEqual([]);
});

test("links of the file system, twins of one name, and pages that are not understood", async () => {
  const folder = scratchFolder({ "a.txt": "", "A.txt": "", "index.html": page("1 < 2") });
  symlinkSync("/etc/hostname", join(folder, "host"));
  expect((await checkOutput(folder)).problems.map(outputProblemText)).toEqual([
    "a.txt: error[odd-file]: is one file with `A.txt` on some systems",
    "host: error[odd-file]: is not an ordinary file",
    "index.html:4: error[unreadable-page]: a tag is not understood: < 2\n</body></html>\n",
  ]);
});

test("a picture that a page names where it is shared has to be in the site", async () => {
  const shares = (url: string) => ({
    ...whole,
    "share/march.jpg": whole["photos/a.jpg"],
    "about/index.html": page("", policy, `<meta property="og:image" content="${url}">`),
  });
  expect(await problems(shares("https://example.org/share/march.jpg"))).toEqual([]);
  const unshown = "share/march.jpg: error[unshown-picture]: is published, but no page shows it";
  expect(await problems(shares("https://example.org/share/april.jpg"))).toEqual([
    "about/index.html:2: error[broken-link]: `https://example.org/share/april.jpg` leads to nothing",
    unshown,
  ]);
  expect(await problems(shares("share/march.jpg"))).toEqual([
    "about/index.html:2: error[broken-link]: `share/march.jpg` is not a whole address",
    unshown,
  ]);
});
