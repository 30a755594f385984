import type { AssemblyRow } from "../../src/present/pages/views/assembly-row.ts";

/** The drawing tree: how far each assembly is, as hatching and as words. */
export function Tree({
  of,
  sum = false,
  parts: inSum = false,
}: {
  of: readonly AssemblyRow[];
  /** Whether the outermost rows add up to a figure of the page. */
  sum?: boolean;
  /** Whether they do so together with something else around them. */
  parts?: boolean;
}) {
  const mark = (counts: "build" | "apart") =>
    sum || inSum ? { "data-part": counts } : { "data-figure": counts };
  return (
    <ul class="tree" data-sum={sum || undefined} data-main={sum || undefined}>
      {of.map(({ assembly, standing, says, hours, apart, share, parts }) => (
        <li data-row>
          <div class="node">
            <svg class={`hatch ${standing.replace(" ", "-")}`} aria-hidden="true">
              <rect width="100%" height="100%" />
            </svg>
            <a href={assembly.href}>{assembly.text}</a>
            <span>
              {says}
              {apart && (
                <>
                  ,{" "}
                  <a href={apart.href} {...mark("apart")}>
                    {apart.text}
                  </a>{" "}
                  study and shop
                </>
              )}
            </span>
            <b {...mark("build")}>{hours}</b>
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
