import type { ComponentChildren } from "preact";
import type { Sum } from "../../src/present/pages/page.ts";

/** A part of a sheet: its heading drawn as a leader line with a figure at the end. */
export function Section({
  id,
  title,
  figure,
  counts,
  children,
}: {
  id: string;
  title: string;
  figure?: string | undefined;
  /** Present when the figure is the hours that the rows of this part add up to. */
  counts?: Sum["of"];
  children: ComponentChildren;
}) {
  return (
    <section aria-labelledby={id}>
      <div class="lead">
        <h2 id={id}>{title}</h2>
        {figure !== undefined && <p data-figure={counts}>{figure}</p>}
      </div>
      {children}
    </section>
  );
}
