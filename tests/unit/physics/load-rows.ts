import {
  absoluteFromGaugeKPa,
  boilingPointAtAltitudeC,
  expectedGaugeKPa,
  standardAtmosphereKPa,
  temperatureForGaugeC,
} from '../../../server/src/physics/atmosphere.ts';
import { condensateOfLoad, flashOffG, type LoadPart } from '../../../server/src/physics/condensate.ts';
import { LOAD_MATERIALS, loadMaterial } from '../../../server/src/physics/load-materials.ts';
import { answerOf, type CheckRow, input, inUnitOf, KG_PER_LB, KPA_PER_INHG, M_PER_FT } from './handbook.ts';

/** How each quantity of the condensate and altitude families is computed. */
export const LOAD_ROWS: Readonly<Record<string, (row: CheckRow) => number>> = {
  'specific heat capacity near room temperature': (row) =>
    loadMaterial(materialId(row.inputs))?.heatKJPerKgK ?? Number.NaN,
  'condensate per kg of load m_c = m*c*dT/hfg(T)': (row) => condensate(row, input(row, 'T1'), input(row, 'T2')).waterG,
  'heat to warm a 25 lb stainless set': (row) => condensate(row, ...heatedFromTo(row)).heatKJ,
  'condensate, dry saturated steam': (row) => condensate(row, ...heatedFromTo(row)).waterG,
  'water left by wet steam m_w = m*c*dT/(x*hfg)': (row) => condensate(row, ...heatedFromTo(row)).waterG,
  'water that the stored heat can flash off under vacuum m*c*(T1-Tsat(p))/hfg(Tmean)': (row) =>
    answerOf(flashOffG(parts(row), input(row, 'T1'), input(row, 'p'))),
  'ISA pressure p=101325*(1-0.0065*h/288.15)^5.255876': (row) => answerOf(standardAtmosphereKPa(input(row, 'h'))),
  'standard atmosphere table': (row) => inUnitOf(row, answerOf(standardAtmosphereKPa(input(row, 'h') * M_PER_FT))),
  'gauge pressure needed for 132 degC': (row) =>
    inUnitOf(row, answerOf(expectedGaugeKPa(132, answerOf(standardAtmosphereKPa(input(row, 'h')))))),
  'boiling point of water': (row) => answerOf(boilingPointAtAltitudeC(input(row, 'h'))),
  'actual temperature if the sea-level gauge pressure for 132 degC is kept': (row) =>
    answerOf(temperatureForGaugeC(input(row, 'gauge'), answerOf(standardAtmosphereKPa(input(row, 'h'))))),
  'vacuum gauge to absolute': (row) =>
    answerOf(absoluteFromGaugeKPa(-Number.parseFloat(row.inputs) * KPA_PER_INHG, input(row, 'patm'))),
};

function condensate(row: CheckRow, startTemperatureC: number, steamTemperatureC: number) {
  const dryness = row.inputs.includes('x=') ? input(row, 'x') : 1;
  return answerOf(condensateOfLoad(parts(row), { startTemperatureC, steamTemperatureC, dryness }));
}

function parts(row: CheckRow): LoadPart[] {
  const isPounds = row.inputs.startsWith(`m=${input(row, 'm')} lb`);
  const massKg = input(row, 'm') * (isPounds ? KG_PER_LB : 1);
  const material = LOAD_MATERIALS.find((one) => one.heatKJPerKgK === input(row, 'c'));
  return [{ material: material?.id ?? 'none', massKg }];
}

function heatedFromTo(row: CheckRow): [number, number] {
  const part = row.inputs.split(';').find((text) => text.includes('->')) ?? '';
  const [from = '', to = ''] = part.split('->');
  return [Number.parseFloat(from), Number.parseFloat(to)];
}

const HANDBOOK_NAMES: Readonly<Record<string, string>> = {
  'austenitic stainless': 'stainless-austenitic',
  'martensitic stainless': 'stainless-martensitic',
  'tungsten carbide': 'tungsten-carbide',
  'silicone rubber': 'silicone',
  'rubber (natural)': 'rubber',
  PPSU: 'ppsu',
  PEEK: 'peek',
};

function materialId(name: string): string {
  return HANDBOOK_NAMES[name] ?? name;
}
