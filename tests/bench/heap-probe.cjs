// Loaded into a program that is started with --expose-gc: on SIGUSR2 it writes the bytes of live objects to the fourth stream.
const { writeSync } = require('node:fs');

process.on('SIGUSR2', () => {
  globalThis.gc();
  globalThis.gc();
  writeSync(3, `${process.memoryUsage().heapUsed}\n`);
});
