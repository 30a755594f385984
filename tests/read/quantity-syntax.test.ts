import { describe, expect, test } from "vitest";
import {
  parseQuantities,
  parseQuantity,
  type QuantityContext,
} from "../../src/read/quantity-syntax.ts";

describe("parseQuantity reads", () => {
  test.each<[string, string, string, QuantityContext?]>([
    ["0.1250 in", "1/8", "in"],
    [".125 in", "1/8", "in"],
    ["0.5in", "1/2", "in"],
    ["3/32 in", "3/32", "in"],
    ["1 3/16 in", "19/16", "in"],
    ["1-3/16 in", "19/16", "in"],
    ["-1 3/16 in", "-19/16", "in"],
    ['3/32"', "3/32", "in"],
    ["−0.5 mm", "-1/2", "mm"],
    ["+0.5 mm", "1/2", "mm"],
    ["-40 °F", "-40", "°F"],
    ["61 °F", "61", "°F"],
    ["18 F°", "18", "Δ°F"],
    ["48 %", "48", "%"],
    ["31 in-lbs", "31", "lbf·in"],
    ["2.8 N·m", "14/5", "N·m"],
    ["12.5 deg", "25/2", "°"],
    ["12° 30'", "25/2", "°"],
    ["-12° 30'", "-25/2", "°"],
    ["12 deg 30 arcmin", "25/2", "°"],
    ["5 ft 3 in", "21/4", "ft"],
    ["5' 3 1/2\"", "127/24", "ft"],
    ["2 lb 3 oz", "35/16", "lb"],
    ["3'-4\"", "10/3", "ft"],
    ["-0 ft 6 in", "-1/2", "ft"],
    ["½ in", "1/2", "in"],
    ["1½ in", "3/2", "in"],
    ["1 ⅜ in", "11/8", "in"],
    ['1-⅞"', "15/8", "in"],
    ["−¾ in", "-3/4", "in"],
    ["5 ft 3½ in", "127/24", "ft"],
    ["1⁄2 in", "1/2", "in"],
    ["-459.67 °F", "-459.67", "°F"],
    ["3 threads", "3", "count"],
    ["No. 30", "257/2000", "in"],
    ["no 30", "257/2000", "in"],
    ["#30", "257/2000", "in"],
    ["#30 drill", "257/2000", "in"],
    ["drill 30", "257/2000", "in"],
    ["number 7", "201/1000", "in"],
    ["letter F drill", "257/1000", "in"],
    ["drill F", "257/1000", "in"],
    ["F drill", "257/1000", "in"],
    ["letter f", "257/1000", "in"],
    ["AN470AD4-5", "1/8", "in"],
    ["MS20426AD3-3.5", "3/32", "in"],
    ["AD4", "1/8", "in"],
    ["AN4", "1/4", "in"],
    ["AN4-7", "1/4", "in"],
    ["AN5C6A", "5/16", "in"],
    ["AN4H-7A", "1/4", "in"],
    ["-4", "1/8", "in", "dash"],
    ["D4-5", "1/8", "in", "dash"],
    ["3/32 in", "3/32", "in", "dash"],
    ["4.5 in", "9/2", "in", "dash"],
    ["±0.015 in", "3/200", "in", "tolerance"],
    ["± 1/64 in", "1/64", "in", "tolerance"],
    ["0.015 in", "3/200", "in", "tolerance"],
  ])("%s", (text, amount, unit, context) => {
    const parsed = parseQuantity(text, context);
    expect(parsed).toMatchObject({ ok: true, quantity: { typed: text, unit: { symbol: unit } } });
    expect(parsed.ok && parsed.quantity.amount.equals(amount)).toBe(true);
  });

  test("blanks around it are not part of what was typed", () => {
    const parsed = parseQuantity("  0.50 in ");
    expect(parsed.ok && parsed.quantity.typed).toBe("0.50 in");
  });

  test("long decimals lose nothing", () => {
    const parsed = parseQuantity("0.12345678901234567890123456789 in");
    expect(parsed.ok && parsed.quantity.amount.n).toBe(12345678901234567890123456789n);
  });
});

describe("parseQuantity refuses", () => {
  test.each<[string, string, string, string, QuantityContext?]>([
    // text, what the caret stands under, what was expected, part of the help
    ["0,125 in", "0,125", "a decimal point, not a comma", "write `0.125 in`"],
    ["AN21-7", "AN21-7", "a number with its unit", "write it as in"],
    ["-500 °F", "-500 °F", "above absolute zero", "nothing is colder than -459.67 °F"],
    ["-1 K", "-1 K", "above absolute zero", "`18 Δ°F`"],
    ["½½ in", "½ in", "a known unit", "is not known"],
    ["1,100 lbf·in", "1,100", "a decimal point", "`1100 lbf·in` for thousands, or `1.100 lbf·in`"],
    ["1,100", "1,100", "a decimal point", "write `1100` for thousands"],
    ["1,234.5 in", "1,234.5", "a number without thousands separators", "write `1234.5 in`"],
    ["1.234,5 in", "1.234,5", "one decimal point and no comma", "one decimal point"],
    ["1 100 lbf·in", "1 100", "without thousands separators", "write `1100 lbf·in`"],
    ["1'100 lbf·in", "1'100", "without thousands separators", "write `1100 lbf·in`"],
    ["10 000 000 mm", "10 000 000", "without thousands separators", "write `10000000 mm`"],
    ["1e3 in", "1e3", "a number written out", "write all its digits"],
    ["0.19", "0.19", "a unit behind `0.19`", "write the unit behind the number"],
    ["  0.19", "0.19", "a unit behind `0.19`", "write the unit behind the number"],
    ["0.19 inn", "inn", "a known unit", "did you mean `in`?"],
    ["0.19 parsnips", "parsnips", "a known unit", "lengths are written in"],
    ["0.5 survey ft", "survey ft", "a known unit", "`survey ft` is not known"],
    ["2.8 nm", "nm", "a known unit", "did you mean `N·m`?"],
    ["1 in 3 in", "in 3 in", "a known unit", "not known"],
    ["5 ft 14 in", "ft 14 in", "a known unit", "not known"],
    ["5.5 ft 3 in", "ft 3 in", "a known unit", "not known"],
    ["5 ft -3 in", "ft -3 in", "a known unit", "not known"],
    ["3/0 in", "3/0", "other than zero below the line", ""],
    ["1 17/16 in", "1 17/16", "a fraction below one", "`1 3/16 in`"],
    ["0.1-0.2 in", "0.1-0.2 in", "one value, not a range", "limits belong to the rule"],
    ["0.19 ± 0.01 in", "0.19 ± 0.01 in", "one value, not a range", "limits belong to the rule"],
    ["±0.015 in", "±0.015 in", "one value, without `±`", "belongs to its rule"],
    ["±-0.015 in", "-0.015", "a tolerance without a sign", "", "tolerance"],
    ["± in", "± in", "a number with its unit", "", "tolerance"],
    ["~0.3 in", "~", "a number with its unit", "as the instrument showed it"],
    ["about 0.3 in", "about", "a number with its unit", "as the instrument showed it"],
    ["tight", "tight", "a number with its unit", "as in `0.19 in`"],
    ["in", "in", "a number with its unit", "as in `0.19 in`"],
    ["No. 90", "No. 90", "a drill from No. 1 to No. 80", ""],
    ["No. 30.5", "No. 30.5", "a number with its unit", ""],
    ["AD40", "AD40", "a rivet from dash 2 to dash 12", "write its diameter"],
    ["AN3-5A", "AN3-5A", "a number with its unit", "called 3/16 in and 0.190 in"],
    ["-4", "-4", "a unit behind `-4`", ""],
    [`0.${"1".repeat(99)} in`, `0.${"1".repeat(99)}`, "at most 60 characters", ""],
  ])("%s", (text, under, expected, help, context) => {
    const parsed = parseQuantity(text, context);
    if (parsed.ok) throw new Error(`${text} was read as ${parsed.quantity.amount.toFraction()}`);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(under);
    expect(parsed.expected).toContain(expected);
    expect(parsed.help.join("\n")).toContain(help);
  });

  test.each(["", "   "])("%j, with one character meant", (text) => {
    expect(parseQuantity(text)).toMatchObject({ ok: false, offset: 0 });
    const parsed = parseQuantity(text);
    expect(parsed.ok || parsed.length).toBe(Math.max(1, text.length));
  });
});

describe("parseQuantities reads", () => {
  test.each([
    ["[0.141, 0.140, 0.143] in", ["0.141 in", "0.140 in", "0.143 in"]],
    ["[ 0.141 , 0.140 ]in", ["0.141 in", "0.140 in"]],
    ["0.141, 0.140 in", ["0.141 in", "0.140 in"]],
    ["0.141,0.140 in", ["0.141 in", "0.140 in"]],
    ["0.141; 0.140 in", ["0.141 in", "0.140 in"]],
    ["[20, 25] lbf·in", ["20 lbf·in", "25 lbf·in"]],
    ["[0.1, 0.2 in]", ["0.1 in", "0.2 in"]],
    ["0.141 in, 3.5 mm", ["0.141 in", "3.5 mm"]],
    ["[0.141 in, 3.5 mm]", ["0.141 in", "3.5 mm"]],
    ["1 3/16, 1 1/4 in", ["1 3/16 in", "1 1/4 in"]],
    ['3/32, 1/8"', ['3/32 "', '1/8"']],
    ["No. 30, No. 28", ["No. 30", "No. 28"]],
    ["0.19 in", ["0.19 in"]],
  ])("%s", (text, typed) => {
    const parsed = parseQuantities(text);
    if (!parsed.ok) throw new Error(parsed.expected);
    expect(parsed.quantities.map(({ quantity }) => quantity.typed)).toEqual(typed);
    // Each is found again where it is said to stand.
    for (const { quantity, offset, length } of parsed.quantities)
      expect(quantity.typed.startsWith(text.slice(offset, offset + length))).toBe(true);
  });
});

describe("parseQuantities refuses", () => {
  test.each([
    ["0,141 in", "0,141", "a decimal point, not a comma", "`0.141 in`"],
    ["[20,25] lbf·in", "20,25", "a decimal point, not a comma", "put a blank behind the comma"],
    ["[0.1, 0.2]", "0.2", "a unit behind `0.2`", ""],
    ["[0.1,, 0.2] in", ",", "a number with its unit", ""],
    ["[] in", "]", "a number with its unit", ""],
    ["[1, 2] furlongs", "furlongs", "a known unit", ""],
    ["[0.1, 0.2 in", "[", "between one `[` and one `]`", "`[0.141, 0.140] in`"],
    ["[[1], [2]] in", "[", "between one `[` and one `]`", ""],
    ["[0.1 in, 0.2] in", "0.1 in", "either one unit behind the list", ""],
    ["0.141 mm, 0.140, 0.3 in", "0.141 mm", "either one unit behind the list", ""],
    ["0.1 in, thick, 0.3 in", "thick", "a number with its unit", ""],
  ])("%s", (text, under, expected, help) => {
    const parsed = parseQuantities(text);
    if (parsed.ok) throw new Error(`${text} was read`);
    expect(text.slice(parsed.offset, parsed.offset + parsed.length)).toBe(under);
    expect(parsed.expected).toContain(expected);
    expect(parsed.help.join("\n")).toContain(help);
  });
});
