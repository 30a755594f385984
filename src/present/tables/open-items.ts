import type { Analysis } from "../../compute/analysis.ts";
import type { CalendarDate } from "../../model/calendar.ts";
import type { Span } from "../../model/diagnostic.ts";
import { assemblyOf, personName } from "./named.ts";
import { sourceColumns } from "./source-columns.ts";
import { type Table, tableOf } from "./table.ts";

/** What kind of thing still waits for somebody. */
export type OpenItemKind = "squawk" | "deviation" | "hold" | "reading" | "cure" | "look";

/** Something that is open on the day of judgement. */
export interface OpenItem {
  readonly kind: OpenItemKind;
  /** Id, where the thing has one. */
  readonly id?: string;
  /** When it came up; absent for a look that was never taken. */
  readonly date?: CalendarDate;
  readonly assembly?: string;
  readonly step?: string;
  readonly what: string;
  readonly standing: string;
  /** Name of who is to see to it. */
  readonly owner?: string;
  readonly span: Span;
}

/**
 * Everything open on the day of judgement: squawks not closed, deviations without a
 * disposition, holds not released, readings out of limits that nothing accounts for, cures
 * not over, and looks not taken at steps on which work has begun. In that order of kinds,
 * each by date.
 */
export function openItems(analysis: Analysis): OpenItem[] {
  const { build } = analysis;
  const on = (thing: { readonly assembly?: string; readonly step?: string }) => {
    const assembly = assemblyOf(build, thing);
    return {
      ...(assembly === undefined ? {} : { assembly }),
      ...(thing.step === undefined ? {} : { step: thing.step }),
    };
  };
  return [
    ...analysis.squawks
      .filter(({ standing }) => standing !== "closed")
      .map(({ squawk, standing }): OpenItem => {
        const owner = personName(build, squawk.owner);
        return {
          kind: "squawk",
          id: squawk.id,
          date: squawk.date,
          ...on(squawk),
          what: squawk.found,
          standing,
          ...(owner === undefined ? {} : { owner }),
          span: squawk.span,
        };
      }),
    ...analysis.deviations
      .filter(({ open }) => open)
      .map(
        ({ deviation }): OpenItem => ({
          kind: "deviation",
          id: deviation.id,
          date: deviation.date,
          ...on(deviation),
          what: `${deviation.drawing}: planned ${deviation.planned}, done ${deviation.done}`,
          standing: "no disposition",
          span: deviation.span,
        }),
      ),
    ...analysis.holds
      .filter(({ released }) => !released)
      .map(
        ({ hold }): OpenItem => ({
          kind: "hold",
          id: hold.id,
          date: hold.date,
          ...on(hold),
          what: [hold.count === undefined ? hold.with : `${hold.count} ${hold.with}`, hold.where]
            .filter((part) => part !== undefined)
            .join(", "),
          standing: "not released",
          span: hold.span,
        }),
      ),
    ...analysis.readings
      .filter(({ standing }) => standing === "out")
      .map(
        ({ reading }): OpenItem => ({
          kind: "reading",
          id: reading.id,
          date: reading.date,
          ...on(reading),
          what: [reading.what, reading.at].filter((part) => part !== undefined).join(", "),
          standing: "out of limits",
          span: reading.span,
        }),
      ),
    ...analysis.cures
      .filter(({ over }) => !over)
      .map(
        ({ cure }): OpenItem => ({
          kind: "cure",
          date: cure.date,
          ...on({ step: cure.step }),
          what: cure.lot === undefined ? "cure" : `cure of ${cure.lot}`,
          standing: `ready ${cure.ready.local}`,
          span: cure.span,
        }),
      ),
    ...[...analysis.steps.values()]
      .filter(({ firstDate }) => firstDate !== undefined)
      .flatMap((state) => {
        const step = build.steps.get(state.step);
        if (!step) return [];
        return state.looks
          .filter(({ done }) => !done)
          .map(
            ({ look, inspection }): OpenItem => ({
              kind: "look",
              ...(inspection ? { date: inspection.date } : {}),
              ...on({ assembly: step.assembly, step: step.id }),
              what: look,
              standing: inspection ? `last look ${inspection.result}` : "not looked at",
              span: step.span,
            }),
          );
      }),
  ];
}

export const openItemsTable: Table<OpenItem> = tableOf({
  name: "open-items",
  title: "Open items",
  rows: openItems,
  columns: [
    {
      key: "kind",
      heading: "Kind",
      kind: "text",
      means: "squawk, deviation, hold, reading, cure or look.",
      value: ({ kind }) => kind,
    },
    {
      key: "item",
      heading: "Item",
      kind: "text",
      means: "Id, where the thing has one.",
      value: ({ id }) => id,
    },
    {
      key: "date",
      heading: "Since",
      kind: "date",
      means: "The day it came up; empty for a look that was never taken.",
      value: ({ date }) => date,
    },
    {
      key: "assembly",
      heading: "Assembly",
      kind: "text",
      means: "Id of the assembly.",
      value: ({ assembly }) => assembly,
    },
    {
      key: "step",
      heading: "Step",
      kind: "text",
      means: "Id of the step.",
      value: ({ step }) => step,
    },
    {
      key: "what",
      heading: "What",
      kind: "text",
      means: "What is open.",
      value: ({ what }) => what,
    },
    {
      key: "standing",
      heading: "Standing",
      kind: "text",
      means: "How it stands on the day of judgement.",
      value: ({ standing }) => standing,
    },
    {
      key: "owner",
      heading: "Owner",
      kind: "text",
      means: "Who is to see to it, where somebody is named.",
      value: ({ owner }) => owner,
    },
    ...sourceColumns<OpenItem>(({ span }) => span),
  ],
});
