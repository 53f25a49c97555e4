import { describe, expect, test } from 'vitest';
import {
  asksText,
  hangsText,
  insteadText,
  lacksText,
  remedyText,
  takerName,
  tooSmallText,
} from '../../../src/screens/shared/limit-words';
import { lacksOf, type Need } from '../../../src/trade/machines/limits';
import type { OwnMachine } from '../../../src/trade/machines/shop';
import { l } from '../../length/write-figures';

const shop = { capacity: l('30'), tableHeight: l('3'), sledCross: l('22'), stopReach: l('32') };
const rip: Need = { cut: 'rip', width: l('34'), thickness: l('3/4') };
const cross: Need = { cut: 'crosscut', length: l('66 1/2'), width: l('24'), thickness: l('3/4') };

describe('what a machine cannot take, in words', () => {
  test('what is lacking, by how much', () => {
    expect(lacksText(lacksOf(rip, 'fence', shop), '1/32')).toBe('The rip fence is 4 short.');
    expect(lacksText(lacksOf(cross, 'sled', shop), '1/32')).toBe(
      'The piece is 2 too wide for the sled; the stop of the sled is 34 1/2 short.',
    );
    expect(lacksText(lacksOf({ ...rip, width: l('20') }, 'fence', shop), '1/32')).toBe('');
    // 17 1/2 stood under 4 1/2
    const notch: Need = { cut: 'shoulder', near: l('20'), width: l('3'), depth: l('2'), stands: l('17 1/2') };
    const slides = { slidingStop: l('48'), slidingHeight: l('4 1/2'), slidingStack: l('3/4') };
    expect(lacksText(lacksOf(notch, 'sliding', slides), '1/32')).toBe(
      'The piece, stood on edge, is 13 too high.',
    );
  });

  test('what is not measured is asked once', () =>
    expect(asksText(lacksOf(rip, 'fence', {}).asks)).toBe(
      'Measure once for the shop: largest fence setting, highest the blade stands',
    ));

  test('the machine that can, with its figure', () => {
    const other: Need = { ...cross, width: l('18 3/4'), rest: l('29 3/8') };
    expect(insteadText(lacksOf(other, 'sled', shop), other, '1/32')).toBe(
      'Use instead: Sled, the other piece on the stop, at 29 3/8',
    );
    const groove: Need = { cut: 'groove', near: l('5'), width: l('23/32'), depth: l('1/4') };
    expect(insteadText(lacksOf(groove, 'router', { bit: l('1/2') }), groove, '1/32')).toBe(
      'Use instead: Router and guide, 2 passes side by side, 2 depths',
    );
  });

  test('a machine of the shop’s own is named before what it lacks, what is asked of it, and what it would do', () => {
    const old = { id: 'own1', name: 'Old saw', like: 'fence', figures: { capacity: l('28') } } as const;
    // 34 − 28
    const way = lacksOf(rip, old, shop);
    expect(lacksText(way, '1/32')).toBe('Old saw: the rip fence is 6 short.');
    expect(asksText(way.asks, way.own)).toBe('Measure once for Old saw: highest the blade stands');
    expect(remedyText({ code: 'two-passes', each: l('1 5/16'), own: old }, '1/32')).toBe(
      'Old saw: rip it in two passes, 1 5/16 high each, turned over between, the same edge on the fence.',
    );
    expect([takerName('sled'), takerName(old), takerName({ ...old, name: ' ' })]).toEqual([
      'Sled',
      'Old saw',
      'Machine without a name',
    ]);
  });

  test('what a machine of the shop’s own lacks names it once', () => {
    const lacking = (like: 'sled' | 'sliding' | 'press', figures: OwnMachine['figures'], need: Need) =>
      lacksText(lacksOf(need, { id: 'own1', name: 'Second', like, figures }, {}), '1/32');
    // 24 − 22, 66 1/2 − 32
    expect(lacking('sled', { sledCross: l('22'), stopReach: l('32') }, cross)).toBe(
      'Second: the piece is 2 too wide for it; its stop is 34 1/2 short.',
    );
    const groove: Need = { cut: 'groove', near: l('5'), width: l('23/32'), depth: l('1/4') };
    expect(lacking('sliding', {}, groove)).toBe('Second: it takes no stack.');
    const row: Need = { cut: 'bore', off: l('9 1/4'), depth: l('3/8'), dia: l('1/4') };
    expect(lacking('press', { pressThroat: l('9') }, row)).toBe('Second: it reaches 1/4 too little.');
  });

  test('what hangs over the table is to be held up, and by how much it does', () =>
    expect(hangsText({ over: 'behind', by: l('46 1/4') }, '1/32')).toBe(
      'Hold it up behind the table: 46 1/4 of it hangs over.',
    ));

  test('remedies and small pieces are whole sentences with their figures', () => {
    expect(remedyText({ code: 'both-faces', each: l('1 5/16') }, '1/32')).toBe(
      'Cut from both faces, 1 5/16 deep each.',
    );
    expect(remedyText({ code: 'two-passes', each: l('1 5/16') }, '1/32')).toBe(
      'Rip it in two passes, 1 5/16 high each, turned over between, the same edge on the fence.',
    );
    expect(tooSmallText({ code: 'short-on-sled', by: l('1 1/2'), least: l('6') }, '1/32')).toBe(
      'Under 6 long, by 1 1/2: clamp it, hands no nearer to the teeth than that, or cut it from long stock. The tool’s manual first.',
    );
  });
});
