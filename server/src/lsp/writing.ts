import type { Connection } from 'vscode-languageserver';
import { catalogueOf } from '../check/catalogue.ts';
import type { NamedRule } from '../editor/completion-ids.ts';
import type { AnyRule } from '../rules/rule.ts';
import type { ClientAbilities } from './client-abilities.ts';
import { completionList } from './completion.ts';
import type { DocumentPlaces } from './document-places.ts';
import type { Session } from './session.ts';

/** What the answers that help writing need. */
export interface WritingParts {
  readonly places: DocumentPlaces;
  readonly abilities: ClientAbilities;
  readonly rules: readonly AnyRule[];
  /** The version of each open document that the editor sent last, by address. */
  readonly versions: ReadonlyMap<string, number>;
}

/** Answers that help writing: completion, fixes, renaming, layout. */
export function attachWriting(connection: Connection, session: Session, parts: WritingParts): void {
  const { places, abilities, rules } = parts;
  const named = namedRules(rules);
  connection.onCompletion(session.request((params) => completionList(params, places, named(), abilities)));
}

/** Names of all findings with their reasons, made when first asked for. */
function namedRules(rules: readonly AnyRule[]): () => readonly NamedRule[] {
  let made: readonly NamedRule[] | undefined;
  return () => {
    made ??= catalogueOf(rules).map(({ id, why }) => ({ id, why }));
    return made;
  };
}
