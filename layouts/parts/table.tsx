import type { ComponentChildren } from "preact";

/** A table with its caption, in a region that scrolls by itself when the table is too wide. */
export function Table({
  caption,
  heads,
  foot,
  class: name,
  quiet = false,
  children,
}: {
  caption: string;
  /** A heading that starts with `#` stands over numbers. */
  heads: readonly string[];
  foot?: ComponentChildren;
  class?: string;
  /** The caption is for screen readers alone, because a heading says it already. */
  quiet?: boolean;
  children: ComponentChildren;
}) {
  return (
    <section class="scroll" aria-label={caption} tabindex={0}>
      <table class={[name, heads.length > 5 && "broad"].filter(Boolean).join(" ") || undefined}>
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
