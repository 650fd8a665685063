// `npm start`: with the program just built, checks the demo department, lists the routes of its sets, writes its work cards, and says where
// to look next.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const program = resolve(root, 'dist/traywright.cjs');
const demo = 'samples/lanternfield';
const cards = 'dist/cards';

/** Runs one command before the reader's eyes; findings (1) are expected of the demo department. */
function show(heading, ...given) {
  process.stdout.write(`\n${heading}\n\n`);
  const { status } = spawnSync(process.execPath, [program, ...given], { cwd: root, stdio: 'inherit' });
  if (status !== 0 && status !== 1) process.exit(status ?? 3);
}

show('What is found in the demo department', 'check', demo);
show('Which of its sets have a route', 'routes', demo);
show('Work cards; those with open errors are drafts', 'cards', '--library', demo, '--out', cards);
show(
  'The same cards with every finding settled',
  'cards',
  '--library',
  `${demo}-corrected`,
  '--out',
  `${cards}/corrected`,
);
process.stdout.write(`
The cards lie in ${cards} and ${cards}/corrected: open one in a browser and print it
("cards --pdf" makes PDFs too, where a Chromium is installed).
The findings above were planted in the demo department, ${demo}. All of it is invented.
Look next at:
  node dist/traywright.cjs explain RULE      why a finding matters, with examples
  node dist/traywright.cjs --help            answers, posters, questions, the audit binder and more
  node dist/traywright.cjs rules             everything that can be found
  ${demo}-corrected             the same department with every finding settled
  npm run package                            the editor extension, dist/traywright.vsix
`);
