import type { LibraryView } from '../../library/view.ts';
import type { Part } from '../../model/entities/device.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { devicesOf } from '../support/applies.ts';
import { replacing } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import { quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { placeOf, proceduresFor, stepInWords, stepsOf } from '../support/steps.ts';
import { isMentioned } from '../support/wording.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (device: string, parts: string) =>
    `"${device}" is put together here, and no step puts in a new ${parts}, which is for one use only.`,
};

export const rule = defineRule({
  id: 'seal-not-replaced',
  stage: 'inspection',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A seal that is used a second time leaks.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const joining = stepsOf(procedure).find(joins);
    if (joining === undefined) return;
    for (const device of devicesOf(procedure, view)) {
      const parts = singleUseParts(device).filter((part) => !isReplaced(part, device, procedure, view));
      if (parts.length === 0) continue;
      report({
        at: placeOf(joining),
        message: message.missing(deviceName(device), listed(parts.map(nameOf))),
        does: stepInWords(joining),
        says: quotesOf(parts.map((part) => sayingsOf(device, part.src))),
        related: parts.map((part) => ({ at: part.at, note: 'part for one use' })),
      });
    }
  },
  examples: {
    bad: [
      `
=== procedures/assembly.ifu.yaml
kind: procedure
id: assembly
applies_to: [trocar]
steps: [{do: reassemble}]
             ^^^^^^^^^^ "trocar" is put together here, and no step puts in a new seal, which is for one use only.
=== devices/trocar.ifu.yaml
kind: device
id: trocar
parts: [{id: seal, single_use: true, src: s3}]
statements:
  s3: {doc: TR-4, rev: A, page: 4, quote: "Use a new seal each time."}
`,
      `
=== procedures/trocars.ifu.yaml
kind: procedure
id: trocars
applies_to: [trocar]
steps:
  - {stage: manual, do: brush, tool: nylon-brush}
  - {stage: assembly, do: put together, note: a new filter each time}
                          ^^^^^^^^^^^^ "trocar" is put together here, and no step puts in a new sealing ring, which is for one use only.
=== devices/trocar.ifu.yaml
kind: device
id: trocar
parts:
  - {id: o-ring, name: sealing ring, single_use: true}
  - {id: filter, single_use: true}
  - {id: sleeve}
`,
    ],
    good: [
      `
=== procedures/assembly.ifu.yaml
kind: procedure
id: assembly
applies_to: [trocar]
steps:
  - {stage: assembly, do: replace the seal}
  - {stage: assembly, do: reassemble}
=== devices/trocar.ifu.yaml
kind: device
id: trocar
parts: [{id: seal, single_use: true}]
`,
      `
=== procedures/sink.ifu.yaml
kind: procedure
id: sink
applies_to: [trocar]
steps: [{stage: manual, do: brush}]
=== devices/trocar.ifu.yaml
kind: device
id: trocar
parts: [{id: seal, single_use: true}]
`,
    ],
  },
});

/** Where the item is put together again; where it is packed, when it has been taken apart before. */
function joins(step: ProcedureStep): boolean {
  return (
    step.stage?.text === 'assembly' ||
    (step.do !== undefined && isMentioned(step.do.text, [['reassembl*'], ['assemble'], ['put', 'together']]))
  );
}

function singleUseParts(device: Device): readonly Part[] {
  return device.parts?.items.filter((part) => part.single_use?.on === true) ?? [];
}

function isReplaced(part: Part, device: Device, here: Procedure, view: LibraryView): boolean {
  if (replaces(part, here)) return true;
  for (const procedure of proceduresFor(device, view)) if (replaces(part, procedure)) return true;
  return false;
}

/** A step that speaks of something new or replaced and names this part. */
function replaces(part: Part, procedure: Procedure): boolean {
  return stepsOf(procedure).some((step) => {
    const text = [step.do?.text, step.note?.text].filter((one) => one !== undefined).join('. ');
    return isMentioned(text, replacing) && namesOf(part).some((words) => isMentioned(text, [words]));
  });
}

function namesOf(part: Part): readonly string[][] {
  return [part.id, part.name].flatMap((name) =>
    name === undefined ? [] : [name.text.toLowerCase().split(/[^a-z0-9]+/)],
  );
}

function nameOf(part: Part): string {
  return part.name?.text ?? part.id?.text ?? 'part';
}
