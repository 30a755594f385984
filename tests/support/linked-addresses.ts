/** Every address that a page links to or loads, as it stands there. */
export function linkedAddresses(html: string): string[] {
  const single = [...html.matchAll(/\s(?:href|src|poster)="([^"]*)"/g)].map(([, url = ""]) => url);
  const sets = [...html.matchAll(/\ssrcset="([^"]*)"/g)].flatMap(([, set = ""]) =>
    set.split(",").flatMap((each) => each.trim().split(" ")[0] ?? []),
  );
  return [...single, ...sets].map((url) => url.replaceAll("&amp;", "&"));
}
