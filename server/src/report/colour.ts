import type { Severity } from '../base/problem.ts';

/** How the parts of a text report are set off from each other. Each function takes text that is already harmless. */
export interface Palette {
  readonly severity: Readonly<Record<Severity, (text: string) => string>>;
  readonly place: (text: string) => string;
  readonly rule: (text: string) => string;
  readonly quote: (text: string) => string;
  readonly faint: (text: string) => string;
}

const asIs = (text: string): string => text;

export const plainPalette: Palette = {
  severity: { error: asIs, warning: asIs, advice: asIs },
  place: asIs,
  rule: asIs,
  quote: asIs,
  faint: asIs,
};

const sgr =
  (on: number, off: number) =>
  (text: string): string =>
    text === '' ? '' : `\u001b[${on}m${text}\u001b[${off}m`;

/** The sixteen basic colours only, so that a reader's own theme decides the shades. */
export const terminalPalette: Palette = {
  severity: { error: sgr(31, 39), warning: sgr(33, 39), advice: sgr(36, 39) },
  place: sgr(1, 22),
  rule: sgr(35, 39),
  quote: sgr(32, 39),
  faint: sgr(2, 22),
};
