import type { DateValue } from '../../model/node.ts';
import type { Printing } from '../amounts.ts';
import { nameOf, screenName } from '../names.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { said } from '../piece.ts';

/** Every cycle with the day it was last qualified or tested; one without a day says so. */
export function equipmentParts({ view }: Printing): readonly Part[] {
  const sterilizing = view
    .all('sterilizer')
    .flatMap((machine) =>
      (machine.cycles?.items ?? []).map((cycle): readonly Line[] => [
        [nameOf(machine, '')],
        [screenName(cycle, '')],
        dayOf(cycle.qualified ?? machine.qualified),
        dayOf(cycle.qualified_until),
      ]),
    );
  const washing = view
    .all('washer')
    .flatMap((machine) =>
      (machine.cycles?.items ?? []).map((cycle): readonly Line[] => [
        [nameOf(machine, '')],
        [screenName(cycle, '')],
        dayOf(cycle.qualified ?? machine.qualified),
        dayOf(cycle.last_cleaning_test),
      ]),
    );
  const others = [
    ...view
      .all('ultrasonic')
      .map((bath): readonly Line[] => [[nameOf(bath, '')], ['last test'], dayOf(bath.last_test)]),
    ...view
      .all('water')
      .map((water): readonly Line[] => [[nameOf(water, '')], ['last result'], dayOf(water.last_result)]),
    ...view
      .all('sterilizer')
      .flatMap((machine): readonly (readonly Line[])[] => [
        ...(machine.air_removal_test === undefined
          ? []
          : [[[nameOf(machine, '')], ['air removal test'], dayOf(machine.air_removal_test.last)]]),
        ...(machine.steam === undefined
          ? []
          : [[[nameOf(machine, '')], ['steam measured'], dayOf(machine.steam.measured)]]),
        ...(machine.maintained === undefined
          ? []
          : [[[nameOf(machine, '')], ['maintained'], dayOf(machine.maintained)]]),
      ]),
  ];
  return [
    { is: 'heading', level: 2, line: ['Sterilizers'] },
    { is: 'table', head: ['Machine', 'Cycle', 'Qualified', 'Until'], rows: sterilizing },
    { is: 'heading', level: 2, line: ['Washers'] },
    { is: 'table', head: ['Machine', 'Cycle', 'Qualified', 'Last cleaning test'], rows: washing },
    { is: 'heading', level: 2, line: ['Tests and readings'] },
    { is: 'table', head: ['What', 'Which', 'Last'], rows: others },
  ];
}

function dayOf(day: DateValue | undefined): Line {
  return day === undefined ? ['no day'] : [said(day)];
}
