import { catalogueOf } from '../src/check/catalogue.ts';
import { explanationIndex, explanationPage } from '../src/report/explanation-page.ts';
import type { AnyRule } from '../src/rules/rule.ts';

/** Where the pages lie, from the repository's root. Everything in it is generated. */
export const catalogueFolder = 'server/docs/rules';

const note = '<!-- Generated from the rules by `npm run generate`. Do not edit. -->\n\n';

/** Path to content: one page a finding, made from the same object as `traywright explain`, and their index. */
export function cataloguePages(rules: readonly AnyRule[]): Map<string, string> {
  const entries = catalogueOf(rules);
  const pages = new Map<string, string>();
  pages.set(`${catalogueFolder}/README.md`, `${note}${explanationIndex(entries, (id) => `${id}.md`)}`);
  for (const entry of entries) pages.set(`${catalogueFolder}/${entry.id}.md`, `${note}${explanationPage(entry)}`);
  return pages;
}
