import type { ComponentChildren } from "preact";

/** A part of a sheet: its heading drawn as a leader line with a figure at the end. */
export function Section({
  id,
  title,
  figure,
  children,
}: {
  id: string;
  title: string;
  figure?: string | undefined;
  children: ComponentChildren;
}) {
  return (
    <section aria-labelledby={id}>
      <div class="lead">
        <h2 id={id}>{title}</h2>
        {figure !== undefined && <p>{figure}</p>}
      </div>
      {children}
    </section>
  );
}
