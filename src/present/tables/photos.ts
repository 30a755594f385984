import type { Analysis } from "../../compute/analysis.ts";
import { photosOf } from "../../model/build.ts";
import type { Photo } from "../../model/photo.ts";
import { assemblyOf, personName } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** One photograph named by a day. */
export interface PhotoRow {
  readonly photo: Photo;
  readonly assembly?: string;
  /** Names of who can be seen. */
  readonly shows: readonly string[];
  readonly showsBuilder: boolean;
}

/** The rows of the photographs, by date, then in the order typed. */
export function photoRows({ build }: Analysis): PhotoRow[] {
  return photosOf(build).map((photo) => {
    const assembly = assemblyOf(build, photo);
    return {
      photo,
      ...(assembly === undefined ? {} : { assembly }),
      shows: photo.shows.map((person) => personName(build, person) ?? person),
      showsBuilder: photo.shows.some((person) => build.people.get(person)?.role === "builder"),
    };
  });
}

export const photosTable: Table<PhotoRow> = tableOf({
  name: "photos",
  title: "Photographs",
  rows: photoRows,
  columns: [
    {
      key: "date",
      heading: "Date",
      kind: "date",
      means: "The day whose entry names the photograph.",
      value: ({ photo }) => photo.date,
    },
    {
      key: "photo",
      heading: "Photograph",
      kind: "text",
      means: "Path below the journal's folder of photographs.",
      value: ({ photo }) => photo.file,
    },
    {
      key: "caption",
      heading: "Caption",
      kind: "text",
      means: "The caption.",
      value: ({ photo }) => photo.caption,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly, its own or the one of its step.",
      value: ({ assembly }) => assembly,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step.",
      value: ({ photo }) => photo.step,
    },
    {
      key: "shows",
      heading: "Shows",
      kind: "text",
      means: "Who can be seen, parted by semicolons.",
      value: ({ shows }) => shows.join("; ") || undefined,
    },
    {
      key: "shows_builder",
      heading: "Shows a builder",
      kind: "yes or no",
      means: "Whether somebody whose role is builder can be seen.",
      value: ({ showsBuilder }) => showsBuilder,
    },
    ...sourceColumns<PhotoRow>(({ photo }) => photo.span),
  ],
});
