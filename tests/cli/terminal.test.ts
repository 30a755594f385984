// What is assumed of who reads: colours and lines that replace themselves are for people only.

import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { processTerminal } from "../../src/cli/terminal.ts";

const said = { out: "", err: "" };
const writer = (stream: "out" | "err") => (text: string) => {
  said[stream] += text;
};

function stand(
  streams: { readonly out?: boolean; readonly err?: boolean; readonly in?: boolean },
  env: Readonly<Record<string, string>>,
): void {
  vi.stubGlobal("process", {
    ...{ argv: process.argv, exitCode: undefined },
    env,
    stdin: { isTTY: streams.in },
    stdout: { isTTY: streams.out, write: writer("out") },
    stderr: { isTTY: streams.err, columns: 40, write: writer("err") },
  });
}

beforeEach(() => {
  said.out = "";
  said.err = "";
});
afterEach(() => vi.unstubAllGlobals());

const xterm = { TERM: "xterm-256color" };
const watched = { out: true, err: true, in: true };

describe("colours", () => {
  test.each([
    ["on a terminal", watched, xterm, [], true],
    ["in a pipe", { err: true, in: true }, xterm, [], false],
    ["with NO_COLOR", watched, { ...xterm, NO_COLOR: "1" }, [], false],
    ["with an empty NO_COLOR, which says nothing", watched, { ...xterm, NO_COLOR: "" }, [], true],
    ["with TERM=dumb", watched, { TERM: "dumb" }, [], false],
    ["with --no-color", watched, xterm, ["--no-color"], false],
    ["in a pipe with FORCE_COLOR", { err: true }, { ...xterm, FORCE_COLOR: "1" }, [], false],
  ])("%s", (_where, streams, env, flags, coloured) => {
    stand(streams, env);
    const { paint } = processTerminal(flags);
    const parts = ["error", "finding", "place", "frame", "caret", "note", "help"] as const;
    for (const part of parts) expect(paint(part, "x") !== "x").toBe(coloured);
  });
});

describe("somebody can be asked", () => {
  test.each([
    [watched, xterm, true],
    [{ out: true, err: true }, xterm, false],
    [{ err: true, in: true }, xterm, false],
    [watched, { TERM: "dumb" }, false],
  ])("%j %j", (streams, env, interactive) => {
    stand(streams, env);
    expect(processTerminal([]).interactive).toBe(interactive);
  });
});

describe("progress", () => {
  test("is a line that replaces itself, no wider than the terminal, and is gone before a word", () => {
    stand(watched, xterm);
    const terminal = processTerminal([]);
    terminal.progress("photographs 1 of 185: a name that goes on and on");
    terminal.out("done");
    terminal.err("really");
    expect(said.err).toBe("\r\u001b[Kphotographs 1 of 185: a name that goes \r\u001b[Kreally\n");
    expect(said.out).toBe("done\n");
  });

  test.each([
    ["where nobody watches", { out: true }, xterm],
    ["on a dumb terminal", watched, { TERM: "dumb" }],
  ])("is not written %s", (_where, streams, env) => {
    stand(streams, env);
    const terminal = processTerminal([]);
    terminal.progress("photographs 1 of 185");
    terminal.err("done");
    expect(said.err).toBe("done\n");
  });
});
