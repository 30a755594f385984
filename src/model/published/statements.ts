// What publications say in words: nothing here is a limit that a reading could be held against.
// Each statement is told in this program's words, with the document it was seen in.

import type { Citation } from "../citation.ts";

/** One thing that a publication says. */
export interface Statement {
  readonly says: string;
  readonly citation: Citation;
}

/** Statements about one kind of work. */
export interface StatementGroup {
  readonly subject: string;
  /** What has to be said of the whole group. */
  readonly note?: string;
  readonly statements: readonly Statement[];
}

type Row = readonly [place: string, says: string];

// Statements of one document, all read in the source or a copy of its pages.
const read = (
  { document, edition }: Pick<Citation, "document" | "edition">,
  ...rows: readonly Row[]
): Statement[] =>
  rows.map(([place, says]) => ({
    says,
    citation: { document, ...(edition === undefined ? {} : { edition }), place, status: "read" },
  }));

// The same, where the words were seen in a quotation by others.
const quoted = (document: Pick<Citation, "document" | "edition">, ...rows: readonly Row[]) =>
  read(document, ...rows).map(
    ({ says, citation }): Statement => ({
      says,
      citation: { ...citation, status: "secondary" },
    }),
  );

const circular = { document: "AC 43.13-1B", edition: "8 Sep 1998, change 1 27 Sep 2001" };
const navyStructures = { document: "NAVEDTRA 14018" };
const navySealants = { document: "NAVEDTRA 14315" };
const armyGeneral = { document: "Army TM 1-1500-204-23-6" };
const armyHardware = { document: "Army TM 1-1500-204-23-9" };
const airForce = { document: "USAF TO 1-1-700" };
const airliner = { document: "an airliner's maintenance manual" };
const airlineSpecification = { document: "an airline's process specification 07-01" };
const canada = { document: "MD-RA standard inspections", edition: "Canada" };
const canadaPortion = { document: "TC AMA 549.5A", edition: "Canada" };
const counselor = { document: "list for a technical counselor's visit" };
const weighing = { document: "FAA-H-8083-1B" };
const closing = { document: "builders' association, article on parts left over inside" };

/** Every statement, by kind of work. */
export const statementGroups: readonly StatementGroup[] = [
  {
    subject: "Rivets and their holes",
    statements: [
      ...read(
        circular,
        ["par. 4-58", "rivet holes are round, straight, free of cracks and deburred"],
        [
          "par. 4-57b",
          "a hole too large is drilled or reamed for the next larger rivet; the least edge distance and spacing still hold",
        ],
        [
          "par. 4-57a(4)",
          "the standard heads are the 100-degree countersunk MS20426 and the universal MS20470; half sizes of length exist, as in AD4-3.5",
        ],
        [
          "par. 4-57f(9)",
          "blind pull rivets of the hardware-shop kind are not for certificated aircraft structure",
        ],
        [
          "par. 4-58a",
          "rivets through tubes that are loaded in shear are hammered only enough for a small head, not for a full roundhead",
        ],
      ),
      ...read(
        navyStructures,
        ["chapter 13, rivet spacing", "distances are measured to the centre of the rivet"],
        [
          "chapter 13, rivet spacing",
          "rivets stand seldom closer than 4 D and seldom further apart than 8 D",
        ],
        ["table 13-2", "the drill for every rivet leaves a slight clearance"],
      ),
    ],
  },
  {
    subject: "Sheet, stringers and splices",
    statements: read(
      circular,
      [
        "tables 4-9, 4-10 and 4-11",
        "single-lap sheet joints take 75 % of the number in the table, stringers in the upper wing surface or the fuselage 80 %, intermediate frames 60 %",
      ],
      [
        "tables 4-9, 4-10 and 4-11",
        "what stands above the underline fails by bearing of the sheet, what stands below it by shear of the rivet",
      ],
      [
        "par. 4-58h",
        "a slightly bent stringer may be straightened cold, and is then looked over for cracks with a magnifier",
      ],
      ["par. 4-58i", "heat-treated alloy is not heated locally to help bending or straightening"],
      ["table 4-6", "alclad may take slightly smaller bend radii than the bare temper"],
      [
        "table 4-6",
        "2024-T3 and the like take appreciably smaller bend radii right after quenching",
      ],
    ),
  },
  {
    subject: "Bolts, nuts and torque",
    statements: [
      ...read(
        circular,
        ["par. 7-38", "cotter pins and safety wire are never used twice"],
        [
          "par. 7-39",
          "a light drive fit is an interference of about 0.0006 in on a 5/8 in bolt; such bolts, NAS close-tolerance bolts and AN clevis bolts do not get the larger hole",
        ],
        [
          "par. 7-40d",
          "friction drag is added to the torque wanted, and the sum set on the wrench",
        ],
        [
          "par. 7-40e",
          "the pull is even; after chatter or a jerk the nut is backed off and torqued again",
        ],
        [
          "par. 7-40f",
          "a castle nut is lined up from the least torque plus drag on and never beyond the greatest plus drag; where no hole lines up, the washer or the nut is changed",
        ],
        ["par. 7-40g", "torque put on at the bolt head takes the drag as well"],
        [
          "par. 7-40h",
          "an adapter that changes the length of the lever changes the setting of the wrench",
        ],
        ["par. 7-40i", "the table is used only where the manufacturer gives no torque"],
      ),
      ...read(armyHardware, [
        "figure 8-16",
        "the length of a torque wrench counts to the centre of its grip, or to the pivot of a beam type, and the pull is put on there",
      ]),
      ...read(navySealants, ["torque wrenches", "inch-pounds divided by 12 are foot-pounds"]),
    ],
  },
  {
    subject: "Cables, turnbuckles and safety wire",
    statements: [
      ...read(
        armyHardware,
        ["par. 7-3d", "rigging tension goes with the temperature, by the chart of the aircraft"],
        [
          "par. 7-3c",
          "the dial of a tensiometer is converted by the table that came with that instrument",
        ],
      ),
      ...read(
        circular,
        ["par. 7-180", "double wrap is the preferred way of safetying a turnbuckle"],
        ["par. 7-148b", "sleeves of other materials than copper need an engineering approval"],
        [
          "par. 7-148c",
          "presses on the sleeve of a thimble eye: the middle one first, then the one next to the thimble, then the farthest",
        ],
        [
          "par. 7-148d",
          "a lap splice usually takes two sleeves for the full strength of the cable",
        ],
        [
          "table 7-8, note 1",
          "where the table marks it, galvanised or tinned steel or soft iron wire will do as well",
        ],
      ),
    ],
  },
  {
    subject: "Sealants and adhesives",
    statements: [
      ...read(
        navySealants,
        [
          "application of sealants",
          "the dash number is the application time in hours after mixing, at 77 °F and 50 % relative humidity; classes A, B and C are brushed, spread or gunned, and put between faying surfaces",
        ],
        [
          "application of sealants",
          "faying surfaces: parts are joined and fastened and all rivets driven inside the application time",
        ],
        ["application of sealants", "metal warmed to 90 to 100 °F gives better adhesion"],
        ["application of sealants", "sealant too stiff to apply is thrown away at once"],
        [
          "application of sealants",
          "two-part polysulfide is cured by dichromate (type 1) or manganese dioxide (type 2) and serves from -65 to 250 °F",
        ],
      ),
      ...read(
        airlineSpecification,
        ["tack free", "a polyethylene film laid on and peeled off brings no sealant with it"],
        ["cured", "fuel-tank polysulfide has typically reached Shore A 35"],
        [
          "assembly time",
          "the longest time allowed until a faying-surface joint has its last fastener",
        ],
      ),
      ...read(
        { document: "MIL-S-29574 and AMS 3277", edition: "as listed by a standards seller" },
        [
          "scope",
          "quick sealant cures in about a fifth of the time of a polysulfide of the same application time: to fly away, the quarter-hour kind takes 2 to 3 h at 75 °F or more and 4 h at 40 °F; it keeps at least 12 months below 80 °F",
        ],
      ),
      ...read(
        airForce,
        [
          "par. 12.5.1.3",
          "at 100 °F or more solvent bubbles out: cool to 90 °F or lower and keep it there 30 min",
        ],
        [
          "par. 12.8",
          "an expired lot is not used before an update test; one that fails is never used",
        ],
      ),
      ...read(airliner, [
        "28-11-0, page 812",
        "humidity below 40 % slows the cure of sealant down",
      ]),
      ...read(
        armyGeneral,
        ["par. 6-1a(4)", "the oldest date of manufacture is used first"],
        ["cements and sealants", "stir fully, do not thin after mixing, throw away what is lumpy"],
        [
          "par. 6-2a(1)(d)",
          "acetic RTV gives off what corrodes: near sensitive metals the kind of MIL-A-46146 is used",
        ],
      ),
      ...read({ document: "DTIC ADA218585" }, [
        "summary",
        "sealant kept at 2 °C or below was still good after 2 to 3 years; what failed had oxidised in its base",
      ]),
      ...read({ document: "an epoxy maker's note on warm-temperature bonding" }, [
        "working time",
        "every 18 °F above 72 °F halve working time and pot life of epoxy",
      ]),
      ...read({ document: "an epoxy maker's basics" }, [
        "a hardener at 72 °F",
        "pot life 9 to 12 min (100 g), working time 60 to 70 min, a thin film is solid in 6 to 8 h",
      ]),
      ...read({ document: "an epoxy maker's note on cold weather" }, [
        "temperatures",
        "epoxy is commonly rated at 77 °F and all but dormant at 55 °F and below",
      ]),
      ...read({ document: "a boat plan seller's note on epoxy" }, [
        "joints",
        "a joint is not stressed for 24 h at 70 °F, longer when colder; full properties take days",
      ]),
    ],
  },
  {
    subject: "Weighing",
    statements: [
      ...read(
        circular,
        [
          "par. 10-15a to e",
          "weigh indoors, level and clean, with what the equipment list says installed and with scales in calibration",
        ],
        ["par. 10-15g", "oil is reckoned at 7.5 lb per gallon"],
        [
          "note after par. 10-15g",
          "aircraft of CAR 3 take the oil out of the empty weight, those of part 23 have it in: write down which",
        ],
        [
          "par. 10-2c",
          "of rotorcraft, a movement of the centre of gravity below 0.2 % of the greatest allowable range is negligible",
        ],
      ),
      ...read(weighing, [
        "ballast",
        "permanent ballast is red and marked as not to be removed; temporary ballast has a placard and comes out before weighing",
      ]),
      ...read({ document: "14 CFR 25.29" }, [
        "empty weight",
        "of transport aeroplanes, hydraulic fluid counts into the empty weight and potable water does not",
      ]),
    ],
  },
  {
    subject: "Inspections and the record of them",
    statements: [
      ...quoted({ document: "AC 20-27G", edition: "30 Sep 2009" }, [
        "as quoted in a builders' discussion",
        "there are no inspections by the FAA while an amateur-built aircraft is made, only one before the first flight; so the builder's documents should show inspections by knowledgeable people, with dates and the names of everyone involved",
      ]),
      ...read({ document: "AC 20-27G", edition: "30 Sep 2009" }, [
        "par. 1c",
        "the circular is an acceptable means and not the only one, and not a regulation",
      ]),
      ...read({ document: "builders' association, article on inspections" }, [
        "history",
        "inspections by the FAA before covering ended in 1983",
      ]),
      ...read(
        { document: "builders' association, article on inspection techniques", edition: "2012" },
        [
          "definition",
          "to inspect is to compare with a known standard: write the standard beside the finding",
        ],
      ),
      ...read(
        canada,
        [
          "pre-cover",
          "every component that becomes an enclosed area is inspected before it is covered: fuselage, wings, ailerons, flaps, elevators, rudder, in one visit or one by one; the result is on form C21",
        ],
        [
          "pre-cover",
          "assemblies closed in the kit maker's factory, and shown so on the shipping papers, are exempt",
        ],
        [
          "stages",
          "letter of intent, pre-cover, final, registration, flight authority, 25 h of tests; each inspection is complete before the next is asked for, and registration waits for the pre-cover one",
        ],
        ["construction procedure", "the authority is told before construction begins"],
      ),
      ...read(
        canadaPortion,
        [
          "appendix A",
          "the major portion is more than half of fabrication and assembly, counted by operations of a list",
        ],
        [
          "appendix A",
          "to fabricate is to measure, cut, drill, bend, weld, rivet, glue, bond, solder, crimp, cover or paint; to assemble is to join with screws, bolts, nuts or other mechanical fasteners",
        ],
      ),
    ],
  },
  {
    subject: "Before a structure is closed",
    note: "No publication that was read prints a list of points for a metal structure. What is above asks to see, while it can be seen: holes; edge distance and pitch against the rule named; driven heads; a thread showing at every bolt, its torque with the drag, its locking; cable tension for the day's temperature, threads and safetying of turnbuckles; sealant applied in its time, and cured.",
    statements: [
      ...read(
        closing,
        [
          "before closing",
          "nothing is left inside: tools are counted, runs of wire and antenna leads are in place",
        ],
        [
          "before closing",
          "what cannot be fitted afterwards is fitted now: antennas, wires, lights, pitot",
        ],
        [
          "before closing",
          "the order of the details matters, extras fall off lists, and hardware left over is a finding to explain and not to throw away",
        ],
      ),
      ...read(
        counselor,
        [
          "open for the visit",
          "cowl and spinner, covers under both wings and under the stabilizer, empennage fairing, removable floors, the bulkhead behind the baggage, wheel pants, side panels; light, mirror and screwdrivers at hand; weight and balance if done",
        ],
        [
          "flap and wing root",
          "general condition; hinge pin secured and clear of the aileron's movement; actuator clear of the fuselage hole, its jam nuts tight; rear spar bolt safetied",
        ],
        [
          "aileron",
          "condition and free movement; jam nut of the control tube tight; no chafing at the spar; stops fitted; hinges not rubbing, with the right bolts and nuts",
        ],
        ["wing tip and forward wing", "condition; tip attached; position lights right"],
      ),
    ],
  },
];
