import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { Detergent } from '../../model/entities/detergent.generated.ts';
import type { CleaningNode, Flush } from '../../model/entities/device-manual.generated.ts';
import type { WaterQuality } from '../../model/entities/water-quality.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement, Text } from '../../model/node.ts';
import type { StageFit } from '../../route/model.ts';
import { amount, demanded, type Printing, term } from '../amounts.ts';
import { nameOf, screenName } from '../names.ts';
import type { Line } from '../piece.ts';
import { joined, lineIf, plain, said, saidAs } from '../piece.ts';
import type { CardMember } from './source.ts';

/** A stage of the way of cleaning, as one line each: by hand, bath, washer, disinfection. */
export function stageLines({ device, cleaning, demands }: CardMember, printing: Printing): readonly Line[] {
  const lines: Line[] = [];
  if (device === undefined || cleaning === undefined) return lines;
  for (const [index, stage] of cleaning.stages.entries()) {
    const voices = demands[index]?.voices ?? [];
    lines.push(stageLine(stage, { device, voices }, printing));
  }
  return lines;
}

interface Demanding {
  readonly device: EntityOf['device'];
  readonly voices: readonly CleaningNode[];
}

function stageLine(stage: StageFit, demanding: Demanding, printing: Printing): Line {
  const { cleaning } = printing.words.card;
  const phrases = phrasesOf(demanding, printing);
  switch (stage.stage) {
    case 'manual':
      return cleaning.byHand(joined([agentLine(stage, printing), ...phrases], '; '));
    case 'disinfection':
      return cleaning.disinfect(joined([agentLine(stage, printing), ...phrases], '; '));
    case 'ultrasonic': {
      const bath = printing.view.get('ultrasonic', stage.machine);
      const name = bath === undefined ? stage.machine : nameOf(bath, stage.machine);
      return cleaning.bath(name, joined(phrases, '; '));
    }
    case 'mechanical': {
      const washer = printing.view.washerCycle(stage.means);
      if (washer === undefined) return [cleaning.noWasher];
      return cleaning.washer(
        nameOf(washer.machine, stage.machine),
        screenName(washer.cycle, stage.means),
        joined(phrases, '; '),
      );
    }
  }
}

/** The agent that the derived way uses, with its dose and the temperatures of its label. */
function agentLine({ means }: StageFit, printing: Printing): Line {
  const { cleaning } = printing.words.card;
  const agent = printing.view.get('chemistry', means);
  if (agent === undefined) return [];
  const id = agent.id === undefined || agent.name === undefined ? [] : [' ', said(agent.id)];
  const dose = agent.dose === undefined ? undefined : amount(agent.dose, printing);
  return cleaning
    .agent(nameOf(agent, means), dose, demanded(agent.temp, printing))
    .flatMap((piece, index) => (index === 0 ? [piece, ...id] : [piece]));
}

function phrasesOf({ device, voices }: Demanding, printing: Printing): readonly Line[] {
  const phrases: Line[] = [];
  for (const voice of voices) {
    phrases.push(...soaking(voice, printing), ...steps(voice, device, printing), ...hand(voice, device, printing));
    phrases.push(...machine(voice, printing), ...ends(voice, printing));
  }
  return distinct(phrases);
}

/** The same demand from two voices is printed once. */
function distinct(lines: readonly Line[]): readonly Line[] {
  const seen = new Set<string>();
  return lines.filter((line) => line.length > 0 && !seen.has(plain(line)) && seen.add(plain(line)));
}

function soaking(voice: CleaningNode, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  const first = joined(
    [demanded(voice.first_rinse?.temp, printing), demanded(voice.first_rinse?.time, printing)],
    ', ',
  );
  const soak = demanded(voice.soak, printing);
  return [
    first.length === 0 ? [] : cleaning.firstRinse(first),
    soak.length === 0 ? [] : cleaning.soak(soak, demanded(voice.soak_temp, printing)),
    ...detergent(voice.detergent, printing),
  ];
}

/** The agent itself was chosen to fit; what the card must say besides is the temperature the page allows. */
function detergent(asked: Detergent | undefined, printing: Printing): readonly Line[] {
  return [demanded(asked?.temp, printing)];
}

/** Steps in order; neighbours that differ only in the port are one line. */
function steps(voice: CleaningNode, device: EntityOf['device'], printing: Printing): readonly Line[] {
  const lines: { readonly verb: Line; readonly where: Line[]; readonly how: Line }[] = [];
  for (const step of voice.steps?.items ?? []) {
    if (step.when !== undefined) continue;
    const verb = stepVerb(step, printing);
    const where = placeIn(device, step);
    const how = stepDetails(step, printing);
    const last = lines.at(-1);
    if (last !== undefined && plain(last.verb) === plain(verb) && plain(last.how) === plain(how))
      last.where.push(where);
    else lines.push({ verb, where: [where], how });
  }
  return lines.map(({ verb, where, how }) => {
    const places = joined(where, ', ');
    const head = places.length === 0 ? verb : [...verb, ' ', ...places];
    return how.length === 0 ? head : [...head, ': ', ...how];
  });
}

function stepVerb(step: CleaningStep, printing: Printing): Line {
  const verb = step.do === undefined ? [] : [term(step.do, printing)];
  return step.extent === undefined || step.extent.text === 'full' ? verb : [...verb, ' ', term(step.extent, printing)];
}

function stepDetails(step: CleaningStep, printing: Printing): Line {
  const { cleaning } = printing.words.card;
  return joined(
    [
      ...amountsOf(step, printing),
      ...waterOf(step.water, printing),
      ...lineIf(step.mode, (mode) => [term(mode, printing)]),
      ...lineIf(step.tool, (tool) => [term(tool, printing)]),
      ...brushOf(step, printing),
      ...lineIf(step.endpoint, (endpoint) => cleaning.until(said(endpoint))),
    ],
    ', ',
  );
}

interface Amounts {
  readonly volume?: Requirement;
  readonly times?: Requirement;
  readonly time?: Requirement;
  readonly pressure?: Requirement;
  readonly temp?: Requirement;
}

function amountsOf({ volume, times, time, pressure, temp }: Amounts, printing: Printing): readonly Line[] {
  return [volume, times, time, pressure, temp].map((one) => demanded(one, printing));
}

function waterOf(water: WaterQuality | undefined, printing: Printing): readonly Line[] {
  return lineIf(water?.grade, (grade) => [term(grade, printing)]);
}

function brushOf({ brush }: Pick<CleaningStep, 'brush'>, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  if (brush === undefined) return [];
  const size = joined([demanded(brush.diameter, printing), demanded(brush.length, printing)], ', ');
  const strokes = demanded(brush.strokes, printing);
  return [
    size.length === 0 ? [] : cleaning.brushSize(size),
    strokes.length === 0 ? [] : cleaning.strokes(strokes),
    demanded(brush.time, printing),
  ];
}

/** The port or lumen by the name that the device's file gives it. */
function placeIn(device: EntityOf['device'], where: { readonly lumen?: Text; readonly port?: Text }): Line {
  const id = where.lumen ?? where.port;
  if (id === undefined) return [];
  const lumen = device.lumens?.items.find((one) => one.id?.text === id.text || one.port?.text === id.text);
  if (lumen?.name === undefined) return [said(id)];
  const port = where.port === undefined || lumen.name.text.includes(where.port.text) ? [] : [' ', said(where.port)];
  return [saidAs(lumen.name, lumen.name.text), ...port];
}

function hand(voice: CleaningNode, device: EntityOf['device'], printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  const { brush, strokes, brush_time: brushTime, flush, actuate } = voice;
  const brushing = joined([...brushOf({ ...(brush && { brush }) }, printing), demanded(brushTime, printing)], ', ');
  const moves = demanded(actuate, printing);
  const strokeCount = demanded(strokes, printing);
  return [
    brush === undefined || brushing.length === 0
      ? []
      : cleaning.brush([...placeIn(device, { ...(brush.lumen && { lumen: brush.lumen }) }), ' ', ...brushing]),
    strokeCount.length === 0 ? [] : cleaning.strokes(strokeCount),
    ...flushOf(flush, device, printing),
    moves.length === 0 ? [] : cleaning.actuate(moves),
  ];
}

function flushOf(flush: Flush | undefined, device: EntityOf['device'], printing: Printing): readonly Line[] {
  if (flush === undefined) return [];
  const { cleaning } = printing.words.card;
  const how = joined([...amountsOf(flush, printing), ...waterOf(flush.water, printing)], ', ');
  return how.length === 0 ? [] : [cleaning.flush(placeIn(device, flush), how)];
}

function machine(voice: CleaningNode, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  const isBath = voice.stage?.text === 'ultrasonic';
  const degas = demanded(voice.degas, printing);
  return [
    ...(isBath ? [demanded(voice.time, printing), demanded(voice.temp, printing)] : []),
    isBath && voice.irrigated?.on === true ? [cleaning.irrigated] : [],
    degas.length === 0 ? [] : cleaning.degas(degas),
    ...lineIf(voice.connector, (connector) => cleaning.ports(term(connector, printing))),
    ...lineIf(voice.rack, (rack) => cleaning.rack(said(rack))),
    ...lineIf(voice.orientation, (orientation) => [said(orientation)]),
  ];
}

function ends(voice: CleaningNode, printing: Printing): readonly Line[] {
  const { cleaning } = printing.words.card;
  const { rinse, separate_cleaning: apart, tools, endpoint } = voice;
  const rinsing =
    rinse === undefined
      ? []
      : joined(
          [
            demanded(rinse.time, printing),
            demanded(rinse.times, printing),
            demanded(rinse.temp, printing),
            ...waterOf(rinse.water, printing),
            ...lineIf(rinse.mode, (mode) => [term(mode, printing)]),
          ],
          ', ',
        );
  return [
    rinsing.length === 0 ? [] : cleaning.rinse(rinsing),
    ...lineIf(rinse?.final?.grade, (grade) => cleaning.finalRinse([term(grade, printing)])),
    apart?.use?.text === 'required' ? [cleaning.apart] : [],
    ...lineIf(tools, (text) => cleaning.tools(said(text))),
    ...lineIf(endpoint, (text) => cleaning.until(said(text))),
  ];
}
