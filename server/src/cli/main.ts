import { processIo } from './process-io.ts';
import { run } from './run.ts';

run(process.argv.slice(2), processIo('traywright-core.cjs')).then((code) => {
  process.exitCode = code;
});
