import Fraction from "fraction.js";

/** What a unit measures. Only equal dimensions compare. */
export const dimensions = [
  "length",
  "area",
  "volume",
  "mass",
  "density",
  "force",
  "torque",
  "pressure",
  "angle",
  "temperature",
  "temperature difference",
  "time",
  "ratio",
  "count",
] as const;
export type Dimension = (typeof dimensions)[number];

/** A unit as an exact ratio to the base unit of its dimension. */
export interface Unit {
  /** As printed: `in`, `lbf·in`, `°F`. */
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Base units per unit. */
  readonly factor: Fraction;
  /** Added after `factor`; only temperatures have one. */
  readonly offset: Fraction;
  /** Where the factor comes from. */
  readonly source: string;
}

const si = "SI prefix or SI base unit, exact";
const nist = (entry: string) => `NIST SP 811, appendix B.8: ${entry}`;
const none = new Fraction(0);

// What the exact factors rest on: the yard and pound of 1959, standard gravity, and the
// gallon of 231 cubic inches. The products carry more digits than SP 811 prints; rounded
// to its seven digits they are the printed ones.
const inch = new Fraction("0.0254");
const foot = inch.mul(12);
const pound = new Fraction("0.45359237");
const gravity = new Fraction("9.80665");
const poundForce = pound.mul(gravity);
const cubicInch = inch.mul(inch).mul(inch);
const gallon = cubicInch.mul(231);
const degreeFahrenheit = new Fraction(5, 9);

type Row = readonly [
  symbol: string,
  factor: Fraction | string,
  source: string,
  otherNames?: string,
  offset?: Fraction,
];

// Other names are separated by two spaces, because some hold one space.
const rows: Readonly<Record<Dimension, readonly Row[]>> = {
  // Base unit metre. There is no survey foot here (0.3048006 m): shops do not use it.
  length: [
    ["m", "1", si, "metre  metres  meter  meters"],
    ["cm", "0.01", si, "centimetre  centimetres  centimeter  centimeters"],
    ["mm", "0.001", si, "millimetre  millimetres  millimeter  millimeters"],
    ["µm", "0.000001", si, "μm  um  micron  microns  micrometre  micrometres"],
    ["in", inch, nist("inch (in) to metre, 2.54 E-02 exact"), 'inch  inches  in.  "  ″  ”'],
    ["ft", foot, nist("foot (ft) to metre, 3.048 E-01 exact"), "foot  feet  ft.  '  ′  ’"],
    ["yd", foot.mul(3), nist("yard (yd) to metre, 9.144 E-01 exact"), "yard  yards"],
    ["mi", foot.mul(5280), nist("mile to metre, 1.609344 E+03 exact"), "mile  miles"],
    [
      "nmi",
      "1852",
      nist("mile, nautical, to metre, 1.852 E+03 exact"),
      "nautical mile  nautical miles",
    ],
    ["mil", inch.div(1000), nist("mil (0.001 in) to metre, 2.54 E-05 exact"), "mils  thou"],
    [
      "µin",
      inch.div(1_000_000),
      nist("microinch to metre, 2.54 E-08 exact"),
      "μin  uin  microinch  microinches",
    ],
  ],
  // Base unit square metre.
  area: [
    ["m²", "1", si, "m2  m^2  sq m"],
    ["cm²", "0.0001", si, "cm2  cm^2  sq cm"],
    ["mm²", "0.000001", si, "mm2  mm^2  sq mm"],
    [
      "in²",
      inch.mul(inch),
      nist("square inch to square metre, 6.4516 E-04 exact"),
      "in2  in^2  sq in",
    ],
    [
      "ft²",
      foot.mul(foot),
      nist("square foot to square metre, 9.290304 E-02 exact"),
      "ft2  ft^2  sq ft",
    ],
  ],
  // Base unit cubic metre. Gallons, quarts and fluid ounces are those of the US unless marked.
  volume: [
    ["m³", "1", si, "m3  m^3"],
    ["L", "0.001", si, "l  litre  litres  liter  liters"],
    ["mL", "0.000001", si, "ml  millilitre  millilitres  milliliter  milliliters"],
    ["cm³", "0.000001", si, "cm3  cm^3  cc"],
    ["in³", cubicInch, nist("cubic inch to cubic metre, 1.638706 E-05"), "in3  in^3  cu in"],
    ["gal", gallon, nist("gallon (US) to cubic metre, 3.785412 E-03"), "gallon  gallons  US gal"],
    ["qt", gallon.div(4), nist("liquid quart (US) to cubic metre, 9.463529 E-04"), "quart  quarts"],
    [
      "fl oz",
      gallon.div(128),
      nist("fluid ounce (US) to cubic metre, 2.957353 E-05"),
      "floz  fluid ounce  fluid ounces",
    ],
    [
      "imp gal",
      "0.00454609",
      nist("gallon (imperial) to cubic metre, 4.54609 E-03 exact"),
      "imperial gallon  imperial gallons",
    ],
    [
      "imp fl oz",
      new Fraction("0.00454609").div(160),
      nist("ounce (imperial fluid) to cubic metre, 2.841306 E-05"),
    ],
  ],
  // Base unit kilogram.
  mass: [
    ["kg", "1", si, "kilogram  kilograms"],
    ["g", "0.001", si, "gram  grams"],
    ["mg", "0.000001", si, "milligram  milligrams"],
    [
      "lb",
      pound,
      nist("pound (avoirdupois) to kilogram, 4.535924 E-01"),
      "lbs  lb.  lbs.  lbm  pound  pounds",
    ],
    [
      "oz",
      pound.div(16),
      nist("ounce (avoirdupois) to kilogram, 2.834952 E-02"),
      "ounce  ounces  oz.",
    ],
  ],
  // Base unit kilogram per cubic metre. A gallon is that of the US unless marked.
  density: [
    ["kg/m³", "1", si, "kg/m3  kg/m^3"],
    ["kg/L", "1000", si, "kg/l  g/mL  g/ml  g/cm³  g/cm3  g/cc"],
    [
      "lb/gal",
      pound.div(gallon),
      nist("pound per gallon (US) to kilogram per litre, 1.198264 E-01"),
      "lbs/gal  lb/US gal  lb per gal  lb per gallon  pounds per gallon",
    ],
    [
      "lb/imp gal",
      pound.div("0.00454609"),
      nist("pound per gallon (imperial) to kilogram per litre, 9.977637 E-02"),
    ],
  ],
  // Base unit newton. A plain `lb` is a mass: a pull is typed `lbf`.
  force: [
    ["N", "1", si, "newton  newtons"],
    ["kN", "1000", si, "kilonewton  kilonewtons"],
    [
      "lbf",
      poundForce,
      nist("pound-force (lbf) to newton, 4.448222 E+00"),
      "lbs force  lb force  pound-force  pounds-force  pound force  pounds force",
    ],
    [
      "ozf",
      poundForce.div(16),
      nist("ounce-force (ozf) to newton, 2.780139 E-01"),
      "ounce-force  ounces-force",
    ],
    ["kgf", gravity, nist("kilogram-force (kgf) to newton, 9.80665 E+00 exact"), "kilogram-force"],
  ],
  // Base unit newton metre.
  torque: [
    [
      "N·m",
      "1",
      si,
      "Nm  N m  N-m  newton metre  newton metres  newton meter  newton meters  newton-metres  newton-meters",
    ],
    ["N·cm", "0.01", si, "Ncm  N cm  N-cm"],
    [
      "lbf·in",
      poundForce.mul(inch),
      nist("pound-force inch to newton metre, 1.129848 E-01"),
      "lbf-in  lbf in  lbfin  lb-in  lb·in  lb in  lbs-in  in-lb  in-lbs  in-lbf  in·lb  in·lbf  in lb  in lbs  in lbf  inlb  inlbs  inlbf  inch-pound  inch-pounds  inch pound  inch pounds  pound-inch  pound-inches",
    ],
    [
      "lbf·ft",
      poundForce.mul(foot),
      nist("pound-force foot to newton metre, 1.355818 E+00"),
      "lbf-ft  lbf ft  lbfft  lb-ft  lb·ft  lb ft  lbs-ft  ft-lb  ft-lbs  ft-lbf  ft·lb  ft·lbf  ft lb  ft lbs  ft lbf  ftlb  ftlbs  ftlbf  foot-pound  foot-pounds  foot pound  foot pounds  pound-foot  pound-feet",
    ],
    [
      "ozf·in",
      poundForce.div(16).mul(inch),
      nist("ounce-force inch to newton metre, 7.061552 E-03"),
      "ozf-in  oz-in  in-oz  in-ozf  inch-ounces",
    ],
    [
      "kgf·m",
      gravity,
      nist("kilogram-force metre to newton metre, 9.80665 E+00 exact"),
      "kgf-m  kg-m  m-kg  kgm",
    ],
    [
      "kgf·cm",
      gravity.div(100),
      nist("kilogram-force metre to newton metre, 9.80665 E+00 exact"),
      "kgf-cm  kg-cm  cm-kg",
    ],
  ],
  // Base unit pascal.
  pressure: [
    ["Pa", "1", si, "pascal  pascals"],
    ["hPa", "100", si, "mbar  millibar  millibars"],
    ["kPa", "1000", si, "kilopascal  kilopascals"],
    ["MPa", "1000000", si, "megapascal  megapascals"],
    ["bar", "100000", nist("bar to pascal, 1.0 E+05 exact")],
    [
      "psi",
      poundForce.div(inch.mul(inch)),
      nist("pound-force per square inch (psi) to pascal, 6.894757 E+03"),
      "lbf/in²  lbf/in2  lb/in²  lb/in2  lb/sq in",
    ],
  ],
  // Base unit degree, not radian: a degree is pi/180 rad, which is no ratio of integers.
  angle: [
    ["°", "1", "base unit of angle in this program", "deg  degs  degree  degrees  º"],
    [
      "arcmin",
      new Fraction(1, 60),
      nist("minute (angle), 1/60 degree exact"),
      "arcminute  arcminutes",
    ],
    [
      "arcsec",
      new Fraction(1, 3600),
      nist("second (angle), 1/3600 degree exact"),
      "arcsecond  arcseconds",
    ],
  ],
  // Base unit kelvin. SP 811: K = (°F + 459.67)/1.8 and K = °C + 273.15.
  temperature: [
    ["K", "1", si, "kelvin  kelvins"],
    [
      "°C",
      "1",
      nist("degree Celsius to kelvin, T/K = t/°C + 273.15"),
      "C  degC  deg C  ºC  ° C  celsius  degrees C  ℃",
      new Fraction("273.15"),
    ],
    [
      "°F",
      degreeFahrenheit,
      nist("degree Fahrenheit to kelvin, T/K = (t/°F + 459.67)/1.8"),
      "F  degF  deg F  ºF  ° F  fahrenheit  degrees F  ℉",
      new Fraction("459.67").mul(degreeFahrenheit),
    ],
  ],
  // Base unit kelvin as a step of temperature: a rise of 18 Δ°F is one of 10 Δ°C.
  "temperature difference": [
    ["ΔK", "1", si, "∆K  delta K"],
    [
      "Δ°C",
      "1",
      nist("temperature interval, degree Celsius to kelvin, 1.0 exact"),
      "∆°C  ΔC  C°  delta °C  delta C  °C rise  °C difference",
    ],
    [
      "Δ°F",
      degreeFahrenheit,
      nist("temperature interval, degree Fahrenheit to kelvin, 5.555556 E-01"),
      "∆°F  ΔF  F°  delta °F  delta F  °F rise  °F difference",
    ],
  ],
  // Base unit second.
  time: [
    ["s", "1", si, "sec  secs  second  seconds"],
    ["min", "60", nist("minute to second, 6.0 E+01 exact"), "mins  minute  minutes"],
    ["h", "3600", nist("hour to second, 3.6 E+03 exact"), "hr  hrs  hour  hours"],
    ["d", "86400", nist("day to second, 8.64 E+04 exact"), "day  days"],
  ],
  // Base unit one.
  ratio: [
    ["%", "0.01", "one per hundred, exact", "percent  per cent  pct"],
    ["ppm", "0.000001", "one per million, exact"],
  ],
  // Base unit one thing.
  count: [
    [
      "count",
      "1",
      "whole things, exact",
      "each  ea  pcs  pc  pieces  threads  thread  turns  turn  wraps  holes  rivets  times",
    ],
  ],
};

const byName = new Map<string, Unit>();
const bySymbol: Unit[] = [];

for (const dimension of dimensions) {
  for (const [symbol, factor, source, otherNames = "", offset = none] of rows[dimension]) {
    const unit: Unit = { symbol, dimension, factor: new Fraction(factor), offset, source };
    bySymbol.push(unit);
    for (const name of [symbol, ...otherNames.split("  ")]) if (name) byName.set(plain(name), unit);
  }
}

// Capitals carry meaning in these: newton metre or nanometre or nautical mile, mega or milli,
// kilonewton or knot.
const spelledExactly = new Set(["nm", "mpa", "mg", "kn"]);
const byLowerCase = new Map<string, Unit>();
for (const [name, unit] of byName) {
  const lower = name.toLowerCase();
  if (name.length > 1 && !spelledExactly.has(lower)) byLowerCase.set(lower, unit);
}

/** Every unit, by dimension as in `dimensions`. */
export const units: readonly Unit[] = bySymbol;

/** Every name a unit goes by, symbols included, as `unitNamed` knows them. */
export const unitNames: readonly string[] = [...byName.keys()];

/**
 * The unit that goes by a name, as a shop writes it: `in`, `inches`, `"`, `in-lb`, `lbf·in`.
 * Capitals are forgiven in names of two letters and more, unless they change the meaning.
 * @returns `undefined` for a name that is not known.
 * @example unitNamed("in-lbs")?.symbol // "lbf·in"
 */
export function unitNamed(text: string): Unit | undefined {
  const name = plain(text);
  return byName.get(name) ?? byLowerCase.get(name.length > 1 ? name.toLowerCase() : "");
}

/**
 * The unit that a table of this program names.
 * @throws RangeError for a name that is not known: a fault in the program. What a builder
 *   types goes through `unitNamed`.
 */
export function unitOf(name: string): Unit {
  const unit = unitNamed(name);
  if (!unit) throw new RangeError(`no unit is called ${name}`);
  return unit;
}

/** The unit with factor 1 and no offset that others of the dimension are ratios to, if it has a name. */
export function baseUnitOf(dimension: Dimension): Unit | undefined {
  return bySymbol.find(
    (unit) => unit.dimension === dimension && unit.factor.equals(1) && unit.offset.equals(0),
  );
}

/**
 * The unit of a step on a temperature scale: `Δ°F` for `°F`. Any other unit is its own.
 * @example differenceUnitOf(unitNamed("°F")).symbol // "Δ°F"
 */
export function differenceUnitOf(unit: Unit): Unit {
  return (unit.dimension === "temperature" && byName.get(`Δ${unit.symbol}`)) || unit;
}

// Multiplication dots come in several characters, and so do blanks.
function plain(name: string): string {
  return name
    .trim()
    .replace(/\s+/gu, " ")
    .replace(/ ?[·⋅∙•*] ?/gu, "·")
    .replace(/[‐‑‒–]/gu, "-");
}
