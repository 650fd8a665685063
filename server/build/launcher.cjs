#!/usr/bin/env node
// Starts the command line with what this very version of Node made of its text when it was built; with another version, or without that
// file, from the text alone. The program is the same either way, only its start is slower. It is traywright-check.cjs for `check`, which
// runs most, and traywright-core.cjs for everything else.
'use strict';
const { readFileSync } = require('node:fs');
const { join } = require('node:path');
const { setFlagsFromString } = require('node:v8');
const { Script } = require('node:vm');

// A check lasts seconds: code that is made fast later costs less than it saves. The mark in what Node made counts this in, see compile.cjs.
if (/^v2[0-4]\./.test(process.version)) setFlagsFromString('--interrupt-budget=1000000');

const program = process.argv[2] === 'check' ? 'traywright-check' : 'traywright-core';
const file = join(__dirname, `${program}.cjs`);
const text = readFileSync(file, 'latin1');
const script = new Script(text, { filename: file, cachedData: compiled() });
script.runInThisContext()(exports, require, module, file, __dirname);

/** Both files begin with the name of one build: what was made of another text is never used. */
function compiled() {
  try {
    const bytes = readFileSync(join(__dirname, `${program}.cache`));
    return text.startsWith(`/*${bytes.toString('latin1', 0, 32)}*/`) ? bytes.subarray(32) : undefined;
  } catch {
    return undefined;
  }
}
