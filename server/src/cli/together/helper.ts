import type { FileId } from '../../base/brand.ts';
import { Engine } from '../../check/engine.ts';
import { KeyHashes } from '../../check/state/key-hash.ts';
import { answersGiven } from '../../check/state/next-answers.ts';
import { RowsWriter } from '../../check/state/rows.ts';
import { Shares } from '../../check/together/shares.ts';
import { decodeFile } from '../../host/library-files.ts';
import { keptPathsIn } from '../../library/kept-paths.ts';
import { recordOf } from '../../library/loaded-file.ts';
import { allRules } from '../../rules/all.generated.ts';
import { judgedBy, keptForm } from '../judged-library.ts';
import { type JudgedShare, type Task, type ToHelper, toHelperIn } from './messages.ts';
import { piecesOfWork } from './order-of-work.ts';

/** Where a helper hears from the thread that started it, and answers once. */
export interface Port {
  on(event: 'message', hear: (message: unknown) => void): unknown;
  postMessage(message: unknown): void;
  close(): void;
}

/** A helper of a check: reads what it is told of, judges its share, says what it found, ends. */
export function help(port: Port): void {
  let helper: Helper | undefined;
  port.on('message', (message) => {
    const heard = toHelperIn(message);
    if (heard?.say === 'begin') helper = new Helper(heard.task);
    else if (heard === undefined || helper === undefined)
      throw new TypeError('a helper was told what it does not know');
    else {
      const said = helper.hear(heard);
      if (said === undefined) return;
      port.postMessage(said);
      port.close();
    }
  });
}

class Helper {
  readonly #task: Task;
  readonly #engine: Engine;
  readonly #files: FileId[] = [];

  constructor(task: Task) {
    this.#task = task;
    this.#engine = new Engine({ rules: allRules, today: task.today, changes: 'unlikely' });
  }

  /** All that it has to say, once it knows all that it must. */
  hear(heard: Exclude<ToHelper, { say: 'begin' }>): JudgedShare | undefined {
    if (heard.say === 'documents') {
      for (const [path, found] of heard.kept) this.#engine.keep(path, found);
      return this.#judged();
    }
    for (const opened of heard.opened) {
      this.#files.push(opened.file);
      this.#engine.put(recordOf(decodeFile(opened)));
    }
    // Documents take long to read, but most libraries keep none.
    const isAll = this.#files.length === this.#task.files;
    return isAll && keptPathsIn(this.#engine.view()).length === 0 ? this.#judged() : undefined;
  }

  #judged(): JudgedShare {
    const { shares, worker, keeps } = this.#task;
    const hashes = new KeyHashes();
    const judge = judgedBy(this.#engine);
    const files: FileId[] = [];
    const findings = new RowsWriter(Uint8Array);
    const reads = new RowsWriter(Uint32Array);
    const work = new Shares(shares);
    const pieces = piecesOfWork(this.#engine.library, this.#files, this.#task);
    for (let piece = work.take(worker); piece !== undefined; piece = work.take(worker)) {
      const together = pieces[piece] ?? [];
      this.#engine.judgeTogether(together);
      for (const file of together) {
        files.push(file);
        findings.add(keptForm(judge(file)));
        reads.add(keeps === 'findings' ? [] : hashes.of(this.#engine.readsOf(file)));
      }
    }
    const answers = answersGiven(keeps === 'findings' ? [] : this.#engine.answers(), hashes);
    return { files, findings: findings.done(), reads: reads.done(), answers };
  }
}
