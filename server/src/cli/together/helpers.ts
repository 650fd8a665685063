import { availableParallelism } from 'node:os';
import type { FileId } from '../../base/brand.ts';
import type { Engine } from '../../check/engine.ts';
import type { KnownAnswers } from '../../check/state/known-answers.ts';
import type { Elsewhere } from '../../check/together/elsewhere.ts';
import { Shares } from '../../check/together/shares.ts';
import { HelperThread } from '../../host/helper-thread.ts';
import type { OpenedFile } from '../../host/library-files.ts';
import { keptPathsIn } from '../../library/kept-paths.ts';
import { isBelow } from '../../library/left-out.ts';
import type { Arguments } from '../arguments.ts';
import type { CommandIo } from '../io.ts';
import type { BegunLibrary } from '../open-library.ts';
import type { Progress } from '../progress.ts';
import { helperWord, type JudgedShare, judgedShareIn, type Task, type ToHelper } from './messages.ts';
import { pieceLength, piecesOf, piecesOfWork } from './order-of-work.ts';

/** Below this many files a second thread has hardly begun when all is done. */
const fewestFiles = 1_000;
/** Each thread keeps the whole library in memory. */
const mostWorkers = 8;
const usualWorkers = 2;

/** Undefined where one thread does everything. */
export function helpersFor(
  { helper, helperMemory }: CommandIo,
  { values }: Arguments,
  begun: BegunLibrary,
  keeps: Task['keeps'],
): Helpers | undefined {
  const workers = workersFor(values.get('workers'), begun.files.length);
  return helper === undefined || workers < 2
    ? undefined
    : new Helpers({ program: helper, workers, memory: helperMemory }, begun, keeps);
}

/** How many threads judge, the first one counted: as many as were asked for, whatever the size of the library. */
function workersFor(asked: string | undefined, files: number): number {
  if (asked !== undefined) return Math.min(Number(asked), mostWorkers);
  return files < fewestFiles ? 1 : Math.min(availableParallelism(), usualWorkers);
}

const batchLength = 256;

interface Threads {
  readonly program: string;
  /** The first one counted. */
  readonly workers: number;
  /** In megabytes, for each but the first. */
  readonly memory: number | undefined;
}

/** The threads that judge a library beside this one. Whatever one of them leaves undone, this one does when it is asked for it. */
export class Helpers implements Elsewhere {
  readonly #threads: readonly HelperThread[];
  readonly #files: readonly FileId[];
  readonly #asked: Uint32Array;
  readonly #shares: SharedArrayBuffer;
  readonly #batch: OpenedFile[] = [];
  readonly #judged = new Map<FileId, { readonly share: JudgedShare; readonly row: number }>();
  readonly #answers: KnownAnswers[] = [];

  constructor({ program, workers, memory }: Threads, { found, files, engine }: BegunLibrary, keeps: Task['keeps']) {
    this.#files = files.map(({ file }) => file);
    const places = files.flatMap(({ path }, at) => (found.only.length === 0 || isBelow(path, found.only) ? [at] : []));
    this.#asked = Uint32Array.from(places);
    this.#shares = Shares.of(piecesOf(places.length), workers);
    this.#threads = Array.from({ length: workers - 1 }, () => new HelperThread(program, ['check', helperWord], memory));
    const task = { today: engine.view().today, files: files.length, asked: this.#asked, shares: this.#shares, keeps };
    for (const [at, thread] of this.#threads.entries())
      tell(thread, { say: 'begin', task: { ...task, worker: at + 1 } });
  }

  /** Every file of the library in its order, as it was opened. */
  take(opened: OpenedFile): OpenedFile {
    this.#batch.push(opened);
    if (this.#batch.length === batchLength) this.#tellBatch();
    return opened;
  }

  /** Judges all that is asked for, with the others. Returns what is to be told of those that failed. */
  async judge(engine: Engine, progress: Progress): Promise<readonly string[]> {
    this.#tellBatch();
    this.#tellDocuments(engine);
    this.#judgeOwn(engine, progress);
    const failures = await Promise.all(this.#threads.map((thread) => this.#gather(thread)));
    progress.end();
    return failures.flatMap((why) => why ?? []);
  }

  found(file: FileId): Uint8Array | undefined {
    const one = this.#judged.get(file);
    return one?.share.findings.row(one.row);
  }

  reads(file: FileId): Uint32Array | undefined {
    const one = this.#judged.get(file);
    return one?.share.reads.row(one.row);
  }

  answers(): readonly KnownAnswers[] {
    return this.#answers;
  }

  #tellBatch(): void {
    const opened = inSharedMemory(this.#batch.splice(0));
    for (const thread of this.#threads) tell(thread, { say: 'files', opened });
  }

  #tellDocuments(engine: Engine): void {
    const paths = keptPathsIn(engine.view());
    if (paths.length === 0) return;
    const kept = paths.flatMap((path) => {
      const found = engine.library.keptFile(path);
      return found === undefined ? [] : [[path, found] as const];
    });
    for (const thread of this.#threads) tell(thread, { say: 'documents', kept });
  }

  #judgeOwn(engine: Engine, progress: Progress): void {
    const work = new Shares(this.#shares);
    const pieces = piecesOfWork(engine.library, this.#files, { asked: this.#asked, shares: this.#shares });
    const all = this.#asked.length;
    for (let piece = work.take(0); piece !== undefined; piece = work.take(0)) {
      engine.judgeTogether(pieces[piece] ?? []);
      progress.step(Math.max(0, all - work.left() * pieceLength(all)), all);
    }
  }

  async #gather(thread: HelperThread): Promise<string | undefined> {
    const answer = await thread.answer();
    if ('why' in answer) return answer.why;
    const share = judgedShareIn(answer.said);
    if (share === undefined) return 'what it said is not whole';
    for (const [row, file] of share.files.entries()) this.#judged.set(file, { share, row });
    this.#answers.push(share.answers);
    return undefined;
  }
}

function tell(thread: HelperThread, message: ToHelper): void {
  thread.tell(message);
}

/** The same files with their bytes where all threads see them, so that nothing is copied for each. */
function inSharedMemory(files: readonly OpenedFile[]): readonly OpenedFile[] {
  const lengths = files.map(({ content }) => (content !== undefined && 'bytes' in content ? content.bytes.length : 0));
  const memory = new SharedArrayBuffer(lengths.reduce((sum, length) => sum + length, 0));
  let end = 0;
  return files.map((file) => {
    if (file.content === undefined || !('bytes' in file.content)) return file;
    const bytes = new Uint8Array(memory, end, file.content.bytes.length);
    bytes.set(file.content.bytes);
    end += bytes.length;
    return { ...file, content: { bytes } };
  });
}
