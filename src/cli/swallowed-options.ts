import type { Command } from "commander";

/**
 * The options of a verb that npm took for itself, because `--` was left out behind
 * `npm run witness`. npm passes the rest on without a word, so `check --strict` would be a plain
 * check.
 * @param typed The arguments that reached the program.
 * @param env npm puts what it took into `npm_config_…`, dashes as underscores.
 */
export function swallowedOptions(
  verb: Command | undefined,
  typed: readonly string[],
  env: Readonly<Record<string, string | undefined>>,
): string[] {
  if (!verb || env.npm_lifecycle_event !== "witness") return [];
  return verb.options
    .filter(({ long }) => long !== undefined && !typed.includes(long))
    .filter(({ long = "" }) => env[configName(long)] !== undefined)
    .map(({ long = "" }) => long);
}

// `--no-input` is `input` set to nothing.
function configName(long: string): string {
  return `npm_config_${long.replace(/^--(no-)?/, "").replaceAll("-", "_")}`;
}
