import type { FindingView } from "../../src/present/pages/views/finding-view.ts";
import { Words } from "./words.tsx";

/** A drawing's flag: a triangle with a number. */
export function Flag({ text }: { text: string }) {
  return (
    <svg class="flag" viewBox="0 0 32 28" width="32" height="28" aria-hidden="true">
      <path d="M16 1.5l14.5 25h-29z" />
      <text x="16" y="23" text-anchor="middle">
        {text}
      </text>
    </svg>
  );
}

/** Findings as a drawing's flag notes: a numbered triangle and the note. */
export function Findings({ of, dated = false }: { of: readonly FindingView[]; dated?: boolean }) {
  return (
    <ol class="flags">
      {of.map(({ number, title, message, notes, help, day }) => (
        <li>
          <Flag text={`${number}`} />
          <div>
            <h3>{title}</h3>
            <p>
              {dated && day && (
                <>
                  <Words of={day} />
                  {": "}
                </>
              )}
              {message}
            </p>
            {notes.length > 0 && <p class="evidence">{notes.join("; ")}</p>}
            {help.length > 0 && <p class="evidence">To put it right: {help.join("; ")}.</p>}
          </div>
        </li>
      ))}
    </ol>
  );
}
