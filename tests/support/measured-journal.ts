// A journal with a reading of every kind: single values, guarded ones, figures, a table, and a
// rule that wins over another.

const manual = "authority: manual, source: { document: Manual, edition: first }";

export const measuredFiles: Readonly<Record<string, string>> = {
  "rules.yaml": `rules:
  - { id: edge, title: Edge distance, authority: published, source: { document: A circular }, at-least: 0.25 in }
  - { id: cap, title: Cap edge, authority: drawing, source: { document: W-01 }, at-least: 0.30 in, decision: guarded by U, over: edge, steps: [W-2] }
  - { id: sides, title: Left against right, ${manual}, judges: difference, at-most: 0.02 in }
  - { id: even, title: Evenness, ${manual}, judges: range, at-most: 0.02 in }
  - { id: cable, title: Cable, ${manual}, table: [[temperature, at-least, at-most], [40 °F, 52 lbf, 60 lbf], [80 °F, 68 lbf, 80 lbf]] }
  - { id: unused, title: Unused, ${manual}, at-most: 1 in }
`,
  "instruments.yaml": `instruments:
  - { id: caliper, title: Caliper, uncertainty: 0.002 in }
`,
  "days/2026-03-02.md": `---
date: 2026-03-02
conditions: { temperature: 60 °F }
readings:
  - { id: L, step: W-1, what: offset, at: left, rule: edge, with: caliper, values: [0.26, 0.27] in }
  - { id: R, step: W-1, what: offset, at: right, rule: edge, with: caliper, values: [0.265, 0.30] in }
  - { id: C, step: W-2, what: cap, rule: edge, with: caliper, value: 0.301 in }
  - { id: D, step: W-2, what: cap, at: root, rule: cap, with: caliper, value: 0.31 in }
  - { id: T, step: W-1, what: tension, rule: cable, value: 61 lbf }
---
Measured.
`,
  "days/2026-04-10.md": `---
date: 2026-04-10
conditions: { temperature: 90 °F }
deviations:
  - { id: D-1, step: W-1, drawing: W-01, planned: 0.25 in, done: 0.24 in, why: a slip, disposition: use as is }
readings:
  - { id: B, step: W-1, what: offset, at: both sides, rule: sides, of: [L, R] }
  - { id: E, step: W-1, what: pitch, rule: even, values: [0.750, 0.752, 0.748] in }
  - { id: O, step: W-1, what: edge, rule: edge, value: 0.2 in }
  - { id: A, step: W-1, what: edge, at: tip, rule: edge, value: 0.24 in, deviation: D-1 }
  - { id: P, step: W-1, what: edge, at: root, rule: edge, value: 0.21 in }
  - { id: Q, step: W-1, what: edge, at: root, rule: edge, value: 0.26 in, supersedes: P }
  - { id: U, step: W-1, what: tension, rule: cable, value: 70 lbf }
  - { id: V, step: W-1, what: tension, rule: cable, value: 70 lbf, temperature: 20 °C }
  - { id: N, what: gap, value: 0.003 in }
---
Measured again.
`,
};
