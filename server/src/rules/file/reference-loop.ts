import type { LibraryView, Query } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { documentName } from '../support/documents.ts';

const message = {
  self: (name: string, link: string) =>
    `${name} ${link} itself. This leads nowhere: name another one, or remove the line.`,
  loop: (names: readonly string[], link: string) =>
    `These go round in a circle: ${names.join(` ${link} `)}. Remove one of the links.`,
};

/** How a file names its follower, in words between two names. */
const links = {
  document: 'supersedes',
  chemistry: 'is replaced by',
  set: 'is a spare of',
  procedure: 'falls back on',
} as const;

type LinkedKind = keyof typeof links;
const kinds = ['document', 'chemistry', 'set', 'procedure'] as const satisfies readonly LinkedKind[];

export const rule = defineRule({
  id: 'reference-loop',
  stage: 'file',
  severity: 'error',
  settledBy: 'educator',
  why: 'Files that point at each other in a circle have no last word.',
  source: 'logic',
  kinds,
  check(entity, { view, report }) {
    const kind = rootOfEntity(entity).kind as LinkedKind;
    const link = linkOf(entity);
    const loop = link === undefined ? [] : loopFrom(entity, view);
    if (link === undefined || loop.length === 0 || loop.some((other) => comesBefore(other, entity))) return;
    const names = [...loop, entity].map(shownName);
    report({
      at: link.at,
      message: loop.length === 1 ? message.self(shownName(entity), links[kind]) : message.loop(names, links[kind]),
      related: loop
        .filter((other) => other !== entity)
        .map((other) => ({ at: linkOf(other)?.at ?? other.at, note: 'a part of the circle' })),
    });
  },
  examples: {
    bad: [
      `
=== documents/dw-c.ifu.yaml
kind: document
id: dw-c
doc: DW-1
rev: C
supersedes: D
            ^ These go round in a circle: DW-1 rev C supersedes DW-1 rev D supersedes DW-1 rev C. Remove one of the links.
=== documents/dw-d.ifu.yaml
kind: document
id: dw-d
doc: DW-1
rev: D
supersedes: C
`,
      `
kind: chemistry
id: C4
discontinued_on: 2025-02-28
replaced_by: C4
             ^^ C4 is replaced by itself. This leads nowhere: name another one, or remove the line.
`,
      `
=== procedures/a.ifu.yaml
kind: procedure
id: implant-release
emergency_path: early-release
                ^^^^^^^^^^^^^ These go round in a circle: implant-release falls back on early-release falls back on late-release falls back on implant-release. Remove one of the links.
=== procedures/b.ifu.yaml
kind: procedure
id: early-release
emergency_path: late-release
=== procedures/c.ifu.yaml
kind: procedure
id: late-release
emergency_path: implant-release
`,
    ],
    good: [
      `
=== documents/dw-c.ifu.yaml
kind: document
id: dw-c
doc: DW-1
rev: C
supersedes: B
=== documents/dw-d.ifu.yaml
kind: document
id: dw-d
doc: DW-1
rev: D
supersedes: C
`,
      `
=== sets/one.ifu.yaml
kind: set
id: minor-1
spare_of: minor-2
=== sets/two.ifu.yaml
kind: set
id: minor-2
`,
    ],
  },
});

/** A circle of more files than this is not looked for: long chains must stay cheap to judge. */
const longestCircle = 100;

/** The entities met on the way from `start` back to `start`, itself first; empty when the way ends or turns round without it. */
function loopFrom(start: AnyEntity, view: LibraryView): readonly AnyEntity[] {
  const met = new Set<AnyEntity>();
  let at: AnyEntity | undefined = start;
  while (at !== undefined && !met.has(at) && met.size < longestCircle) {
    met.add(at);
    at = followerOf(at, view);
  }
  return at === start ? [...met] : [];
}

const byRevision: Query<string, ReadonlyMap<string, EntityOf['document']>> = {
  name: 'registered documents of a number by revision',
  work(view, number) {
    const revisions = new Map<string, EntityOf['document']>();
    for (const document of view.revisions(number)) {
      const revision = document.rev?.text;
      if (revision !== undefined && !revisions.has(revision)) revisions.set(revision, document);
    }
    return revisions;
  },
};

function followerOf(entity: AnyEntity, view: LibraryView): AnyEntity | undefined {
  const link = linkOf(entity);
  if (link === undefined) return undefined;
  if (isOfKind(entity, 'document')) {
    return view.ask(byRevision, entity.doc?.text ?? '').get(link.text);
  }
  return view.get(rootOfEntity(entity).kind, link.text);
}

function linkOf(entity: AnyEntity): Text | undefined {
  if (isOfKind(entity, 'document')) return entity.supersedes;
  if (isOfKind(entity, 'chemistry')) return entity.replaced_by;
  if (isOfKind(entity, 'set')) return entity.spare_of;
  return isOfKind(entity, 'procedure') ? entity.emergency_path : undefined;
}

/** A circle is reported once, in the first of its files. */
function comesBefore(other: AnyEntity, entity: AnyEntity): boolean {
  return rootOfEntity(other).file < rootOfEntity(entity).file;
}

function shownName(entity: AnyEntity): string {
  return isOfKind(entity, 'document') ? documentName(entity) : rootOfEntity(entity).id;
}
