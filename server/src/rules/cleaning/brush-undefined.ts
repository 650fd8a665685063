import type { Brush } from '../../model/entities/brush.generated.ts';
import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { CleaningNode, ManualCleaning } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place, Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';

type Device = EntityOf['device'];

const message = {
  undefined: (what: string) =>
    `A brush goes through this bore, and the page as encoded gives no ${what} for it. Ask the manufacturer which brush.`,
  size: (bore: string, length: string) => `the bore is ${bore}${length}`,
  long: (length: string) => `, over ${length}`,
};

export const rule = defineRule({
  id: 'brush-undefined',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'A brush that is too thin or too short passes the soil without touching it.',
  source: 'practice',
  kinds: ['device'],
  check(device, { report }) {
    if ((device.lumens?.items.length ?? 0) === 0 || isOutOfScope(device)) return;
    const reported = new Set<string>();
    for (const demand of brushesOf(device)) {
      const missing = missingIn(demand.brush);
      const key = `${demand.lumen?.text ?? ''} ${missing.join()}`;
      if (missing.length === 0 || reported.has(key)) continue;
      reported.add(key);
      const does = sizeOf(device, demand.lumen);
      report({
        at: demand.at,
        message: message.undefined(missing.join(' and no ')),
        says: sayingsOf(device, demand.src),
        ...(does !== undefined && { does }),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: suction-tube
lumens: [{id: tube, bore: 3.2 mm, length: 180 mm}]
manual:
  brush: {required: true, lumen: tube, src: s5}
  ^^^^^ A brush goes through this bore, and the page as encoded gives no diameter and no length for it. Ask the manufacturer which brush.
statements:
  s5: {doc: QM-31, rev: E, page: 4, quote: "Brush the bore."}
`,
      `
kind: device
id: cannula
lumens: [{id: shaft, bore: 5 mm, length: 330 mm}]
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: brush, lumen: shaft, src: s1}
               ^^^^^ A brush goes through this bore, and the page as encoded gives no diameter and no length for it. Ask the manufacturer which brush.
        - {do: flush, lumen: shaft, volume: {at_least: 50 mL}, src: s2}
      src: s1
statements:
  s1: {doc: CA-1, rev: A, page: 2, quote: "Brush the shaft with a suitable brush."}
  s2: {doc: CA-1, rev: A, page: 2, quote: "Flush with at least 50 mL."}
`,
      `
kind: device
id: needle-holder-sleeve
lumens: [{id: sleeve, bore: 4 mm}]
manual:
  brush: {required: true, diameter: {at_least: 4 mm}, src: s1}
  ^^^^^ A brush goes through this bore, and the page as encoded gives no length for it. Ask the manufacturer which brush.
statements:
  s1: {doc: NH-3, rev: A, page: 2, quote: "Use a brush of at least 4 mm."}
`,
    ],
    good: [
      `
kind: device
id: suction-tube
lumens: [{id: tube, bore: 3.0 mm, length: 180 mm}]
manual:
  brush: {required: true, lumen: tube, diameter: {between: [3.0 mm, 3.5 mm]}, length: {at_least: 200 mm}, src: s5}
statements:
  s5: {doc: QM-31, rev: E, page: 4, quote: "Brush the bore with a brush of 3.0 mm to 3.5 mm and at least 200 mm reach."}
`,
      `
kind: device
id: handpiece
manual:
  steps:
    - {do: brush, tool: soft brush}
`,
      `
kind: device
id: cannula
lumens: [{id: shaft, bore: 5 mm}]
manual:
  brush: {ambiguous: "a suitable brush", ask: q-cannula-brush}
`,
    ],
  },
});

interface BrushDemand {
  readonly at: Place;
  readonly brush: Brush | undefined;
  readonly lumen: Text | undefined;
  readonly src: Citation | undefined;
}

function brushesOf(device: Device): readonly BrushDemand[] {
  const found: BrushDemand[] = [];
  if (device.manual !== undefined) addBlock(device.manual, found);
  if (device.cleaning !== undefined) addNode(device.cleaning, found);
  return found;
}

function addNode(node: CleaningNode, found: BrushDemand[]): void {
  addBlock(node, found);
  for (const child of [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])]) addNode(child, found);
}

function addBlock(block: Pick<ManualCleaning, 'brush' | 'steps' | 'src'>, found: BrushDemand[]): void {
  const { brush, src } = block;
  if (brush !== undefined && brush.required?.on !== false)
    found.push({ at: brush.at, brush, lumen: brush.lumen, src: brush.src ?? src });
  for (const step of block.steps?.items ?? []) {
    if (step.do?.text === 'brush' && isForBore(step))
      found.push({ at: step.do.at, brush: step.brush, lumen: step.lumen ?? step.port, src: step.src ?? src });
  }
}

/** Brushing the outside needs no size: only a step that names a bore or a brush of its own counts. */
function isForBore(step: CleaningStep): boolean {
  return (step.lumen ?? step.port ?? step.brush) !== undefined;
}

function missingIn(brush: Brush | undefined): readonly string[] {
  if (brush === undefined) return ['diameter', 'length'];
  const settled =
    [brush.ask, brush.ambiguous, brush.not_applicable, brush.defers_to].some((one) => one !== undefined) ||
    brush.silent?.on === true;
  if (settled) return [];
  return (['diameter', 'length'] as const).filter((part) => brush[part] === undefined);
}

function sizeOf(device: Device, name: Text | undefined): string | undefined {
  const lumens = device.lumens?.items ?? [];
  const lumen =
    lumens.find((one) => one.id?.text === name?.text || one.port?.text === name?.text) ??
    (lumens.length === 1 ? lumens[0] : undefined);
  if (lumen?.bore === undefined) return undefined;
  return message.size(
    formatQuantity(lumen.bore),
    lumen.length === undefined ? '' : message.long(formatQuantity(lumen.length)),
  );
}
