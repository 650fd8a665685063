import type { Rec, Text } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import type { UseClaim } from '../../quantity/prose/claims.ts';
import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Around, FieldClaim, Gathered } from './field-claim.ts';
import { placed } from './field-claim.ts';
import { cleaningStages, fieldWords, forbiddingFlags, methodFields, optionStages, stepFields } from './field-stages.ts';

/** Fields by which a writer encodes the hole in an action ("except the connector"). */
const conditions = ['when', 'extent', 'keep_dry', 'needed', 'couples', 'where', 'ambiguous'] as const;

const forbiddingKeys: readonly string[] = [...forbiddingFlags.keys()];

/** What a record says about whether something is done, when its statements could say otherwise. */
export function useClaimOf(key: string, record: Rec, around: Around, found: Gathered): FieldClaim | undefined {
  if (around.statements.length === 0) return undefined;
  noteForbidding(record, around, found);
  const use = textOf(record, 'use');
  if (use?.text === 'silent' || use?.text === 'forbidden') return undefined;
  return use === undefined ? impliedUse(key, record, around) : explicitUse(key, record, use, around);
}

function noteForbidding(record: Rec, around: Around, found: Gathered): void {
  const isForbidden = textOf(record, 'use')?.text === 'forbidden' || forbiddingKeys.some((key) => isOn(record, key));
  if (isForbidden) for (const id of around.statements) found.forbidden.add(id);
}

function explicitUse(key: string, record: Rec, use: Text, around: Around): FieldClaim | undefined {
  const method = methodFields.get(key) ?? cleaningStages.get(textOf(record, 'stage')?.text ?? '');
  const word = use.text as UseClaim['use'];
  if (method !== undefined) return claim(word, method, record, use, around);
  const step = stepFields.get(key);
  if (step !== undefined) return { ...claim(word, step, record, use, around), concern: 'named' };
  const words = fieldWords.get(key);
  return words === undefined ? undefined : { ...claim(word, undefined, record, use, around), concern: words };
}

/** `required: true`, a stage of cleaning that is listed, an option that is offered, a mark that is taken back. */
function impliedUse(key: string, record: Rec, around: Around): FieldClaim | undefined {
  const required = fieldOf(record, 'required');
  const subject = stepFields.get(key) ?? methodFields.get(key);
  if (required?.node === 'flag' && subject !== undefined) {
    return { ...claim(required.on ? 'required' : 'allowed', subject, record, required, around), concern: 'named' };
  }
  for (const [field, stage] of forbiddingFlags) {
    const flag = fieldOf(record, field);
    if (flag?.node === 'flag' && !flag.on)
      return { ...claim('allowed', stage, record, flag, around), concern: 'named' };
  }
  return stageListed(record, around) ?? optionOffered(record, around);
}

function stageListed(record: Rec, around: Around): FieldClaim | undefined {
  const stage = textOf(record, 'stage');
  const subject = cleaningStages.get(stage?.text ?? '');
  if (stage === undefined || subject === undefined) return undefined;
  return { ...claim('allowed', subject, record, stage, around), concern: 'named' };
}

function optionOffered(record: Rec, around: Around): FieldClaim | undefined {
  const context = textOf(record, 'context');
  const word = context?.text === 'iuss' ? context : textOf(record, 'modality');
  const subject = optionStages.get(word?.text ?? '');
  if (word === undefined || subject === undefined) return undefined;
  return { ...claim('allowed', subject, record, word, around), concern: 'named' };
}

function claim(
  use: UseClaim['use'],
  subject: StageWord | undefined,
  record: Rec,
  at: { readonly at: Text['at'] },
  around: Around,
): FieldClaim {
  const hasCondition = conditions.some((key) => fieldOf(record, key) !== undefined);
  const said: UseClaim = { claim: 'use', use, hasCondition, ...(subject !== undefined && { subject }) };
  return { ...placed(said, at.at, record, around), repeats: 'everything' };
}

function textOf(record: Rec, key: string): Text | undefined {
  const node = fieldOf(record, key);
  return node?.node === 'text' ? node : undefined;
}

function isOn(record: Rec, key: string): boolean {
  const node = fieldOf(record, key);
  return node?.node === 'flag' && node.on;
}
