// `npm start`: checks the demo department with the program just built, and says where to look next.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const program = resolve(root, 'dist/traywright.cjs');
const { status } = spawnSync(process.execPath, [program, 'check', 'samples/lanternfield'], {
  cwd: root,
  stdio: 'inherit',
});
if (status !== 0 && status !== 1) process.exit(status ?? 3);
process.stdout.write(`
The findings above were planted in the demo department, samples/lanternfield. All of it is invented.
Look next at:
  node dist/traywright.cjs explain RULE      why a finding matters, with examples
  node dist/traywright.cjs rules             everything that can be found
  samples/lanternfield-corrected             the same department with every finding settled
  npm run package                            the editor extension, dist/traywright.vsix
`);
