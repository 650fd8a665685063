import type { FileId, IsoDate } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { KeptFile } from '../library/kept-file.ts';
import type { IndexKey } from '../library/keys.ts';
import { Library } from '../library/library.ts';
import type { WhenNoted } from '../library/readers.ts';
import { Readers } from '../library/readers.ts';
import { type GivenAnswer, LibraryView, QueryAnswers } from '../library/view.ts';
import { type AnyEntity, isOfKind, rootOfEntity } from '../model/entity.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { Kind } from '../schema/kinds.ts';
import { withoutAbsorbed } from './absorption.ts';
import { knownIn } from './catalogue.ts';
import type { Finding } from './finding.ts';
import { findingOfProblem, inReadingOrder } from './finding.ts';
import type { TranscriptionCheck } from './open-faults.ts';
import { openFaultsBy, transcriptionCheckBy } from './open-faults.ts';
import type { Found } from './run-rules.ts';
import { RulesOnEntity } from './run-rules.ts';
import { settingProblems, settled } from './settings.ts';
import { type FindingsOfEntity, findingsOfEntityBy, waiverProblems } from './waiver-problems.ts';
import { withoutWaived } from './waivers.ts';

export interface EngineOptions {
  readonly rules: readonly AnyRule[];
  /** Today's date: an input, so that a check gives the same answer whenever it is run for that day. */
  readonly today: IsoDate;
  /** Set where the library is looked at once: what it would take to follow changes is done only if one comes. */
  readonly changes?: 'unlikely';
}

/** So many files are judged at once: enough that a rule is at hand for most of them, and few enough that they are too. */
export const filesTogether = 16;

/**
 * One library, kept checked. After each change only the files whose reads the change touched are judged again; what `findings` returns
 * is always what a check from scratch would give.
 */
export class Engine {
  readonly library = new Library();
  readonly #rules: readonly AnyRule[];
  readonly #byKind: Readonly<Record<Which, Map<Kind, readonly AnyRule[]>>> = {
    all: new Map(),
    'but-transcription': new Map(),
  };
  readonly #ruleNames: ReadonlySet<string>;
  #everyName: ReadonlySet<string> | undefined;
  readonly #today: IsoDate;
  readonly #transcription: TranscriptionCheck;
  readonly #answers: QueryAnswers;
  readonly #findingsOfEntity: FindingsOfEntity;
  readonly #judged = new Map<FileId, Judged>();
  #changes = 0;
  /** Of a file that must be judged again: what it read the last time. */
  readonly #readers: Readers<FileId>;
  readonly #noted: WhenNoted;

  constructor(options: EngineOptions) {
    this.#noted = options.changes === 'unlikely' ? 'when-asked' : 'at-once';
    this.#readers = new Readers(this.#noted);
    this.#rules = options.rules;
    this.#ruleNames = new Set(options.rules.map(({ id }) => id));
    this.#today = options.today;
    this.#transcription = transcriptionCheckBy(options.rules, options.today);
    this.#answers = this.#newAnswers();
    this.#findingsOfEntity = findingsOfEntityBy(options.rules, options.today);
  }

  set(file: FileId, text: string): readonly FileId[] {
    return this.#changed(file, this.library.set(file, text));
  }

  put(record: FileRecord): readonly FileId[] {
    return this.#changed(record.file, this.library.put(record));
  }

  /** Takes in what a file named by rule files holds. Returns the rule files that may now have other findings. */
  keep(path: string, found: KeptFile | undefined): readonly FileId[] {
    return this.#affectedBy(this.library.keep(path, found));
  }

  /** Forgets the file. Returns the other files that may now have other findings. */
  delete(file: FileId): readonly FileId[] {
    const affected = this.#changed(file, this.library.delete(file));
    this.#readers.forget(file);
    return affected;
  }

  /** Findings of one file, in reading order; empty for a file the library does not hold. */
  findings(file: FileId): readonly Finding[] {
    this.judgeTogether([file]);
    return this.#judged.get(file)?.findings ?? [];
  }

  /**
   * Works out what is not known yet of these files, each rule for all of a kind before the next: what a processor fetches to run a rule is
   * still at hand for all but the first. It gives the same as file by file, in less time.
   */
  judgeTogether(files: readonly FileId[]): void {
    const judgings: Judging[] = [];
    const alike = new Map<readonly AnyRule[], RulesOnEntity[]>();
    for (const file of files) {
      const record = this.#unjudged(file);
      if (record === undefined) continue;
      const judging = this.#begin(record);
      judgings.push(judging);
      if (judging.run !== undefined) alike.set(judging.rules, [...(alike.get(judging.rules) ?? []), judging.run]);
    }
    for (const [rules, runs] of alike) for (const rule of rules) for (const run of runs) run.run(rule);
    for (const judging of judgings) this.#finish(judging);
  }

  /** The same for any number of files, in small groups. */
  judgeAll(files: Iterable<FileId>): void {
    const all = [...files];
    for (let at = 0; at < all.length; at += filesTogether) this.judgeTogether(all.slice(at, at + filesTogether));
  }

  /**
   * Works the findings of one file out a rule at a time, for whoever has more urgent things to do in between. Begins anew when the library
   * changes meanwhile.
   */
  *judging(file: FileId): Generator<void, void> {
    for (let record = this.#unjudged(file); record !== undefined; record = this.#unjudged(file)) {
      const changes = this.#changes;
      const judging = this.#begin(record);
      for (const rule of judging.rules) {
        judging.run?.run(rule);
        yield;
        if (this.#changes !== changes) break;
      }
      if (this.#changes === changes) this.#finish(judging);
    }
  }

  #unjudged(file: FileId): FileRecord | undefined {
    return this.#judged.has(file) ? undefined : this.library.record(file);
  }

  /** Findings of one file that need no other file and no rule: what can be said while a library is still being read. */
  faultsOfReading(file: FileId): readonly Finding[] {
    const record = this.library.record(file);
    if (record === undefined) return [];
    const found = record.problems.map((problem) => findingOfProblem(problem, file, nameOf(record)));
    return settled(found, this.view()).kept.toSorted(inReadingOrder);
  }

  /** Findings of the file that the library's own settings keep back: counted, so that hiding is visible. */
  heldBack(file: FileId): readonly Finding[] {
    this.findings(file);
    return this.#judged.get(file)?.heldBack ?? [];
  }

  /** Findings of the file that waivers in force cover. */
  waived(file: FileId): readonly Finding[] {
    this.findings(file);
    return this.#judged.get(file)?.waived ?? [];
  }

  /** Keys that the findings of the file rest on. */
  readsOf(file: FileId): readonly IndexKey[] {
    this.findings(file);
    return this.#judged.get(file)?.reads ?? [];
  }

  /** Shared answers that were worked out so far and still hold. */
  answers(): Iterable<GivenAnswer> {
    return this.#answers.given();
  }

  /** Takes in answers that an earlier check gave and that still hold, in words. Only before anything is asked of the engine. */
  restAnswers(wordsOf: (query: string, argument: string) => string | undefined): void {
    this.#answers.rest(wordsOf);
  }

  /** The same answers over another library: what would be, if it were ours. Nothing worked out for this one is used. */
  viewOf(library: Library): LibraryView {
    return new LibraryView(library, new Set(), this.#newAnswers());
  }

  /** A view for surfaces (hover, routes, cards) that asks the same questions as the rules do. */
  view(): LibraryView {
    return new LibraryView(this.library, new Set(), this.#answers);
  }

  #newAnswers(): QueryAnswers {
    return new QueryAnswers(this.#today, [openFaultsBy(this.#transcription)], this.#noted);
  }

  #changed(file: FileId, keys: ReadonlySet<IndexKey>): readonly FileId[] {
    this.#judged.delete(file);
    return [...new Set([file, ...this.#affectedBy(keys)])];
  }

  /** Returns the files that have to be judged again; those that wait for it already were told of before. */
  #affectedBy(keys: ReadonlySet<IndexKey>): readonly FileId[] {
    this.#changes++;
    const affected: FileId[] = [];
    for (const key of this.#answers.forget(keys))
      for (const reader of this.#readers.of(key)) if (this.#judged.delete(reader)) affected.push(reader);
    return affected;
  }

  /** All but the rules themselves, which whoever judges runs at their own pace. */
  #begin(record: FileRecord): Judging {
    const reads = new Set<IndexKey>();
    const view = new LibraryView(this.library, reads, this.#answers);
    const { entity, file } = record;
    const problems = [...record.problems, ...this.#ownProblems(record, view)];
    const found = problems.map((problem) => findingOfProblem(problem, file, nameOf(record)));
    if (entity === undefined) return { file, reads, view, found, rules: [] };
    const shared = this.#sharedBy(entity, view);
    for (const { finding } of shared ?? []) found.push(finding);
    const rules = this.#rulesFor(entity, shared === undefined ? 'all' : 'but-transcription');
    return { file, reads, view, found, rules, run: new RulesOnEntity(entity, view, this.#today) };
  }

  #finish({ file, reads, view, found, run }: Judging): void {
    for (const { finding } of run?.found ?? []) found.push(finding);
    const { kept, heldBack } = settled(found, view);
    const { kept: open, waived } = withoutWaived(kept, view, this.#ruleNames);
    // Last, so that nothing is taken for explained by a finding that nobody sees.
    const judged = { findings: withoutAbsorbed(open).toSorted(inReadingOrder), heldBack, waived, reads: [...reads] };
    this.#judged.set(file, judged);
    this.#readers.put(file, judged.reads);
  }

  /** What some of the rules found in the entity, where routes ask for it as well. */
  #sharedBy(entity: AnyEntity, view: LibraryView): readonly Found[] | undefined {
    if (!isOfKind(entity, 'device')) return undefined;
    const { device, found } = view.ask(this.#transcription.found, rootOfEntity(entity).id);
    return device === entity ? found : undefined;
  }

  #rulesFor(entity: AnyEntity, which: Which): readonly AnyRule[] {
    const { kind } = rootOfEntity(entity);
    const byKind = this.#byKind[which];
    const known = byKind.get(kind);
    if (known !== undefined) return known;
    const rules = this.#rules.filter(
      (rule) => rule.kinds.includes(kind) && (which === 'all' || !this.#transcription.rules.has(rule)),
    );
    byKind.set(kind, rules);
    return rules;
  }

  /** Faults of how the library treats findings: they need the names of all rules, which no rule knows. */
  #ownProblems({ entity }: FileRecord, view: LibraryView): readonly Problem[] {
    if (entity === undefined) return [];
    const isSettings = isOfKind(entity, 'library');
    if (!isSettings && !isOfKind(entity, 'waiver')) return [];
    this.#everyName ??= knownIn(this.#rules);
    if (isSettings) return settingProblems(entity, this.#everyName);
    const [rules, known, today, findings] = [this.#rules, this.#everyName, this.#today, this.#findingsOfEntity];
    return waiverProblems(entity, view, { rules, known, today, findings });
  }
}

/** Rules for one kind, with or without those whose findings are had from the answer that routes share. */
type Which = 'all' | 'but-transcription';

/** One file while its rules run. */
interface Judging {
  readonly file: FileId;
  readonly reads: Set<IndexKey>;
  readonly view: LibraryView;
  /** What was found without its own rules. */
  readonly found: Finding[];
  readonly rules: readonly AnyRule[];
  /** Undefined for a file that cannot be read. */
  readonly run?: RulesOnEntity;
}

interface Judged {
  readonly findings: readonly Finding[];
  readonly heldBack: readonly Finding[];
  readonly waived: readonly Finding[];
  readonly reads: readonly IndexKey[];
}

function nameOf({ kind, id, file }: FileRecord): string {
  return kind === undefined ? file : `${kind}/${id ?? file}`;
}
