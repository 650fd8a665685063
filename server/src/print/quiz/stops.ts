import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { said } from '../piece.ts';
import { citationOf } from '../sayings.ts';
import type { Ground } from './ground.ts';
import type { Draft } from './question.ts';

const carryOn: readonly Line[] = [
  ['Carry on, and write it down afterwards.'],
  ['Carry on with a longer cycle, to be on the sure side.'],
  ['Carry on as with the other items of the tray.'],
];

/** Prohibitions of methods, in the words of what lies on the bench. */
const scenes: Readonly<Record<string, string>> = {
  steam: ' lies in a tray that goes into the steam sterilizer',
  ultrasonic: ' lies in a basket for the ultrasonic bath',
  mechanical: ' lies in a rack for the washer',
  vh2o2: ' lies in a pouch for the peroxide sterilizer',
  immersion: ' lies beside a sink that is filled for soaking',
};

/** Where to stop: what a page forbids, no document, suspected prion disease, a wet pack. */
export function stopDrafts(ground: Ground): readonly Draft[] {
  return [
    ...ground.devices.flatMap((device) => prohibitionDrafts(device)),
    ...withoutDocument(ground),
    ...prionDraft(ground),
    wetPack(ground),
  ];
}

function prohibitionDrafts(device: EntityOf['device']): readonly Draft[] {
  const forbidden = [
    ...(device.not?.items ?? []).map(({ what, src }) => ({ what: what?.text ?? '', src })),
    ...(['ultrasonic', 'mechanical', 'immersion'] as const).flatMap((what) =>
      device[what]?.use?.text === 'forbidden' ? [{ what, src: device[what]?.src }] : [],
    ),
  ];
  const drafts = new Map<string, Draft>();
  for (const { what, src } of forbidden) {
    const scene = scenes[what];
    const [saying] = sayingsOf(device, src);
    if (scene === undefined || saying === undefined) continue;
    drafts.set(what, {
      key: `stop-point device/${device.id?.text} ${what}`,
      template: 'stop-point',
      stage: what === 'steam' || what === 'vh2o2' ? 'sterilizing' : 'decontamination',
      text: [nameOf(device, ''), scene, '. What do you do?'],
      right: ['Stop, take it out, and process it by its own page.'],
      wrong: carryOn,
      asking: 'not-offered',
      why: ['Its page forbids it.'],
      citation: citationOf(saying),
      difficulty: 1,
    });
  }
  return [...drafts.values()];
}

/** Lines of sets that no document covers. */
function withoutDocument({ printing }: Ground): readonly Draft[] {
  const unmapped = printing.view
    .all('set')
    .flatMap((set) =>
      (set.members?.items ?? []).filter(
        (line) => line.device !== undefined && !printing.view.exists('device', line.device.text),
      ),
    );
  const [line] = unmapped;
  if (line?.device === undefined) return [];
  return [
    {
      key: `stop-point no-document ${line.device.text}`,
      template: 'stop-point',
      stage: 'decontamination',
      text: ['No instruction is on file for ', said(line.device), '. What do you do?'],
      right: ['Hold it, and ask for its document.'],
      wrong: carryOn,
      asking: 'not-offered',
      why: ['Without its instruction nothing about it is known.'],
      citation: [],
      difficulty: 1,
    },
  ];
}

function prionDraft({ printing }: Ground): readonly Draft[] {
  const procedure = printing.view
    .all('procedure')
    .find(({ topics }) => topics?.items.some(({ text }) => text === 'prion') === true);
  const who = procedure?.contacts?.items[0];
  if (procedure === undefined || who === undefined) return [];
  return [
    {
      key: 'stop-point prion',
      template: 'stop-point',
      stage: 'decontamination',
      text: ['Theatre says that prion disease is suspected in the patient of this tray. What do you do?'],
      right: ['Stop, keep it moist and apart, and call ', said(who), '.'],
      wrong: [...carryOn, ['Wash it twice, then carry on.']],
      asking: 'not-offered',
      why: ['Ordinary processing does not inactivate it and would spread it: ', nameOf(procedure, ''), '.'],
      citation: [],
      difficulty: 1,
    },
  ];
}

function wetPack({ printing }: Ground): Draft {
  const procedure = printing.view
    .all('procedure')
    .find(({ steps }) => steps?.items.some(({ when }) => when?.text === 'moisture-found') === true);
  return {
    key: 'stop-point wet-pack',
    template: 'stop-point',
    stage: 'cooling',
    text: ['A pack that comes out of the sterilizer is wet. What do you do?'],
    right: ['Do not use it: back to assembly, and report it.'],
    wrong: [
      ['Let it dry on the shelf.'],
      ['Wipe it and store it first.'],
      ['Run the drying phase once more and store it.'],
    ],
    asking: 'not-offered',
    why: ['Moisture breaches the barrier', ...(procedure === undefined ? [] : [': ', nameOf(procedure, '')]), '.'],
    citation: [],
    difficulty: 1,
  };
}
