import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import { daysBetween, inDays } from '../support/days.ts';
import { documentName, isCurrent, registeredOf } from '../support/documents.ts';
import { compareSerials } from '../support/serials.ts';

const message = {
  future: (name: string, day: string) =>
    `${name} is marked as current, but it holds only from ${day}. Until then the revision before it is followed.`,
  serials: (name: string, from: string, to: string) =>
    `${name} holds from serial number ${from} on, and this file is for instruments up to ${to}. New pages for new instruments do not apply to yours.`,
};

export const rule = defineRule({
  id: 'document-not-yet-effective',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'New pages for new hardware, or for a later day, do not describe what is on the shelf today.',
  source: 'practice',
  kinds: ['document', 'device'],
  check(entity, { view, today, report }) {
    if (rootOfEntity(entity).kind === 'document') {
      const document = entity as EntityOf['document'];
      if (document.effective === undefined || !isCurrent(document)) return;
      const days = daysBetween(today, document.effective.text);
      if (days <= 0) return;
      const name = documentName(document);
      report({
        at: document.effective.at,
        message: message.future(name, document.effective.text),
        gap: `${inDays(days)} to go`,
      });
      return;
    }
    const device = entity as EntityOf['device'];
    for (const source of device.sources?.items ?? []) {
      const document = registeredOf(source, view);
      if (document?.serial_from === undefined || device.applies_to === undefined) continue;
      if (compareSerials(document.serial_from.text, device.applies_to.text) !== 'after') continue;
      report({
        at: source.doc?.at ?? source.at,
        message: message.serials(documentName(document), document.serial_from.text, device.applies_to.text),
        related: [{ at: document.serial_from.at, note: 'first serial number it is for' }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: document
id: sk-210-f
doc: SK-210
rev: F
status: current
effective: 2099-01-01
           ^^^^^^^^^^ SK-210 rev F is marked as current, but it holds only from 2099-01-01. Until then the revision before it is followed.
`,
      `
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece-first-series
applies_to: TW-00900
sources: [{doc: TW-2, rev: B, role: device-specific}]
                ^^^^ TW-2 rev B holds from serial number TW-00901 on, and this file is for instruments up to TW-00900. New pages for new instruments do not apply to yours.
=== documents/tw-2-b.ifu.yaml
kind: document
id: tw-2-b
doc: TW-2
rev: B
status: current
serial_from: TW-00901
`,
    ],
    good: [
      `
kind: document
id: sk-210-f
doc: SK-210
rev: F
status: draft
effective: 2099-01-01
`,
      `
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece-first-series
applies_to: TW-01200
sources: [{doc: TW-2, rev: B, role: device-specific}]
=== documents/tw-2-b.ifu.yaml
kind: document
id: tw-2-b
doc: TW-2
rev: B
status: current
effective: 2025-03-03
serial_from: TW-00901
`,
    ],
  },
});
