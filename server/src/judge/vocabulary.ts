import type { Chemistry } from '../model/entities/chemistry.generated.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { Packaging } from '../model/entities/packaging.generated.ts';

/*
 * Which words of the rule files mean the same or belong together. Data: an educator can read and correct it. Nothing here says that one
 * category may stand in for another.
 */

type Modality = NonNullable<SterilizationOption['modality']>['text'];
type ChemistryClass = NonNullable<Chemistry['class']>['text'];
type PackagingType = NonNullable<Packaging['type']>['text'];

/** Prohibitions of a sterilization method: the methods each word catches. */
export const prohibitedModalities: Readonly<Record<string, readonly Modality[]>> = {
  steam: ['steam-prevac', 'steam-gravity', 'steam-sfpp'],
  'steam-prevac': ['steam-prevac'],
  'steam-gravity': ['steam-gravity'],
  'steam-sfpp': ['steam-sfpp'],
  vh2o2: ['vh2o2'],
  eo: ['eo'],
  'dry-heat': ['dry-heat'],
  ltsf: ['ltsf'],
  'liquid-chemical': ['liquid-chemical'],
};

/** Prohibitions of an agent: the classes each word catches, and words that may stand in the name or the ingredients of an agent. */
export const prohibitedAgents: Readonly<
  Record<string, { readonly classes: readonly ChemistryClass[]; readonly words: readonly string[] }>
> = {
  lubricant: {
    classes: ['lubricant'],
    words: ['lubricant', 'instrument-milk', 'oil', 'silicone-spray', 'water-soluble', 'maker-oil'],
  },
  oil: { classes: [], words: ['oil', 'maker-oil'] },
  silicone: { classes: [], words: ['silicone', 'silicone-spray'] },
  enzymatic: { classes: ['enzymatic', 'neutral-enzymatic'], words: ['enzymatic', 'enzymatic-spray', 'enzyme'] },
  alkaline: { classes: ['mild-alkaline', 'alkaline', 'strong-alkaline'], words: ['alkaline'] },
  'strong-alkaline': { classes: ['strong-alkaline'], words: ['strong-alkaline'] },
  acid: { classes: ['acid'], words: ['acid'] },
  neutraliser: { classes: ['neutraliser'], words: ['neutraliser'] },
  'rinse-aid': { classes: ['rinse-aid'], words: ['rinse-aid'] },
  hypochlorite: { classes: [], words: ['hypochlorite', 'bleach'] },
  aldehyde: { classes: [], words: ['aldehyde', 'glutaraldehyde'] },
  alcohol: { classes: ['alcohol'], words: ['alcohol'] },
  iodine: { classes: [], words: ['iodine'] },
  chlorhexidine: { classes: [], words: ['chlorhexidine'] },
  saline: { classes: [], words: ['saline'] },
  'hydrogen-peroxide-soak': { classes: [], words: ['hydrogen-peroxide', 'peroxide'] },
};

/** Agents whose labels seldom state a pH: that it is missing raises no question. Acids and neutralisers are not among them. */
export const classesWithoutPh: ReadonlySet<ChemistryClass> = new Set<ChemistryClass>(['lubricant', 'rinse-aid']);

/** Agents that clean: what they must be like is judged by the detergent that the page asks for. Other agents are extras. */
export const detergentClasses: ReadonlySet<ChemistryClass> = new Set<ChemistryClass>([
  'neutral',
  'enzymatic',
  'neutral-enzymatic',
  'mild-alkaline',
  'alkaline',
  'strong-alkaline',
  'mild',
  'low-foaming',
]);

/**
 * Class the page asks for: classes that are it, and classes about which the maker must be asked. Anything else is another class.
 * `mild` names no property that can be measured.
 */
export const classesAsked: Readonly<
  Record<string, { readonly is: readonly ChemistryClass[]; readonly ask: readonly ChemistryClass[] }>
> = {
  neutral: { is: ['neutral'], ask: ['neutral-enzymatic', 'mild'] },
  enzymatic: { is: ['enzymatic', 'neutral-enzymatic'], ask: [] },
  'neutral-enzymatic': { is: ['neutral-enzymatic'], ask: ['enzymatic'] },
  'mild-alkaline': { is: ['mild-alkaline'], ask: ['alkaline', 'mild'] },
  alkaline: { is: ['alkaline', 'mild-alkaline'], ask: ['strong-alkaline'] },
  'strong-alkaline': { is: ['strong-alkaline'], ask: ['alkaline'] },
};

/** Words of the page for packaging, and the types they mean. Any other word names one packaging or one case. */
export const packagingClasses: Readonly<Record<string, readonly PackagingType[]>> = {
  wrap: ['wrap'],
  'double-wrap': ['wrap'],
  'single-wrap': ['wrap'],
  pouch: ['pouch'],
  'double-pouch': ['pouch'],
  'rigid-container': ['rigid-container'],
  container: ['rigid-container'],
  'case-wrapped': ['wrap'],
  'iuss-container': ['iuss-container'],
  unwrapped: ['open-pan'],
  'open-pan': ['open-pan'],
};

/** Parts of a word that tell of paper or cotton. */
export const cellulosicWords: readonly string[] = [
  'paper',
  'cotton',
  'cellulose',
  'linen',
  'cardboard',
  'gauze',
  'towel',
  'textile',
];

/** Items that are refused as a whole, not half judged. */
export const outOfScopeTraits: ReadonlySet<string> = new Set([
  'flexible-endoscope',
  'textile',
  'single-use',
  'single-patient',
]);

/** Phases of a washer in which water, not air, is heated. */
export const dryPhases: ReadonlySet<string> = new Set(['dry']);

export function isSteam(modality: string | undefined): boolean {
  return modality?.startsWith('steam-') === true;
}
