import type { ComponentChildren } from "preact";
import type { Link, Mention } from "../../src/present/pages/page.ts";

/** Words that may lead somewhere. */
export function Words({ of }: { of: Mention }) {
  return of.href === undefined ? <span>{of.text}</span> : <a href={of.href}>{of.text}</a>;
}

/** Several of them, with commas between. */
export function WordList({ of }: { of: readonly (Mention | Link)[] }) {
  return (
    <>
      {of.map((each, index) => (
        <>
          {index > 0 && ", "}
          <Words of={each} />
        </>
      ))}
    </>
  );
}

/** A label over its value, in a `dl`. */
export function Fact({ label, children }: { label: string; children: ComponentChildren }) {
  return (
    <div>
      <dt>{label}</dt>
      <dd>{children}</dd>
    </div>
  );
}
