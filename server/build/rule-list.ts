/** The list of all rules, made from the files under server/src/rules/<stage>/<rule-id>.ts, so that adding a rule is adding a file. */
export function ruleList(paths: readonly string[]): string {
  const rows = [...paths].sort().map((path, index) => ({ name: `rule${index + 1}`, path }));
  const imports = rows.map(({ name, path }) => `import { rule as ${name} } from './${path}';`);
  return `// Generated from the files in this folder by \`npm run generate\`. Do not edit.
${imports.join('\n')}
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
${rows.map(({ name }) => `  ${name},`).join('\n')}
];
`;
}
