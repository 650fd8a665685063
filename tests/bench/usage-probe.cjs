// Loaded into every measured program: at its end it writes what it used to the fourth stream.
const { writeSync } = require('node:fs');

process.on('exit', () => {
  const { userCPUTime, systemCPUTime, maxRSS } = process.resourceUsage();
  writeSync(3, JSON.stringify({ cpuMs: (userCPUTime + systemCPUTime) / 1000, peakMb: maxRSS / 1024 }));
});
