import type { Detergent } from '../../model/entities/detergent.generated.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { traitOf } from '../support/applies.ts';
import { banOf } from '../support/cleaning-ways.ts';
import { listed } from '../support/lists.ts';

type Device = EntityOf['device'];

const message = {
  missing: (parts: string) =>
    `This item enters the eye, and nothing is encoded about ${parts}. Enter what the page says, or that it is silent.`,
};

export const rule = defineRule({
  id: 'intraocular-controls-missing',
  stage: 'rinsing',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Residues on eye instruments cause a toxic reaction that can cost the sight.',
  source: 'guideline',
  kinds: ['device'],
  check(device, { report }) {
    const trait = traitOf(device, 'intraocular');
    if (trait === undefined) return;
    const missing = controls.filter(({ isStated }) => !isStated(device)).map(({ words }) => words);
    if (missing.length > 0) report({ at: trait.at, message: message.missing(listed(missing)) });
  },
  examples: {
    bad: [
      `
kind: device
id: eye-tip
traits: [intraocular]
         ^^^^^^^^^^^ This item enters the eye, and nothing is encoded about cleaning apart from other instruments, tools for one use or sterilized ones and a fresh ultrasonic bath. Enter what the page says, or that it is silent.
manual: {detergent: {class: [enzymatic]}}
`,
      `
kind: device
id: eye-cannula
traits: [lumen, intraocular]
                ^^^^^^^^^^^ This item enters the eye, and nothing is encoded about how much each bore is flushed with. Enter what the page says, or that it is silent.
lumens: [{id: tip, bore: 0.6 mm}]
cleaning:
  all_of:
    - stage: manual
      steps: [{do: flush, lumen: tip, times: {exactly: 3 times}}]
      separate_cleaning: {use: required, src: s4}
      tools: single-use
      detergent: {without: [enzymatic]}
ultrasonic: {use: forbidden, src: s5}
statements:
  s4: {doc: BW-5, rev: "3", page: 4, quote: "Clean separately from general instruments."}
  s5: {doc: BW-5, rev: "3", page: 6, quote: "Do not clean ultrasonically."}
`,
    ],
    good: [
      `
kind: device
id: eye-tip
traits: [intraocular, lumen]
lumens: [{id: tip, bore: 0.9 mm}]
cleaning:
  all_of:
    - stage: manual
      steps: [{do: flush, lumen: tip, volume: {at_least: 120 mL}}]
      separate_cleaning: {use: required}
      tools: single-use or sterilized
not: [{what: enzymatic}, {what: ultrasonic}]
`,
      `
kind: device
id: eye-forceps
traits: [intraocular]
manual:
  detergent: {silent: true}
  separate_cleaning: {silent: true}
  tools: sterilized between uses
ultrasonic: {use: allowed, fresh_bath: true}
`,
    ],
  },
});

interface Control {
  readonly words: string;
  readonly isStated: (device: Device) => boolean;
}

const controls: readonly Control[] = [
  {
    words: 'cleaning apart from other instruments',
    isStated: (device) => nodesOf(device).some((node) => node.separate_cleaning !== undefined),
  },
  { words: 'enzymatic detergents', isStated: speaksOfEnzymes },
  { words: 'how much each bore is flushed with', isStated: givesVolume },
  {
    words: 'tools for one use or sterilized ones',
    isStated: (device) => nodesOf(device).some((node) => node.tools !== undefined),
  },
  { words: 'a fresh ultrasonic bath', isStated: speaksOfBath },
];

function nodesOf(device: Device): readonly CleaningNode[] {
  const nodes: CleaningNode[] = device.manual === undefined ? [] : [device.manual];
  if (device.cleaning !== undefined) addNodes(device.cleaning, nodes);
  return nodes;
}

function addNodes(node: CleaningNode, nodes: CleaningNode[]): void {
  nodes.push(node);
  for (const child of [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])]) addNodes(child, nodes);
}

function speaksOfEnzymes(device: Device): boolean {
  const detergents: (Detergent | undefined)[] = nodesOf(device).flatMap((node) => [
    node.detergent,
    ...(node.steps?.items ?? []).map((step) => step.detergent),
  ]);
  return detergents.some(namesClass) || device.not?.items.some((one) => one.what?.text === 'enzymatic') === true;
}

function namesClass(detergent: Detergent | undefined): boolean {
  if (detergent === undefined) return false;
  return (
    detergent.silent?.on === true ||
    [detergent.class, detergent.without, detergent.named, detergent.not_applicable].some((one) => one !== undefined)
  );
}

/** Without a bore there is nothing to flush. */
function givesVolume(device: Device): boolean {
  if ((device.lumens?.items.length ?? 0) === 0 && traitOf(device, 'lumen') === undefined) return true;
  return nodesOf(device).some(
    (node) => isGiven(node.flush?.volume) || (node.steps?.items ?? []).some((step) => isGiven(step.volume)),
  );
}

function isGiven(volume: Requirement | undefined): boolean {
  return volume !== undefined;
}

function speaksOfBath(device: Device): boolean {
  if (banOf(device, 'ultrasonic') !== undefined) return true;
  const baths: CleaningNode[] = nodesOf(device).filter((node) => node.stage?.text === 'ultrasonic');
  if (device.ultrasonic !== undefined) baths.push(device.ultrasonic);
  return baths.some((bath) => bath.fresh_bath !== undefined || bath.silent?.on === true || bath.use?.text === 'silent');
}
