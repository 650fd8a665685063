import { type CaseOf, isFailing, judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { catchesSterilization, judgeProhibitions } from './prohibitions.ts';
import { holds } from './setting.ts';
import type { SterilizationQuestion } from './sterilization-question.ts';
import { outOfScopeTraits } from './vocabulary.ts';

/** Gates of identity and category. Categories never stand in for one another. */
export function judgeSterilizationGates(question: SterilizationQuestion): readonly Judgement[] {
  return [...identity(question), modality(question), ...context(question), ...prohibitions(question)];
}

/**
 * Whether method or use of the cycle are not those of the option: then a gate fails whatever else is asked. The same without words, for
 * whoever tries many cycles.
 */
export function isOfAnotherKind({ option, machine, cycle }: SterilizationQuestion): boolean {
  return (
    isFailing('modality', methodCase(option.modality, cycle.modality ?? machine.modality)) || isOtherUse(option, cycle)
  );
}

function isOtherUse(
  option: Pick<SterilizationQuestion['option'], 'context'>,
  cycle: Pick<SterilizationQuestion['cycle'], 'context'>,
): boolean {
  const ours = contextOf(cycle.context);
  if (contextOf(option.context) === ours) return false;
  return ours === 'iuss' ? isFailing('immediate-use', 'not-offered') : isFailing('context', 'different');
}

function identity({ device, option, setting }: SterilizationQuestion): readonly Judgement[] {
  const judgements: Judgement[] = [];
  const at = option.id?.at ?? option.at;
  const trait = device.traits?.items.find((one) => outOfScopeTraits.has(one.text));
  if (trait !== undefined)
    judgements.push(judgeCase('identity', 'out-of-scope', { by: device, required: trait.text, at: trait.at }));
  const whole = device.sterilization;
  if (whole?.use?.text === 'forbidden') {
    judgements.push(
      judgeCase('identity', 'not-sterilized', {
        by: device,
        required: 'no sterilization',
        at: whole.use.at,
        src: whole.src,
      }),
    );
  }
  if (option.evidence?.on === true)
    judgements.push(judgeCase('identity', 'evidence-only', { by: device, required: 'never run', at, src: option.src }));
  if (!holds(setting, option.when)) {
    const required = `only when: ${option.when?.text ?? ''}`;
    judgements.push(
      judgeCase('identity', 'other-situation', {
        by: device,
        required,
        given: 'routine',
        at: option.when?.at ?? at,
        src: option.src,
      }),
    );
  }
  if (option.ambiguous !== undefined) {
    judgements.push(
      judgeCase('identity', 'unclear', {
        by: device,
        required: option.ambiguous.text,
        at: option.ambiguous.at,
        src: option.src,
      }),
    );
  }
  if (option.couples !== undefined) {
    judgements.push(
      judgeCase('identity', 'coupled', {
        by: device,
        required: option.couples.text,
        at: option.couples.at,
        src: option.src,
      }),
    );
  }
  const here = setting.site?.jurisdiction?.text;
  if (here !== undefined && isForOthers(device.market, here)) {
    const required = named(device.market);
    judgements.push(
      judgeCase('identity', 'other-market', { by: device, required, given: here, at: device.market?.at ?? at }),
    );
  }
  if (here !== undefined && isForOthers(option.market, here)) {
    const required = named(option.market);
    judgements.push(
      judgeCase('identity', 'cycle-of-other-market', {
        by: device,
        required,
        given: here,
        at: option.market?.at ?? at,
        src: option.src,
      }),
    );
  }
  return judgements;
}

type Markets = SterilizationQuestion['option']['market'];

function isForOthers(markets: Markets, here: string): boolean {
  const all = markets?.items ?? [];
  return all.length > 0 && !all.some((one) => one.text === here);
}

function named(markets: Markets): string {
  return (markets?.items ?? []).map((one) => one.text).join(', ');
}

function modality({ device, option, machine, cycle }: SterilizationQuestion): Judgement {
  const ours = cycle.modality ?? machine.modality;
  const theirs = option.modality;
  const at = theirs?.at ?? option.id?.at ?? option.at;
  return judgeCase('modality', methodCase(theirs, ours), {
    by: device,
    required: theirs?.text ?? '',
    given: ours?.text,
    at,
    factAt: ours?.at ?? cycle.at,
    src: option.src,
  });
}

function methodCase(theirs: Word | undefined, ours: Word | undefined): CaseOf<'modality'> {
  return theirs === undefined || ours === undefined ? 'not-given' : compareModality(theirs.text, ours.text);
}

interface Word {
  readonly text: string;
}

/** Two kinds of active air removal are a question; any other difference is another instruction. */
export function compareModality(theirs: string, ours: string): 'same' | 'different' | 'flush-pulse' {
  if (theirs === ours) return 'same';
  return isActive(theirs) && isActive(ours) ? 'flush-pulse' : 'different';
}

function isActive(modality: string): boolean {
  return modality === 'steam-sfpp' || modality === 'steam-prevac';
}

/** Stored packs (`terminal`) unless the file says immediate use. */
export function contextOf(context: { readonly text: string } | undefined): string {
  return context?.text ?? 'terminal';
}

function context({ device, option, cycle }: SterilizationQuestion): readonly Judgement[] {
  const theirs = contextOf(option.context);
  const ours = contextOf(cycle.context);
  const facts = {
    by: device,
    required: theirs,
    given: ours,
    at: option.context?.at ?? option.at,
    factAt: cycle.context?.at,
    src: option.src,
  };
  if (theirs === ours) return [judgeCase('context', 'same', facts)];
  return [
    ours === 'iuss' ? judgeCase('immediate-use', 'not-offered', facts) : judgeCase('context', 'different', facts),
  ];
}

function prohibitions({ device, machine, cycle, setting }: SterilizationQuestion): readonly Judgement[] {
  const ours = (cycle.modality ?? machine.modality)?.text;
  const use = contextOf(cycle.context);
  const facts = {
    given: use === 'iuss' ? `${ours ?? ''} for immediate use` : (ours ?? ''),
    factAt: cycle.modality?.at ?? cycle.at,
  };
  return judgeProhibitions(device, (what) => catchesSterilization(what, ours, use), facts, setting);
}
