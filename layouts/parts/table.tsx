import type { ComponentChildren } from "preact";

/** A table with its caption, in a region that scrolls by itself when the table is too wide. */
export function Table({
  caption,
  heads,
  foot,
  class: name,
  quiet = false,
  sum = false,
  main = false,
  children,
}: {
  caption: string;
  /** A heading that starts with `#` stands over numbers. */
  heads: readonly string[];
  foot?: ComponentChildren;
  class?: string;
  /** The caption is for screen readers alone, because a heading says it already. */
  quiet?: boolean;
  /** Whether its rows are what a figure of hours is the sum of. */
  sum?: boolean;
  /** Whether the figures of the page itself are sums of its rows. */
  main?: boolean;
  children: ComponentChildren;
}) {
  return (
    <section class="scroll" aria-label={caption} tabindex={0}>
      <table
        class={
          [name, heads.length > 7 ? "wide" : heads.length > 5 && "broad"]
            .filter(Boolean)
            .join(" ") || undefined
        }
        data-sum={sum || undefined}
        data-main={main || undefined}
      >
        <caption class={quiet ? "unseen" : undefined} data-pagefind-ignore>
          {caption}
        </caption>
        <thead data-pagefind-ignore>
          <tr>
            {heads.map((head) =>
              head.startsWith("#") ? (
                <th scope="col" class="n">
                  {head.slice(1)}
                </th>
              ) : (
                <th scope="col">{head}</th>
              ),
            )}
          </tr>
        </thead>
        <tbody>{children}</tbody>
        {foot !== undefined && <tfoot>{foot}</tfoot>}
      </table>
    </section>
  );
}
