import { describe, expect, it } from 'vitest';
import { allOf } from '../../../server/src/route/choice.ts';
import { governingTable } from '../../../server/src/route/governing.ts';
import { nearMisses } from '../../../server/src/route/near-miss.ts';
import { openLetters } from '../../../server/src/route/questions.ts';
import { repairsFor } from '../../../server/src/route/repairs.ts';
import { routeOfDevice, routeOfSet } from '../../../server/src/route/route.ts';
import { clashNames, derived, repairNames, viewOf } from '../../support/routes.ts';
import { readSample } from '../../support/samples.ts';

const { view } = viewOf(readSample('lanternfield'));

function chosenWords(id: string): string {
  const { status, chosen } = derived(view, id).route;
  return `${status}: ${chosen === undefined ? 'nothing' : `${chosen.packaging} on ${chosen.cycle}, ${chosen.outcome}`}`;
}

describe('the six sets of the demonstration department', () => {
  it('MINOR-A has a route once it moves to the heavy wrap, and its card names a good cycle', () => {
    const { route } = derived(view, 'MINOR-A');
    expect(chosenWords('MINOR-A')).toBe('route: P2-wrap-heavy on S1-pv132-4-30, meets');
    expect(route.packagingChange).toEqual({ from: 'P1-wrap-light', to: 'P2-wrap-heavy' });
    expect(route.asPacked?.outcome).toBe('fails');
    expect(route.asPacked?.common.filter(({ outcome }) => outcome === 'fails').map(({ gap }) => gap)).toEqual([
      '0.6 kg over',
    ]);
    expect(route.card.cycle?.derived).toBe(true);
    expect(repairNames(derived(view, 'MINOR-A'))).toEqual(['route change-packaging P2-wrap-heavy']);
  });

  it('LAP-CHOLE-B has none: the camera goes through peroxide only; without it the container’s and the scissors’ 30 minutes govern', () => {
    expect(chosenWords('LAP-CHOLE-B')).toBe('none: nothing');
    expect(clashNames(derived(view, 'LAP-CHOLE-B'))).toEqual([
      ['device/cassivane-camera-head prohibition', 'device/yarrowby-bipolar-forceps prohibition'],
    ]);
    const [first] = repairsFor(derived(view, 'LAP-CHOLE-B'));
    expect(first?.effect).toBe('route');
    expect(first?.words).toBe(
      'Take Camera head out of the set, and process it alone in Pindlecote polyolefin pouch on S3:surface; the rest goes in Kestrelow container on S1-pv132-4-30.',
    );
    const dry = governingTable(derived(view, 'LAP-CHOLE-B')).find(({ parameter }) => parameter === 'Drying time');
    expect(dry?.required).toBe('at least 30 min');
    expect(dry?.governedBy.map(({ who }) => who)).toEqual([
      'packaging/P3-rigid-container',
      'device/duskwell-lap-scissors-takeapart',
      'device/yarrowby-bipolar-forceps',
    ]);
    expect(dry).toMatchObject({ gives: '20 min', slack: '10 min outside' });
  });

  it('KNEE-C has none: too heavy, 40 minutes of drying nowhere qualified, and no wash for the case', () => {
    expect(chosenWords('KNEE-C')).toBe('none: nothing');
    expect(clashNames(derived(view, 'KNEE-C'))).toEqual([
      ['device/fennoway-knee-system mass'],
      ['device/oxbarrow-aluminium-case steam-dry', 'sterilizer/S2 evidence'],
      ['device/oxbarrow-aluminium-case ph', 'chemistry/C4 chemistry'],
    ]);
    expect(derived(view, 'KNEE-C').route.washing.without).toEqual(['oxbarrow-aluminium-case']);
    const effects = repairNames(derived(view, 'KNEE-C'));
    expect(effects).toContain('part lighten-set KNEE-C');
    expect(effects).toContain('part qualify-cycle S2-pv134-4-50');
    expect(effects).toContain('part program-cycle S1');
    expect(effects).toContain('part change-chemistry oxbarrow-aluminium-case W1-std');
  });

  it('EYE-D fails as built; in the light wrap it waits for one answer; split in two it has routes today', () => {
    const { route } = derived(view, 'EYE-D');
    expect(chosenWords('EYE-D')).toBe('provisional: P1-wrap-light on S2-pv134-4-30, needs-answer');
    expect(route.asPacked?.outcome).toBe('fails');
    const failing = (route.asPacked === undefined ? [] : allOf(route.asPacked)).filter(
      ({ outcome }) => outcome === 'fails',
    );
    expect(failing.map(({ parameter, demandedBy }) => `${demandedBy} ${parameter}`)).toEqual([
      'packaging/P3-rigid-container lumen',
      'device/brindlewick-irrigating-tip packaging',
    ]);
    expect(route.card.cycle?.derived).toBe(false);
    const open =
      route.chosen === undefined ? [] : allOf(route.chosen).filter(({ outcome }) => outcome === 'needs-answer');
    expect(open.map(({ demandedBy, parameter }) => `${demandedBy} ${parameter}`)).toEqual([
      'device/quillmark-ringed-forceps steam-temperature',
    ]);
    const [first] = repairsFor(derived(view, 'EYE-D'));
    expect(first?.words).toBe(
      'Take Irrigating tip out of the set, and process it alone in Pindlecote light wrap on S2-pv134-4-30; the rest goes in Pindlecote light wrap on S1-pv132-4-30.',
    );
    expect(repairNames(derived(view, 'EYE-D'))).toContain('route ask-maker device/quillmark-ringed-forceps');
  });

  it('ORTHO-E has none together, by two statements; two packs have routes', () => {
    expect(chosenWords('ORTHO-E')).toBe('none: nothing');
    const clashes = derived(view, 'ORTHO-E');
    expect(clashNames(clashes)).toEqual([
      ['device/quillmark-suction-tube prohibition', 'device/pellamont-bone-clamp modality'],
    ]);
    const [first] = repairsFor(clashes);
    expect(first?.words).toBe(
      'Take Bone clamp out of the set, and process it alone in Pindlecote light wrap on S2-gr121-30-30; the rest goes in Pindlecote heavy wrap on S1-pv132-4-30.',
    );
    expect(first?.effect).toBe('route');
  });

  it('ROBOT-F has none: the cycle is not qualified, the bath is not irrigated', () => {
    expect(chosenWords('ROBOT-F')).toBe('none: nothing');
    expect(clashNames(derived(view, 'ROBOT-F'))).toEqual([
      ['device/skerrow-wristed-grasper steam-dry', 'sterilizer/S2 evidence'],
      ['device/skerrow-wristed-grasper machine-step'],
    ]);
    const card = derived(view, 'ROBOT-F').route.card.cycle;
    expect(card?.judgements.filter(({ outcome }) => outcome === 'fails').map(({ parameter }) => parameter)).toEqual(
      expect.arrayContaining(['lumen', 'packaging', 'steam-temperature', 'steam-dry']),
    );
  });

  it('derives the same through the shared questions', () => {
    for (const set of view.all('set')) {
      const id = set.id?.text ?? '';
      expect(view.ask(routeOfSet, id)?.status).toBe(derived(view, id).route.status);
    }
    expect(view.ask(routeOfSet, 'no-such-set')).toBeUndefined();
  });
});

describe('devices judged alone', () => {
  it('finds a route for each but those that nothing here fits', () => {
    const none = view
      .all('device')
      .filter((device) => view.ask(routeOfDevice, device.id?.text ?? '')?.status === 'none');
    expect(none.map((device) => device.id?.text)).toEqual([
      'lintrel-pressure-probe',
      'oxbarrow-aluminium-case',
      'skerrow-wristed-grasper',
    ]);
  });

  it('refuses what is out of scope, and says so', () => {
    const route = view.ask(routeOfDevice, 'duskwell-flexible-scope');
    expect(route?.status).toBe('provisional');
    expect(route?.members[0]?.unknown[0]?.because).toBe('out-of-scope');
    expect(route?.chosen).toBeUndefined();
  });
});

describe('explanations', () => {
  it('writes one letter a maker, with the sets it frees', () => {
    const letters = view.ask(openLetters, '');
    expect(letters.map(({ maker, unlocks }) => `${maker}: ${unlocks.join(' ')}`)).toEqual(['Quillmark: EYE-D']);
    expect(letters[0]?.questions[0]?.words).toContain('QM-10, rev B, p. 6');
  });

  it('shows by how much each cycle misses', () => {
    const dry = nearMisses(derived(view, 'KNEE-C')).find(
      ({ who, parameter }) => who === 'device/oxbarrow-aluminium-case' && parameter === 'steam-dry',
    );
    expect(dry?.cycles.map(({ cycle, gap }) => `${cycle} ${gap}`.trim())).toEqual([
      'S1-pv132-4-20 20 min short',
      'S1-pv132-4-30 10 min short',
      'S1-pv132-10-30 10 min short',
      'S2-pv134-4-30 10 min short',
      'S2-pv134-4-50',
    ]);
  });

  it('says who governs, the slack, and what would change', () => {
    const rows = governingTable(derived(view, 'EYE-D'));
    const dry = rows.find(({ parameter }) => parameter === 'Drying time');
    expect(dry).toMatchObject({
      required: 'at least 20 min',
      gives: '30 min',
      slack: '10 min',
      ifLeft: 'at least 15 min',
    });
    const method = rows.find(({ parameter }) => parameter === 'Method');
    expect(method).toMatchObject({ required: 'steam-prevac', ifLeft: 'steam-gravity or steam-prevac' });
  });

  it('never uses words of verdict', () => {
    const words = view
      .all('set')
      .flatMap((set) =>
        repairsFor(derived(view, set.id?.text ?? '')).flatMap((one) => [one.words, ...one.verified, ...one.leaves]),
      );
    for (const text of words) expect(text).not.toMatch(/\b(safe|sterile|compliant|validated|approved|released)\b/i);
  });
});
