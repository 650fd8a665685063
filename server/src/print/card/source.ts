import type { StageDemand } from '../../judge/demands.ts';
import { cleaningAlternatives } from '../../judge/demands.ts';
import type { SterilizerCycle } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { CleaningFit, MemberRoute, RouteOption, SetRoute, StageFit, SterilizationFit } from '../../route/model.ts';
import { asking, rankOf } from '../../route/ranks.ts';
import type { Derivation } from '../../route/route.ts';
import { deriveSet } from '../../route/route.ts';
import type { Printing } from '../amounts.ts';

/** All that one card is made from. */
export interface CardSource {
  readonly set: EntityOf['set'];
  readonly derivation: Derivation;
  readonly members: readonly CardMember[];
  /** The one way that is printed with full weight; undefined when there is no route. */
  readonly way?: CardWay;
  /** The next one on another machine. */
  readonly second?: RouteOption;
  readonly printing: Printing;
}

export interface CardMember {
  readonly member: MemberRoute;
  readonly device?: EntityOf['device'];
  readonly cleaning?: CleaningFit;
  /** What the way of cleaning demands, stage by stage; the same order as in `cleaning`. */
  readonly demands: readonly StageDemand[];
}

export interface CardWay {
  readonly fit: SterilizationFit;
  readonly packaging: EntityOf['packaging'] | undefined;
  readonly machine: EntityOf['sterilizer'];
  readonly cycle: SterilizerCycle;
}

export function cardSource(set: EntityOf['set'], printing: Printing): CardSource {
  const derivation = deriveSet(printing.view, set);
  const way = wayOf(set, derivation, printing);
  const second = way === undefined ? undefined : secondOf(derivation, way.fit);
  return {
    set,
    derivation,
    members: derivation.route.members.map((member) => memberOf(member, set, derivation, printing)),
    ...(way && { way }),
    ...(second && { second }),
    printing,
  };
}

/** What the department decided, where that is consistent; else the best derived one; undefined where there is no route. */
export function decidedFit(set: EntityOf['set'], route: SetRoute): SterilizationFit | undefined {
  if (route.status === 'none') return undefined;
  const own = route.asPacked;
  const isOwn = own !== undefined && own.cycle === set.cycle?.text && rankOf(own.outcome) < asking;
  return isOwn ? own : route.chosen;
}

function wayOf(set: EntityOf['set'], { route }: Derivation, { view }: Printing): CardWay | undefined {
  const fit = decidedFit(set, route);
  const found = fit === undefined ? undefined : view.sterilizerCycle(fit.cycle);
  return fit === undefined || found === undefined
    ? undefined
    : { fit, packaging: view.get('packaging', fit.packaging), ...found };
}

function secondOf({ route }: Derivation, fit: SterilizationFit): RouteOption | undefined {
  const others = [route.chosen, ...route.alternatives].filter(
    (one) => one !== undefined && one.machine !== fit.machine && rankOf(one.outcome) < asking,
  );
  return others.find((one) => one?.packaging === fit.packaging && one.namedCase === fit.namedCase) ?? others[0];
}

function memberOf(member: MemberRoute, set: EntityOf['set'], derivation: Derivation, { view }: Printing): CardMember {
  const device = view.get('device', member.device);
  const cleaning = cleaningOf(member, set);
  if (device === undefined || cleaning === undefined) return { member, ...(device && { device }), demands: [] };
  const { alternatives } = cleaningAlternatives(device, derivation.department.setting);
  const demands = alternatives.find(({ id }) => id === cleaning.alternative)?.stages ?? [];
  return { member, device, cleaning, demands };
}

/** The washer cycle that the department chose for the set decides between ways of a page, where the page's way fits it. */
function cleaningOf(member: MemberRoute, set: EntityOf['set']): CleaningFit | undefined {
  const wanted = set.washer_cycle?.text;
  const ways = [...(member.cleaning === undefined ? [] : [member.cleaning]), ...member.otherCleaning];
  const byWasher = ways.find(
    ({ outcome, stages }) =>
      rankOf(outcome) < asking &&
      stages.some(({ fitting }) => fitting.some((one) => one.means === wanted && rankOf(one.outcome) < asking)),
  );
  return byWasher === undefined
    ? member.cleaning
    : { ...byWasher, stages: byWasher.stages.map((stage) => onWasher(stage, wanted)) };
}

/** The same stage on the washer cycle of the set, where that is one of those that fit. */
function onWasher(stage: StageFit, wanted: string | undefined): StageFit {
  const found = stage.fitting.find(({ means, outcome }) => means === wanted && rankOf(outcome) < asking);
  return found === undefined ? stage : { ...stage, machine: found.machine, means: found.means };
}
