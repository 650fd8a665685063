/** A rule file of ordinary size, every layout in it that the sample library uses. */
export const ruleFile = `kind: instrument # what this is
id: drill-body-a
name: "Drill body, battery"
maker: northfield
covers: [45-100, 45-101, "45-102"]
class: critical
traits: [powered, cannulated]
# where it comes from
documents:
  - id: ifu-1
    title: "Instructions for use, drill body"
    rev: "C"
    issued: 2024-03-01
statements:
  s1:
    doc: ifu-1
    page: 1
    text: "Rinse under running water for at least 1 minutes, at or below 43 °C."
  s2:
    doc: ifu-1
    page: 2
    text: "Rinse under running water for at least 2 minutes, at or below 43 °C."
  s3:
    doc: ifu-1
    page: 3
    text: "Rinse under running water for at least 3 minutes, at or below 43 °C."
  s4:
    doc: ifu-1
    page: 4
    text: "Rinse under running water for at least 4 minutes, at or below 43 °C."
  s5:
    doc: ifu-1
    page: 5
    text: "Rinse under running water for at least 5 minutes, at or below 43 °C."
  s6:
    doc: ifu-1
    page: 6
    text: "Rinse under running water for at least 6 minutes, at or below 43 °C."
  s7:
    doc: ifu-1
    page: 7
    text: "Rinse under running water for at least 7 minutes, at or below 43 °C."
  s8:
    doc: ifu-1
    page: 8
    text: "Rinse under running water for at least 8 minutes, at or below 43 °C."
cleaning:
  manual:
    steps:
      - id: rinse
        action: rinse
        time: {at_least: 3 min, as_written: "3 minutes minimum", src: s1}
        temp: {at_most: 43 C, src: s1}
      - id: brush
        action: brush
        strokes: {exactly: 5 times, src: s2}
        time: {at_least: 1 min, src: s2}
      - id: flush
        action: flush
        volume: {at_least: 60 mL, src: s3}
        repeats: {at_least: 3 times, src: s3}
  machine:
    allowed: true
    wash: {between: [55 C, 65 C], src: s4}
    dry: {silent: true, checked: 2025-02-03}
sterilization:
  any_of:
    - id: pv132
      method: steam-prevac
      temp: {exactly: 132 C, src: s5}
      exposure: {at_least: 4 min, src: s5}
      dry: {at_least: 20 min, src: s6}
    - id: pv134
      method: steam-prevac
      temp: {exactly: 134 C, src: s5}
      exposure: {at_least: 3 min, src: s5}
      dry: {about: 30 min, src: s6}
storage:
  note: Keep dry until use.
`;
