import type { PortionPage } from "../src/present/pages/portion-page.ts";
import type { PortionSumView } from "../src/present/portion/portion-report.ts";
import { Findings } from "./parts/finding.tsx";
import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Fact, Words } from "./parts/words.tsx";

const shareHeads = ["#A Kit or part maker", "#B Paid help", "#C Assembly", "#D Fabrication"];

export const { data, render } = template("portion", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <p class="summary">{page.sentence}</p>
    <p class="left-off">{page.cautions[0]}</p>
    <Section id="lines" title="The two lines">
      <Table
        caption="The builder's share against each line"
        quiet
        heads={["Line", "Verdict", "And"]}
      >
        {page.lines.map((line) => (
          <tr>
            <th scope="row">
              {line.title}
              <small>{line.source}</small>
            </th>
            <td class="nb">{line.verdict}</td>
            <td>
              {line.says.map((each) => (
                <small>{each}</small>
              ))}
            </td>
          </tr>
        ))}
      </Table>
    </Section>
    {page.findings.length > 0 && (
      <Section id="findings" title="Findings" figure={`${page.findings.length}`}>
        <Findings of={page.findings} />
      </Section>
    )}
    <Section id="evidence" title="Evidence" figure={`${page.covered} of ${page.claimed}`}>
      <p class="legend">
        For each task that the builder has a share of: a dated entry by a builder or an unpaid
        helper, its place, what it says, and a photograph. Tasks that lack something come first,
        then those that contradict an entry, the help received, or themselves.
      </p>
      <Evidence of={page.evidence} />
    </Section>
    <Section id="sheet" title="The sheet" figure={page.sum.percent}>
      <dl class="facts">
        {page.list.map(({ label, value }) => (
          <Fact label={label}>{value}</Fact>
        ))}
      </dl>
      <p class="legend">{page.form}</p>
      {page.sections.map((section) => (
        <Table
          caption={section.title}
          heads={["No.", "Task", ...shareHeads]}
          foot={<SumRow of={section.sum} />}
        >
          {section.tasks.map((task) => (
            <tr id={task.anchor}>
              <td class="nb">{task.number}</td>
              <th scope="row">
                {task.title}
                {task.marks.map((mark) => (
                  <small>{mark}</small>
                ))}
              </th>
              <td class="n">{task.kit}</td>
              <td class="n">{task.paid}</td>
              <td class="n">{task.assembly}</td>
              <td class="n">{task.fabrication}</td>
            </tr>
          ))}
        </Table>
      ))}
      <Table caption="All sections together" heads={["", "", ...shareHeads]}>
        <SumRow of={page.sum} />
      </Table>
    </Section>
    {page.changes.length > 0 && (
      <Section id="changes" title="Divisions that were changed" figure={`${page.changes.length}`}>
        <Table
          caption="What stood before, what stands now, and why"
          heads={["No.", "Task", "On", "Before", "After", "Why"]}
        >
          {page.changes.map((change) => (
            <tr>
              <td class="nb">{change.number}</td>
              <th scope="row">{change.title}</th>
              <td class="nb">{change.on}</td>
              <td>{change.before}</td>
              <td>{change.after}</td>
              <td>{change.why}</td>
            </tr>
          ))}
        </Table>
      </Section>
    )}
    <Section id="cautions" title="What this sheet is not">
      <ul class="advice">
        {page.cautions.map((each) => (
          <li>{each}</li>
        ))}
      </ul>
    </Section>
  </Sheet>
));

function SumRow({ of }: { of: PortionSumView }) {
  return (
    <tr>
      <td />
      <th scope="row">
        {of.what}
        <small>
          {of.builder} of {of.total} points, {of.percent}
        </small>
      </th>
      <td class="n">{of.kit}</td>
      <td class="n">{of.paid}</td>
      <td class="n">{of.assembly}</td>
      <td class="n">{of.fabrication}</td>
    </tr>
  );
}

function Evidence({ of }: { of: PortionPage["evidence"] }) {
  if (of.length === 0) return <p class="empty">The builder claims no share yet.</p>;
  return (
    <Table
      caption="Claimed tasks and the entries that show them"
      quiet
      class="broad"
      heads={["No.", "Task", "Lacks or contradicts", "Entries", "#Photographs"]}
    >
      {of.map((each) => (
        <tr>
          <td class="nb">
            <a href={each.href}>{each.number}</a>
          </td>
          <th scope="row">{each.title}</th>
          <td class={each.lacks.length + each.contradicts.length > 0 ? "wants" : undefined}>
            {[...each.lacks, ...each.contradicts].join(", ") || "nothing"}
          </td>
          <td>
            {each.entries.map((entry, index) => (
              <>
                <span class="nb">
                  <Words of={entry} />
                  {index + 1 < each.entries.length && ","}
                </span>{" "}
              </>
            ))}
            {each.more > 0 && `and ${each.more} more`}
          </td>
          <td class="n">{each.photographs}</td>
        </tr>
      ))}
    </Table>
  );
}
