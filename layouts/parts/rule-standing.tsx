import type {
  RulePrecedence,
  RuleStanding as StandingView,
} from "../../src/present/pages/views/rule-standing.ts";
import { Table } from "./table.tsx";
import { WordList, Words } from "./words.tsx";

/** What a rule judges, its table, and which rules it is used in place of. */
export function RuleStanding({ of }: { of: StandingView }) {
  const { judges, table, over, under, wonOver } = of;
  return (
    <>
      {judges !== undefined && <p>{judges}</p>}
      {over && (
        <p>
          Used in place of <Precedence of={over} />
        </p>
      )}
      {under.map((each) => (
        <p>
          Not used where <Precedence of={each} />
        </p>
      ))}
      {wonOver.length > 0 && (
        <p>
          Readings that name this rule and are judged by another: <WordList of={wonOver} />.
        </p>
      )}
      {table && (
        <div class="lines">
          <Table
            caption="The limits as the source has them; between two rows they run in a straight line, beyond the first and the last there are none"
            heads={table.heads}
          >
            {table.rows.map((row) => (
              <tr>
                {row.map((cell) => (
                  <td class="n">{cell}</td>
                ))}
              </tr>
            ))}
          </Table>
        </div>
      )}
    </>
  );
}

function Precedence({ of: { other, why, steps } }: { of: RulePrecedence }) {
  return (
    <>
      <Words of={other} />
      {steps.length > 0 && (
        <>
          {" "}
          on <WordList of={steps} />
        </>
      )}
      : {why}.
    </>
  );
}
