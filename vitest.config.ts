/** So that `npx vitest run FILE` knows the settings of `npm test` too. */
export { default } from './tests/vitest.config.ts';
