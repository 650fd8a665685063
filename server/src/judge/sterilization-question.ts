import type { Device } from '../model/entities/device.generated.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { Sterilizer, SterilizerCycle } from '../model/entities/sterilizer.generated.ts';
import type { Packed } from './packaging-statement.ts';
import type { Setting } from './setting.ts';

/** One option of one device against one cycle of one machine. Options are whole: values of two options are never mixed. */
export interface SterilizationQuestion {
  readonly device: Device;
  readonly option: SterilizationOption;
  readonly machine: Sterilizer;
  readonly cycle: SterilizerCycle;
  /** How it is packed. Leave out where only the cycle is in question. */
  readonly packed?: Packed;
  /** How many of the device are in the load; lumens are counted by the load. */
  readonly quantity?: number;
  readonly setting: Setting;
}
