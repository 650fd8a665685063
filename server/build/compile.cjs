// Runs a command with the program just built and keeps what Node made of its text, for launcher.cjs: all of it, or what a check of few
// files needs. Usage: compile.cjs PROGRAM all|few COMMAND...
'use strict';
const { readFileSync, renameSync, writeFileSync } = require('node:fs');
const { dirname } = require('node:path');
const { Script } = require('node:vm');

const [program, how, ...words] = process.argv.slice(2);
// As in launcher.cjs: what is made under other settings would be refused there.
if (how === 'all' && /^v2[0-4]\./.test(process.version))
  for (const flag of ['--interrupt-budget=1000000', '--heap-growing-percent=100'])
    require('node:v8').setFlagsFromString(flag);

const text = readFileSync(program, 'latin1');
const script = new Script(text, { filename: program });
process.argv = [process.argv[0], program, ...words];
// At the end, so that the functions that the command needs are among what is kept.
process.on('exit', () => {
  const cache = program.replace(/\.cjs$/, how === 'few' ? '-few.cache' : '.cache');
  const part = `${cache}.${process.pid}`;
  writeFileSync(part, Buffer.concat([Buffer.from(text.slice(2, 34), 'latin1'), script.createCachedData()]));
  renameSync(part, cache);
});
script.runInThisContext()(exports, require, module, program, dirname(program));
