import type { CalendarMonth } from "../model/calendar.ts";
import { type Seal, type SealedFile, type SealedMinutes, sealPath } from "../model/seal.ts";
import { digestOf } from "./digest.ts";
import type { Faults } from "./faults.ts";
import type { SourceFile } from "./source-file.ts";
import type { TextNode } from "./typed-tree.ts";

/** A seal as typed, with the places that faults point at. */
export interface TypedSeal {
  readonly seal: Seal;
  /** Where each file stands, by its path. */
  readonly spans: ReadonlyMap<string, Seal["span"]>;
  readonly previousSpan: Seal["span"];
  readonly designation: TextNode;
  readonly serial: TextNode;
}

const month = String.raw`\d{4}-(?:0[1-9]|1[0-2])`;
const minutes = /^(\d{1,9}) minutes of building, (\d{1,9}) of study and shop$/;

/** The lines before the digests: what stands behind `# ` and a colon, and how it looks. */
const heads = [
  ["seal", new RegExp(`^${month}$`)],
  ["designation", /^.*$/],
  ["serial", /^.*$/],
  ["program", /^Witness Mark \S+$/],
  ["previous", new RegExp(`^(none|${month} [0-9a-f]{64})$`)],
  ["in the month", minutes],
  ["to date", minutes],
  ["check", /^sha256sum -c \S+$/],
] as const;

/**
 * Reads a seal, byte for byte in the form it was written in: nothing else is a seal.
 * @param bytes Of the file; its digest is what the next seal names.
 * @returns `undefined` with the fault `not-a-seal`.
 */
export function readSeal(
  source: SourceFile,
  bytes: Uint8Array,
  faults: Faults,
): TypedSeal | undefined {
  const lines = source.text.split("\n");
  let at = 0;
  const refuse = (line: string, what: string): undefined =>
    faults.add("not-a-seal", source.span(at, Math.max(1, line.length)), {
      message: what,
      help: ["a seal is never edited: put back the file as it was written, from a copy"],
    });

  const values = new Map<string, { text: string; span: Seal["span"] }>();
  for (const [index, [name, form]] of heads.entries()) {
    const line = lines[index] ?? "";
    const start = `# ${name}: `;
    const value = line.slice(start.length);
    if (!line.startsWith(start) || !form.test(value)) {
      return refuse(line, `line ${index + 1} of a seal is \`# ${name}: …\`, and this is not`);
    }
    values.set(name, { text: value, span: source.span(at + start.length, value.length) });
    at += line.length + 1;
  }

  const spans = new Map<string, Seal["span"]>();
  const files: SealedFile[] = [];
  for (const line of lines.slice(heads.length, -1)) {
    const [, digest, path] = /^([0-9a-f]{64}) {2}((?:days|photos)\/.+)$/.exec(line) ?? [];
    if (digest === undefined || path === undefined || spans.has(path)) {
      return refuse(line, "a seal ends in digests and files, each file once, and this is none");
    }
    files.push({ path, digest });
    spans.set(path, source.span(at, line.length));
    at += line.length + 1;
  }
  if (lines.at(-1) !== "" || files.length === 0) {
    return refuse(lines.at(-1) ?? "", "the seal is cut short");
  }

  const value = (name: (typeof heads)[number][0]) => values.get(name)?.text ?? "";
  const spanOf = (name: (typeof heads)[number][0]) => values.get(name)?.span ?? source.span(0, 1);
  const nodeOf = (name: (typeof heads)[number][0]): TextNode => ({
    kind: "text",
    text: value(name),
    source: value(name),
    span: spanOf(name),
  });
  const [before, digest] = value("previous").split(" ");
  const seal: Seal = {
    month: value("seal"),
    designation: value("designation"),
    serial: value("serial"),
    version: value("program").replace(/^Witness Mark /, ""),
    ...(before === undefined || digest === undefined
      ? {}
      : { previous: { month: before, digest } }),
    inMonth: minutesIn(value("in the month")),
    toDate: minutesIn(value("to date")),
    entries: files.filter(({ path }) => path.startsWith("days/")),
    photos: files.filter(({ path }) => path.startsWith("photos/")),
    digest: digestOf(bytes),
    span: spanOf("seal"),
    minutesSpan: spanOf("in the month"),
  };
  return {
    seal,
    spans,
    previousSpan: spanOf("previous"),
    designation: nodeOf("designation"),
    serial: nodeOf("serial"),
  };
}

/** The month that a seal's file is named for; `undefined` when the name is not a seal's. */
export function monthOfSeal(path: string): CalendarMonth | undefined {
  const named = new RegExp(`(${month})\\.seal$`).exec(path)?.[1];
  return named !== undefined && sealPath(named) === path ? named : undefined;
}

function minutesIn(text: string): SealedMinutes {
  const [, build, apart] = minutes.exec(text) ?? [];
  return { build: Number(build), apart: Number(apart) };
}
