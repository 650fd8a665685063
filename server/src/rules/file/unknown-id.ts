import { isOneSlipFrom, nearest } from '../../base/nearest.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isKind, kinds } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { isNamed, namesOf } from '../support/references.ts';

const message = {
  unknown: (sort: string, name: string, suggestion: string | undefined) =>
    `There is no ${sort} "${name}"${suggestion === undefined ? ' in this library.' : `. Did you mean "${suggestion}"?`}`,
};

export const rule = defineRule({
  id: 'unknown-id',
  stage: 'file',
  severity: 'error',
  settledBy: 'educator',
  why: 'A name that leads nowhere leaves the demand behind it unchecked.',
  source: 'logic',
  fix: 'Changes the name to the nearest one that exists.',
  kinds,
  check(entity, { view, report }) {
    for (const reference of partsOf(entity).references) {
      const { refers, text } = reference;
      if (refers.length === 0 || refers.some((sort) => isNamed(sort, text, entity, view))) continue;
      // Where a plain word is fine too, only one that looks like a slip of a name is told.
      if (reference.open === true && !refers.some((sort) => isSlip(sort, text, entity, view))) continue;
      const suggestion = nearest(
        text,
        refers.flatMap((sort) => [...(namesOf(sort, entity, view) ?? [])]),
      );
      report({
        at: reference.at,
        message: message.unknown(refers.join(' or '), text, suggestion),
        ...(suggestion !== undefined && {
          fixes: [{ title: `Change to "${suggestion}"`, edits: [{ span: reference.at.span, text: suggestion }] }],
        }),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members:
  - {device: pale-forcep, qty: 4}
             ^^^^^^^^^^^ There is no device "pale-forcep". Did you mean "pale-forceps"?
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
`,
      `
kind: device
id: pale-forceps
limits:
  temp: {at_most: 140 C, src: s2}
                              ^^ There is no statement "s2". Did you mean "s1"?
statements:
  s1: {doc: PF-1, rev: A, page: 2, quote: "Do not exceed 140 °C."}
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
steps: [{stage: manual, do: rinse, water: R0-1}]
                                          ^^^^ There is no water "R0-1". Did you mean "RO-1"?
=== water/ro.ifu.yaml
kind: water
id: RO-1
`,
    ],
    good: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
members:
  - {device: pale-forceps, qty: 4}
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
limits: {temp: [(unfinished)
`,
      `
kind: device
id: pale-forceps
limits:
  temp: {at_most: 140 C, src: s1}
statements:
  s1: {doc: PF-1, rev: A, page: 2, quote: "Do not exceed 140 °C."}
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
steps: [{stage: manual, do: rinse, water: taps}]
=== water/tap.ifu.yaml
kind: water
id: tap
`,
    ],
  },
});

/** Everyday words stand in thousands of files: each is laid beside the names of a kind once. */
function isSlip(sort: string, word: string, entity: AnyEntity, view: LibraryView): boolean {
  if (isKind(sort)) return view.ask(slipOfName, `${sort}\n${word}`);
  return isSlipAmong(namesOf(sort, entity, view) ?? [], word);
}

const slipOfName: Query<string, boolean> = {
  name: 'a word that is one slip from a name',
  work(view, argument) {
    const [kind = '', ...word] = argument.split('\n');
    return isKind(kind) && isSlipAmong(view.ids(kind), word.join('\n'));
  },
};

function isSlipAmong(names: Iterable<string>, word: string): boolean {
  for (const name of names) if (isOneSlipFrom(word, name) && isLikeId(name)) return true;
  return false;
}

/** Everyday words have no figure and no hyphen. */
function isLikeId(text: string): boolean {
  return /[\d-]/.test(text.slice(0, 100));
}
