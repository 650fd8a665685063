import { besideProgram } from '../host/beside-program.ts';
import { todayByClock } from '../host/clock.ts';
import { buildName } from '../host/digest.ts';
import { resultsFolder } from '../host/results-folder.ts';
import { standardStream } from '../host/standard-streams.ts';
import { run } from './run.ts';

run(process.argv.slice(2), {
  stdout: standardStream(1),
  stderr: standardStream(2),
  env: process.env,
  cwd: process.cwd(),
  today: todayByClock,
  pdfReader: besideProgram('pdf-reader.cjs'),
  build: buildName(besideProgram('traywright-core.cjs')),
  results: resultsFolder(process.env),
  workbookPart: besideProgram('workbook.cjs'),
}).then((code) => {
  process.exitCode = code;
});
