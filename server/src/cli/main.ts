import { runAsProcess } from './process-io.ts';
import { run } from './run.ts';

runAsProcess('traywright-core.cjs', (io) => run(process.argv.slice(2), io));
