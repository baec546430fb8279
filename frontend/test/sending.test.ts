import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Sending } from '../src/sending.js';

function recorder() {
  const sent: [string, number][] = [];
  return { sent, sending: new Sending<string>((state, revision) => sent.push([state, revision])) };
}

test('sends at once, then only the latest once the one before has arrived', () => {
  const { sent, sending } = recorder();
  sending.put('1');
  sending.put('12');
  sending.put('125');
  assert.deepEqual(sent, [['1', 1]]);
  assert.ok(!sending.isSettled);
  sending.arrived(1);
  assert.deepEqual(sent, [
    ['1', 1],
    ['125', 2],
  ]);
  sending.arrived(2);
  assert.ok(sending.isSettled);
  assert.equal(sent.length, 2);
});

test('sends again what did not arrive, the latest state where there is one', () => {
  const { sent, sending } = recorder();
  sending.put('a');
  sending.again();
  assert.deepEqual(sent.at(-1), ['a', 2]);
  sending.put('b');
  sending.again();
  assert.deepEqual(sent.at(-1), ['b', 3]);
  sending.arrived(2);
  assert.ok(!sending.isSettled, 'what arrived was not the last');
  sending.arrived(3);
  assert.ok(sending.isSettled);
});

test('has nothing to send again once all has arrived', () => {
  const { sent, sending } = recorder();
  sending.again();
  sending.put('a');
  sending.arrived(1);
  sending.again();
  assert.equal(sent.length, 1);
});

test('whatever is lost on the way, the last state arrives in the end', () => {
  let seed = 20260309;
  const chance = () => (seed = (seed * 48271) % 2147483647) / 2147483647;
  for (let round = 0; round < 200; round++) {
    let received = '';
    let pending: number | undefined;
    const sending = new Sending<string>((state, revision) => {
      pending = undefined;
      if (chance() < 0.6) {
        received = state;
        pending = revision;
      }
    });
    let state = '';
    for (let key = 0; key < 30; key++) {
      state += String(Math.floor(chance() * 10));
      sending.put(state);
      if (chance() < 0.5 && pending !== undefined) {
        sending.arrived(pending);
      } else if (chance() < 0.3) {
        sending.again();
      }
    }
    for (let tries = 0; !sending.isSettled && tries < 100; tries++) {
      if (pending !== undefined) {
        sending.arrived(pending);
      } else {
        sending.again();
      }
    }
    assert.ok(sending.isSettled);
    assert.equal(received, state);
  }
});
