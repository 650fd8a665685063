import { unitNamed } from '../../judge/unit-named.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { Quantity } from '../../model/node.ts';
import { expectedGaugeKPa, standardAtmosphereKPa } from '../../physics/atmosphere.ts';
import { A0_SCALE, amountOf, lethalityOfHold } from '../../physics/lethality.ts';
import { formatIn } from '../../quantity/format.ts';
import { amount, type Printing } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { originOf, told } from '../piece.ts';
import type { Ground } from './ground.ts';
import type { Draft } from './question.ts';

/** Numbers worked out, each with wrong ones that lie outside the tolerance. */
export function calculationDrafts({ printing }: Ground): readonly Draft[] {
  return [...heatDoses(printing), ...conversions(printing), ...gauges(printing)];
}

interface Sum {
  readonly key: string;
  readonly stage: Draft['stage'];
  readonly text: Line;
  readonly value: number;
  /** Share of the value within which an answer counts as right. */
  readonly tolerance: number;
  /** Values that a slip leads to. */
  readonly slips: readonly number[];
  readonly from: readonly string[];
  readonly why: Line;
  readonly show: (value: number) => string;
  readonly difficulty: number;
}

function draftOf({ key, stage, text, value, tolerance, slips, from, why, show, difficulty }: Sum): Draft {
  const line = (number: number): Line => [{ text: show(number), from, how: 'computed' }];
  return {
    key: `calculation ${key}`,
    template: 'calculation',
    stage,
    text,
    right: line(value),
    wrong: slips.filter((slip) => Math.abs(slip - value) > tolerance * Math.abs(value)).map(line),
    asking: 'not-offered',
    why: tolerance === 0 ? why : [...why, ' Tolerance: ', told('formula', `${tolerance * 100} %`), '.'],
    citation: [],
    difficulty,
  };
}

/** A0 of the hot hold of each washer cycle. */
function heatDoses(printing: Printing): readonly Draft[] {
  const drafts: Draft[] = [];
  for (const washer of printing.view.all('washer')) {
    for (const cycle of washer.cycles?.items ?? []) {
      const hold = cycle.phases?.items.find(({ phase }) => phase?.text === 'thermal');
      if (hold?.temp === undefined || hold.time === undefined) continue;
      const dose = lethalityOfHold(A0_SCALE, {
        temperatureC: hold.temp.value,
        holdS: hold.time.value,
        uncertaintyK: 0,
      });
      if (!dose.ok) continue;
      const value = amountOf(dose.value);
      drafts.push(
        draftOf({
          key: `a0 washer/${washer.id?.text} ${cycle.id?.text}`,
          stage: 'decontamination',
          text: [
            'The hot hold of ',
            nameOf(washer, ''),
            ', cycle ',
            nameOf(cycle, ''),
            ' is ',
            amount(hold.temp, printing),
            ' for ',
            amount(hold.time, printing),
            '. About which A0 is that?',
          ],
          value,
          tolerance: 0.05,
          slips: [value / 60, value / 10, value * 10, hold.time.value, value * 2],
          from: [originOf(hold.temp.at), originOf(hold.time.at)],
          why: [
            'Every ten degrees above ',
            told('formula', '80 °C'),
            ' count ten times as much: seconds times ',
            told('formula', '10 to the power of (T − 80) / 10'),
            '. It explains a cycle and permits none.',
          ],
          show: (number) => String(Math.round(number)),
          difficulty: 3,
        }),
      );
    }
  }
  return drafts;
}

function conversions(printing: Printing): readonly Draft[] {
  const fahrenheit = unitNamed('temperature', '°F');
  return steamTemps(printing).map((temp) =>
    draftOf({
      key: `fahrenheit ${originOf(temp.at)}`,
      stage: 'sterilizing',
      text: [
        'A page says ',
        amount(temp, printing),
        printing.temperature === 'C' ? '. How much is that in °F?' : '. How much is that on the Fahrenheit scale?',
      ],
      value: temp.value * 1.8 + 32,
      tolerance: 0.002,
      slips: [temp.value * 1.8, temp.value * 2 + 30, temp.value * 1.8 - 32, temp.value + 32],
      from: [originOf(temp.at)],
      why: [
        told('formula', '°C times 1.8, plus 32'),
        '. A difference of degrees takes no ',
        told('formula', '32'),
        '.',
      ],
      show: (number) => formatIn((number - 32) / 1.8, fahrenheit, 0),
      difficulty: 2,
    }),
  );
}

/** What the gauge shows here, against what it would show at the sea. */
function gauges(printing: Printing): readonly Draft[] {
  const site = printing.view.site();
  const { altitude, atmosphere } = site ?? {};
  const standard =
    altitude === undefined || altitude.problem !== undefined ? undefined : standardAtmosphereKPa(altitude.value);
  const air = atmosphere?.value ?? (standard?.ok === true ? standard.value : undefined);
  const sea = standardAtmosphereKPa(0);
  const at = atmosphere ?? altitude;
  if (air === undefined || at === undefined || !sea.ok) return [];
  return steamTemps(printing).flatMap((temp): readonly Draft[] => {
    const [here, there] = [expectedGaugeKPa(temp.value, air), expectedGaugeKPa(temp.value, sea.value)];
    if (!here.ok || !there.ok) return [];
    return [
      draftOf({
        key: `gauge ${originOf(temp.at)}`,
        stage: 'sterilizing',
        text: ['Saturated steam of ', amount(temp, printing), ': about what does a gauge in our department show?'],
        value: here.value,
        tolerance: 0.03,
        slips: [there.value, here.value + air, here.value / 2, here.value * 1.25],
        from: [originOf(temp.at), originOf(at.at)],
        why: [
          'A gauge shows the pressure of the steam less that of the air around it, which is lower the higher we are.',
        ],
        show: (number) => `${Math.round(number)} kPa`,
        difficulty: 3,
      }),
    ];
  });
}

/** Each temperature of our steam cycles once. */
function steamTemps({ view }: Printing): readonly Quantity[] {
  const temps = new Map<number, Quantity>();
  for (const machine of view.all('sterilizer'))
    for (const { modality, temp } of machine.cycles?.items ?? [])
      if (
        isSteam((modality ?? machine.modality)?.text) &&
        temp !== undefined &&
        temp.problem === undefined &&
        !temps.has(temp.value)
      )
        temps.set(temp.value, temp);
  return [...temps.values()];
}
