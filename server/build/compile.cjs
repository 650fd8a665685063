// Runs a check with the command line just built and keeps what Node made of its text, for launcher.cjs. Usage: compile.cjs CORE LIBRARY
'use strict';
const { readFileSync, renameSync, writeFileSync } = require('node:fs');
const { dirname } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

// As in launcher.cjs: what is made under other settings would be refused there.
if (/^v2[0-4]\./.test(process.version)) setFlagsFromString('--interrupt-budget=1000000');

const [core, library] = process.argv.slice(2);
const text = readFileSync(core, 'latin1');
const script = new Script(`(function (exports, require, module, __filename, __dirname) {${text}\n})`, {
  filename: core,
});
process.argv = [process.argv[0], core, 'check', library, '--today', '2025-03-03'];
// At the end, so that the functions that a check needs are among what is kept.
process.on('exit', () => {
  const cache = core.replace(/\.cjs$/, '.cache');
  const part = `${cache}.${process.pid}`;
  writeFileSync(part, Buffer.concat([Buffer.from(text.slice(2, 34), 'latin1'), script.createCachedData()]));
  renameSync(part, cache);
});
script.runInThisContext()(exports, require, module, core, dirname(core));
