/** What a drawn audiogram says, and how a reader walks through it. Knows no page: see audiogram-reader.ts. */

/** One threshold of the drawing, as its data attributes give it. */
export interface Reading {
  readonly ear: string;
  readonly series: string;
  readonly hertz: number;
  /** The finding with its unit, such as "25 dB HL". */
  readonly words: string;
}

/** One ear of one test. */
export interface Trace {
  readonly ear: string;
  readonly series: string;
}

/** Where the reader stands: always on a reading that exists. */
export interface Position extends Trace {
  readonly hertz: number;
}

/** A reading and how far its symbol is from the pointer, in CSS px. */
export interface Placed extends Reading {
  readonly distance: number;
}

export type Move = 'lower' | 'higher' | 'lowest' | 'highest' | 'previous-trace' | 'next-trace';

const LATEST = 'latest';
const EARS = ['right', 'left'];
const SERIES = [LATEST, 'baseline'];

/** The traces that are there: the latest test's right and left ear, then the baseline's. */
export function traces(readings: readonly Reading[]): Trace[] {
  return SERIES.flatMap((series) => EARS.map((ear) => ({ ear, series }))).filter((trace) =>
    readings.some((reading) => isOn(reading, trace)),
  );
}

export function find(readings: readonly Reading[], position: Position): Reading | undefined {
  return readings.find((reading) => isAt(reading, position));
}

export function isAt(reading: Reading, position: Position): boolean {
  return isOn(reading, position) && reading.hertz === position.hertz;
}

/** The first reading: the first trace's lowest frequency. */
export function first(readings: readonly Reading[]): Position | undefined {
  const trace = traces(readings)[0];
  return trace && at(trace, frequencies(readings, trace)[0]);
}

/** The position after a move; a move past the end stays where it is, and traces come round. */
export function move(readings: readonly Reading[], from: Position, move: Move): Position {
  const along = frequencies(readings, from);
  const index = along.indexOf(from.hertz);
  switch (move) {
    case 'lower':
      return at(from, along[index - 1]) ?? from;
    case 'higher':
      return at(from, along[index + 1]) ?? from;
    case 'lowest':
      return at(from, along[0]) ?? from;
    case 'highest':
      return at(from, along[along.length - 1]) ?? from;
    case 'previous-trace':
      return turn(readings, from, -1);
    case 'next-trace':
      return turn(readings, from, 1);
  }
}

/** The same position in another drawing, or the nearest that it has: the same frequency of the same ear, or the first. */
export function carryOver(readings: readonly Reading[], position: Position): Position | undefined {
  const kept = [position, { ...position, series: LATEST }];
  return kept.find((candidate) => find(readings, candidate)) ?? first(readings);
}

/**
 * What a pointer is over: the nearest symbol within reach and, where symbols of both ears stand at one point, one of
 * each ear. Of one ear the latest test is taken, whose sentence tells of the baseline too.
 */
export function nearest(placed: readonly Placed[], reach: number): Position[] {
  const closest = Math.min(...placed.map((reading) => reading.distance));
  if (closest > reach) {
    return [];
  }
  const together = placed.filter((reading) => reading.distance < closest + 1);
  return traces(together)
    .filter((trace, index, all) => all.findIndex((earlier) => earlier.ear === trace.ear) === index)
    .flatMap((trace) => at(trace, frequencies(together, trace)[0]) ?? []);
}

/** "Right ear, 4000 Hz, 25 dB HL; baseline 5 dB HL", and from the baseline's side with the latest test second. */
export function sentence(readings: readonly Reading[], position: Position): string {
  const here = find(readings, position);
  if (!here) {
    return '';
  }
  const where = `${capitalised(here.ear)} ear, ${here.hertz} Hz, `;
  const others = readings.filter(
    (reading) => reading.ear === here.ear && reading.hertz === here.hertz && reading.series !== here.series,
  );
  const own = here.series === LATEST ? here.words : `${here.series} ${here.words}`;
  return where + [own, ...others.map((other) => `${other.series} ${other.words}`)].join('; ');
}

function turn(readings: readonly Reading[], from: Position, by: number): Position {
  const all = traces(readings);
  const index = all.findIndex((trace) => trace.ear === from.ear && trace.series === from.series);
  const next = { ...from, ...all[(index + by + all.length) % all.length] };
  return find(readings, next) ? next : from;
}

function frequencies(readings: readonly Reading[], trace: Trace): number[] {
  return readings
    .filter((reading) => isOn(reading, trace))
    .map((reading) => reading.hertz)
    .sort((a, b) => a - b);
}

function at(trace: Trace, hertz: number | undefined): Position | undefined {
  return hertz === undefined ? undefined : { ear: trace.ear, series: trace.series, hertz };
}

function isOn(reading: Reading, trace: Trace): boolean {
  return reading.ear === trace.ear && reading.series === trace.series;
}

function capitalised(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
