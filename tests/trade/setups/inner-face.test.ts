import { expect, test } from 'vitest';
import type { Part } from '../../../src/trade/carcass/part';
import type { PartName } from '../../../src/trade/carcass/part-name';
import { rowEdgeOf } from '../../../src/trade/joints/edges';
import { innerOf } from '../../../src/trade/setups/inner-face';
import { bored } from '../../../src/trade/setups/lies';
import { at, sampleLog } from '../../plan/laid-sample';

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

const vectors: Readonly<Record<string, readonly [number, number, number]>> = {
  left: [-1, 0, 0],
  right: [1, 0, 0],
  front: [0, -1, 0],
  back: [0, 1, 0],
  bottom: [0, 0, -1],
  top: [0, 0, 1],
};
const vector = (name: string) => vectors[name] ?? [Number.NaN, 0, 0];
const cross = ([a, b, c]: ReturnType<typeof vector>, [x, y, z]: ReturnType<typeof vector>) =>
  [b * z - c * y, c * x - a * z, a * y - b * x] as const;

/** Where the face that is bored looks, from where the part stands, by hand. */
function looksTo({ name }: Part, copy: 'left' | 'right'): string {
  if (name.role === 'partition') return 'left';
  if (name.role === 'top') return 'bottom';
  if (name.role === 'left' || name.role === 'right') return name.role === 'left' ? 'right' : 'left';
  if (name.role === 'side') return copy === 'left' ? 'right' : 'left';
  if (['boxback', 'back', 'cleat', 'nailer'].includes(name.role)) return 'front';
  if (name.role === 'inside' && name.kind === 'rail') return 'back';
  const standing = [
    'front',
    'boxfront',
    'stile',
    'middle',
    'railtop',
    'railbottom',
    'toe',
    'edgefront',
    'plinthrail',
    'fillerleft',
    'fillerright',
    'blank',
  ];
  if (standing.includes(name.role)) return 'back';
  return 'top';
}

// standing there: right is away × up, for a piece is turned but never mirrored
test('of every part of the sample the reference end comes to the hand that the face and the edge bring it to', () => {
  const { parts } = at(sampleLog).plan;
  const seen = new Set<string>();
  for (const part of parts.filter(({ name }) => !['edgeleft', 'edgeright', 'board'].includes(name.role)))
    for (const by of ['template', 'press'] as const)
      for (const copy of ['left', 'right'] as const) {
        const edge = rowEdgeOf(part);
        const { stop, marked, toYou, onFence } = bored(part, { by, face: 'A', copy, edge });
        expect([toYou?.named, onFence?.named]).toEqual(
          by === 'press' ? [undefined, edge] : [edge, undefined],
        );
        expect(marked).toEqual({ at: 'end', named: part.end });
        const toward = by === 'press' ? 1 : -1;
        const away = vector(edge).map((x) => x * toward) as unknown as ReturnType<typeof vector>;
        const right = cross(away, vector(looksTo(part, copy)));
        const end = vector(part.end).map((x) => x * (stop === 'right' ? 1 : -1));
        expect([part.id, ...right.map((x) => x + 0)]).toEqual([part.id, ...end.map((x) => x + 0)]);
        seen.add(part.name.role);
      }
  expect(seen.size).toBeGreaterThan(10);
});
