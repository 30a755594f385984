// A sum that is explained line by line is the figure of the ledger, whatever the build.

import fc from "fast-check";
import { expect, test } from "vitest";
import type { Hours } from "../../src/compute/analysis.ts";
import { analyze } from "../../src/compute/analyze.ts";
import { type HoursSelection, selectedHours } from "../../src/compute/hours-selection.ts";
import { monthOf } from "../../src/model/calendar.ts";
import { anyHours } from "../support/any-build.ts";
import { asOf } from "../support/small-build.ts";

test("each selection by one thing adds up to the ledger's figure, and its lines belong to it", () => {
  fc.assert(
    fc.property(anyHours, (build) => {
      const analysis = analyze(build, asOf("2026-12-31"));
      const { hours } = analysis;
      const holds = <Name extends string>(
        figures: ReadonlyMap<Name, Hours>,
        selection: (name: Name) => HoursSelection,
      ) => {
        for (const [name, figure] of figures) {
          expect(selectedHours(analysis, selection(name)).total).toEqual(figure);
        }
      };
      holds(hours.byAssemblyRolledUp, (assembly) => ({ assembly }));
      holds(hours.byStep, (step) => ({ step }));
      holds(hours.byPerson, (person) => ({ person }));
      holds(hours.byRole, (role) => ({ role }));
      holds(hours.byKind, (kind) => ({ kind }));
      holds(hours.byMonth, (month) => ({ month }));
      expect(selectedHours(analysis, {})).toEqual({ lines: hours.lines, total: hours.total });
    }),
    { numRuns: 100 },
  );
});

test("conditions hold together: the months of an assembly add up to the assembly", () => {
  fc.assert(
    fc.property(anyHours, (build) => {
      const analysis = analyze(build, asOf("2026-12-31"));
      const months = new Set(build.days.map(({ date }) => monthOf(date)));
      for (const assembly of build.assemblies.keys()) {
        const parts = [...months].map((month) => selectedHours(analysis, { assembly, month }));
        const sum = (of: (hours: Hours) => number) =>
          parts.reduce((all, { total }) => all + of(total), 0);
        expect({ build: sum((each) => each.build), apart: sum((each) => each.apart) }).toEqual(
          selectedHours(analysis, { assembly }).total,
        );
      }
    }),
    { numRuns: 100 },
  );
});
