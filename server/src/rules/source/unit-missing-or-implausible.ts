import type { Fix } from '../../base/problem.ts';
import { unitNamed } from '../../judge/unit-named.ts';
import type { Threshold } from '../../model/entities/site.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import { rowOf } from '../../model/walk.ts';
import { shortNumber } from '../../quantity/format.ts';
import type { Interval } from '../../quantity/interval.ts';
import { distanceTo } from '../../quantity/interval.ts';
import { fromBase, toBase, unitsOf } from '../../quantity/units.ts';
import { kinds } from '../../schema/kinds.ts';
import { numberHazard } from '../../syntax/number-hazards.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { impossibleIn } from '../support/impossible-numbers.ts';
import { demandInWords } from '../support/limits-of.ts';
import { windowedNumbers } from '../support/plausible-windows.ts';
import { quantityFaultInWords } from '../support/quantity-faults.ts';
import { siteOf } from '../support/site-limits.ts';
import { unitsInQuotes } from '../support/units-in-quotes.ts';

const message = {
  impossible: (text: string, why: string) => `${text} is impossible: ${why}.`,
  implausible: (text: string, window: string, source: string) =>
    `${text} lies outside what the department takes for plausible here (${window}${source === '' ? '' : `, ${source}`}). Look at the unit and the digits.`,
};

export const rule = defineRule({
  id: 'unit-missing-or-implausible',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: '"132" can be °C in one field and °F in the next, and the wrong one looks just as sure.',
  source: 'logic',
  fix: 'Adds the unit that the quote prints, or the one that makes the number plausible.',
  kinds,
  check(entity, context) {
    const { report } = context;
    for (const node of partsOf(entity).quantities) {
      if (node.at.key === 'page') continue;
      const { problem } = node;
      if (problem !== undefined) {
        if (numberHazard(node.text, 'plain', 'quantity') !== undefined) continue;
        report({ at: node.at, message: quantityFaultInWords(node, problem), fixes: unitFixes(node, entity) });
        continue;
      }
      const why = impossibleIn(node, rootOfEntity(entity).kind);
      if (why !== undefined) report({ at: node.at, message: message.impossible(node.text, why) });
    }
    checkWindows(entity, context);
  },
  examples: {
    bad: [
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Pre-vacuum, 270 °F."}
  s2: {doc: PF-1, rev: A, page: 3, quote: "Soak for 5 minutes."}
sterilization:
  any_of: [{id: a, modality: steam-prevac, temp: {stated: 270 C}, src: s1}]
                                                          ^^^^^ 270 C lies outside what the department takes for plausible here (between 115 °C and 140 °C, policy P-9). Look at the unit and the digits.
cleaning: {all_of: [{stage: manual, soak: {stated: 5}, src: s2}]}
                                                   ^ "5" has no unit. A time needs its unit, such as ms, s, min, h.
=== site.ifu.yaml
kind: site
id: lakeside
plausible: {steam_temp: {between: [115 C, 140 C], src: "policy P-9"}}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Use detergents with a pH between 6 and 80."}
  s2: {doc: ST-2, rev: A, page: 3, quote: "Flush with 50 ml and rinse for 2 minuts."}
lumens:
  - {id: tube, bore: 3 m l, length: 180 kg, src: s1}
                     ^^^^^ "m l" is no unit known here. A length needs its unit, such as mm, cm, m, in.
                                    ^^^^^^ "180 kg" is a weight, but a length belongs here.
cleaning:
  all_of:
    - stage: manual
      detergent: {ph: {between: [6, 80]}, src: s1}
                                    ^^ 80 is impossible: a pH lies between 0 and 14.
      flush: {volume: {stated: 50 mLL}, src: s2}
                               ^^^^^^ "mLL" is no unit known here. Did you mean "mL"?
      rinse: {time: {stated: -2 min}, src: s2}
                             ^^^^^^ -2 min is impossible: it can’t be less than nothing.
`,
      `
kind: procedure
id: forceps
steps: [{stage: inspection, do: visual, magnification: 1x}]
                                                       ^^ 1x is impossible: nothing looks larger under it than to the eye alone.
`,
      `
kind: sterilizer
id: S9
modality: steam-prevac
cycles:
  - {id: S9-pv, modality: steam-prevac, temp: "132", exposure: 4 min, humidity: 130 %}
                                              ^^^^^ "132" has no unit. A temperature needs its unit, such as °C, °F, K.
                                                                                ^^^^^ 130 % is impossible: a share is 100 % at most.
`,
    ],
    good: [
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Pre-vacuum, 270 °F."}
sterilization:
  any_of: [{id: a, modality: steam-prevac, temp: {stated: 270 F}, src: s1}]
=== site.ifu.yaml
kind: site
id: lakeside
altitude: -3 m
plausible: {steam_temp: {between: [115 C, 140 C], src: "policy P-9"}}
`,
      `
kind: device
id: low-temperature-probe
statements:
  s1: {doc: LP-4, rev: A, page: 4, quote: "Store at -20 °C to 25 °C and 30 to 70 % humidity."}
storage: {temp: {between: [-20 C, 25 C]}, humidity: {between: [30 %, 70 %]}, src: s1}
`,
    ],
  },
});

function checkWindows(entity: AnyEntity, { view, report }: RuleContext): void {
  const plausible = siteOf(entity as { site?: never }, view)?.plausible;
  if (plausible === undefined) return;
  for (const { quantity, window } of windowedNumbers(entity)) {
    const limit = rowOf(plausible, window);
    const interval = limit === undefined ? undefined : intervalOf(limit);
    if (limit === undefined || interval === undefined || quantity.problem !== undefined) continue;
    const apart = distanceTo(interval, quantity.value);
    if (apart === 0) continue;
    report({
      at: quantity.at,
      message: message.implausible(quantity.text, demandInWords(limit), limit.src?.text ?? ''),
      gap: gapOf(quantity, interval),
      related: [{ at: limit.at, note: 'what the department takes for plausible' }],
      fixes: [...unitFixes(quantity, entity), ...plausibleUnits(quantity, interval)].filter(isFirstOfTitle),
    });
  }
}

function intervalOf({ at_least, at_most, between }: Threshold): Interval | undefined {
  const low = at_least ?? between?.items[0];
  const high = at_most ?? between?.items[1];
  if ((low ?? high) === undefined || low?.problem !== undefined || high?.problem !== undefined) return undefined;
  return { low: low?.value ?? Number.NEGATIVE_INFINITY, high: high?.value ?? Number.POSITIVE_INFINITY };
}

function gapOf(quantity: Quantity, interval: Interval): string {
  const unit = unitNamed(quantity.dimension, quantity.unit);
  const edge = quantity.value < interval.low ? interval.low : interval.high;
  const apart = Math.abs(quantity.amount - fromBase(edge, unit));
  return `${shortNumber(Number(apart.toFixed(1)))} ${unit.name}`.trimEnd();
}

/** Units that the cited quotes print behind the same number. */
function unitFixes(quantity: Quantity, entity: AnyEntity): readonly Fix[] {
  return unitsInQuotes(quantity, entity).map((text) => changeTo(quantity, text));
}

/** Other units of the same kind that bring the number into the window. */
function plausibleUnits(quantity: Quantity, { low, high }: Interval): readonly Fix[] {
  const fixes: Fix[] = [];
  for (const unit of unitsOf(quantity.dimension)) {
    const value = toBase(quantity.amount, unit);
    if (unit.name === quantity.unit || value < low || value > high) continue;
    fixes.push(changeTo(quantity, `${quantity.amount.toFixed(quantity.decimals)} ${unit.name}`.trimEnd()));
  }
  return fixes;
}

function changeTo(quantity: Quantity, text: string): Fix {
  return { title: `Change to ${text}`, edits: [{ span: quantity.at.span, text }] };
}

function isFirstOfTitle(fix: Fix, index: number, all: readonly Fix[]): boolean {
  return all.findIndex((other) => other.title === fix.title) === index;
}
