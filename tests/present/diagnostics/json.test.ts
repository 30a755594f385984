import { expect, test } from "vitest";
import { diagnosticJson } from "../../../src/present/diagnostics/json.ts";
import { span } from "../../support/small-build.ts";

test("a diagnostic as data, its keys in a fixed order", () => {
  const json = diagnosticJson({
    code: "expired-lot",
    severity: "finding",
    span: span({ file: "content/days/2026-03-14.md", line: 9, column: 4 }),
    message: "lot `sealant-1` was used",
    label: "had expired",
    notes: ["a note"],
    help: ["some help"],
    private: true,
  });
  expect(JSON.stringify(json)).toBe(
    '{"code":"expired-lot","severity":"finding","file":"content/days/2026-03-14.md","line":9,"column":4,"message":"lot `sealant-1` was used","notes":["a note"],"help":["some help"]}',
  );
});
