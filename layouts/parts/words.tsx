import type { ComponentChildren } from "preact";
import type { Mention } from "../../src/present/pages/page.ts";

/** Words that may lead somewhere. */
export function Words({ of }: { of: Mention }) {
  return of.href === undefined ? <span>{of.text}</span> : <a href={of.href}>{of.text}</a>;
}

/** Several things with words between them; those that are not there leave no gap. */
export function Joined({ of, by }: { of: readonly ComponentChildren[]; by: string }) {
  return (
    <>
      {of
        .filter((each) => each !== undefined && each !== false && each !== "")
        .map((each, index) => (index === 0 ? each : [by, each]))}
    </>
  );
}

/** Several mentions, with commas between. */
export function WordList({ of }: { of: readonly Mention[] }) {
  return <Joined by=", " of={of.map((each) => <Words of={each} />)} />;
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
