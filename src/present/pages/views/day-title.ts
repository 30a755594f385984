import type { Assembly } from "../../../model/assembly.ts";
import type { Day } from "../../../model/day.ts";
import { excerpt } from "../../markdown/render-prose.ts";

/**
 * What a sheet is called: its title, otherwise how its prose begins, otherwise what was worked
 * on. Never empty, because a page has to have a heading.
 */
export function dayTitle(
  { title, prose, sessions }: Day,
  assemblies: ReadonlyMap<string, Assembly>,
): string {
  const worked = new Set(sessions.map(({ assembly }) => assembly));
  return (
    title ||
    excerpt(prose, 60) ||
    [...worked].map((id) => assemblies.get(id)?.title ?? id).join(", ") ||
    "Without a title"
  );
}
