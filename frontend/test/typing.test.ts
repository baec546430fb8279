import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  PLACES,
  after,
  begin,
  complaint,
  firstWrong,
  isComplete,
  isMark,
  level,
  marked,
  name,
  note,
  read,
  stepped,
} from '../src/typing.js';

test('every whole level of the range is read, and nothing beyond it', () => {
  for (let decibels = -40; decibels <= 200; decibels++) {
    const isInRange = decibels >= -10 && decibels <= 120;
    assert.equal(level(String(decibels)), isInRange ? decibels : undefined, String(decibels));
    assert.equal(complaint(String(decibels)), isInRange ? '' : 'Outside -10 to 120 dB HL.', String(decibels));
  }
});

test('what is no threshold is refused in words', () => {
  for (const wrong of ['x', '12.5', '1e1', '+5', '--5', '>', '>125', '>x', '5 5', '-']) {
    assert.equal(read(wrong).kind, 'wrong', wrong);
    assert.notEqual(complaint(wrong), '', wrong);
    assert.equal(note(wrong), '', wrong);
  }
  assert.equal(complaint('12.5'), 'Whole dB HL from -10 to 120.');
});

test('the marks of the files are read in either case', () => {
  assert.deepEqual(read('>95'), { kind: 'no-response', limit: 95 });
  assert.deepEqual(read('nr'), { kind: 'no-response' });
  assert.deepEqual(read('cnt'), { kind: 'not-tested', could: false });
  assert.deepEqual(read('DNT'), { kind: 'not-tested', could: true });
  assert.deepEqual(read('  '), { kind: 'empty' });
  for (const right of ['>95', 'nr', 'cnt', 'DNT', '', '0', '-10', '120', ' 25 ']) {
    assert.equal(complaint(right), '', right);
  }
});

test('a level off the step is noted, not refused', () => {
  assert.equal(note('12'), 'Off the 5 dB step.');
  assert.equal(note('-3'), 'Off the 5 dB step.');
  for (const onTheStep of ['-10', '-5', '0', '15', '120', '>97', 'CNT', '']) {
    assert.equal(note(onTheStep), '', onTheStep);
  }
});

test('the arrow keys lead to the next step and stay within the range', () => {
  assert.equal(stepped('10', 1), '15');
  assert.equal(stepped('10', -1), '5');
  assert.equal(stepped('12', 1), '15');
  assert.equal(stepped('12', -1), '10');
  assert.equal(stepped('-3', 1), '0');
  assert.equal(stepped('-3', -1), '-5');
  assert.equal(stepped('0', -1), '-5');
  assert.equal(stepped('120', 1), '120');
  assert.equal(stepped('-10', -1), '-10');
  assert.equal(stepped('', 1), '0');
  assert.equal(stepped('CNT', -1), '0');
  assert.equal(stepped('>95', -1), '90');
  assert.equal(stepped('NR', -1), '0');
  assert.equal(stepped('4x', 1), '4x');
});

test('steps walk the whole range and end at its ends', () => {
  let text = '-10';
  let steps = 0;
  while (text !== '120' && steps < 100) {
    text = stepped(text, 1);
    steps++;
  }
  assert.equal(steps, 26);
});

test('keys write what was not heard or not tested', () => {
  assert.equal(marked('n', '95'), '>95');
  assert.equal(marked('N', ' 100 '), '>100');
  assert.equal(marked('n', ''), undefined);
  assert.equal(marked('n', '130'), undefined);
  assert.equal(marked('c', ''), 'CNT');
  assert.equal(marked('d', ''), 'DNT');
  assert.equal(marked('5', '95'), undefined);
  assert.ok(isMark('>95') && isMark('CNT') && isMark('NR'));
  assert.ok(!isMark('95') && !isMark('') && !isMark('>'));
});

test('Enter walks through fourteen thresholds, the right ear first, and leaves the second readings to Tab', () => {
  const walked = [];
  for (let index: number | undefined = begin([]); index !== undefined; index = after(index, 1)) {
    walked.push(name(PLACES[index]!));
  }
  assert.equal(walked.length, 14);
  assert.equal(walked[0], 'Right ear, 500 Hz');
  assert.equal(walked[6], 'Right ear, 8000 Hz');
  assert.equal(walked[7], 'Left ear, 500 Hz');
  assert.equal(walked[13], 'Left ear, 8000 Hz');
  assert.equal(after(after(0, 1)!, -1), 0);
  assert.equal(after(0, -1), undefined);
  assert.equal(after(7, 1), 8);
  assert.equal(name(PLACES[7]!), 'Right ear, second reading at 1000 Hz');
});

test('typing goes on at the first empty field', () => {
  const values = PLACES.map((_, index) => (index < 3 ? '10' : ''));
  assert.equal(begin(values), 3);
  assert.equal(begin(PLACES.map(() => '10')), 0);
  assert.equal(begin(PLACES.map((_, index) => (index < 7 ? '10' : ''))), 8);
  assert.ok(!isComplete(values));
  assert.ok(isComplete(PLACES.map((place) => (place.isRepeat ? '' : '10'))));
  assert.equal(firstWrong(['10', '4x', '130']), 1);
  assert.equal(firstWrong(['10']), undefined);
});
