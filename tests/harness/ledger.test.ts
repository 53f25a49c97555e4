import { describe, expect, test } from 'vitest';
import { type Has, newLedger } from '../../e2e/kills/ledger.mjs';

const entry = (count: number, label: string, more: object = {}) => ({
  job: 'a',
  device: 'p',
  count,
  act: `p.${count}`,
  label,
  kind: 'tick',
  op: `cut/b${count}/r1/1`,
  figure: '1/2',
  ...more,
});

const none = { lost: 0, changed: 0, torn: 0, twice: 0, unsaid: 0, setAside: 0 };
const has = (entries: readonly object[], figures: Has['figures'] = {}): Has => ({
  entries,
  figures,
  setAside: 0,
});

const one = entry(1, 'x.1/1');
const two = [entry(2, 'x.2/2'), entry(3, 'x.2/2', { act: 'p.2' })] as const;

function written() {
  const ledger = newLedger();
  ledger.note({ label: 'x.1/1', entries: [one] });
  ledger.note({ label: 'x.2/2', entries: two });
  ledger.note({ label: 'x.3/1', figure: ['shop bit', 4] });
  return ledger;
}

describe('the ledger the kills are judged by', () => {
  test('finds nothing wrong where everything acknowledged is there, in whatever order', () => {
    const turned = Object.fromEntries(Object.entries(one).reverse());
    expect(written().compare(has([...two, turned], { 'shop bit': 4 }))).toEqual(none);
  });

  test('takes what came after the last word heard for no fault', () => {
    const more = entry(4, 'x.4/1');
    expect(written().compare(has([one, ...two, more], { 'shop bit': 5 }))).toEqual(none);
  });

  test('counts every entry and figure that is not there', () => {
    expect(written().compare(has([]))).toEqual({ ...none, lost: 4 });
    expect(written().compare(has([one, ...two], { 'shop bit': 3 }))).toEqual({ ...none, lost: 1 });
  });

  test('counts an act there in part, also one never acknowledged', () => {
    const part = entry(9, 'x.9/3');
    expect(written().compare(has([one, ...two, part], { 'shop bit': 4 }))).toEqual({ ...none, torn: 1 });
  });

  test('counts an entry with another in its place as lost', () => {
    const other = entry(1, 'x.1/1', { figure: '3/4' });
    expect(written().compare(has([other, ...two], { 'shop bit': 4 }))).toEqual({
      ...none,
      lost: 1,
      changed: 1,
    });
  });

  test('counts two acknowledged under one key as one lost', () => {
    const ledger = written();
    const again = entry(1, 'x.7/1');
    ledger.note({ label: 'x.7/1', entries: [again] });
    expect(ledger.compare(has([again, ...two], { 'shop bit': 4 }))).toEqual({ ...none, lost: 1, changed: 1 });
  });

  test('counts an act kept two times, and one refused and kept all the same', () => {
    const ledger = written();
    ledger.note({ label: 'x.8/1', refused: 'failed' });
    const twice = entry(5, 'x.1/1');
    const refused = entry(6, 'x.8/1');
    expect(ledger.compare(has([one, ...two, twice, refused], { 'shop bit': 4 }))).toEqual({
      ...none,
      twice: 1,
      unsaid: 1,
    });
  });

  test('counts the pictures among what was acknowledged', () => {
    const ledger = written();
    ledger.note({ label: 'x.9/1', entries: [entry(9, 'x.9/1')], picture: 'aa' });
    expect([ledger.acts(), ledger.pictures()]).toEqual([4, 1]);
  });

  test('counts a loss once', () => {
    const ledger = written();
    ledger.settle(has([one]));
    expect(ledger.compare(has([one]))).toEqual(none);
    expect(ledger.compare(has([]))).toEqual({ ...none, lost: 1 });
  });
});
