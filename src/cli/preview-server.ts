import http from "node:http";
import path from "node:path";
import { MachineProblem, systemCode } from "../write/machine-problem.ts";
import { kindOf, readBytesIfThere, realPathOf } from "../write/output.ts";

/** What `startPreviewServer` serves. */
export interface PreviewServerOptions {
  /** The folder of the built site; it may be replaced, or missing for now. */
  readonly siteFolder: string;
  /** Tried first; a free one is taken when it is in use. 0 takes any. */
  readonly port: number;
}

/** A running preview. */
export interface PreviewServer {
  /** As a browser wants it: `http://localhost:4173/`. */
  readonly address: string;
  readonly port: number;
  /** Tells open pages that the site has changed; they load themselves again. */
  announceChange(): void;
  /** Stops at once, open connections included. */
  close(): Promise<void>;
}

/**
 * Serves a built site to this computer only.
 *
 * Listens on 127.0.0.1 and ::1; answers GET and HEAD; refuses every `Host` but its own names,
 * so that a page from elsewhere cannot reach it under another name. Sends no CORS headers,
 * lists no folders, and follows no path or link out of the site. Pages get one script from
 * this server, while they are served, that loads them again after a change; the files of the
 * site stay as they are.
 *
 * @throws MachineProblem when no port can be had.
 */
export async function startPreviewServer(options: PreviewServerOptions): Promise<PreviewServer> {
  const listeners = new Set<http.ServerResponse>();
  let port = 0;
  const handler: http.RequestListener = (request, response) => {
    answer(request, response, port, options.siteFolder, listeners).catch((error: unknown) => {
      const words = error instanceof Error ? error.message : String(error);
      if (response.headersSent) response.destroy();
      else sendText(response, 500, words, false);
    });
  };
  const servers = await listen(handler, options.port);
  port = servers.port;
  // A proxy or a sleeping computer would otherwise take a quiet stream for a dead one.
  const heartbeat = setInterval(() => {
    for (const listener of listeners) listener.write(": still here\n\n");
  }, 30_000);
  heartbeat.unref();
  return {
    address: `http://localhost:${port}/`,
    port,
    announceChange() {
      for (const listener of listeners) listener.write("event: change\ndata: \n\n");
    },
    async close() {
      clearInterval(heartbeat);
      for (const listener of listeners) listener.end();
      await Promise.all(
        servers.all.map(
          (server) =>
            new Promise<void>((resolve) => {
              server.close(() => resolve());
              server.closeAllConnections();
            }),
        ),
      );
    },
  };
}

const ownFolder = "/.witness-preview/";

// Kept apart from the page by being a file of this server: the page's policy allows it.
const reloadScript = `const changes = new EventSource("${ownFolder}changes");
changes.addEventListener("change", () => location.reload());
`;

async function answer(
  request: http.IncomingMessage,
  response: http.ServerResponse,
  port: number,
  siteFolder: string,
  listeners: Set<http.ServerResponse>,
): Promise<void> {
  if (!isOwnHost(request.headers.host, port)) {
    return sendText(response, 403, "This preview answers only under its own address.", false);
  }
  const headOnly = request.method === "HEAD";
  if (request.method !== "GET" && !headOnly) {
    response.setHeader("Allow", "GET, HEAD");
    return sendText(response, 405, "This preview can only be read.", headOnly);
  }
  const raw = (request.url ?? "").split("?")[0] ?? "";
  if (raw === `${ownFolder}reload.js`) {
    return send(response, 200, ".js", Buffer.from(reloadScript), headOnly);
  }
  if (raw === `${ownFolder}changes`) return openStream(request, response, listeners, headOnly);

  const steps = stepsOf(raw);
  if (steps === undefined) return sendText(response, 400, "No such address.", headOnly);
  const found = await findFile(siteFolder, steps);
  if (found === "folder") {
    // Relative, so that no address can turn it into a link to another host.
    const here = steps.at(-1) ?? "";
    response.setHeader("Location", `./${encodeURIComponent(here)}/`);
    return sendText(response, 308, "Moved.", headOnly);
  }
  if (found !== undefined) {
    const extension = path.extname(found.name).toLowerCase();
    const body = extension === ".html" ? withReload(found.bytes) : found.bytes;
    return send(response, 200, extension, body, headOnly);
  }
  const missing = await findFile(siteFolder, ["404.html"]);
  if (missing !== undefined && missing !== "folder") {
    return send(response, 404, ".html", withReload(missing.bytes), headOnly);
  }
  const noSite = (await kindOf(siteFolder)) === "absent";
  const words = noSite
    ? "No site has been built yet. The terminal says why; this page loads again when there is one."
    : "There is no such page.";
  send(response, noSite ? 503 : 404, ".html", Buffer.from(plainPage(words)), headOnly);
}

function isOwnHost(host: string | undefined, port: number): boolean {
  if (host === undefined) return false;
  const lower = host.toLowerCase();
  return ["localhost", "127.0.0.1", "[::1]"].some(
    (name) => lower === `${name}:${port}` || (port === 80 && lower === name),
  );
}

/**
 * The parts of a request's path, percent signs resolved; the last is "" for a folder.
 * Undefined for everything that could mean more than a plain path below the site.
 */
function stepsOf(raw: string): string[] | undefined {
  if (!raw.startsWith("/") || raw.startsWith("//")) return undefined;
  const steps: string[] = [];
  for (const part of raw.slice(1).split("/")) {
    let step: string;
    try {
      step = decodeURIComponent(part);
    } catch {
      return undefined;
    }
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is refused
    if (/[/\\:\u0000-\u001f]/.test(step) || step === ".." || step === ".") return undefined;
    // Files that begin with a dot are the program's own, such as the site's marker.
    if (step.startsWith(".") && step !== ".well-known") return undefined;
    steps.push(step);
  }
  if (steps.slice(0, -1).includes("")) return undefined;
  return steps;
}

type Found = { readonly bytes: Buffer; readonly name: string } | "folder" | undefined;

async function findFile(siteFolder: string, steps: readonly string[]): Promise<Found> {
  await whileSwapped(siteFolder);
  const wanted = steps.at(-1) === "" ? [...steps.slice(0, -1), "index.html"] : steps;
  const root = await realPathOf(siteFolder);
  const real = await realPathOf(path.join(siteFolder, ...wanted));
  if (root === undefined || real === undefined) return undefined;
  const relative = path.relative(root, real);
  if (relative.split(path.sep)[0] === ".." || path.isAbsolute(relative)) return undefined;
  const kind = await kindOf(real);
  if (kind === "folder") {
    return (await kindOf(path.join(real, "index.html"))) === "file" ? "folder" : undefined;
  }
  if (kind !== "file") return undefined;
  const bytes = await readBytesIfThere(real);
  return bytes === undefined ? undefined : { bytes, name: real };
}

// Between the two renames of a swap there is no site for a moment.
async function whileSwapped(siteFolder: string): Promise<void> {
  for (let tries = 0; tries < 20; tries += 1) {
    if ((await kindOf(siteFolder)) !== "absent") return;
    if ((await kindOf(`${siteFolder}.prev`)) === "absent") return;
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}

function withReload(page: Buffer): Buffer {
  const html = page.toString("utf8");
  const tag = `<script src="${ownFolder}reload.js"></script>`;
  const end = html.lastIndexOf("</body>");
  return Buffer.from(end === -1 ? html + tag : html.slice(0, end) + tag + html.slice(end));
}

function plainPage(words: string): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Preview</title></head><body><p>${words}</p><script src="${ownFolder}reload.js"></script></body></html>\n`;
}

function openStream(
  request: http.IncomingMessage,
  response: http.ServerResponse,
  listeners: Set<http.ServerResponse>,
  headOnly: boolean,
): void {
  setCommonHeaders(response);
  response.writeHead(200, { "Content-Type": "text/event-stream; charset=utf-8" });
  if (headOnly) {
    response.end();
    return;
  }
  response.write(": listening\n\n");
  listeners.add(response);
  request.on("close", () => listeners.delete(response));
}

const contentTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".xml": "application/xml; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".svg": "image/svg+xml",
  ".avif": "image/avif",
  ".jpg": "image/jpeg",
  ".png": "image/png",
  ".webp": "image/webp",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
  ".pdf": "application/pdf",
  ".mp4": "video/mp4",
  ".webm": "video/webm",
};

function setCommonHeaders(response: http.ServerResponse): void {
  response.setHeader("Cache-Control", "no-store");
  response.setHeader("X-Content-Type-Options", "nosniff");
  response.setHeader("Cross-Origin-Resource-Policy", "same-origin");
  response.setHeader("Referrer-Policy", "no-referrer");
  response.setHeader("X-Frame-Options", "DENY");
}

function send(
  response: http.ServerResponse,
  status: number,
  extension: string,
  body: Buffer,
  headOnly: boolean,
): void {
  setCommonHeaders(response);
  response.writeHead(status, {
    "Content-Type": contentTypes[extension] ?? "application/octet-stream",
    "Content-Length": body.length,
  });
  response.end(headOnly ? undefined : body);
}

function sendText(
  response: http.ServerResponse,
  status: number,
  words: string,
  headOnly: boolean,
): void {
  send(response, status, ".txt", Buffer.from(`${words}\n`), headOnly);
}

async function listen(
  handler: http.RequestListener,
  wanted: number,
): Promise<{ all: http.Server[]; port: number }> {
  // A port may be free on one of the two loopback addresses and in use on the other.
  const tries = wanted === 0 ? Array(10).fill(0) : [wanted, ...Array(10).fill(0)];
  for (const port of tries as number[]) {
    const four = await listenOn(handler, "127.0.0.1", port);
    if (four === "in use") continue;
    if (four === "absent") break;
    const taken = portOf(four);
    const six = await listenOn(handler, "::1", taken);
    if (six === "in use") {
      four.close();
      continue;
    }
    return { all: six === "absent" ? [four] : [four, six], port: taken };
  }
  throw new MachineProblem("in use", "no port could be had for the preview", [
    "name another one with `--port`",
  ]);
}

function listenOn(
  handler: http.RequestListener,
  host: string,
  port: number,
): Promise<http.Server | "in use" | "absent"> {
  return new Promise((resolve, reject) => {
    const server = http.createServer(handler);
    server.once("error", (error) => {
      const code = systemCode(error) ?? "";
      if (code === "EADDRINUSE" || code === "EACCES") resolve("in use");
      // A computer without IPv6 has no ::1.
      else if (code === "EADDRNOTAVAIL" || code === "EAFNOSUPPORT") resolve("absent");
      else reject(error);
    });
    server.listen({ host, port, exclusive: true, ipv6Only: host.includes(":") }, () =>
      resolve(server),
    );
  });
}

function portOf(server: http.Server): number {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no address");
  return address.port;
}
