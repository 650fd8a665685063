import type { EntityOf } from '../../model/entities.generated.ts';

type Device = EntityOf['device'];
type Trait = NonNullable<Device['traits']>['items'][number]['text'];
type DeviceClass = NonNullable<Device['class']>['text'];

/** A stage that an instruction must cover, or about which its silence must be noted. */
export interface MandatoryStage {
  readonly name: string;
  /** The field that is added when it is missing. */
  readonly field: string;
  /** Any of these fields covers it. */
  readonly fields: readonly string[];
  /** Covered too when a sterilization option has this field. */
  readonly inOptions?: string;
  /** Mandatory only for devices with one of these traits. */
  readonly traits?: readonly Trait[];
  /** Mandatory only for these classes. */
  readonly classes?: readonly DeviceClass[];
}

/*
 * Which stages an instruction for a reusable device covers. Source: the usual contents of such instructions (ISO 17664-1, from memory);
 * an educator can read and correct the list.
 */
export const mandatoryStages: readonly MandatoryStage[] = [
  { name: 'the point of use', field: 'point_of_use', fields: ['point_of_use'] },
  {
    name: 'taking it apart',
    field: 'disassembly',
    fields: ['disassembly'],
    traits: ['multi-part', 'stopcock', 'valve', 'powered', 'battery'],
  },
  { name: 'cleaning', field: 'cleaning', fields: ['cleaning', 'manual', 'ultrasonic', 'mechanical'] },
  { name: 'drying', field: 'drying', fields: ['drying'] },
  { name: 'inspection', field: 'inspection', fields: ['inspection'] },
  {
    name: 'packaging',
    field: 'packaging',
    fields: ['packaging'],
    inOptions: 'packaging',
    classes: ['critical'],
  },
  { name: 'sterilization', field: 'sterilization', fields: ['sterilization'], classes: ['critical'] },
  {
    name: 'disinfection or sterilization',
    field: 'disinfection',
    fields: ['disinfection', 'sterilization'],
    classes: ['semi-critical'],
  },
  { name: 'storage', field: 'storage', fields: ['storage'] },
];

/** The order of the stages in a device file, for a line that is added. */
export const stageOrder: readonly string[] = [
  'point_of_use',
  'transport',
  'receipt',
  'disassembly',
  'cleaning',
  'manual',
  'ultrasonic',
  'mechanical',
  'rinse',
  'disinfection',
  'drying',
  'immersion',
  'inspection',
  'lubrication',
  'packaging',
  'configuration',
  'sterilization',
  'cooling',
  'storage',
  'not',
  'review',
  'notes',
];
