import type { IsoDate } from '../base/brand.ts';
import type { LibraryView, Query, SuppliedQuery } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { type OpenFault, openFaults } from '../route/trust.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Found } from './run-rules.ts';
import { RulesOnEntity } from './run-rules.ts';
import { settled } from './settings.ts';

/** Rules on whether a device's file says what the page says, and all that they find in one device, whoever asks. */
export interface TranscriptionCheck {
  readonly rules: ReadonlySet<AnyRule>;
  readonly found: Query<string, TranscriptionFound>;
}

export interface TranscriptionFound {
  /** Of two files that claim the id, the first. */
  readonly device: EntityOf['device'] | undefined;
  readonly found: readonly Found[];
}

export function transcriptionCheckBy(rules: readonly AnyRule[], today: IsoDate): TranscriptionCheck {
  const transcription = rules.filter(
    ({ stage, severity, kinds }) => stage === 'source' && severity === 'error' && kinds.includes('device'),
  );
  return {
    rules: new Set(transcription),
    found: {
      name: 'faults-of-transcription',
      work: (view, id) => {
        const device = view.get('device', id);
        if (device === undefined) return { device, found: [] };
        const run = new RulesOnEntity(device, view, today);
        for (const rule of transcription) run.run(rule);
        return { device, found: run.found };
      },
    },
  };
}

/**
 * Which faults of transcription are open on a device: errors of the rules on source and transcription that the library's settings do not
 * hold back. Routes ask this through route/trust.ts, which knows no rules.
 */
export function openFaultsBy({ found }: TranscriptionCheck): SuppliedQuery {
  return {
    name: openFaults.name,
    work: (view, id): readonly OpenFault[] => view.ask(found, id).found.flatMap((one) => openFault(one, view) ?? []),
  };
}

/** A rule that fails on the file is reported where the file itself is checked. */
function openFault({ finding, at }: Found, view: LibraryView): OpenFault | undefined {
  const isOpen = at !== undefined && settled([finding], view).kept.some(({ severity }) => severity === 'error');
  return isOpen ? { words: finding.message, at } : undefined;
}
