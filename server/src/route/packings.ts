import type { EntityOf } from '../model/entities.generated.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { Subject } from './subject.ts';

/** One way to pack: in which packaging, and in which named case inside it. */
export interface Packing {
  readonly key: string;
  /** Undefined: the set's file names a packaging that no file describes, or none. */
  readonly packaging: EntityOf['packaging'] | undefined;
  readonly namedCase: string | undefined;
  readonly isTwice: boolean;
  /** The named case, where it is a packaging with an instruction of its own. */
  readonly casePackaging: EntityOf['packaging'] | undefined;
  /** As the set's file says; everything else is packing anew. */
  readonly asFiled: boolean;
  readonly weighed: Subject['weighed'];
  /** 0: as filed; 1: another packaging of the same kind; 2: another kind. */
  readonly distance: number;
}

/** The set's own way first, then the others the department has. Cases come into question where a member's page names them. */
export function packingsOf(subject: Subject, department: Department): readonly Packing[] {
  const own = subject.packaging === undefined ? undefined : department.packagingById.get(subject.packaging.text);
  const packings: Packing[] = [];
  const cases = [subject.namedCase?.text, ...casesNamedBy(subject, department)];
  for (const namedCase of new Set(cases)) {
    for (const packaging of department.packagings) {
      if (packaging.type?.text === 'case') continue;
      packings.push(packingOf(subject, department, packaging, namedCase, own));
    }
  }
  if (subject.packaging !== undefined && own === undefined) {
    packings.push(packingOf(subject, department, undefined, subject.namedCase?.text, undefined));
  }
  return packings.sort((a, b) => a.distance - b.distance);
}

/** In this packaging as if the set's file said so; `packaging`: undefined for unwrapped. */
export function filedPacking(subject: Subject, department: Department, packaging: string | undefined): Packing {
  const found = packaging === undefined ? undefined : department.packagingById.get(packaging);
  const packing = packingOf(subject, department, found, subject.namedCase?.text, found);
  return { ...packing, asFiled: true, distance: 0 };
}

function packingOf(
  subject: Subject,
  department: Department,
  packaging: EntityOf['packaging'] | undefined,
  namedCase: string | undefined,
  own: EntityOf['packaging'] | undefined,
): Packing {
  const asFiled = subject.packaging !== undefined && packaging === own && namedCase === subject.namedCase?.text;
  const isTwice = subject.contents.packedTwice !== undefined;
  const alike = own !== undefined && packaging?.type?.text === own.type?.text;
  return {
    key: `${packaging === undefined ? '' : idOf(packaging)} ${namedCase ?? ''}${isTwice ? ' twice' : ''}`,
    packaging,
    namedCase,
    isTwice,
    casePackaging: namedCase === undefined ? undefined : department.packagingById.get(namedCase),
    asFiled,
    weighed: subject.weighed,
    distance: asFiled ? 0 : alike ? 1 : 2,
  };
}

function casesNamedBy(subject: Subject, department: Department): readonly string[] {
  const named = new Set<string>();
  for (const { device } of subject.members) {
    for (const option of device?.sterilization?.any_of?.items ?? []) {
      for (const word of [...(option.packaging?.allowed?.items ?? []), ...(device?.packaging?.allowed?.items ?? [])]) {
        if (department.packagingById.get(word.text)?.type?.text === 'case') named.add(word.text);
      }
    }
  }
  return [...named].sort();
}
