import { sayingsOf } from '../../server/src/model/saying.ts';
import type { AnyRule } from '../../server/src/rules/rule.ts';
import { defineRule } from '../../server/src/rules/rule.ts';

const about = {
  stage: 'route',
  severity: 'error',
  settledBy: 'educator',
  why: 'Test.',
  source: 'logic',
  examples: { bad: [], good: [] },
} as const;

/** A set names a device that no file describes: looks across files. */
export const unknownDevice: AnyRule = defineRule({
  ...about,
  id: 'test-unknown-device',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const member of set.members?.items ?? []) {
      const device = member.device;
      if (device !== undefined && !view.exists('device', device.text)) {
        report({ at: device.at, message: `No file describes "${device.text}".` });
      }
    }
  },
});

/** Quotes what is cited for the highest temperature. */
export const hotLimit: AnyRule = defineRule({
  ...about,
  id: 'test-hot-limit',
  severity: 'advice',
  settledBy: 'manufacturer',
  kinds: ['device'],
  check(device, { report }) {
    const limit = device.limits?.temp?.at_most;
    if (limit === undefined || limit.amount < 140) return;
    report({
      at: limit.at,
      message: 'The limit is high.',
      says: sayingsOf(device, device.limits?.temp?.src),
      does: '134 °C',
      gap: '6 °C',
    });
  },
});

/** A fault of ours. */
export const throwing: AnyRule = defineRule({
  ...about,
  id: 'test-throwing',
  kinds: ['device'],
  check() {
    throw new Error('broken on purpose');
  },
});

export const libraryText = 'kind: library\nid: demo\n';

export function deviceText(id: string, limit = '140 C'): string {
  return `kind: device
id: ${id}
statements:
  s1: {doc: DW-1, rev: D, page: 3, quote: "Do not exceed ${limit.replace(' C', ' °C')}."}
limits: {temp: {at_most: ${limit}, src: s1}}
`;
}

export function setText(id: string, ...devices: readonly string[]): string {
  return `kind: set\nid: ${id}\nmembers:\n${devices.map((device) => `  - {device: ${device}, qty: 1}\n`).join('')}`;
}
