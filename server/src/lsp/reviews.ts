import type { Connection } from 'vscode-languageserver';
import { focusOf } from '../check/finding.ts';
import { folderFor } from '../editor/items/new-file.ts';
import type { FileRecord } from '../library/file-record.ts';
import { recordOf } from '../library/loaded-file.ts';
import { rootOf } from '../model/node.ts';
import { type ReviewPlace, reviewSheet } from '../report/review-sheet.ts';
import { type RevisionReview, reviewOf } from '../revision/review.ts';
import { comparable } from '../revision/sides.ts';
import { type GivenDecision, givenDecisions, signOffDrafts } from '../revision/write-sign-off.ts';
import type { Disk } from './disk.ts';
import { Followed } from './followed.ts';
import type { OpenLibrary } from './open-library.ts';
import { fieldIn } from './params.ts';
import { rangeOf } from './places.ts';
import {
  besideSides,
  fileIn,
  foldersAround,
  narrowed,
  type ReviewSides,
  type ReviewSidesOrWhy,
  recordedSides,
  sidesByNow,
} from './review-sides.ts';
import { addressOf, uriOfPath } from './uris.ts';
import type { Workbench } from './workbench.ts';

/** Told when what changed is another thing than was answered last, because somebody typed. */
export const reviewNotification = 'traywright/reviewChanged';

/** The review that is open: a later question about its old texts names its number. */
interface OpenReview {
  readonly number: number;
  readonly sides: ReviewSides;
}

interface Made {
  readonly review: RevisionReview;
  readonly notices: readonly string[];
}

/** What an instruction's new revision changes here: compared, decided by a person, and written down as a record to complete. */
export class Reviews {
  readonly #workbench: Workbench;
  readonly #disk: Disk;
  readonly #followed: Followed;
  #open: OpenReview | undefined;

  constructor(connection: Connection, workbench: Workbench, disk: Disk) {
    this.#workbench = workbench;
    this.#disk = disk;
    this.#followed = new Followed(workbench, (review) => void connection.sendNotification(reviewNotification, review));
  }

  /** Of the file `uri`; without one, of the whole library. `{why}` in plain words where there is nothing to compare with. */
  async review(params: unknown): Promise<unknown> {
    await this.#workbench.settled();
    const sides = this.#sides(params);
    if ('why' in sides) return sides;
    this.#open = { number: this.#numberFor(sides), sides };
    return this.#followed.begin(() => this.#shown(params));
  }

  /** The panel was closed: nothing is worked out for it any more. The old texts stay, for comparisons that are still open. */
  close(): void {
    this.#followed.end();
  }

  touched(): void {
    this.#followed.touched();
  }

  /** Comparisons that are open name the number: it stays while the old texts do. */
  #numberFor({ before }: ReviewSides): number {
    if (this.#open === undefined) return 1;
    const { number, sides } = this.#open;
    const isSame =
      before.length === sides.before.length &&
      before.every(({ file, text }, index) => file === sides.before[index]?.file && text === sides.before[index].text);
    return isSame ? number : number + 1;
  }

  /** The earlier state is not read again for every letter typed; a new revision beside the library is a handful of files. */
  #shown(params: unknown): unknown {
    if (this.#open === undefined) return null;
    const { number, sides: before } = this.#open;
    const sides = before.extent === 'whole' ? sidesByNow(before) : this.#sides(params);
    if ('why' in sides) return sides;
    this.#open = { number, sides };
    const made = this.#made(sides);
    if ('why' in made) return made;
    const { old, now } = sides;
    const department = 'Effects are derived for this library.';
    const { sheet, places } = reviewSheet(made.review, { old, now, department, notices: made.notices });
    return {
      number,
      sheet,
      about: this.#aboutWords(params, sides),
      places: places.map((place) => this.#place(place, sides)),
      files: made.review.stamps.map(({ entity }) => this.#fileOf(entity, sides)),
    };
  }

  /** The old text of a file of the open review, for the comparison of the texts; null where there is none. */
  oldText(params: unknown): string | null {
    const file = fieldIn(params, 'file');
    if (this.#open === undefined || fieldIn(params, 'number') !== this.#open.number) return null;
    return this.#open.sides.before.find((record) => record.file === file)?.text ?? null;
  }

  /**
   * The records of what was decided, as new files: `{files: [{uri, text}]}`. Both sides are read again: where a change has come that
   * nobody has decided on, nothing is written.
   */
  async record(params: unknown): Promise<unknown> {
    await this.#workbench.settled();
    const sides = this.#sides(params);
    if ('why' in sides) return sides;
    const made = this.#made(sides);
    if ('why' in made) return made;
    const { review } = made;
    const decisions = decisionsIn(fieldIn(params, 'decisions'));
    const { sheet } = reviewSheet(review, { old: '', now: '', department: '', notices: [] });
    const left = sheet.changes.filter(({ needs, fingerprint }) => needs === 'decide' && !decisions.has(fingerprint));
    if (left.length > 0)
      return {
        why: `${left.length} ${left.length === 1 ? 'change waits' : 'changes wait'} for a decision. If you decided on all you saw, the files have changed since: look again.`,
      };
    return { files: this.#newFiles(review, decisions, sides.library) };
  }

  #newFiles(
    review: RevisionReview,
    decisions: ReadonlyMap<string, GivenDecision>,
    library: OpenLibrary,
  ): readonly { uri: string; text: string }[] {
    const view = library.engine.view();
    const folder = folderFor('sign-off', view);
    const path = (id: string) => `${library.root}/${folder === '' ? '' : `${folder}/`}${id}.ifu.yaml`;
    const isTaken = (id: string) =>
      view.exists('sign-off', id) || library.engine.library.record(library.fileAt(path(id))) !== undefined;
    return signOffDrafts(review, { decisions, isTaken }).map(({ id, text }) => ({
      uri: this.#workbench.folders.addressOfReal(uriOfPath(path(id))),
      text,
    }));
  }

  #made(sides: ReviewSides): Made | { readonly why: string } {
    const { before, after, extent, library, department } = narrowed(sides);
    if (sides.asked !== undefined && sides.asked.entity === undefined)
      return { why: `This file can’t be read as it is now. ${sides.asked.problems[0]?.message ?? ''}`.trim() };
    const compared = comparable({ before, after });
    if (compared.before.length === 0 && compared.after.length === 0)
      return { why: compared.notices[0] ?? 'There is nothing to compare: no rule file can be read on either side.' };
    const { today } = library.engine.view();
    const review = reviewOf({ ...compared, extent, library: department, today });
    return { review, notices: compared.notices };
  }

  #sides(params: unknown): ReviewSidesOrWhy {
    const uri = fieldIn(params, 'uri');
    return typeof uri === 'string' ? this.#sidesOfFile(addressOf(uri)) : this.#sidesOfLibrary();
  }

  #sidesOfLibrary(): ReviewSidesOrWhy {
    const [library, more] = this.#workbench.libraries.all();
    if (library === undefined) return { why: 'No library is open: a folder with a file "library.ifu.yaml".' };
    if (more !== undefined)
      return { why: 'Several libraries are open. Go into a file of the one that you mean, and start from there.' };
    return recordedSides(library, undefined, this.#disk.history, library.engine.view().today);
  }

  #sidesOfFile(address: string): ReviewSidesOrWhy {
    const home = this.#workbench.homeOf(address);
    const path = this.#workbench.folders.realPathOf(address);
    if (path?.endsWith('.ifu.yaml') !== true) return { why: 'Choose a rule file: their names end in ".ifu.yaml".' };
    const library = home?.library;
    if (library !== undefined) {
      const record = library.engine.library.record(library.fileAt(path));
      if (record === undefined) return { why: 'This file is not part of the library.' };
      return recordedSides(library, record, this.#disk.history, library.engine.view().today);
    }
    return this.#sidesBeside(path);
  }

  #sidesBeside(path: string): ReviewSidesOrWhy {
    const libraries = [...this.#workbench.libraries.all()];
    const around = foldersAround(
      path,
      this.#workbench.folders.realPaths(),
      libraries.map(({ root }) => root),
    );
    const [folder = path.slice(0, path.lastIndexOf('/'))] = around;
    const files = (this.#disk.looseFiles?.(folder) ?? []).map((file) => {
      const open = this.#workbench.recordAt(this.#workbench.folders.addressOfReal(uriOfPath(`${folder}/${file.file}`)));
      return recordOf(open === undefined ? file : { ...file, text: open.text });
    });
    const asked = files.find(({ file }) => file === fileIn(folder, path));
    if (asked === undefined) return { why: 'This file can’t be read.' };
    const library = libraries.find(({ engine }) => libraryHolds(engine.library.files(), asked, engine));
    if (library === undefined)
      return {
        why: 'No open library has a file of the same kind and id, so there is nothing to compare this one with.',
      };
    return besideSides(library, folder, files, asked);
  }

  #aboutWords(params: unknown, { library }: ReviewSides): string {
    const uri = fieldIn(params, 'uri');
    if (typeof uri === 'string') return decodeURIComponent(uri.slice(uri.lastIndexOf('/') + 1)).slice(0, 200);
    const [own] = library.engine.view().all('library');
    return own?.name?.text ?? 'the library';
  }

  #place({ side, entity, at }: ReviewPlace, sides: ReviewSides): unknown {
    const records = side === 'old' ? sides.before : sides.after;
    const { file } = rootOf(at);
    const record = records.find((one) => one.file === file);
    return record === undefined ? null : { side, entity, range: rangeOf(record, focusOf(at)) };
  }

  /** Where both texts of an entity are: the old one by its name in the review, the new one by what the editor calls it. */
  #fileOf(entity: string, { before, after, folder, extent, library }: ReviewSides): unknown {
    const named = (records: readonly FileRecord[]) => records.find(({ kind, id }) => `${kind}/${id}` === entity);
    const [old, now] = [named(before), named(after)];
    const uri =
      now === undefined
        ? null
        : this.#workbench.folders.addressOfReal(
            extent === 'whole' ? library.uriOf(now.file) : uriOfPath(`${folder}/${now.file}`),
          );
    return { entity, old: old?.file ?? null, now: uri };
  }
}

function libraryHolds(
  files: readonly unknown[],
  { kind, id, entity }: FileRecord,
  engine: OpenLibrary['engine'],
): boolean {
  if (files.length === 0 || kind === undefined || id === undefined) return false;
  if (kind !== 'document') return engine.view().exists(kind, id);
  const { doc } = (entity ?? {}) as { readonly doc?: { readonly text?: string } };
  return engine
    .view()
    .all('document')
    .some((one) => one.doc?.text === doc?.text);
}

function decisionsIn(given: unknown): ReadonlyMap<string, GivenDecision> {
  const decisions = new Map<string, GivenDecision>();
  if (typeof given !== 'object' || given === null) return decisions;
  for (const [fingerprint, word] of Object.entries(given).slice(0, 5_000)) {
    const decision = givenDecisions.find((one) => one === word);
    if (decision !== undefined) decisions.set(fingerprint, decision);
  }
  return decisions;
}
