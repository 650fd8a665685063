import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { departmentOf } from '../../../server/src/route/equipment.ts';
import { routeOfDeviceSomewhere } from '../../../server/src/route/route.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';

const texts = [
  'kind: site\nid: north\n',
  'kind: site\nid: south\n',
  'kind: packaging\nid: wrap-north\nsite: north\ntype: wrap\n',
  'kind: packaging\nid: wrap-south\nsite: south\ntype: wrap\n',
  'kind: packaging\nid: pouch\ntype: pouch\n',
  'kind: chemistry\nid: soap-south\nsite: south\n',
  'kind: washer\nid: W9\nsite: south\ncycles: [{id: W9-a, last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]\n',
  'kind: device\nid: basin\nclass: non-critical\nmechanical: {use: required}\n',
  'kind: device\nid: bath-only\nclass: non-critical\nultrasonic: {use: required}\ncleaning: {all_of: [{stage: ultrasonic}]}\n',
];

const engine = new Engine({ rules: allRules, today: testDay });
for (const [at, text] of texts.entries()) engine.set(fileId(`${at}.ifu.yaml`), text);
const view = engine.view();

describe('a library of two sites', () => {
  it('offers each what it uses itself and what no site claims', () => {
    const offered = ['north', 'south'].map((site) => {
      const { packagings, chemistry } = view.ask(departmentOf, site);
      return [...packagings, ...chemistry].map(({ id }) => id?.text);
    });
    expect(offered).toEqual([
      ['pouch', 'wrap-north'],
      ['pouch', 'wrap-south', 'soap-south'],
    ]);
  });

  it('knows what a file names, whoever uses it', () => {
    const { packagingById, stock } = view.ask(departmentOf, 'north');
    expect(packagingById.has('wrap-south')).toBe(true);
    expect(stock.chemistry('soap-south')).toBeDefined();
  });

  it('looks for a device alone at one site after the other', () => {
    const washed = view.ask(routeOfDeviceSomewhere, 'basin');
    expect(washed?.status).not.toBe('none');
    expect(washed?.members[0]?.cleaning?.stages.map(({ machine }) => machine)).toEqual(['W9']);
    expect(view.ask(routeOfDeviceSomewhere, 'bath-only')?.status).toBe('none');
  });
});
