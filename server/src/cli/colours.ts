import type { Palette } from '../report/colour.ts';
import { plainPalette, terminalPalette } from '../report/colour.ts';
import type { Arguments } from './arguments.ts';
import type { CommandIo } from './io.ts';

/**
 * The option decides; then FORCE_COLOR (anything but 0 or false), then NO_COLOR (anything but empty), then TERM=dumb, then whether a
 * person looks on.
 */
export function paletteFor(io: CommandIo, given: Arguments): Palette {
  const wish = given.values.get('colour') ?? 'auto';
  if (wish !== 'auto') return wish === 'always' ? terminalPalette : plainPalette;
  const forced = io.env.FORCE_COLOR;
  if (forced !== undefined) return forced === '0' || forced === 'false' ? plainPalette : terminalPalette;
  const refused = (io.env.NO_COLOR ?? '') !== '' || io.env.TERM === 'dumb';
  return !refused && io.stdout.isTerminal ? terminalPalette : plainPalette;
}
