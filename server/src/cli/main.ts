import { endProcess, processIo } from './process-io.ts';
import { run } from './run.ts';

const io = processIo('traywright-core.cjs');
run(process.argv.slice(2), io).then((code) => endProcess(code, io));
