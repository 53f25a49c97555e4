import { expect, test } from 'vitest';
import type { Part } from '../../../src/trade/carcass/part';
import type { PartName } from '../../../src/trade/carcass/part-name';
import { innerOf } from '../../../src/trade/setups/inner-face';
import { bored } from '../../../src/trade/setups/lies';

const of = (name: PartName, end: string): Part => ({ name, end, rabbets: [], along: [] }) as unknown as Part;

// where each stands, common practice, no source: what is at the back shows its front, what is in front its back
test.each([
  [{ role: 'inside', kind: 'loose' }, 'left', 'upper', 'top'],
  [{ role: 'boxbottom', no: 1 }, 'left', 'upper', 'top'],
  [{ role: 'stile' }, 'bottom', 'inside', 'back'],
  [{ role: 'fillerleft' }, 'bottom', 'inside', 'back'],
  [{ role: 'inside', kind: 'rail' }, 'left', 'inside', 'back'],
  [{ role: 'nailer' }, 'left', 'inside', 'front'],
  [{ role: 'cleat' }, 'left', 'inside', 'front'],
  [{ role: 'edgeleft' }, 'front', 'inside', 'right'],
  [{ role: 'edgeright' }, 'front', 'inside', 'left'],
] as const)('%j, measured from its %s end, is bored in its %s face', (name, end, named, toward) => {
  expect(innerOf(of(name, end))).toEqual({ named, toward });
});

// the end at your left and the front edge toward you: a board from its left end then looks up, one that stands, left
test('a board that nothing tells apart is bored in the face with the marks, as it is drawn', () => {
  const board = (end: string) => of({ role: 'board', named: 'Panel' }, end);
  expect([innerOf(board('left')), innerOf(board('bottom'))]).toEqual([
    { named: 'marked', toward: 'top' },
    { named: 'marked', toward: 'left' },
  ]);
  expect(bored(board('left'), { by: 'template', face: 'A', copy: undefined })).toMatchObject({
    face: { named: 'marked', lies: 'up' },
    toYou: { at: 'edge', named: 'front' },
    marked: { at: 'end', named: 'left' },
    stop: 'left',
  });
  // turned half round for the fence of a press
  expect(bored(board('left'), { by: 'press', face: 'A', copy: undefined }).stop).toBe('right');
});

test('once it is grooved the face is called that, and lies as before', () => {
  const shelf = of({ role: 'inside', kind: 'fixed' }, 'left');
  const rabbet = { id: 'x' } as Part['rabbets'][number];
  const lies = { by: 'template', face: 'A', copy: undefined } as const;
  expect(bored({ ...shelf, rabbets: [rabbet] }, lies)).toEqual({
    ...bored(shelf, lies),
    face: { named: 'grooved', lies: 'up' },
  });
});
