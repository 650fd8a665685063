/** What comes along from others, read from the lock file: the page `server/docs/dependencies.md`. Deterministic. */

export const dependencyPagePath = 'server/docs/dependencies.md';

interface LockedPackage {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
  readonly devOptional?: boolean;
  readonly hasInstallScript?: boolean;
  readonly dependencies?: Readonly<Record<string, string>>;
}

export interface Lock {
  readonly packages: Readonly<Record<string, LockedPackage>>;
}

export interface Dependency {
  readonly name: string;
  readonly version: string;
  readonly license: string;
  readonly asked: 'by us' | 'by another';
  readonly runsOnInstall: boolean;
  /** Where it is installed, from the root. */
  readonly folder: string;
}

/** Packages of which parts are in the bundles that are handed out. Optional ones are never bundled. */
export function runtimeDependencies(lock: Lock): readonly Dependency[] {
  return chosen(lock, (one) => one.dev !== true && one.optional !== true && one.devOptional !== true);
}

/** Packages that are installed for building and testing only. */
export function developmentDependencies(lock: Lock): readonly Dependency[] {
  return chosen(lock, (one) => one.dev === true || one.devOptional === true);
}

function chosen(lock: Lock, wanted: (one: LockedPackage) => boolean): readonly Dependency[] {
  const ours = new Set(Object.keys(lock.packages['']?.dependencies ?? {}));
  return Object.entries(lock.packages)
    .filter(([path, one]) => path !== '' && wanted(one))
    .map(([path, one]): Dependency => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      return {
        name,
        version: one.version ?? '',
        license: one.license ?? 'not stated',
        asked: ours.has(name) ? 'by us' : 'by another',
        runsOnInstall: one.hasInstallScript === true,
        folder: path,
      };
    })
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

export function dependencyPage(lock: Lock): string {
  const runtime = runtimeDependencies(lock);
  const development = developmentDependencies(lock);
  const direct = runtime.filter(({ asked }) => asked === 'by us').length;
  const rows = runtime.map((one) => `| ${one.name} | ${one.version} | ${one.license} | ${one.asked} |`);
  return `# What comes along from others

Generated from \`package-lock.json\` by \`npm run generate\`. \`npm run sbom\` writes the same as CycloneDX to \`dist/sbom.cdx.json\`, and \`npm run licences\` the texts of the licences to \`dist/third-party-licences.txt\`; both lie in the packaged extension.

${runtime.length} packages may have parts in the bundles under \`dist/\`: ${direct} that we ask for, and ${runtime.length - direct} that those ask for. Every version is exact. None of them runs a program when it is installed, and neither does Traywright.

| Package | Version | Licence | Asked for |
|---|---|---|---|
${rows.join('\n')}

## For building and testing only

${development.length} packages, never handed out. ${installSentence(development)}

Licences: ${licenceCounts(development)}.
`;
}

function installSentence(development: readonly Dependency[]): string {
  const names = [...new Set(development.filter(({ runsOnInstall }) => runsOnInstall).map(({ name }) => name))];
  return names.length === 0
    ? 'None runs a program when it is installed.'
    : `Of these, ${names.join(', ')} may run a program when installed (\`npm install --ignore-scripts\` prevents it).`;
}

function licenceCounts(packages: readonly Dependency[]): string {
  const counts = new Map<string, number>();
  for (const { license } of packages) counts.set(license, (counts.get(license) ?? 0) + 1);
  return [...counts]
    .sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1))
    .map(([license, count]) => `${license} (${count})`)
    .join(', ');
}
