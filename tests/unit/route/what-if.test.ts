import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { LibraryView, QueryAnswers } from '../../../server/src/library/view.ts';
import type { WhatIf } from '../../../server/src/route/model.ts';
import { type Overlay, overlaid } from '../../../server/src/route/overlay.ts';
import { whatIf } from '../../../server/src/route/what-if.ts';
import { demoDay, viewOf } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

const { library, view } = viewOf(readSample('lanternfield'));

function imagined(overlay: Overlay): { result: WhatIf; problems: readonly string[] } {
  const made = overlaid(library, overlay);
  return {
    result: whatIf(view, new LibraryView(made.library, new Set(), new QueryAnswers(demoDay))),
    problems: made.problems,
  };
}

function cycles(machine: string, kind: string, text: string): Overlay {
  return { cycles: [{ file: fileId('imagined.ifu.yaml'), text: `kind: ${kind}\nid: ${machine}\ncycles:\n${text}` }] };
}

const drier = cycles(
  'S1',
  'sterilizer',
  '  - {id: S1-pv132-4-40, modality: steam-prevac, context: terminal, temp: 132 C, band: {minus: 0 K, plus: 3 K}, exposure: 4 min, dry: 40 min, load_max: 90 kg, qualified: 2025-03-01}\n',
);
const qualified = cycles(
  'S2',
  'sterilizer',
  '  - {id: S2-pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, band: {minus: 0 K, plus: 3 K}, exposure: 4 min, dry: 50 min, load_max: 60 kg, qualified: 2025-03-01}\n',
);
const gentle = `kind: washer
id: W1
cycles:
  - id: W1-gentle
    doses: [C6]
    final_water: RO-1
    last_cleaning_test: 2025-03-01
    phases:
      - {phase: prewash, temp: 20 C, time: 3 min}
      - {phase: wash, temp: 45 C, time: 8 min}
      - {phase: thermal, temp: 90 C, time: 1 min}
      - {phase: dry, temp: 85 C, time: 20 min}
`;
const neutral = `kind: chemistry
id: C6
class: neutral
ph_in_use: {between: [6.8, 7.4], of: in-use}
temp: {between: [30 C, 60 C]}
methods: [mechanical]
foam: low
dose: 4 mL/L
`;

describe('what if', () => {
  it('a cycle with 40 minutes of drying settles KNEE-C’s drying, not its mass nor its wash', () => {
    const { result } = imagined(drier);
    const knee = result.changed.find(({ id }) => id === 'set/KNEE-C');
    expect(knee?.words).toMatch(/^settled: Aluminium instrument case: drying time at least 40 min/);
    expect(knee?.words).toMatch(/still in the way: Knee system: mass/);
    expect(knee?.words).toMatch(/still in the way: Aluminium instrument case: pH 6-8.5/);
    expect(result.gained).toEqual([]);
  });

  it('a qualified 134 °C cycle with 50 minutes settles the grasper’s steam, not its ultrasonics', () => {
    const { result } = imagined(qualified);
    for (const id of ['set/ROBOT-F', 'device/skerrow-wristed-grasper']) {
      const change = result.changed.find((one) => one.id === id);
      expect(change?.words).toMatch(/^settled: Wristed grasper: drying time/);
      expect(change?.words).toMatch(/still in the way: Wristed grasper: machine step/);
    }
  });

  it('a neutral detergent and a longer hold give the irrigating tip its machine option and KNEE-C its wash', () => {
    const overlay = {
      with: [{ file: fileId('c6.ifu.yaml'), text: neutral }],
      cycles: [{ file: fileId('w1.ifu.yaml'), text: gentle }],
    };
    const { result, problems } = imagined(overlay);
    expect(problems).toEqual([]);
    expect(result.changed.find(({ id }) => id === 'device/brindlewick-irrigating-tip')?.words).toContain(
      'cleaning "by-hand-then-machine" now fits',
    );
    expect(result.changed.find(({ id }) => id === 'set/KNEE-C')?.words).toMatch(
      /^settled: Aluminium instrument case: pH 6-8.5/,
    );
  });

  it('a member that leaves gives the set a route; a machine that leaves takes routes', () => {
    expect(imagined({ without: ['member/LAP-CHOLE-B/cassivane-camera-head'] }).result.gained).toMatchObject([
      { id: 'set/LAP-CHOLE-B', before: 'none', after: 'route' },
    ]);
    expect(imagined({ without: ['sterilizer/S1', 'sterilizer/S2'] }).result.lost.map(({ id }) => id)).toEqual([
      'set/EYE-D',
      'set/MINOR-A',
    ]);
    expect(imagined({ without: ['sterilizer/S3'] }).result.devicesLost.map(({ id }) => id)).toEqual([
      'device/cassivane-camera-head',
    ]);
    expect(imagined({ without: ['packaging/P5-polyolefin-pouch'] }).result.devicesLost.map(({ id }) => id)).toEqual([
      'device/cassivane-camera-head',
    ]);
    expect(imagined({ without: ['cycle/S2-gr121-30-30'] }).result.devicesLost.map(({ id }) => id)).toEqual([
      'device/pellamont-bone-clamp',
    ]);
  });

  it('says what it could not do and leaves the library alone', () => {
    const { problems } = imagined({
      without: ['packaging/none', 'cycle/none', 'member/EYE-D/none'],
      ...cycles('S9', 'sterilizer', '  - {id: S9-x, modality: vh2o2}\n'),
    });
    expect(problems).toEqual([
      'imagined.ifu.yaml: there is no machine "S9" to add cycles to.',
      'There is no "packaging/none" to leave out.',
      'There is no "cycle/none" to leave out.',
      'There is no "member/EYE-D/none" to leave out.',
    ]);
    expect(imagined({}).result).toEqual({ gained: [], lost: [], devicesGained: [], devicesLost: [], changed: [] });
  });
});
