import { expect, test } from "vitest";
import type { Diagnostic } from "../../../src/model/diagnostic.ts";
import { ciAnnotation } from "../../../src/present/diagnostics/ci-annotation.ts";
import { span } from "../../support/small-build.ts";

const found: Diagnostic = {
  code: "expired-lot",
  severity: "finding",
  span: span({ file: "content/days/2026-03-14.md", line: 9, column: 4, length: 7 }),
  message: "lot `sealant-1` was used",
  notes: ["48 % humid"],
  help: ["name that one"],
};

test("a finding is a warning on one line", () => {
  expect(ciAnnotation(found)).toBe(
    "::warning file=content/days/2026-03-14.md,line=9,col=4,endColumn=11,title=finding[expired-lot]::lot `sealant-1` was used%0Anote: 48 %25 humid%0Ahelp: name that one",
  );
});

test("an error is an error, and nothing typed ends the command early", () => {
  const rude = { ...found, severity: "error", message: "a\r\n::b" } as const;
  const file = { ...found.span, file: "content/days/a,b:c%.md" };
  expect(ciAnnotation({ ...rude, span: file, notes: [], help: [] })).toBe(
    "::error file=content/days/a%2Cb%3Ac%25.md,line=9,col=4,endColumn=11,title=error[expired-lot]::a%0D%0A::b",
  );
});
