// Makes every picture of the README and the tour from runs of the tour's test, light and dark, in real VS Code. Usage: npm run pictures.
// `.ci/install-editors` installs the editors; `apt-get install pngquant` the program that makes the pictures small.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');

/** Where each picture of a run of the tour goes; the dark one gets "-dark" before its ending. */
const pictures = {
  editor: 'client/media/editor',
  library: 'client/media/tour/library',
  problems: 'client/media/tour/problems',
  quote: 'client/media/tour/quote',
  sheet: 'client/media/tour/sheet',
  'new-file': 'client/media/tour/new-file',
};

const looks = [
  { theme: 'light', taken: 'tour', suffix: '' },
  { theme: 'dark', taken: 'tour-dark', suffix: '-dark' },
];

function run(program, given, environment = {}) {
  const { status, error } = spawnSync(program, given, {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, ...environment },
  });
  if (error !== undefined || status !== 0) {
    console.error(`pictures: "${program}" failed${error === undefined ? '' : `: ${error.message}`}`);
    process.exit(1);
  }
}

for (const { theme, taken, suffix } of looks) {
  run('npx', ['vitest', 'run', '--config', 'tests/editor/vitest.config.ts', 'tour'], { TOUR_IN: theme });
  for (const [name, place] of Object.entries(pictures)) {
    const from = `tests/artefacts/${taken}-${name}.png`;
    if (!existsSync(resolve(root, from))) throw new Error(`the tour took no picture "${name}"`);
    run('pngquant', [
      '--force',
      '--strip',
      '--speed',
      '1',
      '--quality',
      '70-95',
      '--output',
      `${place}${suffix}.png`,
      from,
    ]);
  }
}
console.log('pictures: made anew; look at each of them before they are committed');
