import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import type { Node, Quantity, Rec } from '../model/node.ts';
import { fieldOf, isRequirement } from '../model/walk.ts';
import { expectedGaugeKPa } from '../physics/atmosphere.ts';
import type { LethalityScale } from '../physics/lethality.ts';
import { A0_SCALE, amountOf, F0_SCALE, lethalityOfHold } from '../physics/lethality.ts';
import { airPressureKPa } from '../rules/support/local-air.ts';
import type { Block } from './writing/text-blocks.ts';

const caution: Block = {
  block: 'note',
  text: 'Lethality, A0 and pressure are plausibility aids; they never justify a different cycle. Figures that depend on altitude hold for this site only.',
};

/** What physics says of the temperature or time under the pointer: gauge here, F0, A0. Empty where it says nothing; else with its caution. */
export function physicsBlocks(entity: AnyEntity, chain: readonly Node[], view: LibraryView): readonly Block[] {
  const found: Block[] = [];
  const record = aroundOf(chain);
  const field = record === undefined ? undefined : fieldIn(chain, record);
  if (record === undefined || field === undefined) return [];
  const steam = isSteam(record, entity, chain);
  if (steam && field === 'temp') pushLine(found, gaugeWords(amountIn(record, 'temp'), entity, view));
  if (steam && (field === 'temp' || field === 'exposure'))
    pushLine(found, doseWords(F0_SCALE, amountIn(record, 'temp'), amountIn(record, 'exposure')));
  if (isThermal(record, chain) && (field === 'temp' || field === 'time'))
    pushLine(found, doseWords(A0_SCALE, amountIn(record, 'temp'), amountIn(record, 'time')));
  return found.length === 0 ? [] : [...found, caution];
}

function pushLine(blocks: Block[], text: string | undefined): void {
  if (text !== undefined) blocks.push({ block: 'line', text });
}

/** The innermost record that is no requirement: an option, a cycle, a phase. */
function aroundOf(chain: readonly Node[]): Rec | undefined {
  const found = chain.findLast((node) => node.node === 'record' && !isRequirement(node));
  return found?.node === 'record' ? found : undefined;
}

/** Which of its fields the pointer is in. */
function fieldIn(chain: readonly Node[], record: Rec): string | undefined {
  const child = chain[chain.indexOf(record) + 1];
  return child === undefined ? undefined : String(child.at.key);
}

/** The method of the option, or of the machine around a cycle. */
function isSteam(record: Rec, entity: AnyEntity, chain: readonly Node[]): boolean {
  const own = [record, ...chain.filter((node) => node.node === 'record').toReversed(), entity];
  for (const node of own) {
    const modality = node.node === 'record' ? fieldOf(node, 'modality') : undefined;
    if (modality?.node === 'text') return modality.text.startsWith('steam');
  }
  return false;
}

function isThermal(record: Rec, chain: readonly Node[]): boolean {
  const phase = fieldOf(record, 'phase');
  if (phase?.node === 'text') return phase.text === 'thermal';
  return chain.some(({ at }) => at.key === 'thermal' || at.key === 'disinfection');
}

/** The number of a field, whatever bound word it has. A range counts with its lower end. */
function amountIn(record: Rec, field: string): Quantity | undefined {
  const node = fieldOf(record, field);
  if (node?.node === 'quantity') return usable(node);
  if (node === undefined || !isRequirement(node)) return undefined;
  return usable(node.at_least ?? node.exactly ?? node.stated ?? node.between?.items[0] ?? node.at_most ?? node.about);
}

function usable(quantity: Quantity | undefined): Quantity | undefined {
  return quantity?.problem === undefined ? quantity : undefined;
}

function gaugeWords(temp: Quantity | undefined, entity: AnyEntity, view: LibraryView): string | undefined {
  const machine = fieldOf(entity, 'atmosphere');
  const air = airPressureKPa(machine?.node === 'quantity' ? { atmosphere: machine } : {}, view.site());
  if (temp === undefined || air === undefined) return undefined;
  const gauge = expectedGaugeKPa(temp.value, air.kPa);
  if (!gauge.ok) return undefined;
  const psi = (gauge.value / 6.894757).toFixed(1);
  return `Saturated steam at ${temp.text} shows about ${gauge.value.toFixed(0)} kPa (${psi} psi) on a gauge here, with ${air.kPa.toFixed(1)} kPa of air.`;
}

function doseWords(scale: LethalityScale, temp: Quantity | undefined, time: Quantity | undefined): string | undefined {
  if (temp === undefined || time === undefined) return undefined;
  const dose = lethalityOfHold(scale, { temperatureC: temp.value, holdS: time.value, uncertaintyK: 0 });
  if (!dose.ok || dose.value.equivalentS === 0) return undefined;
  const amount = Number(amountOf(dose.value).toPrecision(3));
  const unit = scale.unit === 'min' ? ' min' : ' s';
  return `${time.text} at ${temp.text}: ${scale.name} about ${amount}${scale.name === 'A0' ? '' : unit} (reference ${scale.referenceTemperatureC} °C, z ${scale.zK} K).`;
}
