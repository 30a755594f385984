import type { LotState } from "../../compute/analysis.ts";
import { grouped } from "../../compute/grouped.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import { dateText } from "../format/dates.ts";
import { anchorOf, places, rootOf } from "./addresses.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Link, Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";

/** One lot, and where it went. */
export interface LotRow {
  readonly anchor: string;
  readonly title: string;
  readonly id: string;
  readonly made: string;
  /** Last day of use as known now; empty when it does not expire. */
  readonly useBy: string;
  /** Later expiries that it was given, and why. */
  readonly extensions: readonly string[];
  readonly expired: boolean;
  /** By step, or by assembly where no step was named; days oldest first. */
  readonly used: readonly { readonly on: Link; readonly days: readonly Mention[] }[];
}

/** Lots of one kind of material. */
export interface LotGroup {
  readonly id: string;
  readonly material: string;
  readonly rows: readonly LotRow[];
}

/** What went into the aircraft, by lot. */
export interface MaterialsPage extends Page<"materials"> {
  readonly groups: readonly LotGroup[];
}

/** The page of materials. */
export function materialsPage(record: RecordIndex): MaterialsPage {
  const url = places.materials;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { lots, asOf } = record.analysis;
  const uses = usesByLot(record);
  const byMaterial = grouped(lots, ({ lot }) => lot.material);
  return {
    kind: "materials",
    url,
    root,
    title: "Materials",
    description: `${lots.length} lots of material, each with the steps and days it went into.`,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    dimension: { figure: String(lots.length), says: lots.length === 1 ? "lot" : "lots" },
    groups: [...byMaterial].map(([material, of]) => ({
      id: anchorOf("material", material),
      material: `${material.slice(0, 1).toUpperCase()}${material.slice(1)}`,
      rows: of.map((state) => lotRow(state, links, uses.get(state.lot.id) ?? [])),
    })),
    block: {
      title: "Materials",
      number: "materials",
      cells: [
        { label: "as of", value: dateText(asOf.date) },
        { label: "lots", value: String(lots.length) },
        {
          label: "not used yet",
          value: String(lots.filter(({ lot }) => !uses.has(lot.id)).length),
        },
      ],
    },
    search: { filters: [["sheet", "materials"]], meta: { title: "Materials" }, sort: {} },
  };
}

interface Use {
  readonly date: CalendarDate;
  readonly step?: string;
  readonly assembly?: string;
}

function usesByLot({ analysis }: RecordIndex): ReadonlyMap<string, readonly Use[]> {
  const found = new Map<string, Use[]>();
  const add = (lot: string, use: Use) => found.set(lot, [...(found.get(lot) ?? []), use]);
  for (const { date, sessions } of analysis.build.days) {
    for (const { lots, step, assembly } of sessions) {
      for (const lot of lots) {
        add(lot, { date, assembly, ...(step === undefined ? {} : { step }) });
      }
    }
  }
  for (const { cure } of analysis.cures) {
    if (cure.lot !== undefined) add(cure.lot, { date: cure.date, step: cure.step });
  }
  return found;
}

function lotRow({ lot, expiry, expired }: LotState, links: Links, uses: readonly Use[]): LotRow {
  const places = grouped(uses, ({ step, assembly }) => step ?? assembly);
  return {
    anchor: anchorOf("lot", lot.id),
    title: lot.title,
    id: lot.id,
    made: lot.made === undefined ? "" : dateText(lot.made),
    useBy: expiry === undefined ? "" : dateText(expiry),
    extensions: lot.extensions.map(
      ({ on, until, why }) => `on ${dateText(on)} extended to ${dateText(until)}: ${why}`,
    ),
    expired,
    used: [...places].map(([place, of]) => ({
      on: of[0]?.step === undefined ? links.assembly(place) : links.step(place),
      days: [...new Set(of.map(({ date }) => date))].sort().map((date) => ({
        ...links.day(date),
        text: date,
      })),
    })),
  };
}
