import type { Session } from "../model/session.ts";

/** A session as notes name it: ``18:40 to 21:05 on `HS-07` ``, or its date when it has no times. */
export function sessionText({ from, to, date, step, assembly }: Session): string {
  const when = from && to ? `${from.local.slice(11)} to ${to.local.slice(11)}` : date;
  return `${when} on \`${step ?? assembly}\``;
}
