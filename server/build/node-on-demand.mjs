// Parts of Node that few commands need are loaded when something of them is first used: the largest costs a tenth of a start.
import { builtinModules, createRequire } from 'node:module';

const onDemand = ['crypto', 'child_process', 'module', 'os', 'url', 'worker_threads'].filter((name) =>
  builtinModules.includes(name),
);
const namespace = 'node-on-demand';

export const nodeOnDemand = {
  name: namespace,
  setup({ onResolve, onLoad }) {
    const filter = new RegExp(`^node:(${onDemand.join('|')})$`);
    onResolve({ filter }, ({ path, importer }) => (importer === path ? { path, external: true } : { path, namespace }));
    onLoad({ filter: /./, namespace }, ({ path }) => ({ contents: standIn(path), loader: 'js' }));
  },
};

/** Each thing is asked of the part itself whenever it is used. */
function standIn(path) {
  const names = Object.keys(createRequire(import.meta.url)(path));
  return `module.exports = {
${names.map((name) => `  get ${name}() { return require('${path}').${name}; },`).join('\n')}
};
`;
}
