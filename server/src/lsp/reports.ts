import type { Diagnostic } from 'vscode-languageserver';
import type { Severity } from '../base/problem.ts';
import type { Finding } from '../check/finding.ts';
import type { ClientAbilities } from './client-abilities.ts';
import { diagnosticOf } from './diagnostic.ts';
import { textHash } from './text-hash.ts';
import type { Slices } from './turns.ts';
import type { Home, Workbench } from './workbench.ts';

/** What the editor is told about one file. */
export interface FileReport {
  /** The same for the same content, so that nothing is sent twice. */
  readonly resultId: string;
  readonly items: readonly Diagnostic[];
}

interface Kept extends FileReport {
  readonly findings: readonly Finding[];
}

const nothing: Kept = { resultId: 'none', items: [], findings: [] };

/** The findings of each file in the editor's form, made when first asked for after a change. */
export class Reports {
  readonly #workbench: Workbench;
  readonly #abilities: ClientAbilities;
  readonly #kept = new Map<string, Kept>();
  /** The editor's own spelling of a file's URI, for answers about it. */
  readonly spellings = new Map<string, string>();

  constructor(workbench: Workbench, abilities: ClientAbilities) {
    this.#workbench = workbench;
    this.#abilities = abilities;
  }

  /** Of a file that is not there, or out of view: nothing. */
  of(address: string): FileReport {
    const home = this.#workbench.isInView(address) ? this.#workbench.homeOf(address) : undefined;
    const findings = findingsAt(home);
    if (home === undefined || findings.length === 0) {
      this.#kept.delete(address);
      return nothing;
    }
    const known = this.#kept.get(address);
    if (known?.findings === findings) return known;
    const showing = { home, abilities: this.#abilities, uriOf: this.#uriIn(address) };
    const items = findings.map((finding) => diagnosticOf(finding, showing));
    const made = { findings, items, resultId: textHash(JSON.stringify(items)) };
    this.#kept.set(address, made);
    return made;
  }

  /** Works out what `of` will answer, with others' turns between two rules, as long as it is wanted. */
  async prepare(address: string, slices: Slices, isWanted = (): boolean => true): Promise<void> {
    const home = this.#workbench.isInView(address) ? this.#workbench.homeOf(address) : undefined;
    if (home === undefined || home.library?.isWhole === false) return;
    const steps = home.engine.judging(home.file);
    while (isWanted() && steps.next().done !== true) await slices.pause();
  }

  uriOf(address: string): string {
    return this.spellings.get(address) ?? address;
  }

  /** Findings of all files asked about so far. */
  counts(): Readonly<Record<Severity, number>> {
    const counts = { error: 0, warning: 0, advice: 0 };
    for (const { findings } of this.#kept.values()) for (const { severity } of findings) counts[severity]++;
    return counts;
  }

  #uriIn(own: string): (file: Finding['file']) => string {
    const home = this.#workbench.homeOf(own);
    return (file) => this.uriOf(home === undefined ? own : this.#workbench.addressIn(home, file, own));
  }
}

/** Of a library that is still being read only what a file says by itself: all else would be wrong until the last file is there. */
function findingsAt(home: Home | undefined): readonly Finding[] {
  if (home === undefined) return nothing.findings;
  const { engine, file, library } = home;
  return library === undefined || library.isWhole ? engine.findings(file) : engine.faultsOfReading(file);
}
