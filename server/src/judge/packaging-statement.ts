import type { Device } from '../model/entities/device.generated.ts';
import type { Packaging } from '../model/entities/packaging.generated.ts';
import type { PackagingStatement } from '../model/entities/packaging-statement.generated.ts';
import { plainName } from '../model/plain-words.ts';
import { type CaseOf, judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { holds, type Setting } from './setting.ts';
import { packagingClasses } from './vocabulary.ts';

/** How the device would be packed: in what, and in which named case or basket. No packaging means unwrapped. */
export interface Packed {
  readonly packaging: Packaging | undefined;
  /** Id of the case that holds it, as the set names it. */
  readonly namedCase?: string | undefined;
  /** One packaging in another of its kind, as two pouches. Not so where nothing is said. */
  readonly isTwice?: boolean;
}

/** Does what the page says about packaging, in its own relation, agree with how the device would be packed? */
export function judgePackagingStatement(
  device: Device,
  statement: PackagingStatement,
  packed: Packed,
  setting: Setting,
): Judgement {
  const { packaging } = packed;
  const which = holds(setting, statement.when) ? caseOf(device, statement, packed) : 'named';
  return judgeCase('packaging', which, {
    by: device,
    required: wordsOf(statement),
    given: [packaging?.id?.text ?? 'unwrapped', packed.namedCase].filter((word) => word !== undefined).join(' in '),
    at: statement.at,
    factAt: packaging?.id?.at,
    src: statement.src,
  });
}

function caseOf(device: Device, statement: PackagingStatement, packed: Packed): CaseOf<'packaging'> {
  if (statement.ambiguous !== undefined) return 'unclear';
  const allowed = statement.allowed?.items ?? [];
  if (allowed.length === 0) return saysNothing(statement);
  if (allowed.some((word) => isNamed(word.text, packed))) return 'named';
  switch (statement.relation?.text) {
    case 'restricted_to':
      return 'restricted';
    case 'requires_class':
      return 'outside-class';
    case 'validated_with':
      return packed.packaging !== undefined && coversDevice(packed.packaging, device)
        ? 'covered-by-packaging'
        : 'tested-otherwise';
    default:
      return 'relation-unclear';
  }
}

/** A page that asks for cleared packaging without naming a kind asks nothing more than the packaging's own instruction does. */
function saysNothing(statement: PackagingStatement): CaseOf<'packaging'> {
  if (statement.silent?.on === true) return 'silent';
  return statement.relation?.text === 'requires_class' || statement.not_applicable !== undefined || saysOther(statement)
    ? 'named'
    : 'silent';
}

function saysOther({
  configuration,
  max_mass,
  no_stack,
  no_textile_liner,
  no_silicone_mat,
  accessories,
}: PackagingStatement): boolean {
  return [configuration, max_mass, no_stack, no_textile_liner, no_silicone_mat, accessories].some(
    (field) => field !== undefined,
  );
}

/** Is this word of the page what we use: a kind of packaging, this very packaging, or the case that holds the device? */
function isNamed(word: string, { packaging, namedCase, isTwice = false }: Packed): boolean {
  if (namedCase !== undefined && word === namedCase) return true;
  if (packaging === undefined) return packagingClasses[word]?.includes('open-pan') === true;
  if (packaging.id?.text === word) return true;
  const { type } = packaging;
  if (word === 'non-cellulose-pouch') return type?.text === 'pouch' && packaging.cellulosic?.on === false;
  if (type === undefined || packagingClasses[word]?.includes(type.text) !== true) return false;
  if (word === 'double-pouch') return isTwice;
  return word !== 'case-wrapped' || namedCase !== undefined;
}

/** Does the maker of the packaging cover devices of this kind: this one by name, or all of its traits? */
function coversDevice(packaging: Packaging, device: Device): boolean {
  const covered = new Set(packaging.covers_classes?.items.map((one) => one.text) ?? []);
  if (device.id !== undefined && covered.has(device.id.text)) return true;
  const traits = device.traits?.items ?? [];
  return traits.length > 0 && traits.every((trait) => covered.has(trait.text));
}

function wordsOf(statement: PackagingStatement): string {
  const allowed = statement.allowed?.items.map((one) => plainName(one.text)).join(' or ') ?? '';
  if (allowed === '')
    return statement.relation?.text === 'requires_class' ? 'packaging cleared for the cycle' : 'nothing named';
  switch (statement.relation?.text) {
    case 'restricted_to':
      return `only ${allowed}`;
    case 'requires_class':
      return `${allowed}, cleared for the cycle`;
    case 'validated_with':
      return `tested with ${allowed}`;
    default:
      return allowed;
  }
}
