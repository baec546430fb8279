import assert from 'node:assert/strict';
import { test } from 'node:test';
import { carryOver, find, first, move, nearest, sentence, traces, type Reading } from '../src/reading.js';

const hertz = [500, 1000, 2000, 3000, 4000, 6000, 8000];

function trace(ear: string, series: string, words: string[]): Reading[] {
  return hertz.map((frequency, i) => ({ ear, series, hertz: frequency, words: words[i] ?? 'not tested' }));
}

const right = trace('right', 'latest', ['10 dB HL', '5 dB HL', '15 dB HL', '20 dB HL', '25 dB HL']);
const left = trace('left', 'latest', ['0 dB HL', '0 dB HL', '0 dB HL', '0 dB HL', 'no response at 95 dB HL']);
const rightBaseline = trace('right', 'baseline', ['5 dB HL', '5 dB HL', '5 dB HL', '5 dB HL', '5 dB HL']);
// Beneath the plot the drawing lists what has no level, so the order of the elements is not the order of frequencies.
const all = [...rightBaseline, ...left, ...right.slice().reverse()];

test('reads a threshold with the baseline beside it', () => {
  assert.equal(
    sentence(all, { ear: 'right', series: 'latest', hertz: 4000 }),
    'Right ear, 4000 Hz, 25 dB HL; baseline 5 dB HL',
  );
});

test('reads a baseline with the latest test beside it', () => {
  assert.equal(
    sentence(all, { ear: 'right', series: 'baseline', hertz: 4000 }),
    'Right ear, 4000 Hz, baseline 5 dB HL; latest 25 dB HL',
  );
});

test('reads an ear without a baseline by itself, in the words of the drawing', () => {
  assert.equal(sentence(all, { ear: 'left', series: 'latest', hertz: 4000 }), 'Left ear, 4000 Hz, no response at 95 dB HL');
  assert.equal(sentence(all, { ear: 'left', series: 'latest', hertz: 8000 }), 'Left ear, 8000 Hz, not tested');
});

test('says nothing where there is no reading', () => {
  assert.equal(sentence(all, { ear: 'left', series: 'baseline', hertz: 4000 }), '');
  assert.equal(first([]), undefined);
  assert.equal(carryOver([], { ear: 'left', series: 'latest', hertz: 4000 }), undefined);
});

test('starts at the right ear of the latest test, at the lowest frequency', () => {
  assert.deepEqual(first(all), { ear: 'right', series: 'latest', hertz: 500 });
  assert.deepEqual(first(left), { ear: 'left', series: 'latest', hertz: 500 });
});

test('walks through the frequencies in order and stops at both ends', () => {
  let position = first(all)!;
  const walked = [position.hertz];
  for (let i = 0; i < 8; i++) {
    position = move(all, position, 'higher');
    walked.push(position.hertz);
  }
  assert.deepEqual(walked, [...hertz, 8000, 8000]);
  assert.equal(move(all, position, 'lower').hertz, 6000);
  assert.equal(move(all, position, 'lowest').hertz, 500);
  assert.equal(move(all, first(all)!, 'highest').hertz, 8000);
  assert.equal(move(all, first(all)!, 'lower').hertz, 500);
});

test('turns through the traces that are there, keeping the frequency', () => {
  assert.deepEqual(traces(all), [
    { ear: 'right', series: 'latest' },
    { ear: 'left', series: 'latest' },
    { ear: 'right', series: 'baseline' },
  ]);
  let position = { ear: 'right', series: 'latest', hertz: 3000 };
  for (const expected of ['left latest', 'right baseline', 'right latest']) {
    position = move(all, position, 'next-trace');
    assert.equal(`${position.ear} ${position.series}`, expected);
    assert.equal(position.hertz, 3000);
  }
  assert.deepEqual(move(all, position, 'previous-trace'), { ear: 'right', series: 'baseline', hertz: 3000 });
});

test('every move from every reading lands on a reading', () => {
  let moves = 0;
  for (const from of all) {
    for (const way of ['lower', 'higher', 'lowest', 'highest', 'previous-trace', 'next-trace'] as const) {
      assert.ok(find(all, move(all, from, way)), `${way} from ${from.ear} ${from.series} ${from.hertz}`);
      moves++;
    }
  }
  assert.equal(moves, 3 * 7 * 6);
});

test('keeps its place when another year is drawn', () => {
  const place = { ear: 'right', series: 'baseline', hertz: 6000 };
  assert.deepEqual(carryOver(all, place), place);
  assert.deepEqual(carryOver([...right, ...left], place), { ear: 'right', series: 'latest', hertz: 6000 });
  assert.deepEqual(carryOver(left, place), { ear: 'left', series: 'latest', hertz: 500 });
});

test('a pointer reads the nearest symbol, and both ears where they stand at one point', () => {
  const distances = (near: Record<string, number>) =>
    all.map((reading) => ({ ...reading, distance: near[`${reading.ear} ${reading.series} ${reading.hertz}`] ?? 500 }));
  const reading = (near: Record<string, number>) =>
    nearest(distances(near), 24).map((position) => `${position.ear} ${position.series} ${position.hertz}`);

  assert.deepEqual(reading({ 'left latest 2000': 3, 'right latest 2000': 20 }), ['left latest 2000']);
  assert.deepEqual(reading({ 'left latest 2000': 3, 'right latest 2000': 3 }), ['right latest 2000', 'left latest 2000']);
  assert.deepEqual(reading({ 'right baseline 2000': 3, 'right latest 2000': 3 }), ['right latest 2000']);
  assert.deepEqual(reading({ 'right baseline 2000': 3, 'right latest 2000': 9 }), ['right baseline 2000']);
  assert.deepEqual(reading({ 'right baseline 2000': 24.5 }), []);
  assert.deepEqual(nearest([], 24), []);
});
