import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { faultsOfResponse } from '../support/response-faults.ts';

const message = {
  unusable: (faults: readonly string[]) => `This answer can’t settle anything: it ${listed(faults)}.`,
  does: (what: string) => `It is kept as saying: “${what}”.`,
};

export const rule = defineRule({
  id: 'response-not-usable',
  stage: 'revision',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'An answer without date, sender and subject does not stand up when someone asks on what it rests.',
  source: 'practice',
  kinds: ['response'],
  check(response, { view, today, report }) {
    if (!isRelied(response, view)) return;
    const faults = faultsOfResponse(response, today);
    const [first] = faults;
    if (first === undefined) return;
    const said = response.permits ?? response.denies;
    const place = faults.find((fault) => fault.at !== response.at)?.at;
    report({
      at: place ?? fieldOf(response, 'id')?.at ?? response.at,
      message: message.unusable(faults.map((fault) => fault.words)),
      ...(response.quote !== undefined && { says: [sayingOf(response, response.quote.at)] }),
      ...(said !== undefined && { does: message.does(said.text) }),
    });
  },
  examples: {
    bad: [
      `
kind: response
id: r1
about: tarnwick-handpiece
from: sales-representative
      ^^^^^^^^^^^^^^^^^^^^ This answer can’t settle anything: it comes from a sales representative, whose word is not the manufacturer’s instruction and has no date.
permits: "10 min exposure"
`,
      `
=== responses/r2.ifu.yaml
kind: response
id: r2
date: 2021-02-01
from: technical-service
about: bone-clamp
denies: "machine washing"
expires: 2024-02-01
         ^^^^^^^^^^ This answer can’t settle anything: it expired on 2024-02-01 and is unverified.
status: unverified
=== questions/q4.ifu.yaml
kind: question
id: q4
about: bone-clamp
answered_by: r2
`,
    ],
    good: [
      `
kind: response
id: r1
date: 2025-01-15
from: regulatory-affairs
about: tarnwick-handpiece
field: exposure
permits: "4 min, no longer"
expires: 2027-01-15
`,
      `
kind: response
id: r3
from: sales-representative
about: tarnwick-handpiece
permits: "10 min exposure"
status: unverified
notes: ["Filed until the maker answers; nothing rests on it."]
`,
    ],
  },
});

/** An answer marked as unverified or withdrawn that nothing names is only filed. */
function isRelied(response: EntityOf['response'], view: LibraryView): boolean {
  if (response.status?.text === 'withdrawn') return false;
  return (
    response.status?.text !== 'unverified' || view.users('response', rootOfEntity(response).id, 'question').length > 0
  );
}
