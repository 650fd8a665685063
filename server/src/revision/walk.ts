import { contentOf } from '../model/content.ts';
import type { Policies } from '../model/entities/site.generated.ts';
import type { Citation, Node, Rec } from '../model/node.ts';
import type { Edit } from './change.ts';
import type { Verdict } from './demands.ts';
import type { StatementAlignment } from './statements.ts';

/** Where two nodes stand that are compared: one place on each side, and how to put one in place of the other. */
export interface Spot {
  readonly beforePath: string;
  readonly afterPath: string;
  /** The nearest citation on each side. */
  readonly beforeSrc?: Citation | undefined;
  readonly afterSrc?: Citation | undefined;
  /** The change that puts `node` where the old node stands. */
  put(node: Node | undefined): Edit;
}

/** A change as it was found, before it gets its quotes and its name. */
export interface Draft extends Verdict {
  readonly before?: Node | undefined;
  readonly after?: Node | undefined;
  readonly beforePath: string;
  readonly afterPath: string;
  readonly beforeSrc?: Citation | undefined;
  readonly afterSrc?: Citation | undefined;
  readonly edit?: Edit;
  /** Ids of passages that say the same in another place. */
  readonly moved?: readonly string[];
  /** What is said of a side in place of its own words. */
  readonly words?: { readonly before?: string; readonly after?: string };
}

/** One comparison under way. */
export class Walk {
  readonly policies: Policies | undefined;
  readonly statements: StatementAlignment;
  readonly language: string | undefined;
  readonly drafts: Draft[] = [];
  readonly recordKeeping: string[] = [];

  constructor(statements: StatementAlignment, policies: Policies | undefined, language: string | undefined) {
    this.statements = statements;
    this.policies = policies;
    this.language = language;
  }

  report(verdict: Verdict, spot: Spot, before: Node | undefined, after: Node | undefined): void {
    const { beforePath, afterPath, beforeSrc, afterSrc } = spot;
    this.drafts.push({ ...verdict, beforePath, afterPath, beforeSrc, afterSrc, before, after, edit: spot.put(after) });
  }
}

/** The spot of a field of two records that are compared. */
export function fieldSpot(
  spot: Spot,
  owner: Rec,
  key: string,
  before: Node | undefined,
  after: Node | undefined,
): Spot {
  return {
    beforePath: joined(spot.beforePath, key),
    afterPath: joined(spot.afterPath, key),
    beforeSrc: citationIn(before) ?? spot.beforeSrc,
    afterSrc: citationIn(after) ?? spot.afterSrc,
    put: (node) => ({ is: 'field', owner, key, node }),
  };
}

export function joined(path: string, key: string): string {
  return path === '' ? key : `${path}.${key}`;
}

/** The citation of a record itself. */
export function citationIn(node: Node | undefined): Citation | undefined {
  if (node?.node !== 'record' || !('src' in node)) return undefined;
  const src = node.src;
  return typeof src === 'object' && src !== null && 'node' in src && src.node === 'citation'
    ? (src as Citation)
    : undefined;
}

export function sameContent(a: Node, b: Node): boolean {
  return a.node === b.node && contentOf(a) === contentOf(b);
}
