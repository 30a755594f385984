// Source: "Linear interpolation from a table", lecture note, https://studylib.net/doc/10476799,
// with table A.1 of Finnemore and Franzini (2002): specific weight of water 62.37 lb/ft³ at
// 60 °F and 62.30 lb/ft³ at 70 °F; the result for 62.5 °F is printed as 62.3525. Status: read.
// Kept here as the force of one cubic foot.
//
// Source: TM 1-1500-204-23-9, par. 7-3d with figure 7-7, "typical cable rigging tension chart":
// 1/8 inch 7 x 19 cable at 85 °F, required tension 70 pounds. Status: read. The chart's other
// points were not read: the rows around it here are invented, and only the printed one is tried.
// https://aviationmiscmanuals.tpub.com/TM-1-1500-204-23-9/css/TM-1-1500-204-23-9_126.htm

import { expect, test } from "vitest";
import { interpolate } from "../../src/compute/interpolate.ts";
import { quantity } from "../support/small-measurements.ts";

test("between 60 and 70 °F: 62.3525 lbf at 62.5 °F", () => {
  const water = [
    { at: quantity("60 °F"), value: quantity("62.37 lbf") },
    { at: quantity("70 °F"), value: quantity("62.30 lbf") },
  ];
  expect(interpolate(water, quantity("62.5 °F"))?.typed).toBe("62.3525 lbf");
});

test("a row of the manual's own is hit exactly: 70 lb at 85 °F", () => {
  const cable = [
    { at: quantity("60 °F"), value: quantity("55 lbf") },
    { at: quantity("85 °F"), value: quantity("70 lbf") },
    { at: quantity("110 °F"), value: quantity("86 lbf") },
  ];
  expect(interpolate(cable, quantity("85 °F"))?.typed).toBe("70 lbf");
});

// Source: the same manual, par. 7-3c with figure 7-6: riser 2, 3/16 in cable, dial 48 is 70 lb.
// Status: read. The rows around it are invented.
test("a tensiometer's dial of 48 with riser 2 on 3/16 cable: 70 lb", () => {
  const riser = [
    { at: quantity("40 count"), value: quantity("50 lbf") },
    { at: quantity("48 count"), value: quantity("70 lbf") },
    { at: quantity("55 count"), value: quantity("90 lbf") },
  ];
  expect(interpolate(riser, quantity("48 count"))?.typed).toBe("70 lbf");
});
