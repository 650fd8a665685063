import type { Device } from '../model/entities/device.generated.ts';
import { judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import type { WashQuestion } from './wash-question.ts';

/** Connections one device needs: its lumens with a port, else its lumens, else one. */
export function portsNeeded(device: Device): number {
  const lumens = device.lumens?.items ?? [];
  const withPort = lumens.filter((lumen) => lumen.port !== undefined || lumen.thread !== undefined);
  return Math.max(1, withPort.length > 0 ? withPort.length : lumens.length);
}

/** Connections of the kind the page asks for, against the rack of the cycle or of the machine. Several loads are possible. */
export function judgeConnectors({ device, demand, machine, cycle, quantity }: WashQuestion): readonly Judgement[] {
  const rack = cycle.rack ?? machine.rack;
  const judgements: Judgement[] = [];
  const kinds = new Set<string>();
  for (const voice of demand.voices) {
    const { connector } = voice;
    if (connector === undefined || kinds.has(connector.text)) continue;
    kinds.add(connector.text);
    const one = portsNeeded(device);
    const all = one * (quantity ?? 1);
    const there = rack?.ports?.items.filter((port) => port.text === connector.text).length ?? 0;
    const which =
      rack?.ports === undefined
        ? 'unknown'
        : there === 0
          ? 'none'
          : there < one
            ? 'too-few'
            : there < all
              ? 'several-loads'
              : 'enough';
    const facts = {
      by: device,
      required: `${all} ${connector.text}`,
      given: `${there} ${connector.text}`,
      at: connector.at,
      factAt: rack?.at ?? cycle.id?.at,
      src: voice.src,
    };
    judgements.push(
      judgeCase(
        'connector',
        which,
        there < all && rack?.ports !== undefined ? { ...facts, gap: `${all - there} short` } : facts,
      ),
    );
  }
  return judgements;
}
