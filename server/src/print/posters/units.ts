import { unitNamed } from '../../judge/unit-named.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { Quantity } from '../../model/node.ts';
import { expectedGaugeKPa, standardAtmosphereKPa } from '../../physics/atmosphere.ts';
import { saturationTemperatureC } from '../../physics/steam.ts';
import { formatIn } from '../../quantity/format.ts';
import type { Unit } from '../../quantity/unit-list.ts';
import { fromBase } from '../../quantity/units.ts';
import { amount, decimals, type Printing } from '../amounts.ts';
import type { Line, Value } from '../piece.ts';
import { originOf } from '../piece.ts';
import type { PosterBody } from './poster.ts';

const mostRows = 24;

/** Temperatures of our steam cycles and three degrees more, with what a gauge here shows for saturated steam. */
export function units(printing: Printing): PosterBody {
  const { units: words, cautions, cautionAltitude } = printing.words.poster;
  const air = airOf(printing);
  const temps = steamTemperatures(printing);
  if (air === undefined || temps.length === 0)
    return { lines: [[printing.words.poster.unstated]], cautions: [...cautions, cautionAltitude] };
  const [low, high] = [Math.floor(Math.min(...temps)), Math.ceil(Math.max(...temps)) + 3];
  const rows: (readonly Line[])[] = [];
  const boiling = saturationTemperatureC(air.kPa);
  if (boiling.ok) rows.push(rowOf(boiling.value, air, printing, words.boils));
  for (let temp = low; temp <= high && rows.length < mostRows; temp++) rows.push(rowOf(temp, air, printing));
  return {
    table: { head: words.head, rows },
    lines: air.altitude === undefined ? [] : [words.altitude(amount(air.altitude, printing), air.shown)],
    sources: [[words.source]],
    cautions: [...cautions, cautionAltitude],
  };
}

interface Air {
  readonly kPa: number;
  readonly from: readonly string[];
  readonly shown: Value;
  readonly altitude?: Quantity;
}

/** As measured, else by the altitude. */
function airOf(printing: Printing): Air | undefined {
  const site = printing.view.site();
  const { atmosphere, altitude } = site ?? {};
  if (atmosphere !== undefined && atmosphere.problem === undefined)
    return {
      kPa: atmosphere.value,
      from: [originOf(atmosphere.at)],
      shown: amount(atmosphere, printing),
      ...(altitude && { altitude }),
    };
  if (altitude === undefined || altitude.problem !== undefined) return undefined;
  const standard = standardAtmosphereKPa(altitude.value);
  if (!standard.ok) return undefined;
  const from = [originOf(altitude.at)];
  const shown: Value = { text: decimals(`${standard.value.toFixed(1)} kPa`, printing.words), from, how: 'computed' };
  return { kPa: standard.value, from, shown, altitude };
}

function steamTemperatures({ view }: Printing): readonly number[] {
  const temps: number[] = [];
  for (const machine of view.all('sterilizer'))
    for (const { modality, temp } of machine.cycles?.items ?? [])
      if (isSteam((modality ?? machine.modality)?.text) && temp !== undefined && temp.problem === undefined)
        temps.push(temp.value);
  return temps;
}

function rowOf(temp: number, { kPa, from }: Air, { words }: Printing, name = ''): readonly Line[] {
  const computed = (text: string): Value => ({ text: decimals(text, words), from, how: 'computed' });
  const gauge = expectedGaugeKPa(temp, kPa);
  const celsius = formatIn(temp, unitNamed('temperature', '°C'), Number.isInteger(temp) ? 0 : 1);
  const cells: Line[] = [
    [computed(bare(celsius))],
    [computed(bare(formatIn(temp, unitNamed('temperature', '°F'), 0)))],
  ];
  if (name !== '') cells[0] = [computed(bare(celsius)), ` ${name}`];
  const pressure = gauge.ok ? gauge.value : undefined;
  return [
    ...cells,
    pressure === undefined ? [] : [computed(String(Math.round(pressure)))],
    pressure === undefined ? [] : [computed(shownAs(fromBase(pressure, psi())))],
  ];
}

/** One decimal, never `-0.0`. */
function shownAs(value: number): string {
  const text = value.toFixed(1);
  return Number(text) === 0 ? '0.0' : text;
}

function bare(text: string): string {
  return text.slice(0, text.indexOf(' '));
}

function psi(): Unit {
  return unitNamed('pressure', 'psi');
}
