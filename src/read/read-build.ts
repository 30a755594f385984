import type { Build, Omission, Registers } from "../model/build.ts";
import { type CalendarDate, isCalendarDate } from "../model/calendar.ts";
import { byPlace, type Diagnostic } from "../model/diagnostic.ts";
import type { Project } from "../model/project.ts";
import { amend, type DatedTree, isDraft } from "./amendments.ts";
import { dayShape } from "./day-schema.ts";
import { Faults } from "./faults.ts";
import { type FoundFile, filesBelow, hasFile, type JournalFolder, readText } from "./files.ts";
import { frontMatter } from "./front-matter.ts";
import { compareIdentity, compareRegister } from "./identity.ts";
import { joinDays, type ReadDay } from "./join-days.ts";
import { linkWords, PhotoFolder } from "./photo-folder.ts";
import { notPortable } from "./portable-name.ts";
import { readAlteration } from "./read-alteration.ts";
import { readBalance } from "./read-balance.ts";
import { readDay } from "./read-day.ts";
import { readHelp } from "./read-help.ts";
import type { ProseStretch } from "./read-layouts.ts";
import { type PortionFiles, readPortion } from "./read-portion.ts";
import { readProject, readRegisters } from "./registers.ts";
import { findAfterSeal, type PhotographReading, readSeals } from "./seals.ts";
import { SourceFile } from "./source-file.ts";
import type { MapNode } from "./typed-tree.ts";
import { yamlTree } from "./yaml-tree.ts";
import { ZoneClock } from "./zone-clock.ts";

/** What reading a journal gives. */
export interface ReadResult {
  /** Absent only when `project.yaml` cannot be read. With errors found, it may be incomplete. */
  readonly build?: Build;
  /** The clock of the project's zone; absent with `build`. */
  readonly zone?: ZoneClock;
  /** In order of place; reading finds errors only. */
  readonly diagnostics: readonly Diagnostic[];
}

/** An entry that is not on disk yet. */
export interface UnwrittenEntry {
  /** Below the journal's folder: `days/2026/2026-03-14.md`. */
  readonly path: string;
  readonly text: string;
}

/**
 * Reads a whole journal. Nothing that the builder typed throws: it becomes a diagnostic, and one
 * run reports all of them. Every file below `days` is read, or is listed in `build.omissions`.
 *
 * Sealed months are compared with their seals.
 *
 * @param drafts Entries to be read as if they had been written already.
 * @param photographs How much of the sealed photographs is read.
 */
export function readBuild(
  folder: JournalFolder,
  drafts: readonly UnwrittenEntry[] = [],
  photographs: PhotographReading = "bytes",
): ReadResult {
  const faults = new Faults();
  const trees: MapNode[] = [];
  const register = (name: string) => {
    const tree = readRegisterFile(folder, `${name}.yaml`, faults);
    if (tree) trees.push(tree);
    return tree;
  };
  const projectTree = register("project");
  const project = projectTree && readProject(projectTree, faults);
  const registers = readRegisters(
    {
      people: register("people"),
      assemblies: register("assemblies"),
      rules: register("rules"),
      instruments: register("instruments"),
      lots: register("lots"),
    },
    project?.drawings,
    faults,
  );
  if (!project) return { diagnostics: [...faults.found].sort(byPlace) };
  const zone = new ZoneClock(project.zone);
  const portionFiles = readPortionFiles(folder, project.basis, register, faults);
  const portion = readPortion(portionFiles, { basis: project.basis, registers }, faults);
  const helpTree = hasFile(folder, "help.yaml") ? register("help") : undefined;
  const tasks = portion?.tasks ?? new Map();
  const help = helpTree && readHelp(helpTree, { people: registers.people, tasks }, faults);
  const context = { project, registers, zone, photographs, tasks };
  const { days, omissions, seals } = readDays(folder, drafts, context, faults);
  const balanceTree = hasFile(folder, "balance.yaml") ? register("balance") : undefined;
  const entries = new Set(days.map(({ date }) => date));
  const balance = balanceTree && readBalance(balanceTree, registers, entries, faults);
  const alterationTree = hasFile(folder, "alteration.yaml") ? register("alteration") : undefined;
  const changes = new Map((balance?.changes ?? []).map((change) => [change.id, change]));
  const alteration =
    alterationTree &&
    readAlteration(
      alterationTree,
      { basis: project.basis, names: { ...registers, changes } },
      faults,
    );
  const identity = { project, people: registers.people };
  for (const tree of trees) compareRegister(tree, identity, faults);
  for (const { designation, serial } of seals) {
    compareIdentity({ designation, serial }, identity, faults);
  }
  return {
    build: {
      journal: folder.name,
      project,
      ...registers,
      ...(balance ? { balance } : {}),
      ...(portion ? { portion } : {}),
      ...(help ? { help } : {}),
      ...(alteration ? { alteration } : {}),
      days,
      seals: seals.map(({ seal }) => seal),
      omissions,
    },
    zone,
    diagnostics: [...faults.found].sort(byPlace),
  };
}

function readRegisterFile(
  folder: JournalFolder,
  name: string,
  faults: Faults,
): MapNode | undefined {
  const file = `${folder.name}/${name}`;
  if (!hasFile(folder, name)) {
    const nowhere = new SourceFile(file, "");
    return faults.add("missing-file", nowhere.span(0, 1), {
      message: `the journal has no \`${name}\``,
      help: ["copy it from the starter journal in `content/`, and change what it says"],
    });
  }
  const text = readText(`${folder.absolute}/${name}`);
  const source = new SourceFile(file, text);
  return yamlTree({ source, start: 0, end: text.length }, faults);
}

// The sheet and its list belong together: where one is, the other has to be.
function readPortionFiles(
  folder: JournalFolder,
  basis: Project["basis"],
  register: (name: string) => MapNode | undefined,
  faults: Faults,
): PortionFiles {
  const here = { sheet: hasFile(folder, "portion.yaml"), tasks: hasFile(folder, "tasks.csv") };
  const sheet = here.sheet ? register("portion") : undefined;
  const tasks = here.tasks
    ? new SourceFile(`${folder.name}/tasks.csv`, readText(`${folder.absolute}/tasks.csv`))
    : undefined;
  if (here.sheet !== here.tasks && basis !== "alteration") {
    const [has, lacks] = here.sheet ? ["portion.yaml", "tasks.csv"] : ["tasks.csv", "portion.yaml"];
    faults.add("missing-file", new SourceFile(`${folder.name}/${lacks}`, "").span(0, 1), {
      message: `the journal has \`${has}\` and no \`${lacks}\``,
      help: [
        here.sheet
          ? "put the list of tasks of your own kit there: `section,task_number,task` and one row for each task"
          : "write there which list it is and how its tasks are divided; the README shows one",
      ],
    });
  }
  return { sheet, tasks };
}

interface Context {
  readonly project: Project;
  readonly registers: Registers;
  readonly zone: ZoneClock;
  readonly photographs: PhotographReading;
  readonly tasks: ReadonlyMap<string, unknown>;
}

interface Entry extends DatedTree {
  readonly prose: string;
  readonly proseStretch: ProseStretch;
  readonly file: string;
}

function readDays(
  folder: JournalFolder,
  drafts: readonly UnwrittenEntry[],
  context: Context,
  faults: Faults,
) {
  const omissions: Omission[] = [];
  const photoFiles = filesBelow(folder, "photos");
  for (const file of photoFiles) checkName(folder, file, faults);
  const dayFiles = filesBelow(folder, "days");
  const { photographs } = context;
  const ground = { dayFiles, photoFiles, photographs };
  const { typed: seals, missingPhotos } = readSeals(folder, ground, faults);
  const photos = new PhotoFolder(photoFiles, missingPhotos);
  const videos = new PhotoFolder(filesBelow(folder, "videos"), new Set(), "videos");

  const entries = readEntries(folder, [...dayFiles, ...drafts.map(unwritten)], omissions, faults);
  findAfterSeal(
    seals,
    entries
      .filter(({ tree }) => !isDraft(tree))
      .map(({ date, file, tree }) => ({
        date,
        file: file.slice(folder.name.length + 1),
        place: tree.entries.get("date")?.value.span ?? tree.span,
      })),
    faults,
  );
  const { trees, amendments } = amend(entries, faults);
  const shape = dayShape(context.registers, context.project, context.tasks);
  const read: ReadDay[] = [];
  for (const [index, { tree }] of trees.entries()) {
    const entry = entries[index];
    const typed = shape(tree, faults);
    if (!entry || !typed) continue;
    const { date } = typed.date;
    if (date !== entry.date) {
      faults.add("date-differs-from-file-name", typed.date.node.span, {
        message: `the entry says ${date}, its file name says ${entry.date}`,
        help: [`write \`date: ${entry.date}\`, or rename the file to \`${date}.md\``],
      });
    }
    const carried = amendments.filter((amendment) => amendment.date === entry.date);
    const { prose, proseStretch, file } = entry;
    const dayFile = { typed, prose, proseStretch, file, amendments: carried };
    const result = readDay(dayFile, { ...context, photos, videos }, faults);
    if (typed.draft) omissions.push({ file: entry.file, why: "a draft (`draft: true`)" });
    else read.push(result);
  }
  read.sort((a, b) => (a.day.date < b.day.date ? -1 : 1));
  return {
    days: joinDays(read, context.registers, faults),
    omissions,
    seals,
  };
}

const unwritten = ({ path, text }: UnwrittenEntry) => ({ path, absolute: "", text });

// Every entry under the date of its file name, by path.
function readEntries(
  folder: JournalFolder,
  files: readonly (FoundFile & { readonly text?: string })[],
  omissions: Omission[],
  faults: Faults,
): Entry[] {
  const entries: Entry[] = [];
  const seen = new Map<CalendarDate, string>();
  for (const found of files) {
    const file = `${folder.name}/${found.path}`;
    if (!checkName(folder, found, faults)) continue;
    const name = found.path.split("/").at(-1) ?? "";
    if (!name.endsWith(".md")) {
      omissions.push({ file, why: "not an entry: its name does not end in `.md`" });
      continue;
    }
    const source = new SourceFile(file, found.text ?? readText(found.absolute));
    const date = name.slice(0, -3);
    if (!isCalendarDate(date)) {
      faults.add("not-a-date", source.span(0, 1), {
        message: `the file is called \`${name}\`, which is not a date`,
        help: ["name an entry after its day, as in `2026-03-14.md`"],
      });
      continue;
    }
    const twin = seen.get(date);
    if (twin) {
      faults.add("duplicate-day", source.span(0, 1), {
        message: `${date} has two entries`,
        notes: [`the other is ${twin}`],
        help: ["put both into one file; a day has one entry"],
      });
      continue;
    }
    seen.set(date, file);
    const parts = frontMatter(source, faults);
    if (!parts) continue;
    const { tree, prose, proseStart } = parts;
    entries.push({ date, tree, prose, proseStretch: { source, start: proseStart }, file });
  }
  return entries;
}

// Whether a file may be opened and its name carried elsewhere; adds a fault if not.
function checkName(folder: JournalFolder, found: FoundFile, faults: Faults): boolean {
  const place = new SourceFile(`${folder.name}/${found.path}`, "").span(0, 1);
  if (found.refused) {
    faults.add("path-leaves-journal", place, {
      message: `this is a link that ${linkWords[found.refused]}`,
      help: ["put the file itself here; links are followed only inside the journal"],
    });
    return false;
  }
  const problem = found.path
    .split("/")
    .map((name) => ({ name, why: notPortable(name) }))
    .find(({ why }) => why !== undefined);
  if (!problem) return true;
  faults.add("name-not-portable", place, {
    message: `the name \`${problem.name}\` ${problem.why}`,
    help: ["rename it with letters, digits, dots and dashes"],
  });
  return false;
}
