// Loaded before a program under test. Counts the steps by which it writes into folders, and at the step DIES_AT ends it by force, half of
// what it was about to write written. Without DIES_AT, tells at the end how many steps there were, in the file STEPS_FILE.
const fs = require('node:fs');
const { isMainThread } = require('node:worker_threads');

const { DIES_AT, STEPS_FILE } = process.env;
const { writeFileSync, writeSync } = fs;
let steps = 0;

function isLast() {
  steps++;
  return steps === Number(DIES_AT);
}

for (const name of ['mkdirSync', 'fsyncSync', 'renameSync', 'rmSync']) {
  const real = fs[name];
  fs[name] = (...given) => {
    if (isLast()) process.kill(process.pid, 'SIGKILL');
    return real(...given);
  };
}

fs.writeSync = (handle, bytes, at = 0, ...more) => {
  if (handle > 2 && isLast()) {
    writeSync(handle, bytes, at, Math.floor((bytes.length - at) / 2));
    process.kill(process.pid, 'SIGKILL');
  }
  return writeSync(handle, bytes, at, ...more);
};

if (isMainThread && STEPS_FILE !== undefined) process.on('exit', () => writeFileSync(STEPS_FILE, `${steps}`));
