import type { Line, Piece, Value } from '../piece.ts';

/** The five bands of a card, in working order. */
export type BandKind = 'decontamination' | 'inspection' | 'packing' | 'sterilizing' | 'cooling';

/** What is forbidden, as a sign with words. */
export type SignKind =
  | 'no-immersion'
  | 'tip-only'
  | 'no-ultrasonic'
  | 'no-washer'
  | 'no-lubricant'
  | 'no-quench'
  | 'no-fan'
  | 'no-stack'
  | 'no-touch'
  | 'no-wet';

/** Words around a number that a page demands. */
export interface BoundWords {
  atLeast(amount: Piece): Line;
  atMost(amount: Piece): Line;
  between(low: Piece, high: Piece): Line;
  exactly(amount: Piece): Line;
  about(amount: Piece): Line;
  /** The page cannot be followed as written. */
  ask(quote: Piece): Line;
  conflict(): Line;
}

/** Every text of a work card. Another language is another object of this form. */
export interface CardWords {
  readonly bands: Readonly<Record<BandKind, string>>;
  readonly signs: Readonly<Record<SignKind, string>>;
  readonly head: HeadWords;
  readonly cleaning: CleaningWords;
  readonly inspection: InspectionWords;
  readonly packing: PackingWords;
  readonly sterilizing: SterilizingWords;
  readonly cooling: CoolingWords;
  readonly foot: FootWords;
}

export interface HeadWords {
  readonly draft: string;
  draftBecause(reasons: readonly string[]): string;
  readonly draftFindings: (count: number) => string;
  readonly draftProvisional: string;
  readonly draftNoRoute: string;
  stamp(stamp: string): string;
  printed(day: string): string;
  readonly validUntilChanged: string;
  readonly owner: string;
  readonly items: string;
  readonly mass: string;
  readonly massLimit: string;
  weighed(mass: Piece, day: Piece | undefined): Line;
  readonly notWeighed: string;
  readonly levels: string;
  readonly photo: string;
  /** Above the card: what it is. */
  readonly title: string;
}

export interface CleaningWords {
  readonly together: string;
  takeApart(steps: Line): Line;
  open(what: Line): Line;
  leaveTogether(what: Line): Line;
  firstRinse(how: Line): Line;
  byHand(agent: Line): Line;
  agent(name: Piece, dose: Piece | undefined, temp: Line): Line;
  water(name: Piece): Line;
  soak(time: Line, temp: Line): Line;
  phOfAgent(ph: Line): Line;
  brush(what: Line): Line;
  brushSize(size: Line): Line;
  strokes(count: Line): Line;
  flush(what: Line, how: Line): Line;
  actuate(count: Line): Line;
  rinse(how: Line): Line;
  finalRinse(how: Line): Line;
  apart: string;
  tools(what: Piece): Line;
  until(endpoint: Piece): Line;
  bath(name: Piece, details: Line): Line;
  irrigated: string;
  degas(time: Line): Line;
  washer(machine: Piece, cycle: Piece, details: Line): Line;
  ports(connector: Piece): Line;
  rack(rack: Piece): Line;
  disinfect(how: Line): Line;
  dry(how: Line): Line;
  air(pressure: Line): Line;
  noWay: string;
  noWasher: string;
  askFirst: string;
  unknown(reason: Line): Line;
}

export interface InspectionWords {
  look(criteria: Line): Line;
  magnification(bound: Line): Line;
  test(name: string, extent: Piece | undefined, members: Line): Line;
  lubricate(agent: Line, details: Line): Line;
  drops(count: Line): Line;
  run(time: Line): Line;
  uses(limit: Line, counter: Piece | undefined): Line;
  readonly nothing: string;
  readonly removeExcess: string;
}

export interface PackingWords {
  configuration(what: Line): Line;
  packaging(name: Piece): Line;
  inCase(name: Piece): Line;
  twice: string;
  filter(filter: Piece): Line;
  accessories(allowed: Line): Line;
  indicators(count: Piece | undefined, name: Piece, places: Line): Line;
  readonly indicatorsTitle: string;
  readonly placesUnstated: string;
  readonly placesComputed: string;
  placesBy(source: Line): Line;
  level(level: Piece): Line;
  external(name: Piece): Line;
  label(text: Piece): Line;
  otherPackaging(file: Piece, route: Piece): Line;
}

export interface SterilizingWords {
  readonly machine: string;
  readonly cycle: string;
  readonly temperature: string;
  readonly exposure: string;
  readonly dry: string;
  readonly method: string;
  shelf(position: Piece): Line;
  load(limit: Piece): Line;
  item(limit: Piece): Line;
  second(machine: Piece, cycle: Piece, packaging: Line): Line;
  packedIn(packaging: Piece): Line;
  onlyOne(machine: Piece): Line;
  readonly immediateUse: string;
  immediateYes(cycle: Piece): Line;
  readonly immediateNo: string;
  aeration(how: Line): Line;
  readonly stop: string;
  readonly noRoute: string;
  demand(who: Piece, quote: Piece, citation: Line): Line;
  alone(who: Piece): Line;
  otherCycle(file: Piece): Line;
}

export interface CoolingWords {
  leave(time: Line): Line;
  until(temperature: Line): Line;
  deviceWait(who: Piece, time: Line): Line;
  method(who: Piece, method: Piece): Line;
  readonly aimTitle: string;
  aim(where: Piece): Line;
  readonly notHere: string;
  readonly aimUnstated: string;
  biological(name: Piece | undefined): Line;
  store(limit: Line): Line;
  readonly eventRelated: string;
  readonly wetPack: string;
  readonly noHeat: string;
}

export interface FootWords {
  readonly why: string;
  readonly reasons: Readonly<Record<'temp' | 'exposure' | 'dry', string>>;
  reason(what: string, demand: Line, who: Piece, citation: Line): Line;
  citation(doc: Value, rev: Value | undefined, page: Value | undefined): Line;
  readonly call: string;
  contact(role: Piece, phone: Piece | undefined, about: Piece | undefined): Line;
  readonly cautions: readonly string[];
}
