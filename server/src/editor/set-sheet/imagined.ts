import { called, machineCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Choice, Choices } from '../../panel/set-sheet.ts';
import { departmentOf, idOf } from '../../route/equipment.ts';
import type { Overlay } from '../../route/overlay.ts';

/** What can be tried on a set without touching a file. Keys are `leave-out/DEVICE`, `pack-in/PACKAGING`, `qualify/CYCLE`. */
export function choicesFor(set: EntityOf['set'], view: LibraryView, chosen: ReadonlySet<string>): readonly Choices[] {
  const all: readonly Choices[] = [
    { title: 'Leave out', takes: 'many', options: members(set, view) },
    { title: 'Pack in', takes: 'one', options: packagings(set, view) },
    { title: 'Qualify', takes: 'many', options: cycles(set, view) },
  ].map(({ title, takes, options }) => ({
    title,
    takes: takes === 'one' ? 'one' : 'many',
    options: options.map((option) => ({ ...option, on: chosen.has(option.key) })),
  }));
  return all.filter(({ options }) => options.length > 0);
}

type Offered = Omit<Choice, 'on'>;

function members(set: EntityOf['set'], view: LibraryView): readonly Offered[] {
  const ids = new Set((set.members?.items ?? []).flatMap(({ device }) => device?.text ?? []));
  return [...ids].map((id) => {
    const label = called('device', id, view);
    return { key: `leave-out/${id}`, label, about: label === id ? '' : id };
  });
}

function packagings(set: EntityOf['set'], view: LibraryView): readonly Offered[] {
  const { packagings: all } = view.ask(departmentOf, set.site?.text ?? '');
  return all
    .filter((one) => one.type?.text !== 'case' && idOf(one) !== set.packaging?.text)
    .map((one) => {
      const label = called('packaging', idOf(one), view);
      return { key: `pack-in/${idOf(one)}`, label, about: label === idOf(one) ? '' : idOf(one) };
    });
}

/** Cycles that are programmed but for which no date speaks today. */
function cycles(set: EntityOf['set'], view: LibraryView): readonly Offered[] {
  const { sterilizing } = view.ask(departmentOf, set.site?.text ?? '');
  return sterilizing
    .filter(({ evidence }) => evidence.outcome !== 'meets')
    .map(({ id, machine, evidence }) => ({
      key: `qualify/${id}`,
      label: id,
      about: `${machineCalled(idOf(machine), view)}, ${evidence.given}`,
    }));
}

/**
 * The choices that are on, as changes of a copy of the library. Who packs the set in something else means this and nothing else: the other
 * packagings are left out, or the derivation would choose among them.
 */
export function overlayFor(set: EntityOf['set'], choices: readonly Choices[], view: LibraryView): Overlay {
  const id = idOf(set);
  const keys = choices.flatMap(({ options }) => options.filter(({ on }) => on).map(({ key }) => key));
  const of = (what: string): readonly string[] =>
    keys.filter((key) => key.startsWith(`${what}/`)).map((key) => key.slice(what.length + 1));
  const [packaging] = of('pack-in');
  const others = packaging === undefined ? [] : otherPackagings(set, packaging, view);
  return {
    without: [...of('leave-out').map((device) => `member/${id}/${device}`), ...others],
    packed: packaging === undefined ? [] : [{ set: id, packaging }],
    qualified: { cycles: of('qualify'), on: view.today },
  };
}

function otherPackagings(set: EntityOf['set'], packaging: string, view: LibraryView): readonly string[] {
  const { packagings: all } = view.ask(departmentOf, set.site?.text ?? '');
  return all
    .filter((one) => one.type?.text !== 'case' && idOf(one) !== packaging)
    .map((one) => `packaging/${idOf(one)}`);
}

/** The same in words. */
export function imaginedWords(choices: readonly Choices[]): readonly string[] {
  return choices.flatMap(({ title, options }) =>
    options.filter(({ on }) => on).map(({ label }) => `${title.toLowerCase()} ${label}`),
  );
}
