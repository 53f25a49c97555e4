import { describe, expect, test } from 'vitest';
import type { Bank } from '../../../../src/trade/fronts/bank';
import { l, w } from '../../grooves/sample';
import { cutsWith, drawersWith } from './corner';

const given = { 1: { boxHigh: l('5 1/8') } };
const joined: Partial<Bank> = { boxJoint: 'box-joint', finger: l('1/2'), fronts: given };

describe('a box joint', () => {
  // 1/64 deeper than the mate is thick: 3/4 and 1/2
  test('is cut off a pin, the sides first: they begin with a finger, the front with a slot', () => {
    const cuts = cutsWith(joined);
    const [side, front] = [cuts.get('side fingers left'), cuts.get('boxfront fingers 1')];
    const told = [side, front].map((op) => [
      op?.setup.machine,
      w(op?.setup.cutter),
      w(op?.setup.height),
      op?.setup.sets,
      w(op?.figure),
    ]);
    expect(told).toEqual([
      ['finger', '1/2', '49/64', 'first-slot', '1/2'],
      ['finger', '1/2', '33/64', 'edge-slot', '1/2'],
    ]);
    expect(front?.after).toEqual(
      expect.arrayContaining(['cut/b~c1d1side/fingers/left', 'cut/b~c1d1side/fingers/right']),
    );
  });

  test('leaves the sides as deep as the box and the front as wide', () => {
    const cuts = cutsWith(joined);
    expect(w(cuts.get('side len left')?.figure)).toBe('16 3/4');
    expect(w(cuts.get('boxfront len 1')?.figure)).toBe('15 9/16');
    // inside 15 9/16 − 1 − 1/32 = 14 17/32, and 1/2 into the sides
    expect(w(cuts.get('boxback len 1')?.figure)).toBe('15 1/32');
  });

  // 5 1/8: nine of 1/2, or ten, or all of it (K1c)
  test.each([
    [undefined, '4 1/2', '5/8'],
    ['any', '5', '1/8'],
    ['equal', '5 1/8', '0'],
  ] as const)('%s: a box given 5 1/8 high is cut to %s', (fingers, high, trim) => {
    const made = drawersWith({ ...joined, fingers });
    const [first] = made.ok ? made.value.drawers : [];
    expect(first && [w(first.high), w(first.trim)]).toEqual([high, trim]);
    const cuts = cutsWith({ ...joined, fingers });
    expect(['side rip left', 'boxfront rip 1'].map((id) => w(cuts.get(id)?.figure))).toEqual([high, high]);
  });

  test('cannot be made under three fingers, nor of fingers of nothing', () => {
    const wrong = (finger: string) => {
      const made = drawersWith({ ...joined, finger: l(finger) });
      return made.ok ? 'ok' : made.error.map(({ code }) => code).join();
    };
    // 5 1/8 is under three of 1 3/4, over three of 1 5/8, and more than two hundred of 1/64
    expect(['1 3/4', '1 5/8', '0', '1/64'].map(wrong)).toEqual([
      'too-low-for-fingers',
      'ok',
      'finger-not-positive',
      'fingers-too-many',
    ]);
  });
});

describe('the groove for the bottom of a box joint', () => {
  // bottoms of 1/4 and 1/64 over; fingers of the side at 0, 1, 2 …, each 1/2
  const front = (up: string) => cutsWith({ ...joined, grooveUp: l(up) }).get('boxfront along~bottom 1');

  test('runs through in a finger of the side', () => {
    expect(front('1 1/16')?.setup.machine).toBe('fence');
    expect(front('1 1/16')?.which).toEqual({ is: 'takes', takes: { part: 'bottom' } });
  });

  // side 1/2 and 1/64 proud, less 1/4: 17/64, at the tape 9/32; as far from the other end: 15 9/16 − 9/32 = 15 9/32
  test.each(['5/8', '3/8'])('%s up it is stopped in the front, on a router table', (up) => {
    const groove = front(up);
    expect(groove?.setup.machine).toBe('routertable');
    const stopped = groove?.which?.is === 'takes' ? groove.which.stopped : undefined;
    expect(stopped && [w(stopped.from), w(stopped.to), stopped.end]).toEqual(['9/32', '15 9/32', 'left']);
    expect(cutsWith({ ...joined, grooveUp: l(up) }).get('side along~bottom left')?.setup.machine).toBe(
      'fence',
    );
  });
});
