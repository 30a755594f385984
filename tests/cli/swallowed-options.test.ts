// npm keeps options for itself when `--` is left out behind `npm run witness`.

import { Command } from "commander";
import { expect, test } from "vitest";
import { swallowedOptions } from "../../src/cli/swallowed-options.ts";

const verb = new Command("check")
  .option("--journal <dir>")
  .option("--as-of <date>")
  .option("--no-input")
  .option("--json");
const npm = { npm_lifecycle_event: "witness" };

test.each([
  ["nothing", {}, [], []],
  ["an option", { npm_config_json: "true" }, [], ["--json"]],
  ["one with a dash", { npm_config_as_of: "true" }, ["2026-01-01"], ["--as-of"]],
  ["one that says no", { npm_config_input: "" }, [], ["--no-input"]],
  ["two", { npm_config_json: "true", npm_config_journal: "true" }, [], ["--journal", "--json"]],
  ["one that came through", { npm_config_json: "true" }, ["--json"], []],
  ["what is npm's own", { npm_config_loglevel: "silent" }, [], []],
])("of %s", (_what, env, typed, swallowed) => {
  expect(swallowedOptions(verb, typed, { ...npm, ...env })).toEqual(swallowed);
});

test("only under `npm run witness`, and only of a verb", () => {
  const env = { npm_config_json: "true" };
  expect(swallowedOptions(verb, [], env)).toEqual([]);
  expect(swallowedOptions(verb, [], { ...env, npm_lifecycle_event: "test" })).toEqual([]);
  expect(swallowedOptions(undefined, [], { ...npm, ...env })).toEqual([]);
});
