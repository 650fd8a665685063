import { plain } from '../../../server/src/print/piece.ts';
import { type Asked, type Fault, isTable, tablesIn, wordsIn } from './asked.ts';

/* Where to stop: the file must say why. */

export function stopFault(asked: Asked): Fault {
  const { draft } = asked;
  const said = [draft.right, ...draft.wrong].map(plain);
  const halts = said.map((line) => /^(?:Stop|Hold|Do not use)/.test(line));
  if (halts[0] !== true || halts.slice(1).includes(true)) return 'not exactly the key stops the work';
  const [, about = '', what = ''] = /^stop-point (\S+)(?: (\S+))?$/.exec(draft.key) ?? [];
  if (about.startsWith('device/')) return prohibitionFault(asked, about, what);
  if (about === 'no-document') return documentFault(asked, what);
  if (about === 'prion') return prionFault(asked);
  return about === 'wet-pack' ? undefined : `nothing is known of ${about}`;
}

/** In `not`, or as the use of a stage; with the statement that says so. */
function prohibitionFault({ files, draft }: Asked, about: string, what: string): Fault {
  const device = files.get(about);
  if (!isTable(device)) return 'no such device';
  const stage = device[what];
  const bans = [
    ...tablesIn(device.not).filter((one) => one.what === what),
    ...(isTable(stage) && stage.use === 'forbidden' ? [stage] : []),
  ];
  if (bans.length === 0) return `the file forbids no ${what}`;
  if (bans.some((one) => 'when' in one)) return 'it is forbidden only now and then';
  const pages = bans.flatMap(({ src }) => wordsIn(src)).map((src) => statementPage(device, src));
  return pages.some((page) => plain(draft.citation).endsWith(`page ${page}`)) ? undefined : 'another page is cited';
}

function statementPage({ statements }: Readonly<Record<string, unknown>>, src: string): string {
  const statement = isTable(statements) ? statements[src] : undefined;
  return isTable(statement) ? String(statement.page) : '';
}

function documentFault({ files }: Asked, id: string): Fault {
  return files.has(`device/${id}`) ? `there is a file of ${id}` : undefined;
}

function prionFault({ files, draft }: Asked): Fault {
  for (const [name, file] of files) {
    if (!name.startsWith('procedure/') || !isTable(file) || !wordsIn(file.topics).includes('prion')) continue;
    return wordsIn(file.contacts).some((who) => plain(draft.right).includes(who)) ? undefined : 'calls somebody else';
  }
  return 'no procedure speaks of it';
}
