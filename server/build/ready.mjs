// `npm run ready`: everything that must hold before a change is handed on. Stops at the first step that fails.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');

const steps = [
  ['npm', ['run', '--silent', 'generate']],
  ['npm', ['run', '--silent', 'typecheck']],
  ['npm', ['run', '--silent', 'lint']],
  ['npm', ['run', '--silent', 'build']],
  ['npm', ['run', '--silent', 'test']],
  [
    process.execPath,
    [
      'dist/traywright.cjs',
      'check',
      'samples/lanternfield-corrected',
      'samples/saltmere-eye-clinic-corrected',
      '--fail-on',
      'advice',
      '--quiet',
    ],
  ],
];

for (const [program, args] of steps) {
  process.stdout.write(`\n> ${program === process.execPath ? 'node' : program} ${args.join(' ')}\n`);
  const { status } = spawnSync(program, args, { cwd: root, stdio: 'inherit', shell: process.platform === 'win32' });
  if (status !== 0) stop(`This step failed (${status ?? 'it was ended'}).`);
}

const { stdout } = spawnSync('git', ['status', '--porcelain'], { cwd: root, encoding: 'utf8' });
if (stdout.trim() !== '')
  stop(
    `The work tree is not as committed; generated files or tests changed it, or something awaits a commit:\n${stdout}`,
  );
process.stdout.write('\nReady.\n');

function stop(why) {
  process.stdout.write(`\nNot ready. ${why}\n`);
  process.exit(1);
}
