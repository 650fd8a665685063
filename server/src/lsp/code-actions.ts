import type { CodeAction, CodeActionParams, Diagnostic, Position } from 'vscode-languageserver';
import { CodeActionKind } from 'vscode-languageserver';
import { printable } from '../base/printable.ts';
import type { Fix } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import { Engine } from '../check/engine.ts';
import type { Finding } from '../check/finding.ts';
import { packagingsToName } from '../editor/cycle-packaging.ts';
import { editBetween, fixAllOf, onlyFix } from '../editor/fix-all.ts';
import { statementsFromRaw } from '../editor/page/raw-statements.ts';
import { sentencesOf } from '../editor/reading/open-sentences.ts';
import { quoteToFields, statementAt } from '../editor/reading/quote-to-fields.ts';
import { titlesOf } from '../editor/reading/told-fields.ts';
import { movedToPages } from '../editor/statement-pages.ts';
import { leftOutAt, leftOutWords } from '../editor/walk/left-out.ts';
import { saidNothing } from '../editor/walk/said-nothing.ts';
import { leftUnclear } from '../editor/walk/sentence-notes.ts';
import { asPlain } from '../editor/writing/offer.ts';
import type { AnyRule } from '../rules/rule.ts';
import { stillToWrite } from '../schema/to-do.ts';
import { fileForm } from '../syntax/edits.ts';
import { namedListsAt } from './added-items.ts';
import type { Disk } from './disk.ts';
import type { DocumentAt } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { foundFileActions } from './found-files.ts';
import { offsetOf } from './places.ts';
import type { EditForm } from './workspace-edit.ts';
import { workspaceEdit } from './workspace-edit.ts';

export const actionKinds = [CodeActionKind.QuickFix, CodeActionKind.RefactorRewrite];

export interface ActionParts extends EditForm {
  readonly rules: readonly AnyRule[];
  readonly disk: Disk;
}

/** Fixes of the findings at a place, of all findings of the same rule in the file, and fields from the quote there. */
export async function codeActions(params: CodeActionParams, parts: ActionParts): Promise<CodeAction[] | null> {
  const at = await parts.places.document(params.textDocument.uri);
  const start = at === undefined ? undefined : offsetOf(at.record, params.range.start);
  const end = at === undefined ? undefined : offsetOf(at.record, params.range.end);
  if (at === undefined || start === undefined || end === undefined) return null;
  const wanted = (kind: string): boolean => params.context.only?.some((only) => kind.startsWith(only)) ?? true;
  const here = at.home.engine.findings(at.home.file).filter(({ span }) => span.start <= end && start <= span.end);
  const isAsked = here.some(({ fixes }) => fixes.some(({ setsAside }) => setsAside === true));
  const kind = isAsked && wanted(CodeActionKind.QuickFix) ? CodeActionKind.QuickFix : CodeActionKind.RefactorRewrite;
  const fields = wanted(kind) ? fieldActions(at, start, kind, parts) : [];
  const adding = addActions(at, start, params.range.start, parts);
  const further = adding.filter((action) => action.kind === CodeActionKind.RefactorRewrite);
  const unclear = wanted(CodeActionKind.RefactorRewrite)
    ? [...unclearActions(at, start, parts), ...further, ...pageActions(at, { start, end }, parts)]
    : [];
  if (!wanted(CodeActionKind.QuickFix)) return [...fields, ...unclear];
  const all = sentencesActions(at, { start, end }, parts);
  const fixes = [
    ...adding.filter((action) => action.kind === CodeActionKind.QuickFix),
    ...all.pasted,
    ...statementActions(at, { start, end }, params.context.diagnostics, parts),
    ...foundFileActions(at, { start, end }, params.context.diagnostics, parts),
    ...fixActions(at, here, params.context.diagnostics, parts),
    ...nothingSaid(at, start, params.context.diagnostics, parts),
    ...all.made,
  ];
  // Before a number is set aside, its field is offered.
  return isAsked ? [...fields, ...fixes, ...unclear] : [...fixes, ...fields, ...unclear];
}

function fixActions(
  at: DocumentAt,
  here: readonly Finding[],
  shown: readonly Diagnostic[],
  parts: ActionParts,
): readonly CodeAction[] {
  const all = at.home.engine.findings(at.home.file);
  const actions = here.flatMap((finding) => finding.fixes.map((fix) => fixAction(at, finding, fix, shown, parts)));
  for (const rule of new Set(here.map((finding) => finding.rule))) {
    const mendable = all.filter((finding) => finding.rule === rule && onlyFix(finding) !== undefined);
    if (mendable.length > 1) actions.push(fixAllAction(at, rule, mendable.length, parts));
  }
  return actions;
}

function fixAction(
  at: DocumentAt,
  finding: Finding,
  fix: Fix,
  shown: readonly Diagnostic[],
  parts: ActionParts,
): CodeAction {
  const diagnostics = shown.filter(
    ({ code, message }) => code === finding.rule && String(message).startsWith(finding.message.slice(0, 40)),
  );
  return {
    title: fix.title,
    kind: CodeActionKind.QuickFix,
    ...(diagnostics.length > 0 && { diagnostics }),
    ...(onlyFix(finding) === fix && { isPreferred: true }),
    edit: workspaceEdit(at, new Map([[at.home.file, fix.edits]]), parts),
  };
}

/** What a deferred action is about: worked out only when it is chosen. */
export interface FixAllData {
  readonly uri: string;
  readonly fixAll: string;
}

function fixAllAction(at: DocumentAt, rule: string, count: number, parts: ActionParts): CodeAction {
  const data: FixAllData = { uri: parts.places.uriOf(at, at.home.file), fixAll: rule };
  const action: CodeAction = {
    title: `Fix all ${count} of "${rule}" in this file`,
    kind: CodeActionKind.QuickFix,
    data,
  };
  return parts.abilities.resolvesActions ? action : withFixAll(action, at, rule, parts);
}

/** Works out the edit of a deferred action. */
export async function resolveAction(action: CodeAction, parts: ActionParts): Promise<CodeAction> {
  const data: unknown = action.data;
  if (typeof data !== 'object' || data === null || !('uri' in data) || !('fixAll' in data)) return action;
  const { uri, fixAll } = data;
  const at = typeof uri === 'string' && typeof fixAll === 'string' ? await parts.places.document(uri) : undefined;
  return at === undefined ? action : withFixAll(action, at, String(fixAll), parts);
}

function withFixAll(action: CodeAction, at: DocumentAt, rule: string, parts: ActionParts): CodeAction {
  const { library } = at.home.engine;
  const trial = new Engine({ rules: parts.rules, today: at.home.engine.view().today });
  for (const file of library.files()) {
    const record = library.record(file);
    if (record !== undefined) trial.put(record);
  }
  const after = fixAllOf(rule, at.record.text, (text) => {
    trial.set(at.home.file, text);
    return trial.findings(at.home.file);
  });
  const edit = after === undefined ? undefined : editBetween(at.record.text, after);
  return edit === undefined ? action : { ...action, edit: workspaceEdit(at, new Map([[at.home.file, [edit]]]), parts) };
}

/** Sentences pasted under `statements:` as they are. */
function statementActions(
  at: DocumentAt,
  asked: Span,
  shown: readonly Diagnostic[],
  parts: ActionParts,
): readonly CodeAction[] {
  const { text, kind } = at.record;
  const made = kind === undefined ? undefined : statementsFromRaw(text, kind, treeOf(at.record));
  if (made === undefined || asked.end < made.span.start || made.span.end < asked.start) return [];
  const diagnostics = shown.filter(({ code }) => code === 'key-without-colon');
  return [
    {
      title: made.sentences.length === 1 ? 'Make a statement of the sentence' : 'Make a statement of each sentence',
      kind: CodeActionKind.QuickFix,
      ...(diagnostics.length > 0 && { diagnostics }),
      edit: workspaceEdit(at, new Map([[at.home.file, made.edits]]), parts),
    },
  ];
}

/** Where sentences stand that nothing was made of yet, in a client that can ask about one after the other. */
function sentencesActions(
  at: DocumentAt,
  asked: Span,
  parts: ActionParts,
): { readonly pasted: readonly CodeAction[]; readonly made: readonly CodeAction[] } {
  const none = { pasted: [], made: [] };
  const { text, kind } = at.record;
  const { sentencesCommand } = parts.abilities;
  const tree = treeOf(at.record);
  if (sentencesCommand === undefined || kind === undefined) return none;
  const made = statementsFromRaw(text, kind, tree);
  const isPasted = made !== undefined && asked.end >= made.span.start && made.span.end >= asked.start;
  const isStatement = tree !== undefined && statementAt(tree, asked.start) !== undefined;
  const open = tree === undefined ? [] : sentencesOf(tree).filter(({ state }) => state === 'open');
  const given = [parts.places.uriOf(at, at.home.file)];
  const title = 'Turn all sentences into fields, one after the other';
  const command = { title, command: sentencesCommand, arguments: given };
  const action: CodeAction = { title, kind: CodeActionKind.QuickFix, command };
  if (isPasted) return { ...none, pasted: [action] };
  return isStatement && open.length > 1 ? { ...none, made: [action] } : none;
}

/** The field that an open sentence is about, with the sentence as what the page leaves unclear. */
function unclearActions(at: DocumentAt, offset: number, parts: ActionParts): readonly CodeAction[] {
  const tree = treeOf(at.record);
  const id = tree === undefined ? undefined : statementAt(tree, offset)?.id.text;
  const sentence = tree === undefined ? undefined : sentencesOf(tree).find((one) => one.id === id);
  if (tree === undefined || sentence?.state !== 'open') return [];
  const field = quoteToFields(at.record, tree, offset)?.first;
  const edits = leftUnclear(at.record, tree, sentence, field);
  if (edits === undefined) return [];
  const title = `The page leaves it unclear: write that down for “${field === undefined || at.record.kind === undefined ? '' : titlesOf(at.record.kind, field.path)}”`;
  const edit = workspaceEdit(at, new Map([[at.home.file, edits]]), parts);
  return [{ title, kind: CodeActionKind.RefactorRewrite, edit }];
}

/** Of statements that are selected, or stand around the cursor. */
function pageActions(at: DocumentAt, asked: Span, parts: ActionParts): readonly CodeAction[] {
  const tree = treeOf(at.record);
  const moves = tree === undefined ? [] : movedToPages(at.record.text, tree, asked);
  return moves.map(({ title, edits }) => ({
    title,
    kind: CodeActionKind.RefactorRewrite,
    edit: workspaceEdit(at, new Map([[at.home.file, edits]]), parts),
  }));
}

/** A line that waits, of which the document says nothing. */
function nothingSaid(
  at: DocumentAt,
  offset: number,
  shown: readonly Diagnostic[],
  parts: ActionParts,
): readonly CodeAction[] {
  const tree = treeOf(at.record);
  const edits = tree === undefined ? undefined : saidNothing(at.record, tree, offset, at.home.engine.view().today);
  if (edits === undefined) return [];
  const diagnostics = shown.filter(({ code }) => code === stillToWrite || code === 'empty-value');
  return [
    {
      title: 'The document says nothing about this',
      kind: CodeActionKind.QuickFix,
      ...(diagnostics.length > 0 && { diagnostics }),
      edit: workspaceEdit(at, new Map([[at.home.file, edits]]), parts),
    },
  ];
}

const mostListsOffered = 3;

/** The lists around the place, to add to by questions. One that has not begun is something to mend. */
function addActions(at: DocumentAt, offset: number, position: Position, parts: ActionParts): readonly CodeAction[] {
  const { addCommand } = parts.abilities;
  if (addCommand === undefined) return [];
  const uri = parts.places.uriOf(at, at.home.file);
  const tree = treeOf(at.record);
  const packagings = tree === undefined ? undefined : packagingsToName(tree, at.record.text, offset);
  const title = 'Name the packagings of this cycle';
  const ofCycle: readonly CodeAction[] =
    packagings === undefined
      ? []
      : [
          {
            title: `${title}…`,
            kind: CodeActionKind.QuickFix,
            command: { title, command: addCommand, arguments: [uri, packagings] },
          },
        ];
  const lists = namedListsAt(at, offset)
    .slice(0, mostListsOffered)
    .map(({ path, title, begins }) => ({
      title: `${title}…`,
      kind: begins ? CodeActionKind.QuickFix : CodeActionKind.RefactorRewrite,
      command: { title, command: addCommand, arguments: [uri, path, position] },
    }));
  return [...ofCycle, ...lists];
}

export const fieldsTitle = 'Turn the quote into fields';

/** A client with places to fill does it by its own command; any other gets plain text, with what the quote says outright. */
function fieldActions(at: DocumentAt, offset: number, kind: CodeActionKind, parts: ActionParts): readonly CodeAction[] {
  const tree = treeOf(at.record);
  if (tree === undefined || statementAt(tree, offset) === undefined) return [];
  const found = quoteToFields(at.record, tree, offset);
  if (found === undefined) return [];
  const { fieldsCommand, disabledActions } = parts.abilities;
  if (found.insertions.length === 0) {
    // Nothing is to be put in: never before what mends a finding, and only where the reason is told.
    if (kind !== CodeActionKind.RefactorRewrite) return [];
    if (fieldsCommand === undefined)
      return disabledActions ? [{ title: fieldsTitle, kind, disabled: { reason: `${found.left.join('; ')}.` } }] : [];
  }
  const action = { title: titleBeside(leftOutWords(leftOutAt(found, tree, offset))), kind };
  if (fieldsCommand !== undefined) {
    const given = [parts.places.uriOf(at, at.home.file), found.statement];
    return [{ ...action, command: { title: fieldsTitle, command: fieldsCommand, arguments: given } }];
  }
  const { lineEnd } = fileForm(at.record.text);
  const edits = found.insertions.map(({ span, pieces }) => ({ span, text: asPlain(pieces, lineEnd) }));
  return [{ ...action, edit: workspaceEdit(at, new Map([[at.home.file, edits]]), parts) }];
}

const longestTitle = 160;

/** What the fields do not hold is told before they are taken. */
function titleBeside(left: readonly string[]): string {
  if (left.length === 0) return fieldsTitle;
  const whole = printable(`${fieldsTitle} (left for you: ${left.join('; ')})`);
  return whole.length > longestTitle ? `${whole.slice(0, longestTitle - 2)}…)` : whole;
}
