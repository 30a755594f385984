import type { CalendarDate } from "../../model/calendar.ts";
import {
  type BalanceReport,
  balanceReport,
  type EventRow,
  type SheetView,
} from "../balance/balance-report.ts";
import { dateText } from "../format/dates.ts";
import { places, rootOf, slugs } from "./addresses.ts";
import { type Links, linksFrom } from "./links.ts";
import type { Mention, Page } from "./page.ts";
import type { RecordIndex } from "./record-index.ts";
import { type EnvelopeChart, envelopeChart } from "./views/envelope-chart.ts";
import { type FindingView, findingView } from "./views/finding-view.ts";

/** A weighing, projection, change or loading, with its place on the page. */
export interface BalanceSheetView extends Omit<SheetView, "date" | "day"> {
  readonly anchor: string;
  /** The date, leading to the day's entry where there is one. */
  readonly on?: Mention;
}

/** A row of the list that the empty weight comes from. */
export interface EmptyWeightRow extends Omit<EventRow, "date" | "day"> {
  readonly on: Mention;
  /** Leads to its lines. */
  readonly sheet: Mention;
}

/** The report on weight and balance. */
export interface BalancePage
  extends Page<"balance">,
    Omit<
      BalanceReport,
      "figure" | "events" | "caseSheets" | "weighings" | "projection" | "changes" | "cases"
    > {
  readonly findings: readonly FindingView[];
  readonly chart?: EnvelopeChart;
  readonly cases: readonly (BalanceReport["cases"][number] & { readonly href: string })[];
  readonly caseSheets: readonly BalanceSheetView[];
  readonly events: readonly EmptyWeightRow[];
  readonly weighings: readonly BalanceSheetView[];
  readonly projection?: BalanceSheetView;
  readonly changes: readonly BalanceSheetView[];
}

/** The page of weight and balance; `undefined` when the journal keeps no register of it. */
export function balancePage(record: RecordIndex): BalancePage | undefined {
  const report = balanceReport(record.analysis);
  const { balance, asOf } = record.analysis;
  if (!report || !balance) return undefined;
  const url = places.balance;
  const root = rootOf(url);
  const links = linksFrom(record, root);
  const { figure, projection, ...rest } = report;
  const chart = envelopeChart(balance);
  const file = balance.register.span.file;
  const anchors = anchorsOf(report);
  const placed = (kind: SheetKind, sheet: SheetView) =>
    placedSheet(record, links, sheet, anchors(kind, sheet.id));
  return {
    ...rest,
    kind: "balance",
    styles: ["chart.css"],
    url,
    root,
    part: "balance",
    title: "Weight and balance",
    description: report.sentence,
    over: [{ text: `as of ${dateText(asOf.date)}` }],
    ...(figure ? { dimension: { figure: figure.text, says: figure.says } } : {}),
    findings: record.findings
      .filter(({ span }) => span.file === file)
      .map((each, index) => {
        // On its own page a finding needs no link to it.
        const { day: _self, ...view } = findingView(record, links, each, index + 1);
        return view;
      }),
    ...(chart ? { chart } : {}),
    cases: report.cases.map((each) => ({ ...each, href: `#${anchors("case", each.id)}` })),
    caseSheets: report.caseSheets.map((each) => placed("case", each)),
    events: report.events.map(({ date, day, ...event }) => ({
      ...event,
      on: dayOf(record, links, date, day),
      sheet: { text: event.what, href: `#${anchors(event.kind, event.id)}` },
    })),
    weighings: report.weighings.map((each) => placed("weighing", each)),
    ...(report.projection ? { projection: placed("projection", report.projection) } : {}),
    changes: report.changes.map((each) => placed("change", each)),
    block: {
      title: "Weight and balance",
      number: "balance",
      cells: [
        { label: "empty weight", value: figure?.text ?? "not weighed" },
        { label: "basis", value: balance.empty?.basis ?? "none" },
        { label: "loading cases", value: String(report.cases.length) },
        { label: "as of", value: dateText(asOf.date) },
      ],
    },
    search: { filters: [["sheet", "balance"]], meta: { title: "Weight and balance" }, sort: {} },
  };
}

type SheetKind = "case" | "weighing" | "projection" | "change";

// An id in the page for each, even where names differ only in signs.
function anchorsOf(report: BalanceReport): (kind: SheetKind, id: string) => string {
  const names = (sheets: readonly { readonly id: string }[]) => slugs(sheets.map(({ id }) => id));
  const known = {
    case: names(report.cases),
    weighing: names(report.weighings),
    projection: names(report.projection ? [report.projection] : []),
    change: names(report.changes),
  };
  return (kind, id) => `${kind}-${known[kind].get(id) ?? id}`;
}

function placedSheet(
  record: RecordIndex,
  links: Links,
  { date, day, ...sheet }: SheetView,
  anchor: string,
): BalanceSheetView {
  return {
    ...sheet,
    anchor,
    ...(date === undefined ? {} : { on: dayOf(record, links, date, day ?? date) }),
  };
}

// The date as it was; the link goes to the day that tells of it.
function dayOf(record: RecordIndex, links: Links, date: CalendarDate, day: CalendarDate): Mention {
  if (!record.dayByDate.has(day)) return { text: dateText(date) };
  return { ...links.day(day), text: dateText(date) };
}
