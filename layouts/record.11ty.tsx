import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { Table } from "./parts/table.tsx";
import { template } from "./parts/template.tsx";
import { Words } from "./parts/words.tsx";

/** What is asked of a record, what this one does about it, and where that ends. */
const nineWords = [
  [
    "attributable",
    "Every session names who worked and in which role, every look who looked, a reading its instrument.",
    "Names are typed by the builder; nobody signs in.",
  ],
  [
    "legible",
    "Plain text that any editor opens; pages that need no scripts; paper.",
    "Handwriting in the shop is not kept.",
  ],
  [
    "contemporaneous",
    "An entry says when it was written, and one written later is marked.",
    "The clock is the builder's own.",
  ],
  [
    "original",
    "A value stands as it was typed. Photographs are kept as the camera wrote them.",
    "What is shown here are smaller copies.",
  ],
  [
    "accurate",
    "Sums are exact, limits are compared as written, totals are vouched for now and then.",
    "A program cannot know whether the caliper was held straight.",
  ],
  [
    "complete",
    "Rejected work, readings taken again, struck values and open items stay. What this edition leaves out is counted.",
    "What was never written down is missing.",
  ],
  [
    "consistent",
    "One zone, one order of days, one word for each thing; sessions that overlap are refused.",
    "Two entries may still tell of the same hour in different words.",
  ],
  [
    "enduring",
    "Text files, and seals that show a change.",
    "Copies in another house are the builder's care.",
  ],
  [
    "available",
    "This site for everybody; an edition with everything, tables and data for the inspector.",
    "Private things are not for everybody.",
  ],
] as const;

export const { data, render } = template("record", ({ page, shell }) => (
  <Sheet page={page} shell={shell}>
    <div class="prose text">
      <p class="summary">
        One entry for each day in the shop, written by the people who were there. Everything on
        these pages comes from those entries; no figure is typed twice.
      </p>
    </div>
    <Section id="written" title="Who writes, and when">
      <div class="prose text">
        <p>
          An entry names who worked, in which role, on what and from when to when. Clock times are
          those of {page.zone}. An entry written on a later day than it tells of is marked so on its
          sheet
          {page.late.length === 0 ? "; none here is." : "; these are:"}
        </p>
        {page.late.length > 0 && (
          <ul>
            {page.late.map(({ day, days }) => (
              <li>
                <Words of={day} />, written {days} later
              </li>
            ))}
          </ul>
        )}
      </div>
    </Section>
    <Section id="counted" title="What is counted">
      <div class="prose text">
        <p>
          Hours are whole minutes and are never rounded. Each person present is credited with all
          the minutes of a session. Study and shop work are counted apart from the building. A
          session over midnight belongs to the day it is entered under. Now and then the builder
          writes down what the total should be, {page.assertions} times so far; if the sum of the
          entries is another, nothing is published until it is put right.
        </p>
      </div>
    </Section>
    <Section id="measured" title="What is measured">
      <div class="prose text">
        <p>
          A value stands here as it was typed, with its zeros. It is compared exactly with the limit
          as written: nothing is rounded first, and neither the digits typed nor the instrument
          widen a limit. Each verdict names who says so. Where the instrument's uncertainty is
          known, the page adds whether conformity is proven and how probable it is (JCGM 106:2012);
          that is said beside the verdict and does not change it.
        </p>
      </div>
    </Section>
    <Section id="corrected" title="How it is corrected">
      <div class="prose text">
        <p>
          A mistake is put right by an amendment on the day it was noticed, with what it was, what
          it is now and why. The old value stays readable, struck through, on both sheets and in the
          exports; the totals use the new one. A reading taken again does not replace the first:
          both stay. {page.amendments.length === 0 && "Nothing has been amended so far."}
        </p>
      </div>
      {page.amendments.length > 0 && (
        <Table
          caption="Every amendment"
          class="revisions"
          heads={["Sheet", "Value", "Was", "Now", "Why", "Amended on"]}
        >
          {page.amendments.map((each) => (
            <tr>
              <td>
                <Words of={each.day} />
              </td>
              <th scope="row" class="nb">
                <code>{each.field}</code>
              </th>
              <td>
                <s>{each.was}</s>
              </td>
              <td>
                <strong>{each.now}</strong>
              </td>
              <td>{each.why}</td>
              <td>
                <Words of={each.on} />
              </td>
            </tr>
          ))}
        </Table>
      )}
    </Section>
    <Section id="shown" title="What is shown">
      <div class="prose text">
        <p>
          What wants attention on the aircraft is shown as a finding, on its day and among the open
          items, until it is dealt with. A fault in the entries themselves, such as two sessions of
          one person at the same time, stops the pages from being published at all.{" "}
          {shell.editionNote}
        </p>
        <p>
          The same record is exported as a book to be printed, as tables and as data. Those files
          are not among these pages: the builder hands them out, each with its SHA-256 in a list,
          and their totals are those shown here.
        </p>
      </div>
    </Section>
    <Section id="sealed" title="What a seal proves" figure={`${page.seals.length}`}>
      <div class="prose text">
        <p>
          When a month is over it can be closed. A small text file, its seal, then holds the SHA-256
          digest of every entry and every original photograph of that month, its totals, and the
          digest of the seal before it. The first twelve digits of a seal's own digest stand on the
          page of its month, in the feed and on paper.
        </p>
        <p>
          A seal proves that nothing in the month was changed, taken away or added since, and that
          the months were closed in this order, as long as somebody outside the shop has its twelve
          digits: a follower's feed reader, a printed page, a message to a friend. Those copies are
          the witness. If a sealed file differs, nothing is published until it is put back; a
          correction is an amendment of a later day.
        </p>
        <p>
          A seal does not prove when anything was written or closed, nor that what was written is
          true, and it is not a signature. Whoever has all the files could make the whole chain
          anew; the copies outside would then show another one. Nothing here claims to be accepted
          by an authority, under an advisory circular on electronic records or otherwise.
        </p>
        {page.seals.length === 0 && <p>No month has been sealed so far.</p>}
      </div>
      {page.seals.length > 0 && (
        <Table
          caption="The seals, each made after the one above it"
          heads={["Month", "SHA-256 of the seal", "Names", "#Hours sealed", "#To date"]}
        >
          {page.seals.map((seal) => (
            <tr>
              <th scope="row" class="nb">
                <Words of={seal.month} />
              </th>
              <td>
                <code>
                  {seal.digest.map((piece) => (
                    <>
                      {piece}
                      <wbr />
                    </>
                  ))}
                </code>
              </td>
              <td>{seal.names}</td>
              <td class="n" data-sealed>
                {seal.hours}
                {seal.now !== undefined && <small>now {seal.now}, amended since</small>}
              </td>
              <td class="n" data-sealed>
                {seal.toDate}
              </td>
            </tr>
          ))}
        </Table>
      )}
    </Section>
    <Section id="nine" title="Held against nine words">
      <div class="prose text">
        <p>
          Regulators of medicines ask nine things of a record (they are known as ALCOA+). They were
          not made for aircraft, and nothing here is certified to them; they are a fair yardstick.
        </p>
      </div>
      <Table
        caption="Nine things asked of a record"
        quiet
        heads={["A record is", "What is done here", "What is not"]}
      >
        {nineWords.map(([word, done, not]) => (
          <tr>
            <th scope="row">{word}</th>
            <td>{done}</td>
            <td>{not}</td>
          </tr>
        ))}
      </Table>
    </Section>
    <Section id="worth" title="What it is worth">
      <div class="prose text">
        <p>
          The record shows what was written and in which order. It does not prove by itself when
          something was written, and nothing in it is a signature. {shell.caution}
        </p>
      </div>
    </Section>
  </Sheet>
));
