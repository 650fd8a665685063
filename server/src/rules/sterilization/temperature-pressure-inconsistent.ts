import type { SterilizerCycle } from '../../model/entities/sterilizer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import { expectedGaugeKPa, temperatureForGaugeC } from '../../physics/atmosphere.ts';
import { saturationPressureKPa, saturationTemperatureC } from '../../physics/steam.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { airPressureKPa } from '../support/local-air.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, likeQuantity, siteLimit, siteOf } from '../support/site-limits.ts';

type Reference = 'gauge' | 'absolute';

const message = {
  off: (pressure: string, reference: Reference, really: string, setpoint: string) =>
    `A ${reference} pressure of ${pressure} is saturated steam of ${really} here, not ${setpoint}.`,
  other: (reference: Reference) => ` Read as ${reference} it would fit: check which one the log shows.`,
  neither: (pressure: string, setpoint: string) =>
    `A pressure of ${pressure} is not saturated steam of ${setpoint} here, whether read as gauge or as absolute. Say which one the log shows.`,
  noAir:
    'Whether this pressure fits the temperature can’t be judged: neither the machine nor the site gives the air pressure or the altitude.',
  noLimit: (cycles: string) =>
    `Whether pressure and temperature of ${cycles} fit can't be judged: the site has adopted no limit "pressure_temperature".`,
  gap: (kelvin: number, word: string, expected: string) =>
    `${kelvin.toFixed(1)} K too ${word}; ${expected} is expected`,
};

export const rule = defineRule({
  id: 'temperature-pressure-inconsistent',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'engineering',
  why: 'Pressure and temperature that do not fit mean air, superheat, or a gauge read the wrong way.',
  source: 'logic',
  kinds: ['sterilizer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'sterilizer')) checkSterilizer(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
cycles:
  - {id: urgent, modality: steam-prevac, temp: 132 C, log_check: {pressure: 27 psi, ref: gauge}}
                                                                            ^^^^^^ A gauge pressure of 27 psi is saturated steam of 129.9 °C here, not 132 °C.
=== site.ifu.yaml
kind: site
id: lakeside
altitude: 1610 m
thresholds: {pressure_temperature: {at_most: 1.5 K, src: "engineering note E-3"}}
`,
      `
=== sterilizers/s3.ifu.yaml
kind: sterilizer
id: S3
atmosphere: 101.3 kPa
cycles:
  - {id: pv134, modality: steam-prevac, temp: 134 C, log_check: {pressure: 304 kPa, ref: gauge}}
                                                                           ^^^^^^^ A gauge pressure of 304 kPa is saturated steam of 144.1 °C here, not 134 °C. Read as absolute it would fit: check which one the log shows.
=== site.ifu.yaml
kind: site
id: sea-view
thresholds: {pressure_temperature: {at_most: 1.5 K, src: "engineering note E-3"}}
`,
      `
=== sterilizers/s3.ifu.yaml
kind: sterilizer
id: S3
cycles:
  - {id: pv134, modality: steam-prevac, temp: 134 C, log_check: {pressure: 304 kPa, ref: absolute}}
=== site.ifu.yaml
kind: site
id: sea-view
    ^^^^^^^^ Whether pressure and temperature of pv134 fit can't be judged: the site has adopted no limit "pressure_temperature".
`,
    ],
    good: [
      `
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
cycles:
  - {id: urgent, modality: steam-prevac, temp: 132 C, log_check: {pressure: 203 kPa, ref: gauge}}
=== site.ifu.yaml
kind: site
id: lakeside
atmosphere: 83.4 kPa
thresholds: {pressure_temperature: {at_most: 1.5 K, src: "engineering note E-3"}}
`,
      `
=== sterilizers/s4.ifu.yaml
kind: sterilizer
id: S4
cycles:
  - {id: surface, modality: vh2o2, temp: 50 C}
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkSterilizer(sterilizer: EntityOf['sterilizer'], { view, report }: RuleContext): void {
  const site = siteOf(sterilizer, view);
  const limit = siteLimit(site, 'pressure_temperature');
  for (const cycle of sterilizer.cycles?.items ?? []) {
    const reading = readingOf(cycle);
    if (reading === undefined) continue;
    const air = airPressureKPa(sterilizer, site);
    if (air === undefined && reading.reference !== 'absolute') {
      report({ at: reading.pressure.at, severity: 'advice', message: message.noAir });
    } else if (limit !== undefined) {
      const found = judged(reading, air?.kPa ?? 0, limit.value);
      if (found === undefined) continue;
      report({
        at: reading.pressure.at,
        ...found,
        related: [
          { at: reading.setpoint.at, note: 'temperature of the cycle' },
          ...(air === undefined ? [] : [{ at: air.at, note: 'from which the air pressure is taken' }]),
          { at: limit.at, note: `the difference the department accepts${bySource(limit)}` },
        ],
      });
    }
  }
}

interface PressureReading {
  readonly pressure: Quantity;
  readonly setpoint: Quantity;
  readonly reference: Reference | undefined;
}

function readingOf(cycle: SterilizerCycle): PressureReading | undefined {
  const pressure = cycle.log_check?.pressure;
  const setpoint = cycle.temp;
  if (cycle.modality?.text.startsWith('steam') === false || pressure === undefined || setpoint === undefined)
    return undefined;
  if (pressure.problem !== undefined || setpoint.problem !== undefined) return undefined;
  const unitSays = pressure.reference === 'unstated' ? undefined : pressure.reference;
  return { pressure, setpoint, reference: cycle.log_check?.ref?.text ?? unitSays };
}

function judged({ pressure, setpoint, reference }: PressureReading, airKPa: number, limitK: number) {
  const off = (as: Reference) => {
    const really =
      as === 'gauge' ? temperatureForGaugeC(pressure.value, airKPa) : saturationTemperatureC(pressure.value);
    return really.ok ? really.value - setpoint.value : undefined;
  };
  const isFit = (as: Reference) => Math.abs(off(as) ?? Number.POSITIVE_INFINITY) <= limitK;
  if (reference === undefined) {
    return isFit('gauge') || isFit('absolute')
      ? undefined
      : { message: message.neither(shown(pressure), shown(setpoint)) };
  }
  const difference = off(reference);
  if (difference === undefined || isFit(reference)) return undefined;
  const other = reference === 'gauge' ? 'absolute' : 'gauge';
  const really = `${(setpoint.value + difference).toFixed(1)} °C`;
  const expected = expectedPressure(setpoint, pressure, reference, airKPa);
  return {
    message:
      message.off(shown(pressure), reference, really, shown(setpoint)) + (isFit(other) ? message.other(other) : ''),
    does: `${shown(pressure)} ${reference} at ${shown(setpoint)}`,
    gap: message.gap(Math.abs(difference), difference > 0 ? 'high' : 'low', expected),
  };
}

function expectedPressure(setpoint: Quantity, pressure: Quantity, reference: Reference, airKPa: number): string {
  const expected =
    reference === 'gauge' ? expectedGaugeKPa(setpoint.value, airKPa) : saturationPressureKPa(setpoint.value);
  return expected.ok ? `${likeQuantity(expected.value, pressure, 1)} ${reference}` : 'another pressure';
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (siteLimit(site, 'pressure_temperature') !== undefined) return;
  const cycles = view
    .all('sterilizer')
    .flatMap((sterilizer) =>
      siteOf(sterilizer, view) === site
        ? (sterilizer.cycles?.items ?? []).filter((cycle) => readingOf(cycle) !== undefined)
        : [],
    );
  if (cycles.length === 0) return;
  const names = cycles.map((cycle) => cycle.id?.text ?? rootOfEntity(site).id);
  report({
    at: site.thresholds?.at ?? site.id?.at ?? site.at,
    severity: 'advice',
    message: message.noLimit(listed(names)),
  });
}
