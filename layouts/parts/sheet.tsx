import type { ComponentChildren } from "preact";
import type { Page } from "../../src/present/pages/page.ts";
import type { Shell } from "../../src/present/pages/site.ts";
import { Dimension } from "./dimension.tsx";
import { Figure } from "./figure.tsx";
import { patterns, stillOf, zones } from "./still.tsx";
import { Words } from "./words.tsx";

const policy = (scripts: string) =>
  `default-src 'none'; img-src 'self'; style-src 'self'; font-src 'self'; media-src 'self'; script-src ${scripts}; connect-src 'self'; base-uri 'none'; form-action 'none'`;

// Tabs and lists of results cut off what is longer; the sheet's own title is what has to be seen.
const longestTab = 66;

/** A whole document: head, index of sheets, the sheet itself, its title block. */
export function Sheet({
  page,
  shell,
  children,
}: {
  page: Page<string>;
  shell: Shell;
  children?: ComponentChildren;
}) {
  const { root, title, url } = page;
  const home = page.kind === "home";
  const assets = `${root}assets/`;
  const share = page.share ?? shell.share;
  const place = shell.address === undefined ? undefined : `${shell.address}${url}`;
  return (
    <html lang="en">
      <head>
        <meta
          http-equiv="Content-Security-Policy"
          // The search page alone runs WebAssembly.
          content={policy(page.kind === "search" ? "'self' 'wasm-unsafe-eval'" : "'self'")}
        />
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="referrer" content="no-referrer" />
        <title>
          {home || title.length + shell.title.length > longestTab
            ? title
            : `${title} · ${shell.title}`}
        </title>
        <meta name="description" content={page.description} />
        {page.kind === "not found" && <meta name="robots" content="noindex" />}
        {place !== undefined && page.kind !== "not found" && (
          <>
            <link rel="canonical" href={place} />
            <meta property="og:type" content={page.kind === "day" ? "article" : "website"} />
            <meta property="og:site_name" content={shell.title} />
            <meta property="og:title" content={title} />
            <meta property="og:description" content={page.description} />
            <meta property="og:url" content={place} />
            {share !== undefined && (
              <>
                <meta property="og:image" content={`${shell.address}${share.url}`} />
                <meta property="og:image:type" content="image/jpeg" />
                <meta property="og:image:width" content="1200" />
                <meta property="og:image:height" content="630" />
                <meta property="og:image:alt" content={share.alt} />
              </>
            )}
          </>
        )}
        <link rel="stylesheet" href={`${assets}tokens.css`} />
        <link rel="stylesheet" href={`${assets}sheet.css`} />
        {page.styles?.map((name) => (
          <link rel="stylesheet" href={`${assets}${name}`} />
        ))}
        <link rel="icon" href={`${assets}mark.svg`} type="image/svg+xml" />
        {page.feed && (
          <>
            <link
              rel="alternate"
              type="application/atom+xml"
              title={page.feed.title}
              href="feed.xml"
            />
            <link
              rel="alternate"
              type="application/feed+json"
              title={page.feed.title}
              href="feed.json"
            />
          </>
        )}
        <link
          rel="alternate"
          type="application/atom+xml"
          title={shell.title}
          href={`${root}feed.xml`}
        />
        <link
          rel="alternate"
          type="application/feed+json"
          title={shell.title}
          href={`${root}feed.json`}
        />
        {page.structured !== undefined && (
          <script
            type="application/ld+json"
            dangerouslySetInnerHTML={{ __html: page.structured }}
          />
        )}
        {page.script !== undefined && <script defer src={`${assets}${page.script}`} />}
      </head>
      <body>
        <a class="skip" href="#main">
          Skip to the sheet
        </a>
        <svg
          class="defs"
          width="0"
          height="0"
          aria-hidden="true"
          dangerouslySetInnerHTML={patterns}
        />
        <div class="trim">
          <div class="zones" aria-hidden="true" dangerouslySetInnerHTML={zones} />
          <div class="frame">
            <header class="top" dangerouslySetInnerHTML={topOf(page, shell)} />
            <main id="main" {...indexed(page)}>
              <div class="head">
                {page.over.length > 0 && (
                  <p class="over" data-pagefind-ignore>
                    {page.over.map((each) => (
                      <span>
                        <Words of={each} />
                      </span>
                    ))}
                  </p>
                )}
                <h1>{title}</h1>
                {page.dimension && <Dimension of={page.dimension} />}
              </div>
              {children}
              <Search page={page} />
            </main>
            {(page.turn?.previous || page.turn?.next) && (
              <nav class="turn" aria-label="sheets before and after">
                {page.turn.previous && (
                  <p>
                    <small>before</small>
                    <a rel="prev" href={page.turn.previous.href}>
                      {page.turn.previous.text}
                    </a>
                  </p>
                )}
                {page.turn.next && (
                  <p>
                    <small>after</small>
                    <a rel="next" href={page.turn.next.href}>
                      {page.turn.next.text}
                    </a>
                  </p>
                )}
              </nav>
            )}
            <footer>
              <div class="notes" dangerouslySetInnerHTML={notesOf(page, shell)} />
              <dl class="block">
                <div class="what">
                  <dt>{shell.title}</dt>
                  <dd>{page.block.title}</dd>
                </div>
                {page.block.cells.map(({ label, value, sum }) => (
                  <div>
                    <dt>{label}</dt>
                    <dd>
                      <Figure text={value} sum={sum} />
                    </dd>
                  </div>
                ))}
                <div class="number">
                  <dt>{shell.edition} edition</dt>
                  <dd>{page.block.number}</dd>
                </div>
              </dl>
            </footer>
          </div>
        </div>
      </body>
    </html>
  );
}

function topOf({ root, part, kind }: Page<string>, shell: Shell) {
  const home = kind === "home";
  return stillOf(shell, `top ${root} ${part} ${home}`, () => (
    <>
      <p>
        <a href={`${root}index.html`}>{shell.title}</a>
        <span>
          {shell.designation} serial {shell.serial}
        </span>
      </p>
      <nav aria-label="index of sheets">
        <ul>
          {shell.nav.map(({ part: each, text, url }) => (
            <li>
              <a href={`${root}${url}`} aria-current={currency(each === part, home)}>
                {text}
              </a>
            </li>
          ))}
        </ul>
      </nav>
    </>
  ));
}

function notesOf({ root }: Page<string>, shell: Shell) {
  return stillOf(shell, `notes ${root}`, () => (
    <>
      <p>{shell.caution}</p>
      <p>{shell.editionNote}</p>
      <ul>
        {shell.foot.map(({ text, url }) => (
          <li>
            <a href={`${root}${url}`}>{text}</a>
          </li>
        ))}
        <li>
          <a href={`${root}feed.xml`}>Atom feed</a>
        </li>
      </ul>
    </>
  ));
}

function currency(current: boolean, home: boolean): "page" | "true" | undefined {
  if (!current) return undefined;
  return home ? "page" : "true";
}

function indexed({ search }: Page<string>): Record<string, string> {
  return search ? { "data-pagefind-body": "" } : { "data-pagefind-ignore": "all" };
}

/** What the search index is told beside the words of the page. */
function Search({ page: { search } }: { page: Page<string> }) {
  if (!search) return null;
  const { meta, sort, filters } = search;
  return (
    <div hidden>
      {filters.map(([name, value]) => (
        <span data-pagefind-filter={`${name}:${value}`} />
      ))}
      <span data-pagefind-meta={`title:${meta.title}`} />
      {meta.date !== undefined && <span data-pagefind-meta={`date:${meta.date}`} />}
      {meta.image !== undefined && <span data-pagefind-meta={`image:${meta.image}`} />}
      {meta.imageAlt !== undefined && <span data-pagefind-meta={`image_alt:${meta.imageAlt}`} />}
      {sort.date !== undefined && <span data-pagefind-sort={`date:${sort.date}`} />}
      {sort.hours !== undefined && <span data-pagefind-sort={`hours:${sort.hours}`} />}
    </div>
  );
}
