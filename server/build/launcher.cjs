#!/usr/bin/env node
// Starts the command line with what this very version of Node made of its text when it was built; with another version, or without that
// file, from the text alone. The program is the same either way, only its start is slower. It is traywright-check.cjs for `check`, which
// runs most, and traywright-core.cjs for everything else. A check of a few files starts with what such a check needs and no more: what
// Node made of the rest takes longer to be read than to be made again.
'use strict';
const { opendirSync, readFileSync } = require('node:fs');
const { join } = require('node:path');
const { Script } = require('node:vm');

const fewFiles = 12;
const words = process.argv.slice(2);
const isCheck = words[0] === 'check';
const program = isCheck ? 'traywright-check' : 'traywright-core';
// A thread beside a check is there because the library is large.
const isHelper = words[1] === '--judge-a-share';
const made = isCheck && !isHelper && holdsFew(words.slice(1).find(isFolder) ?? '.') ? `${program}-few` : program;

// What takes seconds: code that is made fast later costs less than it saves; and memory that is looked through when it has doubled, not only
// when it has grown fourfold, is a sixth less at its highest for a hundredth of the time. The mark in what Node made counts both in, see
// compile.cjs.
if (made === program && /^v2[0-4]\./.test(process.version))
  for (const flag of ['--interrupt-budget=1000000', '--heap-growing-percent=100'])
    require('node:v8').setFlagsFromString(flag);

const file = join(__dirname, `${program}.cjs`);
const text = readFileSync(file, 'latin1');
const script = new Script(text, { filename: file, cachedData: compiled() });
script.runInThisContext()(exports, require, module, file, __dirname);

/** Both files begin with the name of one build: what was made of another text is never used. */
function compiled() {
  try {
    const bytes = readFileSync(join(__dirname, `${made}.cache`));
    return text.startsWith(`/*${bytes.toString('latin1', 0, 32)}*/`) ? bytes.subarray(32) : undefined;
  } catch {
    return undefined;
  }
}

/** A word that may be the folder of a library; whatever it is, only time depends on it. */
function isFolder(word) {
  return !word.startsWith('-') && entriesOf(word, 1) !== undefined;
}

function holdsFew(folder) {
  const waiting = [folder];
  let left = fewFiles;
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop()) {
    for (const entry of entriesOf(at, left + 1) ?? []) {
      if (entry.isDirectory()) waiting.push(join(at, entry.name));
      left -= 1;
    }
    if (left < 0) return false;
  }
  return true;
}

/** The first entries of a folder; undefined for what is none. */
function entriesOf(path, most) {
  try {
    const folder = opendirSync(path);
    const entries = [];
    try {
      for (let entry = folder.readSync(); entry !== null && entries.length < most; entry = folder.readSync())
        entries.push(entry);
    } finally {
      folder.closeSync();
    }
    return entries;
  } catch {
    return undefined;
  }
}
