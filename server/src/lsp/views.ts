import type { Connection } from 'vscode-languageserver';
import type { TreeFile } from '../editor/library-tree.ts';
import { filesOfStage, libraryTree } from '../editor/library-tree.ts';
import type { Disk } from './disk.ts';
import type { DocumentPlaces } from './document-places.ts';
import { Readings } from './double-reading.ts';
import type { OpenLibrary } from './open-library.ts';
import { fieldIn } from './params.ts';
import type { Reports } from './reports.ts';
import { Reviews } from './reviews.ts';
import type { Session } from './session.ts';
import { SetSheets } from './set-sheets.ts';
import { Slices } from './turns.ts';
import type { Workbench } from './workbench.ts';

/** What stands beside the text: the library by stage of work, the set sheet, two readings compared, the review of a revision. */
export interface Views {
  touched(): void;
}

/** Requests of our own behind the views of a client that has such. All that comes in is looked at before it is used. */
export function attachViews(
  connection: Connection,
  session: Session,
  reports: Reports,
  places: DocumentPlaces,
  disk: Disk,
): Views {
  const { workbench } = places;
  const sheets = new SetSheets(connection, workbench, reports);
  const readings = new Readings(places);
  const reviews = new Reviews(connection, workbench, disk);
  const on = (method: string, answer: (params: unknown) => unknown): void => {
    connection.onRequest(method, session.request(answer));
  };
  on('traywright/libraryTree', (params) => tree(params, workbench));
  on('traywright/setSheet', (params) => sheets.sheet(params));
  on('traywright/sets', () => sheets.sets());
  on('traywright/blindCopy', (params) => readings.blind(params));
  on('traywright/compareReadings', (params) => readings.compared(params));
  on('traywright/review', (params) => reviews.review(params));
  on('traywright/reviewOldText', (params) => reviews.oldText(params));
  on('traywright/reviewRecord', (params) => reviews.record(params));
  connection.onNotification(
    'traywright/setSheetClosed',
    session.notification(() => sheets.close()),
  );
  connection.onNotification(
    'traywright/reviewClosed',
    session.notification(() => reviews.close()),
  );
  return {
    touched: () => {
      sheets.touched();
      reviews.touched();
    },
  };
}

/**
 * Without a `stage`: each open library with its stages and coverage. With `root` and `stage`: the files of that stage. The root names a
 * library that is open; no other folder is ever looked at.
 */
async function tree(params: unknown, workbench: Workbench): Promise<unknown> {
  await workbench.settled();
  const [root, stage] = [fieldIn(params, 'root'), fieldIn(params, 'stage')];
  if (typeof stage !== 'string') return summaries(workbench);
  for (const library of workbench.libraries.all())
    if (library.root === root)
      return filesOfStage(library.engine, stage).map((file) => fileWords(file, library, workbench));
  return [];
}

/** Findings are worked out in slices, so that typing is answered in between. */
async function summaries(workbench: Workbench): Promise<readonly unknown[]> {
  const all: unknown[] = [];
  const slices = new Slices();
  for (const library of [...workbench.libraries.all()]) {
    for (const file of library.files()) {
      library.engine.findings(file);
      await slices.pause();
    }
    const { stages, coverage } = libraryTree(library.engine);
    const [own] = library.engine.view().all('library');
    all.push({ root: library.root, name: own?.name?.text ?? library.root, stages, coverage });
  }
  return all;
}

function fileWords({ file, ...words }: TreeFile, library: OpenLibrary, workbench: Workbench): unknown {
  return { ...words, path: file, uri: workbench.folders.addressOfReal(library.uriOf(file)) };
}
