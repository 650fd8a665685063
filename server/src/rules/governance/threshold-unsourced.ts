import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';

type Site = EntityOf['site'];

const message = {
  none: (name: string) =>
    `The limit "${name}" has no source. Name the document, edition and clause it was adopted from.`,
  undated: (name: string, source: string) =>
    `The limit "${name}" comes from “${source}”, without an edition or a year: nobody can tell whether it still holds.`,
  policy: (name: string, field: string) => `The policy "${name}" has no source. Add "${field}".`,
};

export const rule = defineRule({
  id: 'threshold-unsourced',
  stage: 'governance',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Every finding rests on a limit of the department, and is only as good as the place that limit came from.',
  source: 'practice',
  kinds: ['site'],
  check(site, { report }) {
    for (const table of [site.thresholds, site.plausible, site.review_periods]) {
      for (const [name, { key, value }] of table?.rows ?? []) {
        const { src, edition } = value;
        if (isBlank(src))
          report({ at: value.at, message: message.none(name), related: [{ at: key.at, note: 'the limit' }] });
        else if (edition === undefined && !hasYear(src))
          report({ at: src.at, message: message.undated(name, src.text) });
      }
    }
    for (const { at, name, field } of policiesWithout(site)) report({ at, message: message.policy(name, field) });
  },
  examples: {
    bad: [
      `
kind: site
id: s
thresholds: {final_rinse_conductivity: {at_most: 30 uS/cm}}
             ^^^^^^^^^^^^^^^^^^^^^^^^ The limit "final_rinse_conductivity" has no source. Name the document, edition and clause it was adopted from.
`,
      `
kind: site
id: hillside
thresholds:
  set_mass: {at_most: 10 kg, src: somebody's slide}
                                  ^^^^^^^^^^^^^^^^ The limit "set_mass" comes from “somebody's slide”, without an edition or a year: nobody can tell whether it still holds.
policies:
  release_temp: {at_most: 24 C}
  ^^^^^^^^^^^^ The policy "release_temp" has no source. Add "release_temp_src".
`,
    ],
    good: [
      `
kind: site
id: s
thresholds: {final_rinse_conductivity: {at_most: 30 uS/cm, src: water plan W-3, edition: "2024", clause: page 2}}
`,
      `
kind: site
id: hillside
thresholds:
  set_mass: {at_most: 10 kg, src: "policy P-12 of 2024, section 3"}
policies:
  release_temp: {at_most: 24 C}
  release_temp_src: "policy P-18 of 2024, section 2"
`,
    ],
  },
});

function isBlank(text: Text | undefined): text is undefined {
  return text === undefined || text.text.trim() === '';
}

const year = /\b(?:19|20)\d\d\b/;

function hasYear({ text }: Text): boolean {
  return year.test(text.slice(0, 500));
}

/** Policies that have a field of their own for the source. */
function policiesWithout({ policies }: Site): readonly { at: Place; name: string; field: string }[] {
  if (policies === undefined) return [];
  const { release_temp, release_temp_src, accept_a0, accept_a0_src, tse_routine, tse_routine_src } = policies;
  const rows = [
    { value: release_temp, src: release_temp_src, name: 'release_temp' },
    { value: accept_a0?.on === true ? accept_a0 : undefined, src: accept_a0_src, name: 'accept_a0' },
    { value: tse_routine?.on === true ? tse_routine : undefined, src: tse_routine_src, name: 'tse_routine' },
  ];
  return rows.flatMap(({ value, src, name }) =>
    value !== undefined && isBlank(src) ? [{ at: value.at, name, field: `${name}_src` }] : [],
  );
}
