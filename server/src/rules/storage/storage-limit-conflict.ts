import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';
import { demandOf } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';

type Packaging = EntityOf['packaging'];
type Site = EntityOf['site'];

const message = {
  unlimited: (packs: string) =>
    `The department's packs have no time limit, but the maker gives one for ${packs}. The limit of the pack binds.`,
  longer: (ours: string, packs: string) =>
    `Packs may be kept for ${ours} here, longer than the maker allows for ${packs}.`,
  dated: (packs: string) =>
    `Packs are dated here, while the maker of ${packs} gives no time limit. A date is the department's own rule then: say which, and where it comes from.`,
  limit: (id: string, time: string) => `"${id}" (${time})`,
  note: (id: string) => `what the maker of "${id}" says`,
};

export const rule = defineRule({
  id: 'storage-limit-conflict',
  stage: 'storage',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A pack is covered only as long as its maker says, whatever the policy of the department.',
  source: 'standard',
  kinds: ['site'],
  check(site, context) {
    const policy = site.policies?.shelf_life;
    if (policy === undefined) return;
    const packs = context.view.all('packaging');
    const isDatedWithoutTime = policy.text === 'dated' && site.policies?.shelf_life_max === undefined;
    if (isDatedWithoutTime) checkDated(policy, packs, context);
    else checkTimed(policy, site, packs, context);
  },
  examples: {
    bad: [
      `
=== site.ifu.yaml
kind: site
id: hillside
policies: {shelf_life: event-related-unlimited}
                       ^^^^^^^^^^^^^^^^^^^^^^^ The department's packs have no time limit, but the maker gives one for "pouch" (365 d). The limit of the pack binds.
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
storage: {at_most: 365 d, src: s3}
statements:
  s3: {doc: PO-1, rev: A, page: 2, quote: "Store for at most 365 days."}
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
policies:
  shelf_life: event-related-limited
  shelf_life_max: 730 d
                  ^^^^^ Packs may be kept for 730 d here, longer than the maker allows for "pouch" (180 d).
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
storage: {at_most: 180 d}
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
policies: {shelf_life: dated, shelf_life_max: 365 d}
                                              ^^^^^ Packs may be kept for 365 d here, longer than the maker allows for "pouch" (183 d).
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
storage: {at_most: 183 d}
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
policies: {shelf_life: dated}
                       ^^^^^ Packs are dated here, while the maker of "wrap" gives no time limit. A date is the department's own rule then: say which, and where it comes from.
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
event_related: true
`,
    ],
    good: [
      `
=== site.ifu.yaml
kind: site
id: hillside
policies: {shelf_life: event-related-limited, shelf_life_max: 180 d}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
storage: {at_most: 180 d}
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
policies: {shelf_life: dated, shelf_life_max: 180 d}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
event_related: true
`,
    ],
  },
});

function checkTimed(policy: Text, site: Site, packs: readonly Packaging[], { report }: RuleContext): void {
  const ours = site.policies?.shelf_life_max;
  const most = ours === undefined || ours.problem !== undefined ? Number.POSITIVE_INFINITY : ours.value;
  if (ours === undefined && policy.text !== 'event-related-unlimited') return;
  const shorter = packs.flatMap((pack) => {
    const demand = demandOf(pack.storage);
    const { highest } = demand ?? {};
    return highest !== undefined && demand !== undefined && demand.high < most ? [{ pack, time: shown(highest) }] : [];
  });
  if (shorter.length === 0) return;
  const words = listed(shorter.map(({ pack, time }) => message.limit(rootOfEntity(pack).id, time)));
  report({
    at: ours?.at ?? policy.at,
    message: ours === undefined ? message.unlimited(words) : message.longer(shown(ours), words),
    says: quotesOf(shorter.map(({ pack }) => sayingsOf(pack, pack.storage?.src))),
    related: shorter.map(({ pack }) => ({ at: (pack.storage ?? pack).at, note: message.note(rootOfEntity(pack).id) })),
  });
}

function checkDated(policy: Text, packs: readonly Packaging[], { report }: RuleContext): void {
  const free = packs.filter((pack) => pack.event_related?.on === true && pack.storage === undefined);
  if (free.length === 0) return;
  report({
    at: policy.at,
    severity: 'advice',
    message: message.dated(listed(free.map((pack) => `"${rootOfEntity(pack).id}"`))),
    related: free.map((pack) => ({ at: (pack.event_related ?? pack).at, note: message.note(rootOfEntity(pack).id) })),
  });
}
