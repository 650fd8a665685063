import type { Device } from '../model/entities/device.generated.ts';
import type { Washer, WasherCycle } from '../model/entities/washer.generated.ts';
import type { StageDemand } from './demands.ts';
import type { Setting, Stock } from './setting.ts';

/** One device in one cycle of one washer. */
export interface WashQuestion {
  readonly device: Device;
  /** The mechanical stage of the alternative that is followed. */
  readonly demand: StageDemand;
  readonly machine: Washer;
  readonly cycle: WasherCycle;
  readonly stock: Stock;
  /** How many of the device are washed; connections are counted by the load. */
  readonly quantity?: number;
  readonly setting: Setting;
}
