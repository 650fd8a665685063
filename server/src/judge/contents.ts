import type { Device } from '../model/entities/device.generated.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { Packaging, Validated } from '../model/entities/packaging.generated.ts';
import type { PackagingStatement } from '../model/entities/packaging-statement.generated.ts';
import type { Sterilizer, SterilizerCycle } from '../model/entities/sterilizer.generated.ts';
import type { Citation, List, Place, Quantity, Requirement, Text } from '../model/node.ts';
import { type Given, givenOf } from './given.ts';
import { type CaseOf, type Demander, type Fact, factOf, judgeCase, judgeDemand } from './judgement.ts';
import { judgeLumens, type LoadedLumen } from './lumens.ts';
import type { Judgement } from './outcome.ts';
import { bestEntry } from './packaging.ts';
import { thresholdOf } from './policies.ts';
import type { Setting } from './setting.ts';
import { atMost } from './synthetic.ts';
import { cellulosicWords } from './vocabulary.ts';

/** What lies in the package, as far as packaging, machine and instructions set limits to it. */
export interface Contents {
  /** Gross mass as weighed. */
  readonly mass?: Quantity | undefined;
  readonly levels?: Quantity | undefined;
  readonly lumens: readonly LoadedLumen[];
  readonly accessories: readonly Text[];
  /** Other things inside: paper, labels. */
  readonly others: readonly Text[];
  readonly filter?: Text | undefined;
  readonly valve?: Text | undefined;
  readonly bottom?: Text | undefined;
  /** Packagings inside the package. */
  readonly inner: readonly Packaging[];
  /** Packed twice in the same kind of packaging. */
  readonly packedTwice?: Place | undefined;
  /** Where the set stands, for what is missing. */
  readonly at: Place;
}

export interface ContentsQuestion {
  readonly packaging: Packaging;
  readonly contents: Contents;
  readonly machine: Sterilizer;
  readonly cycle: SterilizerCycle;
  readonly setting: Setting;
}

/** The limits of the packaging, of the cycle's load and of the site on what is packed. */
export function judgeContents(question: ContentsQuestion): readonly Judgement[] {
  const { entry } = bestEntry(question);
  return [
    ...judgeMasses(question, entry),
    ...judgeLevels(question),
    ...judgeContainerLumens(question, entry),
    ...judgeAccessories(question),
    ...judgeFittings(question, entry),
    ...judgeCellulose(question),
    ...judgeLayers(question),
  ];
}

function judgeMasses(
  { packaging, contents, machine, cycle, setting }: ContentsQuestion,
  entry: Validated | undefined,
): readonly Judgement[] {
  const { mass } = contents;
  const fact = factOf(mass, givenOf(mass));
  const judgements: Judgement[] = [];
  const judge = (
    by: Demander,
    what: string,
    requirement: Requirement | undefined,
    src?: Citation,
    ours: Fact = fact,
  ): void => {
    if (requirement === undefined) return;
    judgements.push(
      ours.given === undefined
        ? unweighed(by, what, requirement, contents.at)
        : judgeDemand({ by, parameter: 'mass', what, requirement, src }, ours, setting),
    );
  };
  if (packaging.mass_max !== undefined && packaging.mass_of?.text === 'net' && fact.given !== undefined)
    judgements.push(judgeNet(packaging, packaging.mass_max, fact, setting));
  else
    judge(
      packaging,
      'Mass in this packaging',
      packaging.mass_max && atMost(packaging.mass_max, packaging.mass_src),
      packaging.mass_src,
    );
  judge(packaging, 'Mass in this packaging and cycle', entry?.mass, entry?.src);
  if (setting.site !== undefined) judge(setting.site, 'Mass of a set', thresholdOf(setting, 'set_mass', 'mass'));
  judge(machine, 'Mass of one item in the cycle', cycle.item_mass_max && atMost(cycle.item_mass_max));
  const load = cycle.load_max ?? machine.chamber?.load_max;
  if (load !== undefined && fact.given !== undefined)
    judgements.push(judgeDemand({ by: machine, parameter: 'load', requirement: atMost(load) }, fact, setting));
  return judgements;
}

/** The limit counts the contents alone: what was weighed, less the packaging. */
function judgeNet(packaging: Packaging, limit: Quantity, fact: Fact, setting: Setting): Judgement {
  const own = givenOf(packaging.mass);
  const gross = fact.given as Given;
  const requirement = atMost(limit, packaging.mass_src);
  const what = 'Mass in this packaging, without it';
  if (own === undefined && gross.high > limit.value) {
    return judgeCase('mass', 'gross-or-net', {
      by: packaging,
      what,
      required: `at most ${limit.text}`,
      given: gross.words,
      at: limit.at,
      factAt: fact.at,
      src: packaging.mass_src,
    });
  }
  const net =
    own === undefined
      ? gross
      : { low: gross.low - own.low, high: gross.high - own.high, words: `${gross.words} less ${own.words}` };
  return judgeDemand(
    { by: packaging, parameter: 'mass', what, requirement, src: packaging.mass_src },
    { ...fact, given: net },
    setting,
  );
}

function unweighed(by: Demander, what: string, requirement: Requirement, at: Place): Judgement {
  return judgeCase('mass', 'unknown', {
    by,
    what,
    required: `at most ${requirement.at_most?.text ?? 'a limit'}`,
    at: requirement.at,
    factAt: at,
    src: requirement.src,
  });
}

function judgeLevels({ packaging, contents, setting }: ContentsQuestion): readonly Judgement[] {
  const { levels_max } = packaging;
  if (levels_max === undefined || contents.levels === undefined) return [];
  return [
    judgeDemand(
      { by: packaging, parameter: 'levels', requirement: atMost(levels_max) },
      factOf(contents.levels, givenOf(contents.levels)),
      setting,
    ),
  ];
}

function judgeContainerLumens(
  { packaging, contents, setting }: ContentsQuestion,
  entry: Validated | undefined,
): readonly Judgement[] {
  const limits = [packaging.lumens, entry?.lumens].filter((limit) => limit !== undefined);
  return limits.flatMap((limit) => judgeLumens(packaging, limit, contents.lumens, setting));
}

function judgeAccessories({ packaging, contents }: ContentsQuestion): readonly Judgement[] {
  return contents.accessories.map((accessory) => {
    const which = has(packaging.not_accessories, accessory.text)
      ? 'forbidden'
      : has(packaging.accessories, accessory.text)
        ? 'listed'
        : 'not-listed';
    const at =
      (which === 'forbidden' ? packaging.not_accessories?.at : packaging.accessories?.at) ??
      packaging.id?.at ??
      packaging.at;
    const required = packaging.accessories?.items.map((one) => one.text).join(', ') ?? 'nothing named as accepted';
    return judgeCase('accessory', which, { by: packaging, required, given: accessory.text, at, factAt: accessory.at });
  });
}

function has(list: List<Text> | undefined, word: string): boolean {
  return list?.items.some((one) => one.text === word) === true;
}

/** Filter, valve and bottom: what the entry for this kind of cycle names, else what the packaging takes at all. */
function judgeFittings({ packaging, contents }: ContentsQuestion, entry: Validated | undefined): readonly Judgement[] {
  const wanted = [
    {
      what: 'Filter',
      words: (entry?.filter ?? packaging.filter)?.items,
      ours: contents.filter,
      at: (entry?.filter ?? packaging.filter)?.at,
    },
    { what: 'Valve', words: entry?.valve && [entry.valve], ours: contents.valve, at: entry?.valve?.at },
    { what: 'Bottom', words: entry?.bottom && [entry.bottom], ours: contents.bottom, at: entry?.bottom?.at },
  ];
  const judgements: Judgement[] = [];
  for (const { what, words, ours, at } of wanted) {
    if (words === undefined || at === undefined || words.length === 0) continue;
    const which: CaseOf<'filter'> =
      ours === undefined ? 'unknown' : words.some((one) => one.text === ours.text) ? 'same' : 'different';
    const required = words.map((one) => one.text).join(' or ');
    judgements.push(
      judgeCase('filter', which, {
        by: packaging,
        what,
        required,
        given: ours?.text,
        at,
        factAt: ours?.at ?? contents.at,
        src: entry?.src,
      }),
    );
  }
  return judgements;
}

/** Everything of paper or cotton in a peroxide cycle: packaging, filter, and what lies inside. */
function judgeCellulose({ packaging, contents, machine, cycle }: ContentsQuestion): readonly Judgement[] {
  if ((cycle.modality ?? machine.modality)?.text !== 'vh2o2') return [];
  const found: { word: string; at: Place }[] = [];
  const material = packaging.materials?.items.find((one) => isCellulosic(one.text));
  if (packaging.cellulosic?.on === true)
    found.push({ word: packaging.id?.text ?? 'the packaging', at: packaging.cellulosic.at });
  else if (material !== undefined) found.push({ word: material.text, at: material.at });
  const loose = [contents.filter, ...contents.others, ...contents.accessories].filter((one) => one !== undefined);
  for (const one of loose) if (isCellulosic(one.text)) found.push({ word: one.text, at: one.at });
  for (const inner of contents.inner)
    if (inner.cellulosic?.on === true)
      found.push({ word: inner.id?.text ?? 'inner packaging', at: inner.cellulosic.at });
  // Where the machine itself says peroxide, all its cycles make one demand, not one each.
  const said = machine.modality?.text === 'vh2o2' ? machine.modality : cycle.modality;
  const at = said?.at ?? cycle.at;
  return found.map(({ word, at: factAt }) =>
    judgeCase('cellulose', 'present', { by: machine, required: 'none', given: word, at, factAt }),
  );
}

export function isCellulosic(word: string): boolean {
  return cellulosicWords.some((part) => word.includes(part));
}

function judgeLayers({ packaging, contents }: ContentsQuestion): readonly Judgement[] {
  const judgements: Judgement[] = [];
  if (
    contents.packedTwice !== undefined &&
    packaging.double?.use?.text !== 'allowed' &&
    packaging.double?.use?.text !== 'required'
  ) {
    const which = packaging.double?.use?.text === 'forbidden' ? 'double-forbidden' : 'double-not-stated';
    const at = packaging.double?.at ?? packaging.id?.at ?? packaging.at;
    judgements.push(
      judgeCase('packaging', which, {
        by: packaging,
        required: 'double packing as stated',
        given: 'double',
        at,
        factAt: contents.packedTwice,
        src: packaging.double?.src,
      }),
    );
  }
  for (const inner of contents.inner) {
    if (inner.inside_set?.use?.text === 'allowed') continue;
    const which = inner.inside_set?.use?.text === 'forbidden' ? 'inside-forbidden' : 'inside-not-stated';
    const at = inner.inside_set?.at ?? inner.id?.at ?? inner.at;
    judgements.push(
      judgeCase('packaging', which, {
        by: inner,
        required: 'a pack that may lie inside a set',
        given: packaging.id?.text,
        at,
        factAt: contents.at,
        src: inner.inside_set?.src,
      }),
    );
  }
  return judgements;
}

/** What one device, or the option chosen for it, demands of the package around it: mass, load, mats and liners. */
export function judgeDeviceContents(
  device: Device,
  option: SterilizationOption | undefined,
  contents: Contents,
  setting: Setting,
): readonly Judgement[] {
  const statements = [option?.packaging, device.packaging].filter((one) => one !== undefined);
  const judgements = statements.flatMap((statement) => judgeStatement(device, statement, contents, setting));
  const loads = [option?.load?.mass, device.limits?.mass].filter((one) => one !== undefined);
  for (const requirement of loads)
    judgements.push(judgeMass(device, requirement, option?.load?.src, contents, setting));
  return judgements;
}

function judgeStatement(
  device: Device,
  statement: PackagingStatement,
  contents: Contents,
  setting: Setting,
): readonly Judgement[] {
  const judgements: Judgement[] = [];
  if (statement.max_mass !== undefined)
    judgements.push(judgeMass(device, statement.max_mass, statement.src, contents, setting));
  for (const accessory of contents.accessories) {
    const ban = bannedBy(statement, accessory.text);
    const listed = has(statement.accessories, accessory.text);
    if (ban === undefined && statement.accessories === undefined) continue;
    const which = ban !== undefined ? 'forbidden' : listed ? 'listed' : 'not-listed';
    const at = ban ?? statement.accessories?.at ?? statement.at;
    const required = statement.accessories?.items.map((one) => one.text).join(', ') ?? `no ${accessory.text}`;
    judgements.push(
      judgeCase('accessory', which, {
        by: device,
        required,
        given: accessory.text,
        at,
        factAt: accessory.at,
        src: statement.src,
      }),
    );
  }
  return judgements;
}

function bannedBy(statement: PackagingStatement, word: string): Place | undefined {
  if (statement.no_silicone_mat?.on === true && word.includes('silicone-mat')) return statement.no_silicone_mat.at;
  const textile = ['liner', 'towel', 'textile'].some((part) => word.includes(part));
  return statement.no_textile_liner?.on === true && textile ? statement.no_textile_liner.at : undefined;
}

function judgeMass(
  by: Device,
  requirement: Requirement,
  src: Citation | undefined,
  contents: Contents,
  setting: Setting,
): Judgement {
  const what = 'Mass with this device in it';
  const given = givenOf(contents.mass);
  if (given === undefined && requirement.at_most !== undefined) return unweighed(by, what, requirement, contents.at);
  return judgeDemand({ by, parameter: 'mass', what, requirement, src }, factOf(contents.mass, given), setting);
}
