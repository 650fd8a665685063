import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import { documentName, isCurrent } from '../support/documents.ts';
import { listed } from '../support/lists.ts';
import { marketsMeet } from '../support/markets.ts';

const message = {
  other: (name: string, markets: string, here: string) =>
    `${name} is for the market ${markets}, and this department belongs to ${here}. Ask the maker for the document of your market.`,
};

export const rule = defineRule({
  id: 'document-market-mismatch',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'The same device can carry different claims in different markets.',
  source: 'practice',
  kinds: ['document'],
  check(document, { view, report }) {
    const { market } = document;
    const jurisdiction = view.site()?.jurisdiction;
    if (
      market === undefined ||
      jurisdiction === undefined ||
      !isCurrent(document) ||
      isForHere(document, jurisdiction.text)
    )
      return;
    // The page of another market may be kept beside the right one, to compare.
    const besides = document.doc === undefined ? [] : view.revisions(document.doc.text);
    if (besides.some((other) => other !== document && isCurrent(other) && isForHere(other, jurisdiction.text))) return;
    const markets = market.items.map((item) => item.text);
    report({
      at: market.items[0]?.at ?? market.at,
      message: message.other(documentName(document), listed(markets), jurisdiction.text),
      related: [{ at: jurisdiction.at, note: `market of ${rootOfEntity(view.site() ?? document).id}` }],
    });
  },
  examples: {
    bad: [
      `
=== documents/ln-44-b.ifu.yaml
kind: document
id: ln-44-b
doc: LN-44
rev: B
status: current
market: [EU]
         ^^ LN-44 rev B is for the market EU, and this department belongs to US. Ask the maker for the document of your market.
=== site.ifu.yaml
kind: site
id: lakeside
jurisdiction: US
`,
      `
=== documents/cv-8-g.ifu.yaml
kind: document
id: cv-8-g
doc: CV-8
rev: G
market:
  - US
    ^^ CV-8 rev G is for the market US and CA, and this department belongs to EU. Ask the maker for the document of your market.
  - CA
=== site.ifu.yaml
kind: site
id: sea-view
jurisdiction: EU
`,
    ],
    good: [
      `
=== documents/ln-44-b.ifu.yaml
kind: document
id: ln-44-b
doc: LN-44
rev: B
status: current
market: [EU, us]
=== site.ifu.yaml
kind: site
id: lakeside
jurisdiction: US
`,
      `
=== documents/bw-5-de.ifu.yaml
kind: document
id: bw-5-de
doc: BW-5
rev: A-de
market: [EU]
lang: [de]
=== documents/bw-5-en.ifu.yaml
kind: document
id: bw-5-en
doc: BW-5
rev: A-en
market: [US]
lang: [en]
=== site.ifu.yaml
kind: site
id: lakeside
jurisdiction: US
`,
    ],
  },
});

function isForHere(document: EntityOf['document'], jurisdiction: string): boolean {
  return marketsMeet(
    document.market?.items.map((item) => item.text),
    [jurisdiction],
  );
}
