import { add, forDrawing, type Length, negate, subtract, sum, zero } from '../../length/length';
import { partitionFace } from '../../trade/carcass/boards';
import { frameOf } from '../../trade/carcass/frame';
import type { Worked } from '../../trade/carcass/parts';
import { bayStart, type Sizes } from '../../trade/carcass/sizes';
import { layOut } from '../../trade/grooves/lay-out';

/** A piece as drawn: from the left and the floor, inches as plain numbers, for pictures only. */
export type DrawnPiece = {
  readonly part: string;
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
  readonly kind: 'ply' | 'frame' | 'groove' | 'back';
};

export type Drawing = {
  readonly wide: number;
  readonly high: number;
  readonly pieces: readonly DrawnPiece[];
};

const d = forDrawing;

type At = { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length };

type Make = (role: string, at: At, kind?: DrawnPiece['kind']) => DrawnPiece;

/** Makes pieces of a case: by their role, in plain numbers. */
const maker =
  ({ sizes, parts }: Worked): Make =>
  (role, at, kind = 'ply') => {
    const part = `${sizes.case.id}~${role}`;
    const name = parts.find((p) => p.id === part)?.name ?? '';
    return { part, name, x: d(at.x), y: d(at.y), w: d(at.w), h: d(at.h), kind };
  };

/** The case from the front, to scale. */
export function frontOf(worked: Worked): Drawing {
  const { sizes } = worked;
  const { case: c, thick, width, height, clearWidth, clearHeight, joints } = sizes;
  const side = thick('side');
  const feet = c.feet ?? zero;
  const piece = maker(worked);
  const bottom = { x: side, y: feet, w: clearWidth.value, h: thick('bottom') };
  const topY = add(sizes.datum.value, clearHeight.value);
  const pieces = [
    piece('left', { x: zero, y: zero, w: side, h: height.value }),
    piece('right', { x: add(side, clearWidth.value), y: zero, w: side, h: height.value }),
    piece('bottom', bottom),
    ...(c.hasTop
      ? [
          piece('top', {
            x: subtract(side, joints.topRabbet),
            y: topY,
            w: sum([clearWidth.value, joints.topRabbet, joints.topRabbet]),
            h: thick('top'),
          }),
        ]
      : []),
    ...Array.from({ length: c.partitions }, (_, k) =>
      piece(`partition${k + 1}`, {
        x: add(side, partitionFace(sizes, k + 1)),
        y: sizes.datum.value,
        w: thick('partition'),
        h: clearHeight.value,
      }),
    ),
    ...shelves(worked, piece),
    ...(c.hasFrame ? frame(sizes, piece) : []),
  ];
  const over = c.hasFrame ? d(c.overhang ?? zero) : 0;
  return {
    wide: d(width.value) + 2 * over,
    high: d(height.value),
    pieces: pieces.map((p) => ({ ...p, x: p.x + over })),
  };
}

function shelves({ sizes, parts }: Worked, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick, bays, datum } = sizes;
  const left = (bay: number) => add(thick('side'), bayStart(sizes, bay));
  return c.inside.flatMap((i) => {
    const w = bays[i.bay - 1]?.value;
    if (!w) return [];
    if (i.kind === 'fixed')
      return [piece(i.id, { x: left(i.bay), y: add(datum.value, i.at ?? zero), w, h: thick('shelf') })];
    if (i.kind !== 'trays') return [];
    const wall = parts.find(
      (p) => p.id === `${c.id}~${i.bay === 1 ? 'left' : `partition${i.bay - 1}`}`,
    )?.board;
    const run = i.bay === 1 ? i.id : `${i.id}b`;
    const from = wall?.datum ?? zero;
    return (wall ? layOut(wall).grooves : [])
      .filter((g) => g.run === run)
      .map((g) =>
        piece(
          i.id,
          { x: left(i.bay), y: sum([datum.value, g.near, negate(from)]), w, h: thick('tray') },
          'groove',
        ),
      );
  });
}

function frame(sizes: Sizes, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick } = sizes;
  const f = frameOf(sizes);
  const feet = c.feet ?? zero;
  const over = c.overhang ?? zero;
  const left = negate(over);
  const railX = add(left, f.pieces.stile);
  const middleY = add(feet, f.pieces.bottom);
  const side = thick('side');
  const rails = c.inside
    .filter((i) => i.kind === 'rail')
    .map((i) =>
      piece(
        i.id,
        {
          x: sum([side, bayStart(sizes, i.bay), f.openings[i.bay - 1]?.left.value ?? zero]),
          y: add(middleY, i.at ?? zero),
          w: f.openings[i.bay - 1]?.wide.value ?? zero,
          h: i.wide ?? zero,
        },
        'frame',
      ),
    );
  return [
    piece('stile', { x: left, y: feet, w: f.pieces.stile, h: f.height.value }, 'frame'),
    piece(
      'stile',
      {
        x: sum([left, f.width.value, negate(f.pieces.stile)]),
        y: feet,
        w: f.pieces.stile,
        h: f.height.value,
      },
      'frame',
    ),
    piece('railbottom', { x: railX, y: feet, w: f.rails.value, h: f.pieces.bottom }, 'frame'),
    piece(
      'railtop',
      { x: railX, y: sum([feet, f.height.value, negate(f.pieces.top)]), w: f.rails.value, h: f.pieces.top },
      'frame',
    ),
    ...Array.from({ length: c.partitions }, (_, k) =>
      piece(
        'middle',
        {
          x: sum([side, partitionFace(sizes, k + 1), negate(f.openings[k]?.right.value ?? zero)]),
          y: middleY,
          w: f.pieces.middle,
          h: f.middles.value,
        },
        'frame',
      ),
    ),
    ...rails,
  ];
}

/** The case cut through from front to back, seen from the right: front at the left. */
export function sectionOf(worked: Worked): Drawing {
  const { sizes } = worked;
  const { case: c, thick, height, depth, inner, datum, clearHeight, joints } = sizes;
  const feet = c.feet ?? zero;
  const front = c.hasFrame ? thick('frame') : zero;
  const piece = maker(worked);
  const f = c.hasFrame ? frameOf(sizes) : undefined;
  const shelf = c.inside.filter((i) => i.kind === 'fixed');
  return {
    wide: d(add(depth.value, front)),
    high: d(height.value),
    pieces: [
      piece('bottom', { x: front, y: feet, w: inner.value, h: thick('bottom') }),
      ...(c.hasTop
        ? [
            piece('top', {
              x: front,
              y: add(datum.value, clearHeight.value),
              w: inner.value,
              h: thick('top'),
            }),
          ]
        : []),
      ...shelf.map((i) =>
        piece(i.id, { x: front, y: add(datum.value, i.at ?? zero), w: inner.value, h: thick('shelf') }),
      ),
      ...(c.hasBack
        ? [
            piece(
              'back',
              { x: add(front, inner.value), y: feet, w: joints.backWide, h: subtract(height.value, feet) },
              'back',
            ),
          ]
        : []),
      ...(c.hasToe && c.feet
        ? [piece('toe', { x: add(front, c.toeBack ?? zero), y: zero, w: thick('toe'), h: feet })]
        : []),
      ...(f
        ? [
            piece('railbottom', { x: zero, y: feet, w: front, h: f.pieces.bottom }, 'frame'),
            piece(
              'railtop',
              { x: zero, y: sum([feet, f.height.value, negate(f.pieces.top)]), w: front, h: f.pieces.top },
              'frame',
            ),
          ]
        : []),
    ],
  };
}
