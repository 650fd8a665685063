// Loaded before a program under test: as soon as it looks into a folder, a promise fails that nobody waits for.
const fs = require('node:fs');

const { readdirSync } = fs;
fs.readdirSync = (...given) => {
  fs.readdirSync = readdirSync;
  void Promise.reject(new Error('lost'));
  return readdirSync(...given);
};
