import { isSteam } from '../../judge/vocabulary.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Citation, Place, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { LethalityScale } from '../../physics/lethality.ts';
import { A0_SCALE, amountOf, F0_SCALE, lethalityOfHold } from '../../physics/lethality.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';
import { shown } from '../support/shown.ts';
import type { Site, SiteLimit } from '../support/site-limits.ts';
import { bySource, siteLimit } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

type Device = EntityOf['device'];

const message = {
  low: (what: string, dose: string, limit: string) =>
    `${what} comes to ${dose}, less than ${limit}, below which a slip of typing is likely. Look at the page again.`,
  high: (what: string, dose: string, limit: string) =>
    `${what} comes to ${dose}, more than ${limit}, above which a slip of typing is likely. Look at the page again.`,
  pair: (temp: string, time: string) => `${temp} for ${time}`,
  f0: (minutes: string) => `an F0 of about ${minutes} min`,
  a0: (seconds: string) => `an A0 of about ${seconds}`,
  what: 'Whether the temperatures and times of options are plausible',
};

export const rule = defineRule({
  id: 'lethality-implausible',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A dose of heat far from all others is nearly always a number typed wrong; it says nothing about what is allowed.',
  source: 'logic',
  kinds: ['device', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'device')) checkDevice(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== devices/clamp.ifu.yaml
kind: device
id: clamp
sterilization:
  any_of:
    - {id: gr112, modality: steam-gravity, temp: {stated: 112 C}, exposure: {stated: 30 min}, src: s1}
                                                                  ^^^^^^^^ 112 °C (no bound word) for 30 min (no bound word) comes to an F0 of about 3.7 min, less than 12 min (policy P-14), below which a slip of typing is likely. Look at the page again.
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 180 min}, src: s1}
                                                                 ^^^^^^^^ 134 °C (no bound word) for 180 min (no bound word) comes to an F0 of about 3500 min, more than 700 min (policy P-14), above which a slip of typing is likely. Look at the page again.
statements:
  s1: {doc: CL-1, rev: A, page: 3, quote: "Gravity steam 121 °C, 30 minutes; pre-vacuum 134 °C, 18 minutes."}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {f0_low: {at_least: 12 min, src: policy P-14}, f0_high: {at_most: 700 min, src: policy P-14}}
`,
      `
=== devices/scope.ifu.yaml
kind: device
id: scope
mechanical: {thermal: {temp: {stated: 70 C}, time: {stated: 1 min}, src: s1}}
                                             ^^^^ 70 °C (no bound word) for 1 min (no bound word) comes to an A0 of about 6, less than 60 (policy P-14), below which a slip of typing is likely. Look at the page again.
statements:
  s1: {doc: SC-1, rev: A, page: 3, quote: "Thermal disinfection at 90 °C for 1 minute."}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {f0_low: {at_least: 12 min, src: policy P-14}, f0_high: {at_most: 700 min, src: policy P-14}, a0_low: {at_least: 60, src: policy P-14}}
`,
      `
=== devices/tube.ifu.yaml
kind: device
id: tube
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {f0_low: {at_least: 12 min, src: policy P-14}}
^^^^^^^^^^ Whether the temperatures and times of options are plausible can't be judged: the limits of this site give no "f0_high".
`,
    ],
    good: [
      `
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {thermal: {temp: {stated: 90 C}, time: {stated: 1 min}}}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {between: [132 C, 135 C]}, exposure: {at_least: 4 min}}
    - {id: tse, modality: steam-prevac, when: prion-suspected, temp: {stated: 134 C}, exposure: {stated: 18 min}}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {f0_low: {at_least: 12 min, src: policy P-14}, f0_high: {at_most: 700 min, src: policy P-14}, a0_low: {at_least: 60, src: policy P-14}}
`,
      `
=== devices/camera.ifu.yaml
kind: device
id: camera
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, temp: {stated: 50 C}, exposure: {stated: 30 min}}
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

/** A hold as a page gives it. */
interface Hold {
  readonly temp: Requirement;
  readonly time: Requirement;
  readonly at: Place;
  readonly src: Citation | undefined;
}

function checkDevice(device: Device, context: RuleContext): void {
  const site = context.view.site();
  for (const hold of steamHolds(device)) {
    tellLow(device, hold, F0_SCALE, siteLimit(site, 'f0_low'), context);
    tellHigh(device, hold, siteLimit(site, 'f0_high'), context);
  }
  for (const hold of washHolds(device)) tellLow(device, hold, A0_SCALE, siteLimit(site, 'a0_low'), context);
}

function steamHolds(device: Device): readonly Hold[] {
  return (device.sterilization?.any_of?.items ?? []).flatMap((option) =>
    isSteam(option.modality?.text) ? holdOf(option.temp, option.exposure, option) : [],
  );
}

/** Thermal disinfection, in the washer or as a stage of its own. */
function washHolds({ mechanical, disinfection }: Device): readonly Hold[] {
  const { thermal } = mechanical ?? {};
  const pairs = [thermal, disinfection, ...(disinfection?.options?.items ?? [])];
  return pairs.flatMap((pair) => (pair === undefined ? [] : holdOf(pair.temp, pair.time, pair)));
}

function holdOf(
  temp: Requirement | undefined,
  time: Requirement | undefined,
  { src }: Pick<SterilizationOption, 'src'>,
): readonly Hold[] {
  return temp === undefined || time === undefined ? [] : [{ temp, time, at: time.at, src: time.src ?? src }];
}

/** The most that the page can mean is still too little. */
function tellLow(
  device: Device,
  hold: Hold,
  scale: LethalityScale,
  limit: SiteLimit | undefined,
  { report }: RuleContext,
): void {
  const dose = limit === undefined ? undefined : doseOf(hold, scale, 'highest');
  if (limit === undefined || dose === undefined || dose >= inUnit(limit.value, scale)) return;
  report(reportOf(device, hold, limit, message.low(pairOf(hold), inWords(dose, scale), adopted(limit))));
}

/** The least that the page can mean is already too much. */
function tellHigh(device: Device, hold: Hold, limit: SiteLimit | undefined, { report }: RuleContext): void {
  const dose = limit === undefined ? undefined : doseOf(hold, F0_SCALE, 'lowest');
  if (limit === undefined || dose === undefined || dose <= inUnit(limit.value, F0_SCALE)) return;
  report(reportOf(device, hold, limit, message.high(pairOf(hold), inWords(dose, F0_SCALE), adopted(limit))));
}

function reportOf(device: Device, hold: Hold, limit: SiteLimit, words: string) {
  return {
    at: hold.at,
    message: words,
    says: sayingsOf(device, hold.src),
    related: [
      { at: hold.temp.at, note: 'the temperature' },
      { at: limit.at, note: 'what the department has adopted' },
    ],
  };
}

/** A bound that is open at one end counts by the end it has. */
function doseOf({ temp, time }: Hold, scale: LethalityScale, end: 'lowest' | 'highest'): number | undefined {
  const temperatureC = endOf(temp, end);
  const holdS = endOf(time, end);
  if (temperatureC === undefined || holdS === undefined) return undefined;
  const dose = lethalityOfHold(scale, { temperatureC, holdS, uncertaintyK: 0 });
  return dose.ok ? amountOf(dose.value) : undefined;
}

function endOf(requirement: Requirement, end: 'lowest' | 'highest'): number | undefined {
  const demand = demandOf(requirement);
  const { lowest, highest } = demand ?? {};
  return (end === 'lowest' ? (lowest ?? highest) : (highest ?? lowest))?.value;
}

/** Times are kept in seconds, F0 is quoted in minutes, A0 is a bare number. */
function inUnit(value: number, scale: LethalityScale): number {
  return scale.unit === 'min' ? value / 60 : value;
}

function inWords(dose: number, scale: LethalityScale): string {
  const digits = String(Number(dose.toPrecision(2)));
  return scale.unit === 'min' ? message.f0(digits) : message.a0(digits);
}

function pairOf({ temp, time }: Hold): string {
  return message.pair(demandInWords(temp), demandInWords(time));
}

function adopted(limit: SiteLimit): string {
  return `${shown(limit.quantity)}${bySource(limit)}`;
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  for (const name of ['f0_low', 'f0_high'] as const) {
    if (siteLimit(site, name) !== undefined) continue;
    const isAsked = view.all('device').some((device) => steamHolds(device).length > 0);
    if (isAsked) report(unjudged(site, 'thresholds', name, message.what));
  }
}
