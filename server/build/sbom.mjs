// Writes dist/sbom.cdx.json: what npm knows about the packages that are handed out (npm itself leaves out those of them that tools use
// too, so they are chosen here by the lock file), without the moment and the number that npm makes up
// at each run, so that the same lock file gives the same bytes. Usage: npm run sbom [FILE]
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');
const file = resolve(root, process.argv[2] ?? 'dist/sbom.cdx.json');

const ran = spawnSync('npm', ['sbom', '--package-lock-only', '--sbom-format=cyclonedx'], {
  cwd: root,
  encoding: 'utf8',
  maxBuffer: 64_000_000,
  shell: process.platform === 'win32',
});
if (ran.status !== 0) {
  process.stderr.write(ran.stderr);
  process.exit(1);
}

const bill = JSON.parse(ran.stdout);
delete bill.serialNumber;
delete bill.metadata.timestamp;
// npm takes the name of the folder that the copy lies in.
bill.metadata.component.name = bill.metadata.component['bom-ref'].replace(/@[^@]*$/, '');
const { packages } = JSON.parse(readFileSync(resolve(root, 'package-lock.json'), 'utf8'));
const handedOut = new Set([bill.metadata.component['bom-ref']]);
for (const [path, one] of Object.entries(packages)) {
  if (path !== '' && !one.dev && !one.optional && !one.devOptional)
    handedOut.add(`${path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length)}@${one.version}`);
}
bill.components = bill.components.filter((component) => handedOut.has(component['bom-ref']));
bill.dependencies = bill.dependencies
  .filter(({ ref }) => handedOut.has(ref))
  .map(({ ref, dependsOn }) => ({ ref, dependsOn: dependsOn.filter((other) => handedOut.has(other)) }));
const hash = createHash('sha256').update(JSON.stringify(bill)).digest('hex');
const uuid = `${hash.slice(0, 8)}-${hash.slice(8, 12)}-5${hash.slice(13, 16)}-a${hash.slice(17, 20)}-${hash.slice(20, 32)}`;
const { $schema, bomFormat, specVersion, ...rest } = bill;
const named = { $schema, bomFormat, specVersion, serialNumber: `urn:uuid:${uuid}`, ...rest };
mkdirSync(dirname(file), { recursive: true });
writeFileSync(file, `${JSON.stringify(named, undefined, 2)}\n`);
