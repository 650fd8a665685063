import { waysThrough } from '../../judge/demands.ts';
import { saysOf } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { routineSetting } from '../../judge/setting.ts';
import { judgeWater } from '../../judge/water.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { FinalRinse } from '../../model/entities/final-rinse.generated.ts';
import type { WaterQuality } from '../../model/entities/water-quality.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { yesOrNo } from './brief.ts';
import { banOf, failsEveryWay, isOutOfScope } from './cleaning-ways.ts';
import { settingFor } from './judging.ts';

type Device = EntityOf['device'];
type Quality = WaterQuality | FinalRinse;

export const isRinsedByMachine: Query<string, boolean> = {
  name: 'whether the instruction of a device asks for a water in the last rinse of a washer',
  work(view, id) {
    const setting = routineSetting(view.today);
    return view.claimants('device', id).some((device) => {
      if (isOutOfScope(device) || banOf(device, 'mechanical') !== undefined) return false;
      return waysThrough(device, 'mechanical', setting).some((way) =>
        way.some(({ voices }) => voices.some((voice) => voice.final_rinse !== undefined)),
      );
    });
  },
  brief: yesOrNo,
};

export const isWaterLow: Query<string, boolean> = {
  name: 'whether the last water of a washer cycle is not what the instruction of a device asks for',
  work(view, argument) {
    const [cycleId = '', deviceId = ''] = argument.split('\n');
    const washing = view.washerCycle(cycleId);
    const water = washing?.cycle.final_water;
    if (washing === undefined || water === undefined) return false;
    const setting = settingFor(washing.machine, view);
    const devices = view.claimants('device', deviceId);
    return devices.some((device) => byMachine(device, water, setting, view) !== undefined);
  },
  brief: yesOrNo,
};

export function byMachine(device: Device, water: Text, setting: Setting, view: LibraryView): Judgement | undefined {
  return failsEveryWay(waysThrough(device, 'mechanical', setting), ({ final_rinse }: CleaningNode) =>
    judged(device, final_rinse, water, setting, view),
  );
}

export function judged(
  device: Device,
  quality: Quality | undefined,
  water: Text,
  setting: Setting,
  view: LibraryView,
): readonly Judgement[] {
  if (quality === undefined) return [];
  const point = view.get('water', water.text);
  const judgements = judgeWater({
    by: device,
    quality,
    water: point,
    waterName: water.text,
    factAt: water.at,
    setting,
  });
  return judgements.map((judgement) => inWordsOfPage(judgement, device, quality));
}

/** What a grade must be like is the site's to say; that this grade is asked for stands on the page. */
function inWordsOfPage(judgement: Judgement, device: Device, quality: Quality): Judgement {
  const { grade } = quality;
  if (grade === undefined || !judgement.demandedBy.startsWith('site/')) return judgement;
  const required = `${grade.text} water: ${judgement.required}`;
  return { ...judgement, required, says: saysOf(device, quality.src), demandAt: grade.at };
}
