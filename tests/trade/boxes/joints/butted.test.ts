import { describe, expect, test } from 'vitest';
import { boxWarnings } from '../../../../src/trade/boxes/box';
import { butted } from '../../../../src/trade/boxes/joints/butted';
import type { Bank } from '../../../../src/trade/fronts/bank';
import { l, w } from '../../grooves/sample';
import { bank, cutsWith, drawersWith } from './corner';

/** Boxes 5 high behind fronts of 3/4; sides and backs 1/2. */
const doweled: Partial<Bank> = { boxJoint: 'butted', fronts: { 1: { boxHigh: l('5') } }, grooveUp: l('1/2') };

const bored = (more: Partial<Bank>) =>
  [...cutsWith(more)]
    .filter(([id]) => / dowels~/.test(id) && !id.startsWith('cut'))
    .map(([id, { setup, figure }]) => `${id}: ${w(setup.cutter)} ${w(setup.height)} deep at ${w(figure)}`);

describe('front and back butted and doweled', () => {
  // K1b: 16 3/4 − 3/4 = 16; 15 9/16 − 1 = 14 9/16
  test('the front over the sides, the back between them and flush with their ends', () => {
    const cuts = cutsWith(doweled);
    const long = ['side len left', 'boxfront len 1', 'boxback len 1'].map((id) => w(cuts.get(id)?.figure));
    expect(long).toEqual(['16', '15 9/16', '14 9/16']);
    expect([...cuts.keys()].filter((id) => /along~back|tails|pins|fingers|rabbet/.test(id))).toEqual([]);
  });

  test('the front between the sides: they are as long as the box is deep', () => {
    const cuts = cutsWith({ ...doweled, frontAt: 'between' });
    const long = ['side len left', 'boxfront len 1', 'boxback len 1'].map((id) => w(cuts.get(id)?.figure));
    expect(long).toEqual(['16 3/4', '14 9/16', '14 9/16']);
  });

  // the thinner is 1/2: from 1/6 to 1/4 goes 1/4, 1 1/2 long. Into a front of 3/4: a third, 1/2, is under
  // 3/4 − 1/8 − 1/16 = 9/16, so 1/2 + 1/16 = 9/16 in the face and 1 + 1/16 in the end. Into a side of 1/2: no more than
  // 1/2 − 1/8 − 1/16 = 5/16, so 3/8 in the face and 1 1/2 − 5/16 + 1/16 = 1 1/4 in the end. Middles half of what butts
  // off, 1/4; of a front between the sides 3/8
  test('are bored in the end of what butts and in the face it meets', () => {
    expect(bored(doweled)).toEqual([
      'side dowels~front left: 1/4 1 1/16 deep at 1/4',
      'side dowels~back left: 1/4 3/8 deep at 1/4',
      'side dowels~front right: 1/4 1 1/16 deep at 1/4',
      'side dowels~back right: 1/4 3/8 deep at 1/4',
      'boxfront dowels~front 1: 1/4 9/16 deep at 1/4',
      'boxback dowels~back 1: 1/4 1 1/4 deep at 1/4',
    ]);
    expect(bored({ ...doweled, frontAt: 'between' }).filter((x) => x.includes('~front'))).toEqual([
      'side dowels~front left: 1/4 3/8 deep at 3/8',
      'side dowels~front right: 1/4 3/8 deep at 3/8',
      'boxfront dowels~front 1: 1/4 1 1/4 deep at 3/8',
    ]);
  });

  // 5 high: 1 from either edge and 3 between, under 6: two, at 1 and 4
  test('at the same marks from the top edge in both pieces', () => {
    const cuts = cutsWith(doweled);
    const marks = ['side dowels~front left', 'boxfront dowels~front 1', 'boxback dowels~back 1'].map((id) => {
      const which = cuts.get(id)?.which;
      return which?.is === 'dowels' ? which.marks.map(w) : [];
    });
    expect(marks).toEqual([
      ['1', '4'],
      ['1', '4'],
      ['1', '4'],
    ]);
  });

  // slid in, the back is 5 − 1/2 − 1/4 = 4 1/4 high: at 1 and 3 1/4
  test('a back over a bottom slid in has its dowels in its own height', () => {
    const which = cutsWith({ ...doweled, bottomHow: 'slid-in' }).get('boxback dowels~back 1')?.which;
    expect(which?.is === 'dowels' && which.marks.map(w)).toEqual(['1', '3 1/4']);
  });

  // a groove through the front would show at its ends: 1/2 − 1/4 from each, and 15 9/16 − 1/4 = 15 5/16
  test('the groove of a front over the sides is stopped, of one between them not', () => {
    const groove = cutsWith(doweled).get('boxfront along~bottom 1');
    expect(groove?.which).toMatchObject({ stopped: { from: l('1/4'), to: l('15 5/16') } });
    expect(groove?.setup.machine).toBe('routertable');
    const between = cutsWith({ ...doweled, frontAt: 'between' }).get('boxfront along~bottom 1');
    expect(between?.setup.machine).toBe('fence');
  });
});

describe('what is said of the dowels', () => {
  const says = (more: Partial<Bank>) => {
    const made = drawersWith({ ...doweled, ...more });
    if (!made.ok) return made.error.map((p) => ('why' in p ? `${p.code} ${p.at} ${p.why.code}` : p.code));
    const [first] = made.value.drawers;
    return first
      ? boxWarnings(first.plan, butted).map((x) => (x.code === 'dowel' ? x.warning.code : x.code))
      : [];
  };

  test('none is between a third and a half of the thinner part', () => {
    expect(says({ dowel: l('5/16') })).toEqual(['no-dowels front no-dowel']);
    expect(says({ dowel: l('1/4') })).toEqual([]);
    // of 15/32 the half is 15/64: under 1/4, so 3/16 where nothing is said
    expect(bored({ ...doweled, stocks: { ...bank.stocks, side: 'thin' } })[0]).toMatch(/^side .*: 3\/16 /);
  });

  // 1 3/4 high is under twice 1: one, in the middle, 7/8 from the top. The groove, 17/64 wide, 1/2 up, has its middle
  // 1 3/4 − 1/2 − 17/128 = 1 15/128 down, 31/128 off; half of both widths is (17/64 + 1/4) / 2 = 33/128: 1/64 into it
  test('one alone turns; one in the groove is said', () => {
    expect(says({ fronts: { 1: { boxHigh: l('1 3/4') } } })).toEqual([
      'turns',
      'dowel-in-groove',
      'turns',
      'dowel-in-groove',
    ]);
  });
});
