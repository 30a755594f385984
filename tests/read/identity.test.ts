// Whose aircraft a file is kept for: said anywhere, it has to be the same everywhere.

import { describe, expect, test } from "vitest";
import { places, readSmall, smallRegisters } from "../support/temporary-journal.ts";

const right = 'for: { builder: Ada  Brook, designation: SM-1, serial: "0001" }\n';
const balance = `datum: the spinner
empty-weight: { oil: in, unusable-fuel: in }
`;
const registers = [
  ...["people", "assemblies", "rules", "instruments", "lots"].map(
    (name) => [`${name}.yaml`, smallRegisters[`${name}.yaml`] ?? ""] as const,
  ),
  ["balance.yaml", balance] as const,
];

describe.each(registers)("%s", (file, text) => {
  test("may say for which aircraft it is kept", () => {
    expect(readSmall({ [file]: right + text }).diagnostics).toEqual([]);
  });

  test("is refused when it says another one", () => {
    const wrong =
      'for: { builder: Jon Reed, designation: SM-2, serial: "001", registration: N1 }\n';
    const { diagnostics } = readSmall({ [file]: wrong + text });
    expect(places(diagnostics)).toEqual([
      `${file}:1:17 identity-differs`,
      `${file}:1:40 identity-differs`,
      `${file}:1:54 identity-differs`,
      `${file}:1:75 identity-differs`,
    ]);
    expect(diagnostics.map(({ message }) => message)).toEqual([
      "the builder is `Jon Reed` here, and nobody in people.yaml is a builder of that name",
      "the designation is `SM-2` here and `SM-1` in project.yaml",
      "the serial is `001` here and `0001` in project.yaml",
      "the registration is `N1` here, and project.yaml has none",
    ]);
  });

  test("says nothing else there", () => {
    const { diagnostics } = readSmall({ [file]: `for: { serail: "0001" }\n${text}` });
    expect(places(diagnostics)).toEqual([`${file}:1:8 unknown-key`]);
  });
});

test("a registration that the project has is compared with it", () => {
  const project = `${smallRegisters["project.yaml"]}registration: N000XX\n`;
  const lots = smallRegisters["lots.yaml"];
  const found = (registration: string) =>
    readSmall({
      "project.yaml": project,
      "lots.yaml": `for: { registration: ${registration} }\n${lots}`,
    }).diagnostics.map(({ message }) => message);
  expect(found("N000XX")).toEqual([]);
  expect(found("N000XY")).toEqual([
    "the registration is `N000XY` here and `N000XX` in project.yaml",
  ]);
});
