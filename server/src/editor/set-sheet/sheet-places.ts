import { focusOf } from '../../check/finding.ts';
import { calledWho, machineCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Place } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import type { Cell, PlaceIndex } from '../../panel/set-sheet.ts';
import { isKind } from '../../schema/kinds.ts';
import type { SheetPlace } from './sheet-model.ts';

/** Gathers the places that a sheet leads to, each once. */
export class SheetPlaces {
  readonly list: SheetPlace[] = [];
  readonly #known = new Map<string, PlaceIndex>();
  readonly #view: LibraryView;

  constructor(view: LibraryView) {
    this.#view = view;
  }

  at(place: Place): PlaceIndex {
    const { file } = rootOf(place);
    const span = focusOf(place);
    const key = `${span.start} ${span.end} ${file}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const index = this.list.push({ file, span }) - 1;
    this.#known.set(key, index);
    return index;
  }

  /** A cell that leads to a place, where there is one. */
  cell(text: string, place: Place | undefined): Cell {
    return { text, ...(place !== undefined && { place: this.at(place) }) };
  }

  /** The sentence itself where one is cited, else where the demand stands. */
  said(says: readonly Saying[], demand: Place): PlaceIndex {
    return this.at(says[0]?.at ?? demand);
  }

  /** What people call `packaging/P3`. */
  called(who: string): string {
    return calledWho(who, this.#view);
  }

  machine(id: string): string {
    return machineCalled(id, this.#view);
  }

  /** Where the entity under this name begins: `device/pale-forceps`. */
  entity(kind: string, id: string): Place | undefined {
    return isKind(kind) ? this.#view.get(kind, id)?.id?.at : undefined;
  }

  cycle(id: string): Place | undefined {
    return this.#view.sterilizerCycle(id)?.cycle.id?.at ?? this.#view.washerCycle(id)?.cycle.id?.at;
  }
}
