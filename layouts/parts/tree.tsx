import type { AssemblyRow } from "../../src/present/pages/views/assembly-row.ts";

/** The drawing tree: how far each assembly is, as hatching and as words. */
export function Tree({ of }: { of: readonly AssemblyRow[] }) {
  return (
    <ul class="tree">
      {of.map(({ assembly, standing, says, hours, share, parts }) => (
        <li>
          <div class="node">
            <svg class={`hatch ${standing.replace(" ", "-")}`} aria-hidden="true">
              <rect width="100%" height="100%" />
            </svg>
            <a href={assembly.href}>{assembly.text}</a>
            <span>{says}</span>
            <b>{hours}</b>
            <p>
              <svg class="share" width={share} height="5" aria-hidden="true" />
            </p>
          </div>
          {parts.length > 0 && <Tree of={parts} />}
        </li>
      ))}
    </ul>
  );
}
