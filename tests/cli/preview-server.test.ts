import { mkdirSync, renameSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import http from "node:http";
import net from "node:net";
import { join } from "node:path";
import { beforeEach, describe, expect, onTestFinished, test } from "vitest";
import { type PreviewServer, startPreviewServer } from "../../src/cli/preview-server.ts";
import { addFiles, scratchFolder } from "../support/scratch-folder.ts";

interface Answer {
  readonly status: number;
  readonly headers: http.IncomingHttpHeaders;
  readonly body: string;
}

/** Asks with exactly this path and these headers; nothing is tidied on the way. */
function ask(
  { port }: PreviewServer,
  path: string,
  { method = "GET", host = `localhost:${port}`, at = "127.0.0.1", headers = {} } = {},
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const request = http.request(
      { port, host: at, path, method, headers: { ...headers, Host: host }, agent: false },
      (response) => {
        let body = "";
        response.setEncoding("utf8");
        response.on("data", (part: string) => {
          body += part;
        });
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
        );
      },
    );
    request.on("error", reject);
    request.end();
  });
}

const page = "<!doctype html><title>a</title><body><p>Day</p></body>";
let folder = "";
let server: PreviewServer;

beforeEach(async () => {
  folder = scratchFolder({
    "site/index.html": page,
    "site/2026/03/14/index.html": page,
    "site/empty/note.txt": "a note",
    "site/style.css": "p{}",
    "site/search.js": "1",
    "site/feed.xml": "<feed/>",
    "site/photos/a-480.avif": "pixels",
    "site/name with spaces ü.txt": "text",
    "site/.witness-site": "marker",
    "secret.txt": "secret",
  });
  symlinkSync(join(folder, "secret.txt"), join(folder, "site/link.txt"));
  symlinkSync(folder, join(folder, "site/out"));
  server = await startPreviewServer({ siteFolder: join(folder, "site"), port: 0 });
  onTestFinished(() => server.close());
});

describe("serves the site", () => {
  test.each([
    ["/", "text/html; charset=utf-8"],
    ["/2026/03/14/", "text/html; charset=utf-8"],
    ["/2026/03/14/index.html?x=1", "text/html; charset=utf-8"],
    ["/style.css", "text/css; charset=utf-8"],
    ["/search.js", "text/javascript; charset=utf-8"],
    ["/feed.xml", "application/xml; charset=utf-8"],
    ["/photos/a-480.avif", "image/avif"],
    ["/name%20with%20spaces%20%C3%BC.txt", "text/plain; charset=utf-8"],
  ])("%s as %s", async (path, type) => {
    const answer = await ask(server, path);
    expect([answer.status, answer.headers["content-type"]]).toEqual([200, type]);
    expect(answer.headers["x-content-type-options"]).toBe("nosniff");
    expect(answer.headers["cache-control"]).toBe("no-store");
  });

  test("under each of its own names, on both loopback addresses", async () => {
    const { port } = server;
    for (const host of [`localhost:${port}`, `127.0.0.1:${port}`, `LOCALHOST:${port}`]) {
      expect((await ask(server, "/", { host })).status).toBe(200);
    }
    if (await hasIpv6()) {
      expect((await ask(server, "/", { host: `[::1]:${port}`, at: "::1" })).status).toBe(200);
    }
    expect(server.address).toBe(`http://localhost:${port}/`);
  });

  test("HEAD without a body", async () => {
    const answer = await ask(server, "/style.css", { method: "HEAD" });
    expect([answer.status, answer.body, answer.headers["content-length"]]).toEqual([200, "", "3"]);
  });

  test("a folder only with its closing slash, and never a listing", async () => {
    const moved = await ask(server, "/2026/03/14");
    expect([moved.status, moved.headers.location]).toEqual([308, "./14/"]);
    expect((await ask(server, "/empty/")).status).toBe(404);
    expect((await ask(server, "/empty")).status).toBe(404);
  });

  test("its own error page when there is none to be had", async () => {
    const plain = await ask(server, "/gone/");
    expect([plain.status, plain.body]).toEqual([404, expect.stringContaining("no such page")]);
    addFiles(folder, { "site/404.html": "<body><p>Not in this journal</p></body>" });
    const own = await ask(server, "/gone/");
    expect([own.status, own.body]).toEqual([404, expect.stringContaining("Not in this journal")]);
  });
});

describe("answers nobody else", () => {
  test.each([
    "evil.example",
    "evil.example:PORT",
    "localhost",
    "localhost:1",
    "localhost.evil.example:PORT",
    "127.0.0.1.evil.example:PORT",
    "0.0.0.0:PORT",
    "[::]:PORT",
    "user@localhost:PORT",
  ])("Host: %s gets 403", async (name) => {
    const host = name.replace("PORT", String(server.port));
    const answer = await ask(server, "/", { host });
    expect(answer.status).toBe(403);
    expect(answer.body).not.toContain("Day");
    const script = await ask(server, "/.witness-preview/changes", { host });
    expect(script.status).toBe(403);
  });

  test.each(["", "Host:\r\n"])("a request whose Host is %j gets no page", async (line) => {
    const answer = await raw(server.port, `GET / HTTP/1.0\r\n${line}\r\n`);
    expect(answer).toMatch(/^HTTP\/1\.[01] (400|403) /);
  });

  test("no header lets another origin read", async () => {
    const { headers } = await ask(server, "/", { headers: { Origin: "https://evil.example" } });
    expect(Object.keys(headers).filter((name) => name.startsWith("access-control-"))).toEqual([]);
    expect(headers["cross-origin-resource-policy"]).toBe("same-origin");
  });

  test("only the loopback addresses are listened on", async () => {
    const { networkInterfaces } = await import("node:os");
    const outer = Object.values(networkInterfaces())
      .flat()
      .filter((found) => found?.family === "IPv4" && !found.internal)
      .map((found) => found?.address ?? "");
    for (const at of outer) {
      await expect(ask(server, "/", { at })).rejects.toMatchObject({ code: "ECONNREFUSED" });
    }
  });

  test.each(["POST", "PUT", "DELETE", "OPTIONS", "PATCH", "TRACE"])(
    "%s gets 405",
    async (method) => {
      const answer = await ask(server, "/", { method });
      expect([answer.status, answer.headers.allow]).toEqual([405, "GET, HEAD"]);
    },
  );
});

describe("nothing outside the site", () => {
  test.each([
    "/../secret.txt",
    "/2026/../../secret.txt",
    "/%2e%2e/secret.txt",
    "/%2E%2E%2Fsecret.txt",
    "/..%2fsecret.txt",
    "/..%5csecret.txt",
    "/..\\secret.txt",
    "/%252e%252e/secret.txt",
    "/link.txt",
    "/out/secret.txt",
    "//etc/hostname",
    "/2026//03/14/",
    "/secret.txt%00.html",
    "/%00",
    "/%zz",
    "/C:/secret.txt",
    "/style.css::$DATA",
    "/.witness-site",
    "/%2ewitness-site",
    "/./index.html",
  ])("%s", async (path) => {
    const answer = await ask(server, path);
    expect([400, 404]).toContain(answer.status);
    expect(answer.body).not.toMatch(/secret|marker/);
  });

  test("an address in the request's own line is not followed", async () => {
    const { port } = server;
    const answer = await raw(
      port,
      `GET http://evil.example/ HTTP/1.1\r\nHost: localhost:${port}\r\nConnection: close\r\n\r\n`,
    );
    expect(answer).toMatch(/^HTTP\/1\.1 400 /);
  });
});

describe("loading again after a change", () => {
  test("pages get one script of the server, the files stay as they are", async () => {
    const { body } = await ask(server, "/");
    expect(body).toBe(
      page.replace("</body>", '<script src="/.witness-preview/reload.js"></script></body>'),
    );
    const script = await ask(server, "/.witness-preview/reload.js");
    expect(script.headers["content-type"]).toBe("text/javascript; charset=utf-8");
    expect(script.body).toContain("EventSource");
    expect((await ask(server, "/style.css")).body).toBe("p{}");
  });

  test("an open page is told, once for each change", async () => {
    const stream = await new Promise<http.IncomingMessage>((resolve) => {
      http.get(`${server.address}.witness-preview/changes`, resolve);
    });
    expect(stream.headers["content-type"]).toMatch(/^text\/event-stream/);
    const events: string[] = [];
    stream.setEncoding("utf8");
    const told = new Promise<void>((resolve) => {
      stream.on("data", (text: string) => {
        events.push(...text.split("\n").filter((line) => line.startsWith("event:")));
        if (events.length === 2) resolve();
        else server.announceChange();
      });
    });
    await told;
    expect(events).toEqual(["event: change", "event: change"]);
    stream.destroy();
  });

  test("closing ends open streams too", async () => {
    const stream = await new Promise<http.IncomingMessage>((resolve) => {
      http.get(`${server.address}.witness-preview/changes`, resolve);
    });
    const ended = new Promise((resolve) => stream.once("close", resolve));
    stream.resume();
    await server.close();
    await ended;
    await expect(ask(server, "/")).rejects.toMatchObject({ code: "ECONNREFUSED" });
  });
});

test("before the first site: says so, and serves it as soon as it is there", async () => {
  rmSync(join(folder, "site"), { recursive: true });
  const before = await ask(server, "/");
  expect([before.status, before.body]).toEqual([
    503,
    expect.stringContaining("No site has been built"),
  ]);
  mkdirSync(join(folder, "site"));
  writeFileSync(join(folder, "site/index.html"), page);
  expect((await ask(server, "/")).status).toBe(200);
});

test("a request in the moment between old site and new waits for the new", async () => {
  renameSync(join(folder, "site"), join(folder, "site.prev"));
  const asked = ask(server, "/");
  await new Promise((resolve) => setTimeout(resolve, 60));
  renameSync(join(folder, "site.prev"), join(folder, "site"));
  expect((await asked).status).toBe(200);
});

test("a port in use makes way for a free one", async () => {
  const second = await startPreviewServer({
    siteFolder: join(folder, "site"),
    port: server.port,
  });
  onTestFinished(() => second.close());
  expect(second.port).not.toBe(server.port);
  expect((await ask(second, "/")).status).toBe(200);
});

function raw(port: number, text: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = net.connect(port, "127.0.0.1", () => socket.write(text));
    let answer = "";
    socket.on("data", (data) => {
      answer += data.toString("latin1");
    });
    socket.on("end", () => resolve(answer));
    socket.on("error", reject);
  });
}

function hasIpv6(): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = net.createServer();
    probe.once("error", () => resolve(false));
    probe.listen(0, "::1", () => probe.close(() => resolve(true)));
  });
}
