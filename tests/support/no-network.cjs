// Loaded before a program under test: whatever reaches for a network ends the program with a code that nothing else gives.
const refuse = (name) => () => {
  process.stderr.write(`reached for a network: ${name}\n`);
  process.exit(97);
};
for (const [part, names] of Object.entries({
  net: ['connect', 'createConnection', 'createServer'],
  dgram: ['createSocket'],
  dns: ['lookup', 'resolve'],
  tls: ['connect'],
  http: ['request', 'get', 'createServer'],
  https: ['request', 'get'],
  http2: ['connect'],
})) {
  for (const name of names) require(part)[name] = refuse(`${part}.${name}`);
}
for (const name of ['fetch', 'WebSocket', 'EventSource']) globalThis[name] = refuse(name);
