// What the publications say in words, each line with its document and paragraph: the page "What
// publications say in words" has to tell it. Paragraphs are those of the copies that were read.

import { expect, test } from "vitest";
import { inWordsPage } from "../../src/present/pages/limits-page.ts";

const said = inWordsPage().groups.flatMap(({ statements }) => statements);

const rows: readonly (readonly [document: string, place: string, words: RegExp])[] = [
  // document            place                what is said there
  ["AC 43.13-1B", "par. 4-58", /round, straight, free of cracks and deburred/],
  ["AC 43.13-1B", "par. 4-57b", /next larger rivet.*edge distance and spacing/],
  ["AC 43.13-1B", "par. 4-57a(4)", /MS20426.*MS20470.*AD4-3\.5/],
  ["AC 43.13-1B", "par. 4-57f(9)", /blind pull rivets.*not for certificated/],
  ["AC 43.13-1B", "par. 4-58a", /small head, not for a full roundhead/],
  ["AC 43.13-1B", "tables 4-9, 4-10 and 4-11", /75 %.*80 %.*60 %/],
  ["AC 43.13-1B", "tables 4-9, 4-10 and 4-11", /above the underline.*bearing.*below.*shear/],
  ["AC 43.13-1B", "par. 4-58h", /straightened cold.*magnifier/],
  ["AC 43.13-1B", "par. 4-58i", /not heated locally/],
  ["AC 43.13-1B", "par. 7-38", /cotter pins and safety wire are never used twice/],
  ["AC 43.13-1B", "par. 7-39", /0\.0006 in on a 5\/8 in bolt/],
  ["AC 43.13-1B", "par. 7-40d", /drag is added/],
  ["AC 43.13-1B", "par. 7-40e", /backed off and torqued again/],
  ["AC 43.13-1B", "par. 7-40f", /never beyond the greatest plus drag/],
  ["AC 43.13-1B", "par. 7-40g", /bolt head.*drag/],
  ["AC 43.13-1B", "par. 7-40h", /adapter/],
  ["AC 43.13-1B", "par. 7-40i", /only where the manufacturer gives no torque/],
  ["Army TM 1-1500-204-23-9", "figure 8-16", /centre of its grip.*pivot/],
  ["NAVEDTRA 14315", "torque wrenches", /divided by 12/],
  ["AC 43.13-1B", "par. 7-148c", /middle.*next to the thimble.*farthest/],
  ["AC 43.13-1B", "par. 7-180", /double wrap/],
  ["NAVEDTRA 14315", "application of sealants", /hours after mixing, at 77 °F and 50 %/],
  ["an airline's process specification 07-01", "tack free", /polyethylene film/],
  ["an airline's process specification 07-01", "cured", /Shore A 35/],
  ["MIL-S-29574 and AMS 3277", "scope", /2 to 3 h at 75 °F or more and 4 h at 40 °F/],
  ["USAF TO 1-1-700", "par. 12.5.1.3", /90 °F or lower and keep it there 30 min/],
  ["USAF TO 1-1-700", "par. 12.8", /update test/],
  ["an airliner's maintenance manual", "28-11-0, page 812", /below 40 %/],
  ["Army TM 1-1500-204-23-6", "par. 6-1a(4)", /oldest date of manufacture/],
  ["Army TM 1-1500-204-23-6", "par. 6-2a(1)(d)", /MIL-A-46146/],
  ["DTIC ADA218585", "summary", /2 to 3 years/],
  ["AC 43.13-1B", "par. 10-15a to e", /indoors, level and clean/],
  ["AC 43.13-1B", "par. 10-2c", /0\.2 %/],
  ["FAA-H-8083-1B", "ballast", /permanent ballast is red/],
  ["AC 20-27G", "as quoted in a builders' discussion", /dates and the names of everyone/],
  ["MD-RA standard inspections", "pre-cover", /before it is covered.*form C21/],
  ["TC AMA 549.5A", "appendix A", /more than half of fabrication and assembly/],
  ["list for a technical counselor's visit", "aileron", /jam nut of the control tube tight/],
  ["NAVEDTRA 14018", "chapter 13, rivet spacing", /to the centre of the rivet/],
  ["NAVEDTRA 14018", "chapter 13, rivet spacing", /closer than 4 D .*further apart than 8 D/],
  ["NAVEDTRA 14018", "table 13-2", /slight clearance/],
  ["AC 43.13-1B", "table 4-6", /alclad.*slightly smaller/],
  ["AC 43.13-1B", "table 4-6", /2024-T3.*appreciably smaller.*quench/],
  ["Army TM 1-1500-204-23-9", "par. 7-3d", /tension.*temperature.*chart of the aircraft/],
  ["Army TM 1-1500-204-23-9", "par. 7-3c", /dial.*table.*that instrument/],
  ["AC 43.13-1B", "par. 7-148b", /other materials than copper.*engineering/],
  ["AC 43.13-1B", "par. 7-148d", /lap splice.*two sleeves.*full strength/],
  ["AC 43.13-1B", "table 7-8, note 1", /galvanised or tinned steel or soft iron/],
  ["NAVEDTRA 14315", "application of sealants", /rivets driven inside the application time/],
  ["NAVEDTRA 14315", "application of sealants", /90 to 100 °F.*better adhesion/],
  ["NAVEDTRA 14315", "application of sealants", /too stiff.*thrown away/],
  ["NAVEDTRA 14315", "application of sealants", /dichromate.*manganese dioxide.*-65 to 250 °F/],
  ["an airline's process specification 07-01", "assembly time", /longest.*faying-surface.*last/],
  ["Army TM 1-1500-204-23-6", "cements and sealants", /stir fully.*not thin.*lumpy/],
  ["an epoxy maker's note on warm-temperature", "working time", /18 °F above 72 °F halve/],
  ["an epoxy maker's basics", "a hardener at 72 °F", /9 to 12 min.*60 to 70 min.*6 to 8 h/],
  ["an epoxy maker's note on cold weather", "temperatures", /77 °F.*dormant at 55 °F/],
  ["a boat plan seller's note on epoxy", "joints", /24 h at 70 °F.*days/],
  ["AC 43.13-1B", "par. 10-15g", /7\.5 lb per gallon/],
  ["AC 43.13-1B", "note after par. 10-15g", /CAR 3.*oil out.*part 23.*in/],
  ["14 CFR 25.29", "empty weight", /hydraulic fluid counts.*potable water does not/],
  ["AC 20-27G", "par. 1c", /not the only one, and not a regulation/],
  ["builders' association, article on inspections", "history", /1983/],
  ["builders' association, article on inspection techniques", "definition", /known standard/],
  ["MD-RA standard inspections", "pre-cover", /factory.*shipping papers.*exempt/],
  ["MD-RA standard inspections", "stages", /25 h.*complete before the next.*registration waits/],
  ["MD-RA standard inspections", "construction procedure", /before construction begins/],
  ["TC AMA 549.5A", "appendix A", /fabricate.*weld.*cover or paint.*assemble.*fasteners/],
  [
    "builders' association, article on parts",
    "before closing",
    /nothing is left.*tools are counted/,
  ],
  [
    "builders' association, article on parts",
    "before closing",
    /cannot be fitted afterwards.*pitot/,
  ],
  ["builders' association, article on parts", "before closing", /left over is a finding/],
  ["list for a technical counselor's visit", "open for the visit", /cowl and spinner.*mirror/],
  ["list for a technical counselor's visit", "flap and wing root", /hinge pin.*spar bolt safetied/],
  ["list for a technical counselor's visit", "wing tip and forward wing", /position lights/],
];

test.each(rows)("%s, %s", (document, place, words) => {
  const there = said.filter(
    ({ source }) => source.startsWith(document) && source.endsWith(`, ${place}`),
  );
  expect(there.map(({ says }) => says).filter((says) => words.test(says))).toHaveLength(1);
});

test("everything that is told is looked up here", () => {
  const unproven = said.filter(
    ({ source, says }) =>
      !rows.some(
        ([document, place, words]) =>
          source.startsWith(document) && source.endsWith(`, ${place}`) && words.test(says),
      ),
  );
  expect(unproven.map(({ source, says }) => `${source}: ${says}`)).toEqual([]);
});
