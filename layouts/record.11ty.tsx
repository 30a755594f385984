import { Section } from "./parts/section.tsx";
import { Sheet } from "./parts/sheet.tsx";
import { template } from "./parts/template.tsx";

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
          those of {page.zone}. An entry written on a later day than it tells of is marked so:{" "}
          {page.lateDays} of them here are.
        </p>
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
          it is now and why. The old value stays readable, struck through. There are{" "}
          {page.amendments} here. A reading taken again does not replace the first: both stay.
        </p>
      </div>
    </Section>
    <Section id="shown" title="What is shown">
      <div class="prose text">
        <p>
          What wants attention on the aircraft is shown as a finding, on its day and among the open
          items, until it is dealt with. A fault in the entries themselves, such as two sessions of
          one person at the same time, stops the pages from being published at all.{" "}
          {shell.editionNote}
        </p>
      </div>
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
