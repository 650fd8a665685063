import type { FinalRinse } from '../model/entities/final-rinse.generated.ts';
import type { Water } from '../model/entities/water.generated.ts';
import type { WaterQuality } from '../model/entities/water-quality.generated.ts';
import type { Place, Quantity, Requirement } from '../model/node.ts';
import { rowOf } from '../model/walk.ts';
import { isOlderThan, isPast } from './evidence.ts';
import { givenOf } from './given.ts';
import { type CaseOf, type Demander, factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import type { Setting } from './setting.ts';

/** What is asked of water, by whom, and which water it would be. */
export interface WaterQuestion {
  readonly by: Demander;
  readonly quality: WaterQuality | FinalRinse;
  readonly water: Water | undefined;
  /** The word that names the water, where nothing is known under it. */
  readonly waterName: string | undefined;
  readonly factAt?: Place | undefined;
  readonly setting: Setting;
}

const measured = ['conductivity', 'hardness', 'chloride', 'silicate', 'ph', 'bacteria', 'endotoxin'] as const;

const titles: Readonly<Record<(typeof measured)[number], string>> = {
  conductivity: 'Conductivity of the water',
  hardness: 'Hardness of the water',
  chloride: 'Chloride in the water',
  silicate: 'Silicate in the water',
  ph: 'pH of the water',
  bacteria: 'Bacteria in the water',
  endotoxin: 'Endotoxin in the water',
};

/** Water is compared value by value, never by the name of a grade, sterile apart: the site's file says what a grade must be like. */
export function judgeWater(question: WaterQuestion): readonly Judgement[] {
  const { quality, water } = question;
  const grade = quality.grade?.text;
  const asks = measured.some((value) => quality[value] !== undefined);
  if (grade === undefined && !asks) return [];
  if (water === undefined) return [waterCase(question, 'unknown', grade ?? 'water as described')];
  const values = judgeValues(question, quality, water, question.by);
  const ofGrade = grade === undefined ? [] : judgeGrade(question, grade, water);
  return [...values, ...ofGrade, ...judgeFreshness(question, water)];
}

type Asked = Partial<Record<(typeof measured)[number], Requirement>>;

function judgeValues(question: WaterQuestion, asked: Asked, water: Water, by: Demander): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const value of measured) {
    const requirement = asked[value];
    if (requirement === undefined) continue;
    const ours: Quantity | undefined = water[value];
    if (ours === undefined) {
      judgements.push({
        ...waterCase(question, 'not-measured', `${titles[value]} within limits`),
        demandAt: requirement.at,
      });
      continue;
    }
    const src = by === question.by ? question.quality.src : undefined;
    judgements.push(
      judgeDemand(
        { by, parameter: 'water-grade', what: titles[value], requirement, src },
        factOf(ours, givenOf(ours)),
        question.setting,
      ),
    );
  }
  return judgements;
}

function judgeGrade(question: WaterQuestion, grade: string, water: Water): readonly Judgement[] {
  // Whether water is sterile is not to be read from what was measured in it.
  if (grade === 'sterile' && water.grade !== undefined && water.grade.text !== 'sterile')
    return [waterCase(question, 'not-sterile', grade)];
  const limits = rowOf(question.setting.site?.water_grades, grade);
  const { site } = question.setting;
  if (limits !== undefined && site !== undefined) return judgeValues(question, limits, water, site);
  if (grade === 'utility') return [];
  return [waterCase(question, water.grade?.text === 'utility' ? 'plain-water' : 'grade-undefined', grade)];
}

/** Only water of a graded supply has results that can go stale. */
function judgeFreshness(question: WaterQuestion, water: Water): readonly Judgement[] {
  const { setting } = question;
  if (isPast(water.withdrawn_on, setting.today)) return [waterCase(question, 'withdrawn', 'a water point in use')];
  if (water.grade === undefined || water.grade.text === 'utility') return [];
  const { last_result } = water;
  const stale =
    last_result === undefined ||
    last_result.text.slice(0, 10) > setting.today ||
    isOlderThan(last_result, 'water_result', setting);
  return stale ? [waterCase(question, 'stale', 'a result within the site’s interval')] : [];
}

function waterCase(
  { by, quality, water, waterName, factAt }: WaterQuestion,
  which: CaseOf<'water-grade'>,
  required: string,
): Judgement {
  const at = quality.grade?.at ?? quality.at;
  const given =
    water === undefined
      ? waterName
      : [water.id?.text, water.grade?.text].filter((word) => word !== undefined).join(', ');
  return judgeCase('water-grade', which, { by, required, given, at, factAt: factAt ?? water?.at, src: quality.src });
}
