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

/** Functions and classes only: that is all of these that anyone here imports. */
function standIn(path) {
  const real = createRequire(import.meta.url)(path);
  const names = Object.keys(real).filter((name) => typeof real[name] === 'function');
  const rows = names.map((name) => `export const ${name} = /* @__PURE__ */ standIn('${name}');`);
  return `const real = () => require('${path}');
const standIn = (name) => new Proxy(function () {}, {
  apply: (_, self, given) => Reflect.apply(real()[name], self, given),
  construct: (_, given) => Reflect.construct(real()[name], given),
});
${rows.join('\n')}
`;
}
