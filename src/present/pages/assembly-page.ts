import type { Assembly } from "../../model/assembly.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { dateText, shortDate } from "../format/dates.ts";
import { hoursText } from "../format/hours.ts";
import { photosShare } from "../share/page-share.ts";
import { rootOf } from "./addresses.ts";
import { type Links, linksFrom, placeLink } from "./links.ts";
import type { Link, Mention, Page, Sum } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type AssemblyRow, apartAnchor, assemblyRow, tallyOf } from "./views/assembly-row.ts";
import { type BookedMonth, bookedMonths } from "./views/booked-days.ts";
import { type PhotoView, photoView } from "./views/photo-view.ts";

/** A step as a row of its assembly's parts list. */
export interface StepRow {
  readonly step: Link;
  readonly title: string;
  readonly drawing?: string;
  readonly stage?: string;
  readonly last?: Mention;
  readonly looks?: string;
  readonly booked: string;
  readonly planned?: string;
  /** Booked beyond what was planned. */
  readonly beyond: boolean;
}

/** One assembly. */
export interface AssemblyPage extends Page<"assembly"> {
  readonly id: string;
  /** Days with a sheet on which something was booked here or to a part of it, oldest first. */
  readonly sheets: readonly CalendarDate[];
  readonly summary?: string;
  /** The sum behind the figure: what was booked here and to each part. */
  readonly own: string;
  readonly parts: readonly AssemblyRow[];
  readonly total: string;
  readonly planned?: string;
  readonly apart?: string;
  readonly steps: readonly StepRow[];
  /** Days on which something was booked to the assembly itself. */
  readonly days: readonly BookedMonth[];
  /** The same of study and shop. */
  readonly daysApart: readonly BookedMonth[];
  /** Study and shop booked to the assembly itself. */
  readonly ownApart: string;
  /** Where the rows stand that the page's figures are the sums of. */
  readonly sums: { readonly build: Sum; readonly apart: Sum };
  /** The newest photographs; at most twelve. */
  readonly photos: readonly PhotoView[];
  readonly morePhotos: number;
}

const photosShown = 12;

/** The page of one assembly. */
export function assemblyPage(record: RecordIndex, assembly: Assembly): AssemblyPage {
  const { build, hours } = record.analysis;
  const url = record.addresses.assembly(assembly.id);
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const rolled = hours.byAssemblyRolledUp.get(assembly.id) ?? { build: 0, apart: 0 };
  const own = hours.byAssembly.get(assembly.id) ?? { build: 0, apart: 0 };
  const { planned } = tallyOf(record, assembly);
  const photos = record.photosByAssembly.get(assembly.id) ?? [];
  const share = photosShare(record, photos.toReversed());
  const lines = record.linesByAssembly.get(assembly.id) ?? [];
  const worked = [...build.assemblies.values()]
    .filter(({ path }) => path.includes(assembly.id))
    .flatMap(({ id }) => record.linesByAssembly.get(id) ?? [])
    .map(({ date }) => date)
    .sort();
  const sheets = [...new Set(worked)].filter((date) => record.showsDay(date));
  const first = worked[0];
  const last = worked.at(-1);
  const total = hoursText(rolled.build);
  const hasParts = assembly.children.length > 0;
  const sums = {
    build: { of: "build", href: hasParts ? "#parts" : "#days" },
    apart: { of: "apart", href: `#${apartAnchor(assembly)}` },
  } as const;
  return {
    kind: "assembly",
    script: "view.js",
    styles: ["view.css"],
    id: assembly.id,
    sheets,
    ...(sheets.length === 0
      ? {}
      : { feed: { title: `${assembly.title}, ${build.project.title}` } }),
    url,
    root,
    part: "assemblies",
    title: assembly.title,
    description:
      assembly.summary ??
      `${total} hours booked to ${assembly.title}: steps, stages, days and photographs.`,
    over: [
      placeLink(root, "assemblies", "assemblies"),
      ...assembly.path.slice(0, -1).map((id) => links.assembly(id)),
    ],
    dimension: {
      ...(first === undefined ? {} : { from: `${shortDate(first)} ${first.slice(0, 4)}` }),
      ...(last === undefined ? {} : { to: `${shortDate(last)} ${last.slice(0, 4)}` }),
      figure: total,
      ...(rolled.build > 0 ? { sum: sums.build } : {}),
      says:
        planned > 0
          ? `hours of building, ${hoursText(planned)} planned for its steps`
          : "hours of building",
    },
    ...(assembly.summary === undefined ? {} : { summary: assembly.summary }),
    own: hoursText(own.build),
    parts: assemblyRow(record, links, assembly, 1).parts,
    total,
    ...(planned > 0 ? { planned: hoursText(planned) } : {}),
    ...(rolled.apart > 0 ? { apart: hoursText(rolled.apart) } : {}),
    steps: assembly.steps.map((id) => stepRow(record, links, id)),
    days: bookedMonths(record, links, lines, false),
    daysApart: bookedMonths(record, links, lines, true),
    ownApart: hoursText(own.apart),
    sums,
    photos: photos
      .slice(-photosShown)
      .reverse()
      .map((photo, index) => photoView(record, links, photo, index + 1)),
    morePhotos: Math.max(0, photos.length - photosShown),
    block: {
      title: assembly.title,
      number: `assembly ${[...build.assemblies.keys()].indexOf(assembly.id) + 1} of ${build.assemblies.size}`,
      cells: [
        {
          label: "hours",
          value: total,
          ...(rolled.build > 0 ? { sum: sums.build } : {}),
        },
        { label: "planned", value: planned > 0 ? hoursText(planned) : "not said" },
        { label: "last worked on", value: last === undefined ? "not begun" : dateText(last) },
        { label: "drawings", value: drawingsOf(record, assembly) },
      ],
    },
    ...(share === undefined ? {} : { share }),
    search: {
      filters: [
        ["sheet", "assembly"],
        ["assembly", assembly.title],
      ],
      meta: { title: assembly.title },
      sort: { hours: rolled.build },
    },
  };
}

function stepRow(record: RecordIndex, links: Links, id: string): StepRow {
  const { build, hours, steps } = record.analysis;
  const step = build.steps.get(id);
  const state = steps.get(id);
  const booked = hours.byStep.get(id)?.build ?? 0;
  const looks = state?.looks ?? [];
  return {
    step: links.step(id),
    title: step?.title ?? id,
    ...(step?.drawing === undefined ? {} : { drawing: step.drawing }),
    ...(state?.stage === undefined ? {} : { stage: state.stage }),
    ...(state?.lastDate === undefined ? {} : { last: links.shortDay(state.lastDate) }),
    ...(looks.length === 0
      ? {}
      : { looks: `${looks.filter(({ done }) => done).length} of ${looks.length}` }),
    booked: hoursText(booked),
    ...(step?.planned === undefined ? {} : { planned: hoursText(step.planned) }),
    beyond: step?.planned !== undefined && booked > step.planned,
  };
}

function drawingsOf({ analysis }: RecordIndex, assembly: Assembly): string {
  const drawings = [
    ...new Set(assembly.steps.flatMap((id) => analysis.build.steps.get(id)?.drawing ?? [])),
  ];
  return drawings.length === 0 ? "none named" : drawings.join(", ");
}
