import path from "node:path";
import { type FoundFile, filesBelow, readBytesIfThere } from "./output.ts";
import { PageFault, type PageTag, tagsOf } from "./page-tags.ts";
import { type ContentKind, contentKind, pictureKinds } from "./photos/content-kind.ts";
import { hiddenMetadata } from "./published-bytes.ts";

/** Why something in the output may not be published. */
export type OutputProblemCode =
  | "hidden-metadata"
  | "broken-link"
  | "leaves-site"
  | "foreign-resource"
  | "weak-policy"
  | "inline-code"
  | "odd-file"
  | "unshown-picture"
  | "private-words"
  | "unreadable-page";

/** One fault of the output. */
export interface OutputProblem {
  readonly code: OutputProblemCode;
  /** From the site's root, with `/` between parts. */
  readonly file: string;
  /** From 1; absent for files that are not text. */
  readonly line?: number;
  /** Lower case, no full stop. */
  readonly message: string;
}

/** What `checkOutput` found. */
export interface OutputReport {
  /** By file, then line; empty for a site that may be published. */
  readonly problems: readonly OutputProblem[];
  readonly pages: number;
  readonly files: number;
}

/**
 * Checks a finished site before it replaces the present one.
 *
 * - No picture or video carries metadata (`hiddenMetadata`).
 * - Every link of every page, style sheet and drawing is page-relative, stays in the site and
 *   leads to a file, or to a folder with an `index.html`; its fragment exists there. Only
 *   `404.html`, which hosts show at any address, may link from the site's root (`/…`).
 * - Nothing is loaded from another origin. Links for the reader may lead anywhere by http,
 *   https or mailto.
 * - Every page states the content security policy before anything is loaded; no script or style
 *   is written into a page, except data as JSON-LD.
 * - Every photograph is shown or linked by a page in at least one size, and every share picture
 *   is named by one. One that is not was left out of the pages for a reason, such as being
 *   private.
 * - No links of the file system, and no two names that are one on Windows or macOS.
 *
 * @param folder The root of the site.
 * @param except Folders below it that are not looked at, such as an index that is still being
 *   written.
 * @param base Path of the site's root on its host, with its slashes, for links that begin there.
 * @throws MachineProblem when a file cannot be read.
 */
export async function checkOutput(
  folder: string,
  except: readonly string[] = [],
  base = "/",
): Promise<OutputReport> {
  const all = await filesBelow(folder);
  const found = all.filter((file) => !except.some((name) => file.path.startsWith(`${name}/`)));
  const site: Site = {
    files: new Set(found.map((file) => file.path)),
    anchors: new Map(),
    fromRoot: new Map(),
  };
  const problems: OutputProblem[] = [];
  const references: Reference[] = [];
  let pages = 0;
  let wasmPages = 0;

  const seen = new Map<string, string>();
  for await (const { path: file, kind, bytes } of readAhead(folder, found)) {
    const folded = file.normalize("NFC").toLowerCase();
    const twin = seen.get(folded);
    if (twin !== undefined) {
      problems.push(
        problem("odd-file", file, undefined, `is one file with \`${twin}\` on some systems`),
      );
    }
    seen.set(folded, file);
    if (kind !== "file") {
      problems.push(problem("odd-file", file, undefined, "is not an ordinary file"));
      continue;
    }
    if (bytes === undefined) continue;
    const extension = extensionOf(file);
    if (extension === ".html") {
      pages += 1;
      const tags = readTags(file, bytes, problems);
      if (tags === undefined) continue;
      site.anchors.set(file, anchorsOf(tags));
      references.push(...referencesOf(file, tags));
      problems.push(...inlineCode(file, tags));
      const policy = policyProblems(file, tags);
      problems.push(...policy.problems);
      if (policy.wasm) wasmPages += 1;
    } else if (extension === ".css") {
      references.push(...styleReferences(file, bytes.toString("utf8")));
    } else if (extension === ".svg") {
      const tags = readTags(file, bytes, problems);
      if (tags === undefined) continue;
      site.anchors.set(file, anchorsOf(tags));
      references.push(...referencesOf(file, tags));
      problems.push(...inlineCode(file, tags).filter(({ message }) => message.includes("script")));
    } else if (isMedia(contentKind(bytes)) || mediaExtensions.has(extension)) {
      for (const mark of hiddenMetadata(bytes)) {
        problems.push(problem("hidden-metadata", file, undefined, `carries metadata: \`${mark}\``));
      }
    }
  }
  if (wasmPages > 1) {
    problems.push(
      problem(
        "weak-policy",
        "",
        undefined,
        `${wasmPages} pages allow \`wasm-unsafe-eval\`; only the search page needs it`,
      ),
    );
  }
  const shown = new Set<string>();
  for (const reference of references) {
    const end = follow(reference, site, base);
    if (typeof end === "string") shown.add(pictureOf(end));
    else if (end) problems.push(problem(end.code, reference.file, reference.line, end.message));
  }
  for (const { path: file } of found) {
    if (!/^(photos|share)\//.test(file) || shown.has(pictureOf(file))) continue;
    problems.push(
      problem("unshown-picture", file, undefined, "is published, but no page shows it"),
    );
  }
  problems.sort(byFile);
  return { problems, pages, files: found.length };
}

/** One line for the terminal: `file:line: error[code]: message`. */
export function outputProblemText({ code, file, line, message }: OutputProblem): string {
  const place = [file === "" ? "site" : file, ...(line === undefined ? [] : [line])].join(":");
  return `${place}: error[${code}]: ${message}`;
}

interface Site {
  readonly files: ReadonlySet<string>;
  /** Ids by page. */
  readonly anchors: Map<string, ReadonlySet<string>>;
  /** Files by what is left of a good address that climbs to the root, such as `assets/a.css`. */
  readonly fromRoot: Map<string, string>;
}

interface Reference {
  readonly file: string;
  readonly line: number;
  /**
   * A resource is fetched with the page; a link only when the reader follows it. What is shared
   * is named by the site's whole address and has to be in the site.
   */
  readonly kind: "resource" | "link" | "shared";
  readonly url: string;
}

const mediaExtensions = new Set([
  ".jpg",
  ".jpeg",
  ".png",
  ".webp",
  ".avif",
  ".gif",
  ".tif",
  ".tiff",
  ".heic",
  ".mp4",
  ".m4v",
  ".mov",
  ".webm",
]);
const textWithoutLinks = new Set([".js", ".json", ".xml", ".txt", ".csv", ".pdf", ".woff2"]);

function extensionOf(file: string): string {
  return path.posix.extname(file).toLowerCase();
}

/** Each file in its order, with its bytes where they are checked; a few are read at once. */
async function* readAhead(folder: string, found: readonly FoundFile[]) {
  const atOnce = 32;
  for (let at = 0; at < found.length; at += atOnce) {
    const some = found.slice(at, at + atOnce).map(async (file) => {
      const isChecked = file.kind === "file" && !textWithoutLinks.has(extensionOf(file.path));
      const bytes = isChecked ? await readBytesIfThere(path.join(folder, file.path)) : undefined;
      return { ...file, bytes };
    });
    yield* await Promise.all(some);
  }
}

function isMedia(kind: ContentKind): boolean {
  return kind === "video" || pictureKinds.some((picture) => picture === kind);
}

function readTags(file: string, bytes: Buffer, problems: OutputProblem[]): PageTag[] | undefined {
  try {
    return tagsOf(bytes.toString("utf8"));
  } catch (error) {
    if (!(error instanceof PageFault)) throw error;
    problems.push(problem("unreadable-page", file, error.line, error.message));
    return undefined;
  }
}

function anchorsOf(tags: readonly PageTag[]): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { name, attributes } of tags) {
    const id = attributes.get("id") ?? (name === "a" ? attributes.get("name") : undefined);
    if (id !== undefined) ids.add(id);
  }
  return ids;
}

// Relations that only name a page; every other one makes a browser fetch or connect.
const namingRelations = new Set([
  "alternate",
  "author",
  "canonical",
  "help",
  "license",
  "me",
  "next",
  "prev",
  "search",
  "up",
]);

// Plain loops and one list: this runs over every tag of a site of thousands of pages.
function referencesOf(file: string, tags: readonly PageTag[]): Reference[] {
  const references: Reference[] = [];
  for (const { name, attributes, line } of tags) {
    if (attributes.size === 0) continue;
    const href = attributes.get("href") ?? attributes.get("xlink:href");
    if (href !== undefined) {
      references.push({ file, line, kind: kindOfHref(name, attributes), url: href.trim() });
    }
    for (const url of fetchedBy(name, attributes)) {
      references.push({ file, line, kind: "resource", url: url.trim() });
    }
    if (name === "meta" && attributes.get("property") === "og:image") {
      references.push({ file, line, kind: "shared", url: attributes.get("content") ?? "" });
    }
    for (const url of followedFrom(name, attributes)) {
      references.push({ file, line, kind: "link", url: url.trim() });
    }
  }
  return references;
}

function kindOfHref(name: string, attributes: PageTag["attributes"]): Reference["kind"] {
  if (name === "a" || name === "area") return "link";
  if (name !== "link") return "resource";
  const relations = (attributes.get("rel") ?? "").toLowerCase().split(/\s+/);
  return relations.every((relation) => namingRelations.has(relation)) ? "link" : "resource";
}

function fetchedBy(name: string, attributes: PageTag["attributes"]): string[] {
  const urls: string[] = [];
  for (const key of ["src", "poster", "data", "background"]) {
    const url = attributes.get(key);
    if (url !== undefined && (key !== "data" || name === "object")) urls.push(url);
  }
  for (const key of ["srcset", "imagesrcset"]) {
    const set = attributes.get(key);
    if (set === undefined) continue;
    for (const candidate of set.split(",")) {
      const url = candidate.trim().split(/\s+/)[0];
      if (url) urls.push(url);
    }
  }
  return urls;
}

function followedFrom(name: string, attributes: PageTag["attributes"]): string[] {
  const urls: string[] = [];
  for (const key of ["action", "formaction"]) {
    const url = attributes.get(key);
    if (url !== undefined) urls.push(url);
  }
  if (name === "meta" && attributes.get("http-equiv")?.toLowerCase() === "refresh") {
    const url = /url\s*=\s*['"]?([^'"]*)/i.exec(attributes.get("content") ?? "")?.[1];
    if (url !== undefined) urls.push(url);
  }
  return urls;
}

function styleReferences(file: string, css: string): Reference[] {
  const blank = css.replace(/\/\*[\s\S]*?\*\//g, (comment) => comment.replace(/[^\n]/g, " "));
  const pattern =
    /url\(\s*(?:"([^"]*)"|'([^']*)'|([^)'"\s]*))\s*\)|@import\s+(?:"([^"]*)"|'([^']*)')/gi;
  return [...blank.matchAll(pattern)].map((match) => ({
    file,
    line: blank.slice(0, match.index).split("\n").length,
    kind: "resource" as const,
    url: match.slice(1).find((part) => part !== undefined) ?? "",
  }));
}

type Fault = Pick<OutputProblem, "code" | "message">;

// What stands around every sheet leads to the same files, by way of the root: looked up once.
function follow(reference: Reference, site: Site, base: string): string | Fault | undefined {
  const { file, url } = reference;
  const rest = url.replace(climbing, "");
  const climbsToRoot = url.length - rest.length === 3 * (file.split("/").length - 1);
  const known = climbsToRoot ? site.fromRoot.get(rest) : undefined;
  if (known !== undefined) return known;
  const end = endOf(reference, site, base);
  if (climbsToRoot && rest !== "" && !rest.startsWith("#") && typeof end === "string") {
    site.fromRoot.set(rest, end);
  }
  return end;
}

const climbing = /^(?:\.\.\/)+/;

/** The file of this site that is meant, or what is wrong; undefined for one elsewhere. */
function endOf(
  { file, kind, url }: Reference,
  site: Site,
  base: string,
): string | Fault | undefined {
  if (kind === "shared") return followShared(url, site, base);
  const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(url)?.[1]?.toLowerCase();
  if (scheme !== undefined || url.startsWith("//") || url.includes("\\")) {
    if (kind === "resource") {
      return { code: "foreign-resource", message: `loads \`${short(url)}\` from outside the site` };
    }
    if (scheme !== undefined && ["http", "https", "mailto"].includes(scheme)) return undefined;
    return { code: "leaves-site", message: `\`${short(url)}\` is not a link that is allowed` };
  }

  const [, location = "", fragment] = /^([^?#]*)(?:\?[^#]*)?(?:#(.*))?$/s.exec(url) ?? [];
  const rooted = location.startsWith("/");
  if (rooted && file !== "404.html") {
    return { code: "leaves-site", message: `\`${url}\` does not start at the page itself` };
  }
  if (location === "" && fragment === undefined && kind === "resource") {
    return { code: "broken-link", message: "an address is empty" };
  }
  if (rooted && !location.startsWith(base)) {
    return { code: "leaves-site", message: `\`${url}\` does not start at \`${base}\`` };
  }
  const steps = decoded(rooted ? location.slice(base.length - 1) : location);
  const wanted = decoded(fragment ?? "");
  if (steps === undefined || wanted === undefined) {
    return { code: "broken-link", message: `\`${url}\` is not a valid address` };
  }

  const parts = rooted || location === "" ? [] : file.split("/").slice(0, -1);
  for (const step of steps.split("/")) {
    if (step === "..") {
      if (parts.pop() === undefined) {
        return { code: "leaves-site", message: `\`${url}\` climbs out of the site` };
      }
    } else if (step !== "." && step !== "") parts.push(step);
  }
  const target = parts.join("/");
  const isFolder = location === "" ? false : /(^|\/)\.{0,2}$/.test(steps);
  const page = location === "" ? file : isFolder ? [...parts, "index.html"].join("/") : target;
  if (!site.files.has(page)) {
    const folderPage = target === "" ? "index.html" : `${target}/index.html`;
    return site.files.has(folderPage)
      ? { code: "broken-link", message: `\`${url}\` lacks its closing \`/\`` }
      : { code: "broken-link", message: `\`${url}\` leads to nothing` };
  }
  const anchors = site.anchors.get(page);
  if (wanted !== "" && wanted !== "top" && anchors !== undefined && !anchors.has(wanted)) {
    return { code: "broken-link", message: `\`${url}\` leads to a place that \`${page}\` lacks` };
  }
  return page;
}

function followShared(url: string, site: Site, base: string): string | Fault {
  const address = URL.canParse(url) ? new URL(url) : undefined;
  if (address === undefined || !/^https?:$/.test(address.protocol)) {
    return { code: "broken-link", message: `\`${short(url)}\` is not a whole address` };
  }
  const target = decoded(address.pathname)?.slice(base.length) ?? "";
  if (address.pathname.startsWith(base) && site.files.has(target)) return target;
  return { code: "broken-link", message: `\`${short(url)}\` leads to nothing` };
}

/** The sizes of one photograph differ only in width and format: `photos/1f2e-800.avif`. */
function pictureOf(file: string): string {
  return file.replace(/-\d+\.[a-z]+$/, "");
}

const loadingTags = new Set([
  "link",
  "script",
  "style",
  "img",
  "source",
  "video",
  "audio",
  "iframe",
  "object",
  "embed",
  "body",
]);

function policyProblems(
  file: string,
  tags: readonly PageTag[],
): { problems: OutputProblem[]; wasm: boolean } {
  const firstLoad = tags.findIndex(
    ({ name, attributes }) =>
      loadingTags.has(name) && !(name === "link" && attributes.get("rel") === "canonical"),
  );
  const at = tags.findIndex(
    ({ name, attributes }) =>
      name === "meta" && attributes.get("http-equiv")?.toLowerCase() === "content-security-policy",
  );
  const meta = tags[at];
  if (meta === undefined) {
    return {
      problems: [problem("weak-policy", file, undefined, "has no content security policy")],
      wasm: false,
    };
  }
  const problems: OutputProblem[] = [];
  const add = (message: string): void => {
    problems.push(problem("weak-policy", file, meta.line, message));
  };
  if (firstLoad !== -1 && firstLoad < at) add("the content security policy stands too late");

  const directives = new Map<string, string[]>();
  for (const part of (meta.attributes.get("content") ?? "").split(";")) {
    const [name, ...sources] = part.trim().toLowerCase().split(/\s+/);
    if (name && !directives.has(name)) directives.set(name, sources);
  }
  for (const name of ["default-src", "base-uri", "form-action"]) {
    if (directives.get(name)?.join(" ") !== "'none'") add(`\`${name}\` is not \`'none'\``);
  }
  let wasm = false;
  for (const [name, sources] of directives) {
    for (const source of sources) {
      if (name === "script-src" && source === "'wasm-unsafe-eval'") wasm = true;
      else if (source !== "'self'" && source !== "'none'") add(`\`${name}\` allows \`${source}\``);
    }
  }
  return { problems, wasm };
}

function inlineCode(file: string, tags: readonly PageTag[]): OutputProblem[] {
  const problems: OutputProblem[] = [];
  for (const tag of tags) {
    for (const message of codeIn(tag)) {
      problems.push(problem("inline-code", file, tag.line, message));
    }
  }
  return problems;
}

function codeIn({ name, attributes }: PageTag): string[] {
  const found: string[] = [];
  if (name === "style") found.push("a style sheet is written into the page");
  if (name === "base") found.push("`base` changes where links lead");
  if (name === "script" && !attributes.has("src")) {
    const isData = attributes.get("type") === "application/ld+json";
    if (!isData) found.push("a script is written into the page");
  }
  for (const key of attributes.keys()) {
    if (key === "style") found.push(`\`${name}\` has a \`style\` attribute`);
    if (key.startsWith("on")) found.push(`\`${name}\` has the script attribute \`${key}\``);
    if (key === "srcdoc") found.push(`\`${name}\` has a \`srcdoc\` attribute`);
  }
  return found;
}

function decoded(text: string): string | undefined {
  try {
    const result = decodeURIComponent(text);
    return result.includes("\0") || result.includes("\\") ? undefined : result;
  } catch {
    return undefined;
  }
}

function short(text: string): string {
  return text.length > 80 ? `${text.slice(0, 77)}…` : text;
}

function problem(
  code: OutputProblemCode,
  file: string,
  line: number | undefined,
  message: string,
): OutputProblem {
  return { code, file, ...(line === undefined ? {} : { line }), message };
}

function byFile(a: OutputProblem, b: OutputProblem): number {
  if (a.file !== b.file) return a.file < b.file ? -1 : 1;
  return (a.line ?? 0) - (b.line ?? 0);
}
