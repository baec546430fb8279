/** How the thresholds of a test are typed: their order, what a field may hold, what keys do. Knows no page. */

export const EARS = ['right', 'left'] as const;
export const HERTZ = [500, 1000, 2000, 3000, 4000, 6000, 8000] as const;

export const LOWEST_DB = -10;
export const HIGHEST_DB = 120;
export const STEP_DB = 5;

/** The most characters of a field. */
export const LONGEST_TEXT = 6;

export type Ear = (typeof EARS)[number];

/** A field for a threshold; the second reading at 1000 Hz stands after each ear's frequencies. */
export interface Place {
  readonly ear: Ear;
  readonly hertz: number;
  readonly isRepeat: boolean;
}

/** Every field, in the order of the page: the right ear's first. */
export const PLACES: readonly Place[] = EARS.flatMap((ear) => [
  ...HERTZ.map((hertz) => ({ ear, hertz, isRepeat: false })),
  { ear, hertz: 1000, isRepeat: true },
]);

/** The fields that Enter walks through: a second reading is reached by Tab, since most tests have none. */
const WALK: readonly number[] = PLACES.flatMap((place, index) => (place.isRepeat ? [] : [index]));

/** What a field holds. */
export type Reading =
  | { readonly kind: 'empty' }
  | { readonly kind: 'level'; readonly decibels: number }
  /** No response; the limit is missing where only that is known. */
  | { readonly kind: 'no-response'; readonly limit?: number }
  | { readonly kind: 'not-tested'; readonly could: boolean }
  | { readonly kind: 'wrong' };

export function read(typed: string): Reading {
  const text = typed.trim().toUpperCase();
  switch (text) {
    case '':
      return { kind: 'empty' };
    case 'NR':
      return { kind: 'no-response' };
    case 'DNT':
      return { kind: 'not-tested', could: true };
    case 'CNT':
      return { kind: 'not-tested', could: false };
  }
  const isNoResponse = text.startsWith('>');
  const decibels = level(isNoResponse ? text.slice(1) : text);
  if (decibels === undefined) {
    return { kind: 'wrong' };
  }
  return isNoResponse ? { kind: 'no-response', limit: decibels } : { kind: 'level', decibels };
}

/** Whole dB HL within the range, or nothing. */
export function level(text: string): number | undefined {
  const decibels = /^-?\d{1,3}$/.test(text) ? Number(text) : NaN;
  return decibels >= LOWEST_DB && decibels <= HIGHEST_DB ? decibels + 0 : undefined;
}

/** Why a field cannot stand as it is; empty where it can. */
export function complaint(typed: string): string {
  if (read(typed).kind !== 'wrong') {
    return '';
  }
  return /^-?\d+$/.test(typed.trim())
    ? `Outside ${LOWEST_DB} to ${HIGHEST_DB} dB HL.`
    : `Whole dB HL from ${LOWEST_DB} to ${HIGHEST_DB}.`;
}

/** What there is to look at again in a field that can stand; empty where there is nothing. */
export function note(typed: string): string {
  const reading = read(typed);
  return reading.kind === 'level' && reading.decibels % STEP_DB !== 0 ? `Off the ${STEP_DB} dB step.` : '';
}

/** The level one step up or down: the next of the steps, within the range. From nothing it starts at 0. */
export function stepped(typed: string, direction: 1 | -1): string {
  const reading = read(typed);
  const from = reading.kind === 'level' ? reading.decibels : reading.kind === 'no-response' ? reading.limit : undefined;
  if (from === undefined) {
    return reading.kind === 'wrong' ? typed : '0';
  }
  const next = direction > 0 ? Math.floor(from / STEP_DB) + 1 : Math.ceil(from / STEP_DB) - 1;
  return String(Math.min(HIGHEST_DB, Math.max(LOWEST_DB, next * STEP_DB)));
}

/** What a key writes in the place of a level: no response at the limit, could not or did not test. */
export function marked(key: string, limit: string): string | undefined {
  switch (key.toLowerCase()) {
    case 'n':
      return level(limit.trim()) === undefined ? undefined : `>${Number(limit)}`;
    case 'c':
      return 'CNT';
    case 'd':
      return 'DNT';
    default:
      return undefined;
  }
}

/** Whether a field holds a mark, which is taken away whole. */
export function isMark(typed: string): boolean {
  const kind = read(typed).kind;
  return kind === 'no-response' || kind === 'not-tested';
}

/** The field that Enter leads to from this one, or back from it; none at the end. */
export function after(index: number, direction: 1 | -1): number | undefined {
  return direction > 0 ? WALK.find((place) => place > index) : WALK.findLast((place) => place < index);
}

/** Where typing begins, or goes on: the first field of the walk that is empty, or the first of all. */
export function begin(values: readonly string[]): number {
  return WALK.find((place) => (values[place] ?? '').trim() === '') ?? WALK[0]!;
}

/** The first field that cannot stand as it is. */
export function firstWrong(values: readonly string[]): number | undefined {
  const index = values.findIndex((value) => complaint(value) !== '');
  return index < 0 ? undefined : index;
}

export function isComplete(values: readonly string[]): boolean {
  return WALK.every((place) => (values[place] ?? '').trim() !== '');
}

/** "Right ear, 4000 Hz", "Left ear, second reading at 1000 Hz". */
export function name(place: Place): string {
  const ear = place.ear === 'right' ? 'Right ear' : 'Left ear';
  return place.isRepeat ? `${ear}, second reading at ${place.hertz} Hz` : `${ear}, ${place.hertz} Hz`;
}
