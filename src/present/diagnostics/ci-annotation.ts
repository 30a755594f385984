import type { Diagnostic } from "../../model/diagnostic.ts";

/**
 * A diagnostic as one workflow command, which a hosted build shows beside the line: an error as
 * `::error`, a finding as `::warning`. Notes and help follow the message on lines of their own.
 *
 * Percent signs and line ends are escaped, and in properties colons and commas too, as the
 * runners' documentation of workflow commands asks.
 */
export function ciAnnotation(diagnostic: Diagnostic): string {
  const { code, severity, span, message, notes, help } = diagnostic;
  const properties = {
    file: span.file,
    line: String(span.line),
    col: String(span.column),
    endColumn: String(span.column + span.length),
    title: `${severity}[${code}]`,
  };
  const text = [
    message,
    ...notes.map((note) => `note: ${note}`),
    ...help.map((advice) => `help: ${advice}`),
  ].join("\n");
  const named = Object.entries(properties).map(([name, value]) => `${name}=${property(value)}`);
  return `::${severity === "error" ? "error" : "warning"} ${named.join(",")}::${data(text)}`;
}

function data(text: string): string {
  return text.replaceAll("%", "%25").replaceAll("\r", "%0D").replaceAll("\n", "%0A");
}

function property(text: string): string {
  return data(text).replaceAll(":", "%3A").replaceAll(",", "%2C");
}
