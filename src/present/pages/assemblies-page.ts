import { hoursText } from "../format/hours.ts";
import { places, rootOf } from "./addresses.ts";
import { linksFrom } from "./links.ts";
import type { Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type AssemblyRow, assemblyRow } from "./views/assembly-row.ts";

/** The whole tree that work is booked to. */
export interface AssembliesPage extends Page<"assemblies"> {
  readonly tree: readonly AssemblyRow[];
}

/** The index of assemblies. */
export function assembliesPage(record: RecordIndex): AssembliesPage {
  const url = places.assemblies;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { build, hours } = record.analysis;
  const sum = { of: "build", href: "#tree" } as const;
  return {
    kind: "assemblies",
    url,
    root,
    part: "assemblies",
    title: "Assemblies",
    description: `The parts of ${build.project.title}, with the hours booked to each.`,
    over: [{ text: `${build.assemblies.size} assemblies` }, { text: `${build.steps.size} steps` }],
    dimension: { figure: hoursText(hours.total.build), says: "hours of building", sum },
    tree: record.roots.map((assembly) => assemblyRow(record, links, assembly)),
    block: {
      title: "Drawing tree",
      number: "assemblies",
      cells: [
        { label: "assemblies", value: String(build.assemblies.size) },
        { label: "steps", value: String(build.steps.size) },
        { label: "hours to date", value: hoursText(hours.total.build), sum },
      ],
    },
    search: { filters: [["sheet", "assembly"]], meta: { title: "Assemblies" }, sort: {} },
  };
}
