const banner = '// Generated from the files in this folder by `npm run generate`. Do not edit.\n';

/**
 * The list of all rules, made from the files under server/src/rules/<stage>/<rule-id>.ts, so that adding a rule is adding a file. Path below
 * server/src/rules to text: in each stage's folder the list of its own rules, and one that joins them.
 */
export function ruleLists(paths: readonly string[]): ReadonlyMap<string, string> {
  const byStage = new Map<string, string[]>();
  for (const path of [...paths].sort()) {
    const [stage = '', file = ''] = path.split('/');
    byStage.set(stage, [...(byStage.get(stage) ?? []), file]);
  }
  const lists = new Map<string, string>();
  for (const [stage, files] of byStage) lists.set(`${stage}/rules.generated.ts`, stageList(stage, files));
  return lists.set('all.generated.ts', joined([...byStage.keys()]));
}

function stageList(stage: string, files: readonly string[]): string {
  const names = files.map((file) => camel(file.replace(/\.ts$/, '')));
  const imports = files.map((file, index) => `import { rule as ${names[index]} } from './${file}';`);
  return `${banner}import type { AnyRule } from '../rule.ts';
${imports.join('\n')}

export const ${camel(stage)}Rules: readonly AnyRule[] = [
${names.map((name) => `  ${name},`).join('\n')}
];
`;
}

function joined(stages: readonly string[]): string {
  const imports = stages.map((stage) => `import { ${camel(stage)}Rules } from './${stage}/rules.generated.ts';`);
  return `${banner}${imports.join('\n')}
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
${stages.map((stage) => `  ...${camel(stage)}Rules,`).join('\n')}
];
`;
}

/** `flush-short` to `flushShort`. */
function camel(name: string): string {
  return name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());
}
