// What United States rules say of the papers of an altered type-certificated aircraft, in our own
// words. Each statement has the status of the copy it was taken from.

import type { Citation } from "../citation.ts";

/** Something a publication says, and where. */
export interface Statement {
  readonly text: string;
  readonly citation: Citation & Required<Pick<Citation, "status">>;
}

/** Who may sign for work on a type-certificated aircraft, and what such a record holds. */
export const signingStatements: readonly Statement[] = [
  {
    text: "The record of the work describes it, or refers to acceptable data. It has the date of completion and the name of the person who did the work, when that is not the person who gives the approval. On approval it has that person's signature, certificate number and kind of certificate.",
    citation: { document: "14 CFR 43.9", place: "(a)", status: "secondary" },
  },
  {
    text: "After a major alteration, the holder of an inspection authorization may give the approval for return to service when the work was done to technical data that has the Administrator's approval.",
    citation: { document: "14 CFR 65.95", edition: "2024", status: "read" },
  },
  {
    text: "A repair station, the manufacturer or the authority itself may give it as well.",
    citation: { document: "14 CFR 43.7", status: "secondary" },
  },
  {
    text: "An owner who works in his own shop does not sign it. He can be named as the person who did the work under supervision.",
    citation: { document: "14 CFR 43.7", status: "memory" },
  },
  {
    text: "Before the aircraft returns to service the record entry is made, the form for a major alteration is completed, and limitations in the flight manual that the work changes are revised.",
    citation: { document: "14 CFR 43.5", status: "secondary" },
  },
  {
    text: "How the alteration goes together with earlier changes of the aircraft is assessed and written down.",
    citation: { document: "AC 43.9-1G", edition: "1 Nov 2019", status: "read" },
  },
  {
    text: "Of the form for a major alteration there are at least two copies: a signed one for the owner, and one for the Aircraft Registration Branch within 48 hours after the approval for return to service. For extended-range tanks in the cabin or baggage space there are three, one of them kept aboard.",
    citation: { document: "14 CFR part 43", edition: "2012", place: "appendix B", status: "read" },
  },
];

/**
 * Headings of the instructions for continued airworthiness, in the order of the copies they were
 * taken from. The whole list was never seen in the publication itself.
 */
export const continuedHeadings = [
  { key: "introduction", title: "Introduction", status: "secondary" },
  { key: "description", title: "Description", status: "secondary" },
  { key: "operation", title: "Control and operation", status: "secondary" },
  { key: "servicing", title: "Servicing", status: "secondary" },
  { key: "maintenance", title: "Maintenance instructions", status: "secondary" },
  { key: "troubleshooting", title: "Troubleshooting", status: "secondary" },
  { key: "removal", title: "Removal and replacement", status: "secondary" },
  { key: "access", title: "Diagrams of access", status: "secondary" },
  { key: "special-inspections", title: "Special inspection requirements", status: "secondary" },
  { key: "protection", title: "Protective treatments", status: "memory" },
  { key: "fasteners", title: "Structural fasteners", status: "memory" },
  { key: "tools", title: "Special tools", status: "memory" },
  { key: "commuter", title: "For commuter aircraft only", status: "memory" },
  { key: "overhaul", title: "Overhaul periods", status: "memory" },
  { key: "limitations", title: "Airworthiness limitations", status: "memory" },
  { key: "revision", title: "Revision and assistance", status: "memory" },
] as const;

/** A heading by its key in `alteration.yaml`. */
export type ContinuedHeading = (typeof continuedHeadings)[number]["key"];
