import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { CleaningNode, Flush } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, List, Place, Requirement, Text } from '../../model/node.ts';

/** One flush that an instruction asks for. */
export interface FlushDemand {
  /** The lumen or port it is for; undefined when it is for every one. */
  readonly port: Text | undefined;
  readonly volume: Requirement | undefined;
  readonly times: Requirement | undefined;
  readonly time: Requirement | undefined;
  readonly pressure: Requirement | undefined;
  readonly src: Citation | undefined;
  readonly at: Place;
  /** True inside "one of these": following another alternative is as good. */
  readonly isAlternative: boolean;
}

interface Block {
  readonly flush?: Flush;
  readonly steps?: List<CleaningStep>;
  readonly src?: Citation;
}

/** All flushes of manual cleaning and of the cleaning tree, in the order of the file. Those at the point of use are apart. */
export function flushesOf(device: EntityOf['device']): readonly FlushDemand[] {
  const found: FlushDemand[] = [];
  if (device.manual !== undefined) addBlock(device.manual, { isAlternative: false }, found);
  if (device.cleaning !== undefined) addNode(device.cleaning, { isAlternative: false }, found);
  return found;
}

type Among = Pick<FlushDemand, 'isAlternative'>;

function addNode(node: CleaningNode, among: Among, found: FlushDemand[]): void {
  addBlock(node, among, found);
  for (const child of node.all_of?.items ?? []) addNode(child, among, found);
  const choices = node.any_of?.items ?? [];
  for (const child of choices) addNode(child, { isAlternative: among.isAlternative || choices.length > 1 }, found);
}

function addBlock(block: Block, among: Among, found: FlushDemand[]): void {
  if (block.flush !== undefined && block.flush.required?.on !== false)
    found.push(demandOfFlush(block.flush, block, among));
  for (const step of block.steps?.items ?? []) {
    if (step.do?.text === 'flush') found.push(demandOfFlush(step, block, among));
  }
}

function demandOfFlush(flush: Flush | CleaningStep, block: Block, { isAlternative }: Among): FlushDemand {
  return {
    port: flush.lumen ?? flush.port,
    volume: flush.volume,
    times: flush.times,
    time: flush.time,
    pressure: flush.pressure,
    src: flush.src ?? block.src,
    at: flush.at,
    isAlternative,
  };
}
