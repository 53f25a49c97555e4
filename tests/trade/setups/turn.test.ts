import { describe, expect, test } from 'vitest';
import { farSide, opposite, type Toward } from '../../../src/trade/setups/turn';

type Vector = readonly [number, number, number];

/** The case as you face it: x right, y back, z up. A machine as you stand at it: x right, y away, z up. */
const vectors: Readonly<Record<Toward, Vector>> = {
  left: [-1, 0, 0],
  right: [1, 0, 0],
  front: [0, -1, 0],
  back: [0, 1, 0],
  bottom: [0, 0, -1],
  top: [0, 0, 1],
};
const all = Object.keys(vectors) as readonly Toward[];

const determinant = ([[a, b, c], [d, e, f], [g, h, i]]: readonly [Vector, Vector, Vector]): number =>
  a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);

const units = Object.values(vectors);
const isSquare = (a: Vector, b: Vector): boolean => a.every((x, k) => x === 0 || b[k] === 0);

/** Every way a piece can be turned in the hand: rows square to each other, not mirrored. */
const turns = units.flatMap((a) =>
  units.flatMap((b) =>
    units
      .filter((c) => isSquare(a, b) && isSquare(b, c) && isSquare(a, c) && determinant([a, b, c]) === 1)
      .map((c) => [a, b, c] as const),
  ),
);

const turned = (turn: readonly [Vector, Vector, Vector], v: Vector): Vector =>
  turn.map((row) => row.reduce((sum, x, k) => sum + x * (v[k] ?? 0), 0)) as unknown as Vector;

const same = (a: Vector, b: Vector): boolean => a.every((x, k) => x === b[k]);

/** What is away from you once the piece is so turned: looked for among all turns there are. */
function away(face: Toward, lies: 'up' | 'down', end: Toward, endAt: 'left' | 'right'): readonly Toward[] {
  const up: Vector = [0, 0, lies === 'up' ? 1 : -1];
  const along: Vector = [endAt === 'right' ? 1 : -1, 0, 0];
  return turns
    .filter((turn) => same(turned(turn, vectors[face]), up) && same(turned(turn, vectors[end]), along))
    .flatMap((turn) => all.filter((t) => same(turned(turn, vectors[t]), [0, 1, 0])));
}

describe('farSide', () => {
  test('a piece can be turned 24 ways', () => expect(turns).toHaveLength(24));

  test('it is what turning the piece in the hand brings to the far side, whatever face and end', () => {
    for (const face of all)
      for (const end of all)
        for (const lies of ['up', 'down'] as const)
          for (const endAt of ['left', 'right'] as const) {
            const far = farSide({ face, lies, end, endAt });
            expect(far === undefined ? [] : [far]).toEqual(away(face, lies, end, endAt));
          }
  });

  test('it never lies along face or end, and turning the piece over or about changes its sides', () => {
    for (const face of all)
      for (const end of all) {
        const far = farSide({ face, lies: 'down', end, endAt: 'left' });
        if (!far) continue;
        expect([face, opposite(face), end, opposite(end)]).not.toContain(far);
        expect(farSide({ face, lies: 'up', end, endAt: 'left' })).toBe(opposite(far));
        expect(farSide({ face, lies: 'down', end, endAt: 'right' })).toBe(opposite(far));
      }
  });
});
