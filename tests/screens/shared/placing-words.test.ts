import { describe, expect, test } from 'vitest';
import { placingLine, placingShort, placingWords } from '../../../src/screens/shared/placing-words';
import type { Placing } from '../../../src/trade/setups/placing';
import { l } from '../../length/write-figures';

const left: Placing = {
  face: { named: 'inside', lies: 'down' },
  onFence: { at: 'edge', named: 'front' },
  leads: { at: 'edge', named: 'back' },
  toStop: { at: 'end', named: 'bottom' },
  stop: 'left',
  fence: 'near',
};
const right: Placing = {
  ...left,
  onFence: { at: 'edge', named: 'back' },
  leads: { at: 'edge', named: 'front' },
};

describe('how a piece lies, in words', () => {
  test('a side on the sled', () =>
    expect(placingWords(left, '1/32')).toEqual({
      edge: 'Front edge on fence',
      leads: 'back edge leads',
      face: 'inside face down',
      end: 'bottom end to stop',
    }));

  test('under a guide the edge toward you is said once', () =>
    expect(
      placingLine(
        {
          face: { named: 'inside', lies: 'up' },
          measured: { at: 'end', named: 'bottom' },
          stop: 'left',
          toYou: { at: 'edge', named: 'back' },
          leads: { at: 'edge', named: 'back' },
        },
        '1/32',
      ),
    ).toBe('back edge toward you, inside face up, bottom end on your left, guide measured from it'));

  test('notched pieces stand on an edge', () =>
    expect(placingWords({ stands: { at: 'edge', named: 'back' } }, '1/32').edge).toBe(
      'Stood on the back edge',
    ));

  test('a stopped groove says where it begins or ends', () => {
    const stopped = l('3/4');
    expect(placingWords({ ...left, stopped }, '1/32').stopped).toBe('ends 3/4 before the front edge');
    expect(placingWords({ ...right, stopped }, '1/32').stopped).toBe('begins 3/4 behind the front edge');
  });

  test('one line for plain text and print; nothing where nothing is known', () => {
    expect(placingLine(left, '1/32')).toBe(
      'front edge on fence, back edge leads, inside face down, bottom end to stop',
    );
    expect(placingLine({}, '1/32')).toBe('');
  });
});

describe('placingShort', () => {
  const side = (role: 'left' | 'right', placing: Placing) => ({ name: { of: { role } }, placing });
  test('left and right by their letter, each with its edge; the end on the stop', () =>
    expect(placingShort([side('left', left), side('right', right)])).toBe(
      'inside down, L front, R back, bottom end to stop',
    ));
  test('one edge for all is said once', () =>
    expect(placingShort([side('left', left)])).toBe('inside down, front edge on fence, bottom end to stop'));
  test('with one end on the fence for both, what leads tells left from right', () => {
    const onEnd = (leads: string): Placing => ({
      face: { named: 'inside', lies: 'down' },
      onFence: { at: 'end', named: 'top' },
      leads: { at: 'edge', named: leads },
    });
    expect(placingShort([side('left', onEnd('back')), side('right', onEnd('front'))])).toBe(
      'inside down, top end on fence, L back leads, R front leads',
    );
    expect(placingShort([side('left', onEnd('back'))])).toBe(
      'inside down, top end on fence, back edge leads',
    );
  });
  test('under a guide, the end it is measured from', () =>
    expect(
      placingShort([
        side('left', {
          face: { named: 'inside', lies: 'up' },
          measured: { at: 'end', named: 'bottom' },
          toYou: { at: 'edge', named: 'back' },
          leads: { at: 'edge', named: 'back' },
        }),
      ]),
    ).toBe('inside up, back edge toward you, guide from bottom end'));
});

test('along a guide the edge it is measured from is named once, with the side it lies at', () =>
  expect(
    placingWords(
      {
        face: { named: 'good', lies: 'down' },
        measured: { at: 'edge', named: 'true' },
        stop: 'left',
      },
      '1/32',
    ),
  ).toEqual({ edge: 'True edge on your left', face: 'good face down', end: 'guide measured from it' }));
