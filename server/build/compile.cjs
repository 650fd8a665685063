// Runs a command with the program just built and keeps what Node made of its text, for launcher.cjs. Usage: compile.cjs PROGRAM COMMAND...
'use strict';
const { readFileSync, renameSync, writeFileSync } = require('node:fs');
const { dirname } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

// As in launcher.cjs: what is made under other settings would be refused there.
if (/^v2[0-4]\./.test(process.version)) setFlagsFromString('--interrupt-budget=1000000');

const [program, ...words] = process.argv.slice(2);
const text = readFileSync(program, 'latin1');
const script = new Script(text, { filename: program });
process.argv = [process.argv[0], program, ...words];
// At the end, so that the functions that the command needs are among what is kept.
process.on('exit', () => {
  const cache = program.replace(/\.cjs$/, '.cache');
  const part = `${cache}.${process.pid}`;
  writeFileSync(part, Buffer.concat([Buffer.from(text.slice(2, 34), 'latin1'), script.createCachedData()]));
  renameSync(part, cache);
});
script.runInThisContext()(exports, require, module, program, dirname(program));
